package porebench.store.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.FigureName;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.SampleStudies;
import porebench.record.Samples;
import porebench.store.rows.RecordTable;
import porebench.store.rows.StoredRecord;

/**
 * The text of every kind of record in the chain is what it always was. The hashes were computed by the program as it was when
 * each table was written by hand.
 */
class ChainTextSnapshotTest {
    private static List<Kept> records() {
        List<Kept> all = new ArrayList<>();
        all.addAll(Samples.bare());
        all.addAll(Samples.full());
        all.addAll(Samples.fullAsBefore());
        all.add(SampleStudies.full("ST-1", "a;b %", "x"));
        all.add(SampleStudies.layers("ST-2"));
        all.add(SampleStudies.laboratories("ST-3"));
        all.add(new Laboratory("Tarn Beck", "", true));
        all.add(Samples.trial("T-1", "M-1", "M-1/1", "5.4").asSimulated());
        all.add(Samples.determination("M-1/1", "M-1").simulated(true));
        all.add(Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9)).on(Grounds.NONE.simulated(true)));
        return all;
    }

    private static <T extends Kept> StoredRecord rows(T value) {
        return RecordTable.ofValue(value).rows(value);
    }

    /** Returns a record without the rows of figures that no profile stated then. */
    private static StoredRecord asThen(StoredRecord record) {
        return new StoredRecord(
                record.row(),
                record.parts().stream()
                        .filter(row -> !row.table().equals("profile_figure")
                                || FigureName.ofKey(String.valueOf(
                                                row.chained().cells().get("figure")))
                                        .filter(FigureName::mayBeAbsent)
                                        .isEmpty())
                        .toList());
    }

    @Test
    void isWhatItAlwaysWas() throws IOException {
        List<String> then;
        try (InputStream file = ChainTextSnapshotTest.class.getResourceAsStream("texts-in-the-chain.csv")) {
            assertThat(file).isNotNull();
            then = new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        }
        assertThat(records().stream()
                        .map(value ->
                                value.kind().symbol() + "," + Canonical.hash(Canonical.text(asThen(rows(value))))))
                .containsExactlyElementsOf(then)
                .hasSize(39);
    }

    @Test
    void everyRecordComesBackFromItsRows() {
        records()
                .forEach(value -> assertThat(RecordTable.ofValue(value).value(rows(value)))
                        .isEqualTo(value));
    }
}

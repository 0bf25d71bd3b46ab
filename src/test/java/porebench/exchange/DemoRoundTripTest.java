package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Sheet;
import porebench.port.OutputFolder;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;

/** The demo book through export and back. */
class DemoRoundTripTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    /** The factors of the old ledge. */
    private static final Set<String> CHANGED = Set.of("HG-106/r1", "HG-109/r1", "HG-110/r1", "HG-111/r1");

    @TempDir
    Path folder;

    private static LabBook demo() {
        LabBook book = new MemoryLabBook(CLOCK);
        new DemoLaboratory().fill(book);
        return book;
    }

    @Test
    void theDemoBookReadsBackAsItWas() throws IOException {
        LabBook book = demo();
        List<Path> files = new CsvSheets().export(book, OutputFolder.fresh(folder.resolve("new/folder")));
        // Beside a file of each kind stands what says their columns.
        assertThat(files).hasSize(RecordKind.values().length + 1);
        assertThat(files.get(RecordKind.values().length)).hasFileName("datapackage.json");
        for (int i = 0; i < RecordKind.values().length; i++) {
            Sheet<Kept> sheet = new CsvSheets().records(files.get(i));
            assertThat(sheet.problems()).isEmpty();
            assertThat(sheet.values())
                    .isEqualTo(book.latest(RecordKind.values()[i].type()).stream()
                            .map(version -> asExported(version.value()))
                            .toList());
        }
        try (Stream<Path> left = Files.list(folder.resolve("new/folder"))) {
            assertThat(left).containsExactlyInAnyOrderElementsOf(files);
        }
    }

    /** A source of some mixes changed after their issue, which the export says; everything else reads back as it was. */
    private static Kept asExported(Kept value) {
        return value instanceof FactorIssue issue && CHANGED.contains(issue.recordId())
                ? issue.on(issue.grounds().from(FactorOrigin.IMPORTED))
                : value;
    }
}

package porebench.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.record.KeptStudy;
import porebench.record.RecordKind;
import porebench.record.id.StudyId;

/** The tables {@code study} and {@code study_reading}; names beyond the layers a study has are null. */
final class StudyTable implements RecordTable<KeptStudy> {
    private static final String READING = "study_reading";
    private static final String LAYER = "layer_";
    private static final String NAME = "name_";

    @Override
    public RecordKind kind() {
        return RecordKind.STUDY;
    }

    @Override
    public String name() {
        return "study";
    }

    @Override
    public List<String> partTables() {
        return List.of(READING);
    }

    @Override
    public StoredRecord rows(KeptStudy study) {
        StoredRow row = new StoredRow(name())
                .cell("study_id", study.id().text())
                .cell("layout", study.layout().symbol())
                .cell("title", study.title())
                .cell("made_on", study.madeOn().toString())
                .cell("made_by", study.by())
                .cell("file_name", study.fileName())
                .cell("remarks", study.remarks());
        numbered(row, LAYER, study.layers());
        List<StoredRow> readings = new ArrayList<>();
        for (KeptStudy.Reading reading : study.readings()) {
            StoredRow part =
                    new StoredRow(READING).cell("position", readings.size() + 1).number("value", reading.value());
            readings.add(numbered(part, NAME, reading.names()));
        }
        return new StoredRecord(row, readings);
    }

    private static StoredRow numbered(StoredRow row, String column, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            row.cell(column + (i + 1), texts.get(i));
        }
        return row;
    }

    private static List<String> numbered(StoredRow row, String column) {
        return IntStream.rangeClosed(1, KeptStudy.MOST_LAYERS)
                .mapToObj(number -> row.textIfAny(column + number))
                .flatMap(Optional::stream)
                .toList();
    }

    @Override
    public KeptStudy value(StoredRecord rows) {
        StoredRow row = rows.row();
        List<KeptStudy.Reading> readings = rows.parts().stream()
                .sorted(Comparator.comparingInt(part -> part.count("position")))
                .map(part -> new KeptStudy.Reading(numbered(part, NAME), part.number("value")))
                .toList();
        return new KeptStudy(
                new StudyId(row.text("study_id")),
                row.word("layout", KeptStudy.Layout.values(), KeptStudy.Layout::symbol),
                row.text("title"),
                LocalDate.parse(row.text("made_on")),
                row.text("made_by"),
                row.text("file_name"),
                numbered(row, LAYER),
                readings,
                row.text("remarks"));
    }
}

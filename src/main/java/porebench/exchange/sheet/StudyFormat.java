package porebench.exchange.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.Escapes;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.Table;
import porebench.record.KeptStudy;
import porebench.record.column.CellType;
import porebench.record.column.Column;
import porebench.record.column.StudyColumns;
import porebench.record.id.StudyId;

/**
 * {@code studies.csv}: one row a reading, the rows of a study together stating it.
 *
 * <p>The layers stand as {@code operator;sample;repeat}, a percent sign, semicolon or bar within a name written {@code %25},
 * {@code %3B} or {@code %7C}; what a reading belongs to stands in as many of the columns {@code name_1} to {@code name_6}.
 */
public final class StudyFormat implements Format<KeptStudy> {
    private static final String ID = StudyColumns.ID.heading();
    static final String LAYERS = "layers";
    static final String VALUE = StudyColumns.READINGS.heading();

    private static final List<String> SHARED = Stream.concat(
                    Stream.of(
                                    StudyColumns.LAYOUT,
                                    StudyColumns.MADE_ON,
                                    StudyColumns.BY,
                                    StudyColumns.TITLE,
                                    StudyColumns.FILE_NAME,
                                    StudyColumns.REMARKS)
                            .map(Column::heading),
                    Stream.of(LAYERS))
            .toList();

    private static final Headings COLUMNS = new Headings(
            List.of(
                    ID,
                    StudyColumns.LAYOUT.heading(),
                    StudyColumns.MADE_ON.heading(),
                    StudyColumns.BY.heading(),
                    LAYERS,
                    VALUE,
                    nameColumn(0)),
            Stream.concat(
                            IntStream.range(1, KeptStudy.MOST_LAYERS).mapToObj(StudyFormat::nameColumn),
                            Stream.of(StudyColumns.TITLE, StudyColumns.FILE_NAME, StudyColumns.REMARKS)
                                    .map(Column::heading))
                    .toList());

    @Override
    public Class<KeptStudy> type() {
        return KeptStudy.class;
    }

    @Override
    public String fileName() {
        return "studies.csv";
    }

    @Override
    public Headings columns() {
        return COLUMNS;
    }

    /** Returns the column of a layer, counted from 0; that of the value stands before them. */
    static String nameColumn(int layer) {
        return StudyColumns.OF_READING.all().get(layer + 1).heading();
    }

    @Override
    public Stated stated() {
        Stated whole = Stated.of(StudyColumns.ID, StudyColumns.ALL, StudyColumns.OF_READING);
        List<Column<?, ?>> ofFirst = new ArrayList<>(whole.ofFirst());
        ofFirst.add(Column.<KeptStudy, String>needed(LAYERS, CellType.said(), study -> layers(study)));
        return new Stated(whole.ofRow(), ofFirst, false);
    }

    @Override
    public List<Sheet.Row<KeptStudy>> read(Table table) {
        List<Sheet.Row<KeptStudy>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, ID, SHARED)) {
            Optional<KeptStudy> study = read(group);
            if (group.checkGood(table, ID)) {
                study.ifPresent(kept -> good.add(new Sheet.Row<>(group.first().line(), kept)));
            }
        }
        return good;
    }

    private static Optional<KeptStudy> read(RowGroup group) {
        SheetReader about = SheetReader.of(group, List.of());
        Optional<KeptStudy.Layout> layout = StudyColumns.LAYOUT.read(about);
        Optional<LocalDate> day = StudyColumns.MADE_ON.read(about);
        Optional<String> by = about.word(StudyColumns.BY);
        List<String> layers = layers(group.stating(LAYERS), layout);
        StudyRows rows = new StudyRows(group, layers);
        List<KeptStudy.Reading> readings = rows.readings();
        if (layout.isEmpty() || day.isEmpty() || by.isEmpty() || layers.isEmpty() || !group.isGood()) {
            return Optional.empty();
        }
        rows.check(layout.get());
        return Optional.of(new KeptStudy(
                        new StudyId(group.name()),
                        layout.get(),
                        about.text(StudyColumns.TITLE),
                        day.get(),
                        by.get(),
                        about.text(StudyColumns.FILE_NAME),
                        layers,
                        readings,
                        about.text(StudyColumns.REMARKS)))
                .filter(any -> group.isGood());
    }

    /** Returns the layers a study names, if they can be the ones of its kind; none, with the problem noted, otherwise. */
    private static List<String> layers(HeadedRow entry, Optional<KeptStudy.Layout> layout) {
        Optional<String> cell = entry.word(LAYERS);
        if (cell.isEmpty()) {
            return List.of();
        }
        List<String> layers = Arrays.stream(cell.get().split(";", -1))
                .map(name -> Escapes.read(name).strip())
                .toList();
        if (layers.contains("")) {
            entry.error(LAYERS, "study.layer-without-name", Findings.quoted(cell.get()));
        } else if (new HashSet<>(layers).size() < layers.size()) {
            entry.error(LAYERS, "study.layer-twice", Findings.quoted(cell.get()));
        } else if (layers.size() > KeptStudy.MOST_LAYERS) {
            entry.error(LAYERS, "study.too-many-layers", layers.size(), KeptStudy.MOST_LAYERS);
        } else if (layout.isPresent() && !layout.get().takes(layers)) {
            entry.error(
                    LAYERS,
                    "study.layers-of-kind",
                    layout.get().symbol(),
                    String.join(";", layout.get().columns()),
                    Findings.quoted(cell.get()));
        }
        return entry.isRefused(LAYERS) ? List.of() : layers;
    }

    @Override
    public List<List<String>> write(KeptStudy study) {
        String layers = layers(study);
        return study.readings().stream()
                .map(reading -> {
                    SheetCells cells = SheetCells.ofWhole(StudyColumns.ALL, study);
                    cells.put(LAYERS, layers);
                    StudyColumns.OF_READING.write(reading, cells);
                    return cells.under(COLUMNS.all());
                })
                .toList();
    }

    private static String layers(KeptStudy study) {
        return study.layers().stream().map(Escapes::written).collect(Collectors.joining(";"));
    }
}

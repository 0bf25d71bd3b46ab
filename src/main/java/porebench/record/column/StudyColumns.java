package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import porebench.record.KeptStudy;
import porebench.record.id.StudyId;

/** The columns of a study that was kept, and of its readings; names beyond the layers it has are empty. */
public final class StudyColumns {
    public static final Column<KeptStudy, StudyId> ID =
            Column.needed("study_id", CellType.word(StudyId::new, StudyId::text), KeptStudy::id);
    public static final Column<KeptStudy, KeptStudy.Layout> LAYOUT = Column.needed(
                    "layout", CellType.choice(KeptStudy.Layout.values(), KeptStudy.Layout::symbol), KeptStudy::layout)
            .headed("kind");
    public static final Column<KeptStudy, String> TITLE = Column.needed("title", CellType.text(), KeptStudy::title);
    public static final Column<KeptStudy, LocalDate> MADE_ON =
            Column.needed("made_on", CellType.day(), KeptStudy::madeOn);
    public static final Column<KeptStudy, String> BY =
            Column.needed("made_by", CellType.text(), KeptStudy::by).headed("by");
    public static final Column<KeptStudy, String> FILE_NAME =
            Column.needed("file_name", CellType.text(), KeptStudy::fileName);
    public static final Column<KeptStudy, String> REMARKS =
            Column.needed("remarks", CellType.text(), KeptStudy::remarks);

    private static final List<Column<KeptStudy, String>> LAYERS = numbered("layer_", KeptStudy::layers);
    private static final Column<KeptStudy.Reading, BigDecimal> VALUE =
            Column.needed("value", CellType.number(NumberRange.ANY), KeptStudy.Reading::value);
    private static final List<Column<KeptStudy.Reading, String>> NAMES = numbered("name_", KeptStudy.Reading::names);
    public static final Columns<KeptStudy.Reading> OF_READING = new Columns<>(
            "study_reading",
            joined(List.of(VALUE), NAMES),
            cells -> new KeptStudy.Reading(texts(cells, NAMES), cells.get(VALUE)),
            9,
            any -> List.of());

    public static final Column<KeptStudy, List<KeptStudy.Reading>> READINGS =
            Column.needed("value", CellType.several(new Part<>(OF_READING, true)), KeptStudy::readings);

    public static final Columns<KeptStudy> ALL = new Columns<>(
            "study",
            joined(List.of(ID, LAYOUT, TITLE, MADE_ON, BY, FILE_NAME, REMARKS, READINGS), LAYERS),
            StudyColumns::made,
            9,
            any -> List.of());

    private StudyColumns() {}

    private static <R> List<Column<R, String>> numbered(String name, Function<R, List<String>> of) {
        return IntStream.rangeClosed(1, KeptStudy.MOST_LAYERS)
                .mapToObj(number -> Column.any(
                        name + number,
                        CellType.text(),
                        (R record) -> Optional.of(of.apply(record))
                                .filter(texts -> texts.size() >= number)
                                .map(texts -> texts.get(number - 1))))
                .toList();
    }

    private static <R> List<Column<R, ?>> joined(
            List<? extends Column<R, ?>> first, List<? extends Column<R, ?>> second) {
        List<Column<R, ?>> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private static <R> List<String> texts(Cells cells, List<Column<R, String>> columns) {
        return columns.stream().flatMap(column -> cells.any(column).stream()).toList();
    }

    private static KeptStudy made(Cells cells) {
        return new KeptStudy(
                cells.get(ID),
                cells.get(LAYOUT),
                cells.get(TITLE),
                cells.get(MADE_ON),
                cells.get(BY),
                cells.get(FILE_NAME),
                texts(cells, LAYERS),
                cells.get(READINGS),
                cells.get(REMARKS));
    }
}

package porebench.desk.form;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import porebench.record.column.Column;
import porebench.record.column.Part;

/**
 * What two people made of one version of a record: the lines in which they differ, and the draft that comes of a choice in each.
 *
 * <p>A line is a field with its unit, or a cell of one of several things, or such a thing that only one of the two has. Fields
 * that share a unit are one line where that differs, as a number without its unit means nothing.
 */
public final class TwoVersions {
    private final ColumnModel words;
    private final Function<Column<?, ?>, PartWords> partWords;
    private final List<? extends Column<?, ?>> columns;
    private final TypedDraft before;
    private final TypedDraft theirs;
    private final TypedDraft yours;
    private final Function<Column<?, ?>, List<List<Column<?, ?>>>> names;

    /**
     * One line in which they differ; what is not there is empty.
     *
     * @param name what stands in the line
     * @param isTheirs whether theirs is taken unless somebody chooses: where only they changed it
     */
    public record Line(String name, String before, String theirs, String yours, boolean isTheirs) {}

    /**
     * Puts two drafts side by side.
     *
     * @param columns in which they are compared, as they stand in the form
     * @param partWords the words of the columns of which the record has several things
     * @param names the columns that together name such a thing, those that name it best first
     * @param before what both began with
     */
    public TwoVersions(
            ColumnModel words,
            List<? extends Column<?, ?>> columns,
            Function<Column<?, ?>, PartWords> partWords,
            Function<Column<?, ?>, List<List<Column<?, ?>>>> names,
            TypedDraft before,
            TypedDraft theirs,
            TypedDraft yours) {
        this.words = words;
        this.columns = columns;
        this.partWords = partWords;
        this.names = names;
        this.before = before;
        this.theirs = theirs;
        this.yours = yours;
    }

    /** Returns the lines in which they differ, as they stand in the form. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        make(line -> {
            lines.add(line);
            return line.isTheirs();
        });
        return lines;
    }

    /**
     * Returns the draft that comes of a choice in each line. Where they do not differ it says what both say, and of what no line
     * tells what you changed.
     *
     * @param takesTheirs one a line
     */
    public TypedDraft chosen(List<Boolean> takesTheirs) {
        Iterator<Boolean> choices = takesTheirs.iterator();
        return make(line -> choices.next());
    }

    /** Every way goes through the same lines in the same order, whatever is chosen in them. */
    private TypedDraft make(Predicate<Line> takesTheirs) {
        TypedDraft made = theirs.withChanges(before, yours);
        Map<String, List<Column<?, ?>>> byUnit = new LinkedHashMap<>();
        columns.forEach(column -> byUnit.computeIfAbsent(column.unitField(), unit -> new ArrayList<>())
                .add(column));
        for (List<Column<?, ?>> sharing : byUnit.values()) {
            boolean isOtherUnit = !theirs.unit(sharing.get(0)).equals(yours.unit(sharing.get(0)));
            if (isOtherUnit && sharing.size() > 1 || isOtherUnit && isPart(sharing.get(0))) {
                made = fields(made, sharing, takesTheirs);
            } else {
                for (Column<?, ?> column : sharing) {
                    made = isPart(column)
                            ? made.with(
                                    column, rows(column, column.type().partOf().orElseThrow(), takesTheirs))
                            : fields(made, List.of(column), takesTheirs);
                }
            }
        }
        return made;
    }

    private static boolean isPart(Column<?, ?> column) {
        return column.type().partOf().isPresent();
    }

    private TypedDraft fields(TypedDraft made, List<Column<?, ?>> together, Predicate<Line> takesTheirs) {
        if (together.stream().allMatch(column -> isAlike(column, theirs, yours))) {
            return made;
        }
        boolean isYours = together.stream().anyMatch(column -> !isAlike(column, before, yours));
        Line line = new Line(
                together.stream().map(this::name).collect(Collectors.joining(", ")),
                said(together, before),
                said(together, theirs),
                said(together, yours),
                !isYours);
        TypedDraft from = takesTheirs.test(line) ? theirs : yours;
        TypedDraft taken = made;
        for (Column<?, ?> column : together) {
            taken = isPart(column) ? taken.with(column, from.rows(column)) : taken.with(column, from.text(column));
            taken = taken.withUnit(column, from.unit(column));
        }
        return taken;
    }

    private String name(Column<?, ?> column) {
        return isPart(column) ? partWords.apply(column).all() : words.words(column);
    }

    private String said(List<Column<?, ?>> together, TypedDraft draft) {
        return together.stream()
                .map(column -> isPart(column)
                        ? draft.rows(column).stream()
                                .map(row -> said(column, row))
                                .collect(Collectors.joining("; "))
                        : field(column, draft))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** Returns what a field says, with what stands beside a number in the place of a unit. */
    private String field(Column<?, ?> column, TypedDraft draft) {
        String said = words.said(column, draft);
        String beside = words.beside(column, draft);
        boolean isBareNumber = said.equals(draft.text(column))
                && new Numbers(words.texts().locale()).parse(said).isPresent();
        return isBareNumber && !beside.isEmpty() ? said + " " + beside : said;
    }

    /** Returns what a thing says, all its cells. */
    private String said(Column<?, ?> column, TypedDraft row) {
        return column.type().partOf().orElseThrow().columns().all().stream()
                .map(cell -> partWords.apply(column).said(row, cell))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** The unit of an empty field is no difference. */
    private static boolean isAlike(Column<?, ?> column, TypedDraft one, TypedDraft other) {
        String text = one.text(column).strip();
        return text.equals(other.text(column).strip())
                && one.rows(column).equals(other.rows(column))
                && (text.isEmpty() && !isPart(column) || one.unit(column).equals(other.unit(column)));
    }

    private List<TypedDraft> rows(Column<?, ?> column, Part<?> part, Predicate<Line> takesTheirs) {
        List<TypedDraft> made = new ArrayList<>();
        int row = 0;
        for (MatchedRows.Row one : new MatchedRows(
                        names.apply(column), before.rows(column), theirs.rows(column), yours.rows(column))
                .all()) {
            row(column, part, row, one, takesTheirs).ifPresent(made::add);
            row++;
        }
        return made;
    }

    private Optional<TypedDraft> row(
            Column<?, ?> column, Part<?> part, int row, MatchedRows.Row one, Predicate<Line> takesTheirs) {
        PartWords said = partWords.apply(column);
        if (one.theirs().isPresent() && one.yours().isPresent()) {
            TypedDraft known = one.before().orElse(TypedDraft.BLANK);
            return Optional.of(cells(
                    said, part, row, known, one.theirs().get(), one.yours().get(), takesTheirs));
        }
        Line line = new Line(
                said.thing(row, one.yours().or(one::theirs).or(one::before).orElseThrow()),
                one.before().map(thing -> said(column, thing)).orElse(""),
                one.theirs().map(thing -> said(column, thing)).orElse(""),
                one.yours().map(thing -> said(column, thing)).orElse(""),
                Objects.equals(one.before(), one.yours()));
        return takesTheirs.test(line) ? one.theirs() : one.yours();
    }

    private static TypedDraft cells(
            PartWords said,
            Part<?> part,
            int row,
            TypedDraft known,
            TypedDraft theirs,
            TypedDraft yours,
            Predicate<Line> takesTheirs) {
        TypedDraft made = theirs.withChanges(known, yours);
        for (Column<?, ?> cell : part.columns().all()) {
            if (!isAlike(cell, theirs, yours)) {
                Line line = new Line(
                        said.cell(row, yours, cell),
                        said.said(known, cell),
                        said.said(theirs, cell),
                        said.said(yours, cell),
                        isAlike(cell, known, yours));
                TypedDraft from = takesTheirs.test(line) ? theirs : yours;
                made = made.with(cell, from.text(cell)).withUnit(cell, from.unit(cell));
            }
        }
        return made;
    }
}

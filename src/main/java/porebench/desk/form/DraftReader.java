package porebench.desk.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import porebench.method.Problem;
import porebench.quantity.Spelling;
import porebench.record.column.CellReader;
import porebench.record.column.Column;
import porebench.record.column.FixedUnit;
import porebench.record.column.NumberRange;
import porebench.record.column.Part;

/** Reads a draft; what is missing or cannot be is noted under its field, in the words of the form. */
public final class DraftReader implements CellReader {
    /** The largest whole number: nine digits, as in a file. */
    private static final int MOST = 999_999_999;

    private final TypedDraft draft;
    private final Numbers numbers;
    private final Function<Column<?, ?>, String> words;
    private final CellWords cellWords;
    private final String under;
    private final List<Problem> problems;

    /**
     * Reads a draft.
     *
     * @param words how a column is called in the form
     */
    public DraftReader(TypedDraft draft, Numbers numbers, Function<Column<?, ?>, String> words) {
        this(draft, numbers, words, (row, thing, cell) -> words.apply(cell));
    }

    /**
     * Reads a draft with parts.
     *
     * @param words how a column is called in the form
     * @param cellWords how a cell of a part is called
     */
    public DraftReader(TypedDraft draft, Numbers numbers, Function<Column<?, ?>, String> words, CellWords cellWords) {
        this(draft, numbers, words, cellWords, "", new ArrayList<>());
    }

    private DraftReader(
            TypedDraft draft,
            Numbers numbers,
            Function<Column<?, ?>, String> words,
            CellWords cellWords,
            String under,
            List<Problem> problems) {
        this.draft = draft;
        this.numbers = numbers;
        this.words = words;
        this.cellWords = cellWords;
        this.under = under;
        this.problems = problems;
    }

    /** How a cell of one of several things is called. */
    public interface CellWords {
        /**
         * Returns the words of a cell.
         *
         * @param row which of them it is, counted from 0
         * @param thing what is typed of it
         * @param cell the column
         */
        String say(int row, TypedDraft thing, Column<?, ?> cell);
    }

    /** Returns what was found to be wrong so far, each thing once. */
    public List<Problem> problems() {
        return problems.stream().distinct().toList();
    }

    /** Notes that a field must be filled in, if it is not. */
    public void require(Column<?, ?> column) {
        if (!states(column)) {
            problems.add(Problem.missing(under + column.field(), words.apply(column)));
        }
    }

    private void error(Column<?, ?> column, String code, Object... values) {
        problems.add(Problem.error(under + column.field(), code, values));
    }

    @Override
    public boolean states(Column<?, ?> column) {
        return !draft.text(column).isBlank();
    }

    /** Returns a text without the white space around it, which nobody means who types. */
    @Override
    public String text(Column<?, ?> column) {
        return draft.text(column).strip();
    }

    @Override
    public Optional<String> word(Column<?, ?> column) {
        require(column);
        return Optional.of(text(column)).filter(text -> !text.isEmpty());
    }

    @Override
    public Optional<BigDecimal> number(Column<?, ?> column, NumberRange range) {
        return word(column).flatMap(text -> number(column, text, range));
    }

    private Optional<BigDecimal> number(Column<?, ?> column, String text, NumberRange range) {
        Optional<FixedUnit> fixed = FixedUnit.of(column);
        Optional<FixedUnit.Other> other = fixed.flatMap(unit -> unit.other(unitOf(column, text)));
        UnaryOperator<BigDecimal> toKept =
                number -> other.map(unit -> fixed.get().kept(number, unit)).orElse(number);
        Optional<BigDecimal> typed = read(column, text, number -> range.holds(toKept.apply(number)));
        Optional<BigDecimal> kept = typed.map(toKept);
        if (typed.isEmpty()) {
            problems.add(fault(column, text));
        } else if (other.isEmpty()
                && range.lowInclusive().signum() == 0
                && typed.get().signum() < 0) {
            error(column, "form.negative", words.apply(column), typed.get());
        } else if (!range.holds(kept.get())) {
            // A bound that was worked out is said with the digits of such a number, not with those a kept one has.
            Function<BigDecimal, Object> toTyped = number -> other.<Object>map(
                            unit -> fixed.get().in(number, unit).doubleValue())
                    .orElse(number);
            error(
                    column,
                    "form.out-of-range",
                    words.apply(column),
                    typed.get(),
                    toTyped.apply(range.lowInclusive()),
                    toTyped.apply(range.highInclusive()));
        }
        return kept.filter(range::holds);
    }

    /** Returns the unit behind a number, or else the one chosen beside it. */
    private String unitOf(Column<?, ?> column, String text) {
        String behind = Spelling.halves(text).unit();
        return behind.isEmpty() ? draft.unit(column) : behind;
    }

    private Optional<BigDecimal> read(Column<?, ?> column, String text, Predicate<BigDecimal> canBe) {
        Spelling.Halves halves = Spelling.halves(text);
        boolean isUnit = column.unitsTyped().stream().anyMatch(unit -> Spelling.means(halves.unit(), unit));
        return numbers.parse(isUnit ? halves.number() : text, canBe);
    }

    /** Says which half of a quantity is wrong; of a number that has no unit, what is wrong with it. */
    private Problem fault(Column<?, ?> column, String text) {
        String field = under + column.field();
        String name = words.apply(column);
        Spelling.Halves halves = Spelling.halves(text);
        List<String> units = column.unitsTyped();
        if (units.isEmpty() || halves.unit().isEmpty()) {
            return numbers.fault(field, name, text);
        }
        return numbers.parse(halves.number())
                .map(number -> Problem.error(field, "form.not-its-unit", name, halves.unit(), String.join(", ", units))
                        .of(Problem.Kind.NOT_A_NUMBER))
                .orElseGet(() -> numbers.fault(field, name, halves.number()));
    }

    @Override
    public Optional<LocalDate> day(Column<?, ?> column) {
        return word(column).flatMap(text -> {
            Optional<LocalDate> day = Days.parse(text);
            if (day.isEmpty()) {
                error(column, "form.not-a-date", text);
            }
            return day;
        });
    }

    @Override
    public Optional<Boolean> yesNo(Column<?, ?> column) {
        return Optional.of(draft.isYes(column));
    }

    @Override
    public <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word) {
        return thing(draft.text(column), things, word);
    }

    @Override
    public <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol) {
        String carried = Spelling.halves(draft.text(column)).unit();
        return units.stream()
                .filter(unit -> Spelling.means(carried, symbol.apply(unit)))
                .findFirst()
                .or(() -> thing(draft.unit(column), units, symbol));
    }

    /** A box always has one of its things chosen. */
    private static <E> Optional<E> thing(String word, List<E> things, Function<E, String> wordOf) {
        return things.stream().filter(thing -> wordOf.apply(thing).equals(word)).findFirst();
    }

    @Override
    public boolean refuses(Column<?, ?> column, Problem problem) {
        problems.add(problem.under(under + column.field()));
        return true;
    }

    @Override
    public Optional<Integer> whole(Column<?, ?> column, int lowInclusive) {
        return word(column).flatMap(text -> {
            Optional<Integer> number = numbers.parse(text)
                    .filter(typed -> typed.stripTrailingZeros().scale() <= 0)
                    .filter(typed -> typed.compareTo(BigDecimal.valueOf(lowInclusive)) >= 0)
                    .filter(typed -> typed.compareTo(BigDecimal.valueOf(MOST)) <= 0)
                    .map(BigDecimal::intValue);
            if (number.isEmpty()) {
                error(column, "form.not-whole", words.apply(column), text, lowInclusive);
            }
            return number;
        });
    }

    @Override
    public Optional<LocalDateTime> moment(Column<?, ?> column) {
        return word(column).flatMap(text -> {
            Optional<LocalDateTime> moment = Days.parseMoment(text);
            if (moment.isEmpty()) {
                error(column, "form.not-a-moment", words.apply(column), text);
            }
            return moment.filter(read -> Days.checkYear(under + column.field(), read.toLocalDate())
                    .filter(impossible -> problems.add(impossible))
                    .isEmpty());
        });
    }

    /** Returns the things that could be read. */
    @Override
    public <P> Optional<List<P>> several(Column<?, ?> column, Part<P> part) {
        return Optional.of(List.copyOf(rows(column, part).values()));
    }

    /** Returns the things that could be read, each under the number of its row from 0; a row in which nothing stands is none. */
    public <P> SortedMap<Integer, P> rows(Column<?, ?> column, Part<P> part) {
        SortedMap<Integer, P> things = new TreeMap<>();
        List<TypedDraft> rows = draft.rows(column);
        for (int i = 0; i < rows.size(); i++) {
            int row = i;
            if (!rows.get(row).texts().isEmpty()) {
                DraftReader cells = new DraftReader(
                        rows.get(row),
                        numbers,
                        cell -> cellWords.say(row, rows.get(row), cell),
                        cellWords,
                        under + column.field() + "." + row + ".",
                        problems);
                part.columns().read(cells).ifPresent(thing -> things.put(row, thing));
            }
        }
        return things;
    }
}

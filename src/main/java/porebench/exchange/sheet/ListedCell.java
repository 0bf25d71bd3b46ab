package porebench.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.exchange.text.Escapes;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HeadedRow;
import porebench.method.Problem;
import porebench.record.column.CellReader;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;
import porebench.record.column.Part;

/**
 * Several things in one cell, a semicolon between them. Versions of other records stand as {@code S-01:1;S-02:2}; things whose
 * order counts stand with a bar between what each states, which of a name is one thing. A percent sign, semicolon or bar within is written {@code %25},
 * {@code %3B} or {@code %7C}.
 */
final class ListedCell {
    private static final Pattern ID_VERSION = Pattern.compile("(.*\\S.*):(\\d{1,9})", Pattern.DOTALL);

    private ListedCell() {}

    static <P> String written(Part<P> part, List<P> things) {
        List<String> names = part.columns().all().stream().map(Column::heading).toList();
        return things.stream()
                .map(thing -> {
                    SheetCells cells = new SheetCells();
                    part.columns().write(thing, cells);
                    return cells.under(names).stream()
                            .map(Escapes::written)
                            .collect(Collectors.joining(part.isOrdered() ? "|" : ":"));
                })
                .collect(Collectors.joining(";"));
    }

    /** Reads a cell; what is not written like this is noted as an error. */
    static <P> List<P> read(HeadedRow entry, String heading, Part<P> part) {
        List<P> things = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String all = entry.text(heading);
        for (String one : all.isBlank() ? new String[0] : all.split(";", -1)) {
            List<String> texts = texts(one, part);
            Optional<P> thing = texts.size() == part.columns().all().size()
                    ? part.columns().read(new Texts(part, texts))
                    : Optional.empty();
            boolean isTwice = !part.isOrdered() && !texts.isEmpty() && !seen.add(texts.get(0));
            if (thing.isEmpty() || isTwice) {
                if (part.columns().all().size() == 1) {
                    entry.error(heading, "csv.not-names", heading, Findings.quoted(one));
                } else if (part.isOrdered()) {
                    entry.error(heading, "csv.not-doubts", Findings.quoted(one));
                } else {
                    entry.error(heading, "csv.not-versions", heading, Findings.quoted(one));
                }
            }
            thing.filter(any -> !isTwice).ifPresent(things::add);
        }
        return things;
    }

    private static List<String> texts(String one, Part<?> part) {
        if (part.isOrdered()) {
            return Stream.of(one.split("\\|", -1)).map(Escapes::read).toList();
        }
        Matcher matcher = ID_VERSION.matcher(one.strip());
        return matcher.matches() ? List.of(Escapes.read(matcher.group(1)), matcher.group(2)) : List.of();
    }

    /**
     * What one of the things states, text by text.
     *
     * @param part its columns
     * @param texts their texts, in their order
     */
    private record Texts(Part<?> part, List<String> texts) implements CellReader {
        @Override
        public boolean states(Column<?, ?> column) {
            return !text(column).isBlank();
        }

        @Override
        public String text(Column<?, ?> column) {
            return texts.get(part.columns().all().indexOf(column));
        }

        @Override
        public Optional<String> word(Column<?, ?> column) {
            return Optional.of(text(column).strip()).filter(word -> !word.isEmpty());
        }

        @Override
        public Optional<Integer> whole(Column<?, ?> column, int lowInclusive) {
            return word(column)
                    .filter(digits -> digits.matches("\\d{1,9}"))
                    .map(Integer::valueOf)
                    .filter(number -> number >= lowInclusive);
        }

        @Override
        public boolean refuses(Column<?, ?> column, Problem problem) {
            return true;
        }

        @Override
        public Optional<BigDecimal> number(Column<?, ?> column, NumberRange range) {
            throw notListed(column);
        }

        @Override
        public Optional<LocalDate> day(Column<?, ?> column) {
            throw notListed(column);
        }

        @Override
        public Optional<LocalDateTime> moment(Column<?, ?> column) {
            throw notListed(column);
        }

        @Override
        public Optional<Boolean> yesNo(Column<?, ?> column) {
            throw notListed(column);
        }

        @Override
        public <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word) {
            throw notListed(column);
        }

        @Override
        public <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol) {
            throw notListed(column);
        }

        @Override
        public <P> Optional<List<P>> several(Column<?, ?> column, Part<P> several) {
            throw notListed(column);
        }

        private static IllegalArgumentException notListed(Column<?, ?> column) {
            return new IllegalArgumentException("column must be a text or a version, but is " + column.name());
        }
    }
}

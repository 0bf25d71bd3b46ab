package porebench.exchange.text;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import porebench.evidence.intake.SheetStyle;
import porebench.method.Dates;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.quantity.Spelling;
import porebench.record.column.NumberRange;

/**
 * One row under its heading. Reading a cell that is not as it must be notes the problem and gives nothing back; at the end
 * {@link #isGood()} tells whether a record can be made of the row.
 */
public final class HeadedRow {
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?[\\d.]*\\d,\\d+");
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}([,' \\u00A0\\u202F]\\d{3})+(\\.\\d*)?");

    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ISO_LOCAL_DATE.withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter DATE_TIME =
            DateTimeFormatter.ISO_LOCAL_DATE_TIME.withResolverStyle(ResolverStyle.STRICT);

    /** How far from UTC, behind a time. */
    private static final Pattern OFFSET = Pattern.compile("T.*([+-]\\d\\d:\\d\\d|Z)$");

    private static final Pattern DAY_ALONE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");

    private final CsvRows.Raw raw;
    private final Map<String, Integer> places;
    private final Findings findings;
    private final SheetStyle style;
    private final Set<String> refused = new HashSet<>();
    private final Set<List<Object>> noted = new HashSet<>();
    private String subject = "";
    private boolean good;

    HeadedRow(CsvRows.Raw raw, Map<String, Integer> places, Findings findings, SheetStyle style) {
        this.style = style;
        this.raw = raw;
        this.places = places;
        this.findings = findings;
        this.good = !raw.damaged();
        places.forEach((column, place) -> {
            if (good && hasControlCharacter(raw.fields().get(place - 1))) {
                error(column, "csv.control-character", column);
            }
        });
    }

    private static boolean hasControlCharacter(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r';
            if (control || c == '\u007F' || CsvRows.isUnreadable(c)) {
                return true;
            }
        }
        return false;
    }

    public int line() {
        return raw.line();
    }

    /** Returns whether nothing was wrong with any cell read so far. */
    public boolean isGood() {
        return good;
    }

    /** Returns whether the file has a column. */
    public boolean has(String column) {
        return places.containsKey(column);
    }

    /** Returns whether something was wrong with a cell. */
    public boolean isRefused(String column) {
        return refused.contains(column);
    }

    /** From here on messages name what the row is about besides the column. */
    public void isAbout(String name) {
        subject = Findings.quoted(name);
    }

    /** Notes an error in a cell, once however often it is read, and spoils the row. */
    public void error(String column, String code, Object... values) {
        good = false;
        refused.add(column);
        if (!noted.add(List.of(column, code, Arrays.asList(values)))) {
            return;
        }
        findings.error(line(), places.getOrDefault(column, 0), column, code, values);
    }

    /** Notes an error found elsewhere as one of a cell of this row, and spoils the row. */
    public void error(String column, Problem problem) {
        error(column, problem.code(), problem.values().toArray());
    }

    /** Returns the text of a cell as typed; empty text when it is empty, or the file has no such column. */
    public String text(String column) {
        Integer place = places.get(column);
        return place == null ? "" : HarmlessCell.read(raw.fields().get(place - 1));
    }

    /** Returns a cell as typed; empty when it is blank. */
    Optional<String> optionalText(String column) {
        return Optional.of(text(column)).filter(text -> !text.isBlank());
    }

    /** Returns a cell without white space around it, which must not be blank. */
    public Optional<String> word(String column) {
        Optional<String> word = optionalWord(column);
        if (word.isEmpty()) {
            missing(column);
        }
        return word;
    }

    /** Returns a cell without white space around it; empty when it is blank. */
    public Optional<String> optionalWord(String column) {
        return optionalText(column).map(String::strip);
    }

    private void missing(String column) {
        if (isRefused(column)) {
            return;
        }
        if (places.containsKey(column)) {
            error(column, "csv.required", named(column));
        } else {
            good = false;
        }
    }

    private String named(String column) {
        return subject.isEmpty() ? column : subject + ": " + column;
    }

    /** Returns a number within bounds, its digits as typed, which must be there. */
    public Optional<BigDecimal> number(String column, NumberRange bounds) {
        return word(column).flatMap(text -> parseNumber(column, text, bounds));
    }

    /**
     * Returns a number within bounds that may have its unit behind it in the cell; it must be there.
     *
     * @param units the symbols of the units it may have; none where it is a number alone
     */
    public Optional<BigDecimal> number(String column, List<String> units, NumberRange bounds) {
        return word(column).flatMap(text -> {
            Spelling.Halves halves = Spelling.halves(text);
            if (units.isEmpty() || halves.unit().isEmpty()) {
                return parseNumber(column, text, bounds);
            }
            boolean isUnit = units.stream().anyMatch(unit -> Spelling.means(halves.unit(), unit));
            if (!isUnit && plainNumber(halves.number()).isPresent()) {
                error(
                        column,
                        "csv.not-its-unit",
                        named(column),
                        Findings.quoted(halves.unit()),
                        String.join(", ", units));
                return Optional.empty();
            }
            return parseNumber(column, halves.number(), bounds);
        });
    }

    /** Returns the unit that a number has behind it in its cell; empty when it has none. */
    public <T> Optional<T> unitBehind(String column, List<T> units, Function<T, String> symbol) {
        String unit = Spelling.halves(text(column)).unit();
        return units.stream()
                .filter(each -> Spelling.means(unit, symbol.apply(each)))
                .findFirst();
    }

    /** Returns the one of some units whose symbol, or another spelling of it, stands in a cell; it must be there. */
    public <T> Optional<T> unit(String column, List<T> units, Function<T, String> symbol) {
        Optional<T> spelled = units.stream()
                .filter(each -> Spelling.means(text(column), symbol.apply(each)))
                .findFirst();
        return spelled.isPresent() ? spelled : choice(column, units, symbol);
    }

    private Optional<BigDecimal> parseNumber(String column, String text, NumberRange bounds) {
        Optional<BigDecimal> number = plainNumber(text);
        if (number.isEmpty()) {
            String fault = style.decimal() == SheetStyle.Decimal.COMMA && text.indexOf('.') >= 0
                    ? "csv.decimal-point"
                    : numberFault(text);
            error(column, fault, named(column), Findings.quoted(text));
        } else if (!bounds.holds(number.get())) {
            error(
                    column,
                    number.get().signum() < 0 && bounds.lowInclusive().signum() == 0
                            ? "csv.negative"
                            : "csv.out-of-range",
                    named(column),
                    Findings.quoted(text),
                    bounds.lowInclusive(),
                    bounds.highInclusive());
        }
        return number.filter(bounds::holds);
    }

    /** Returns the number of a text that is written as the numbers of the file are; empty when it is none. */
    Optional<BigDecimal> plainNumber(String text) {
        return style.decimal().parse(text);
    }

    /** Returns whether a text is a number, but not written as the formats ask for. */
    static boolean isWrittenOtherwise(String text) {
        return DECIMAL_COMMA.matcher(text).matches() || THOUSANDS.matcher(text).matches();
    }

    /** Returns the code of the message that says what is wrong with a text that is no number. */
    static String numberFault(String text) {
        if (DECIMAL_COMMA.matcher(text).matches()) {
            return "csv.decimal-comma";
        }
        return THOUSANDS.matcher(text).matches() ? "csv.thousands" : "csv.not-a-number";
    }

    /** Returns a whole number of at least a bound, which must be there. */
    public Optional<Integer> whole(String column, int lowInclusive) {
        return word(column).flatMap(text -> parseWhole(column, text, lowInclusive));
    }

    private Optional<Integer> parseWhole(String column, String text, int lowInclusive) {
        Optional<Integer> number =
                text.matches("\\d{1,9}") ? Optional.of(Integer.valueOf(text)) : Optional.<Integer>empty();
        Optional<Integer> fitting = number.filter(n -> n >= lowInclusive);
        if (fitting.isEmpty()) {
            error(column, "csv.not-whole", named(column), Findings.quoted(text), lowInclusive);
        }
        return fitting;
    }

    /** Returns the one of some choices whose word stands in a cell, letter case not mattering; it must be there. */
    public <T> Optional<T> choice(String column, List<T> choices, Function<T, String> word) {
        Optional<String> typed = word(column);
        for (T choice : choices) {
            if (typed.isPresent() && word.apply(choice).equalsIgnoreCase(typed.get())) {
                return Optional.of(choice);
            }
        }
        typed.ifPresent(text -> {
            String known = String.join(", ", choices.stream().map(word).toList());
            error(column, "csv.not-a-choice", named(column), Findings.quoted(text), known);
        });
        return Optional.empty();
    }

    /** Returns whether a cell says yes rather than no; it must say one of them. */
    public Optional<Boolean> yesNo(String column) {
        return choice(column, List.of(true, false), HeadedRow::yesNoWord);
    }

    /** Returns whether a cell says yes rather than no; empty when it is blank. */
    public Optional<Boolean> optionalYesNo(String column) {
        return optionalWord(column).isEmpty() ? Optional.empty() : yesNo(column);
    }

    public static String yesNoWord(boolean yes) {
        return yes ? "yes" : "no";
    }

    /** Returns a day, which must be there. */
    public Optional<LocalDate> date(String column) {
        return word(column).flatMap(text -> {
            try {
                LocalDate day = LocalDate.parse(text, DATE);
                checkYear(column, day, text);
                return Optional.of(day);
            } catch (DateTimeParseException notADate) {
                error(column, "csv.not-a-date", named(column), Findings.quoted(text));
                return Optional.empty();
            }
        });
    }

    /**
     * Returns a day and time by the laboratory's clock, which must be there; a day alone means its beginning. One that says how far it is
     * from UTC, as those of a phone do, is told by the laboratory's clock, to the second.
     */
    public Optional<LocalDateTime> dateTime(String column) {
        return word(column).flatMap(text -> {
            try {
                String full = DAY_ALONE.matcher(text).matches() ? text + "T00:00" : text.replaceFirst(" ", "T");
                LocalDateTime time = OFFSET.matcher(full).find() && style.zone().isPresent()
                        ? here(column, OffsetDateTime.parse(full), style.zone().get())
                        : LocalDateTime.parse(full, DATE_TIME);
                checkYear(column, time.toLocalDate(), text);
                return Optional.of(time);
            } catch (DateTimeParseException notATime) {
                error(column, "csv.not-a-time", named(column), Findings.quoted(text));
                return Optional.empty();
            }
        });
    }

    /** Returns the same moment by the laboratory's clock; that it was written by another is a doubt. */
    private LocalDateTime here(String column, OffsetDateTime written, ZoneId zone) {
        LocalDateTime here = written.atZoneSameInstant(zone).toLocalDateTime();
        if (!here.equals(written.toLocalDateTime())) {
            findings.warning(
                    raw.line(),
                    Objects.requireNonNull(places.get(column)),
                    column,
                    "csv.other-offset",
                    named(column),
                    Dates.minute(written.toLocalDateTime()),
                    Dates.minute(here));
        }
        return here;
    }

    private void checkYear(String column, LocalDate day, String text) {
        if (!Limit.YEAR.holds(day.getYear())) {
            error(
                    column,
                    "csv.year-impossible",
                    named(column),
                    Findings.quoted(text),
                    Limit.YEAR.lowInclusive(),
                    Limit.YEAR.highInclusive());
        }
    }
}

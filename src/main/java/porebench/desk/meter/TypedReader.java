package porebench.desk.meter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.desk.form.Numbers;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.quantity.Typed;
import porebench.quantity.Unit;

/** Reads what is typed in the form of a calibration and writes down what is no number or missing. */
final class TypedReader {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*([A-Za-z]+[0-9]?)\\s*");

    private final CalibrationDraft draft;
    private final Numbers numbers;
    private final Texts texts;
    private final List<Problem> problems = new ArrayList<>();

    TypedReader(CalibrationDraft draft, Numbers numbers, Texts texts) {
        this.draft = draft;
        this.numbers = numbers;
        this.texts = texts;
    }

    List<Problem> problems() {
        return problems;
    }

    /** Returns whether a field has a problem already. */
    boolean isWrong(String field) {
        return problems.stream().anyMatch(problem -> problem.field().equals(field));
    }

    Optional<BigDecimal> number(CalibrationField field) {
        return number(field.field(), name(field), draft.text(field));
    }

    Optional<BigDecimal> required(CalibrationField field) {
        missing(field);
        return number(field);
    }

    <Q> Optional<Typed<Q>> quantity(CalibrationField field, List<? extends Unit<Q>> units) {
        return quantity(field.field(), name(field), draft.text(field), draft.unit(field), units);
    }

    <Q> Optional<Typed<Q>> requiredQuantity(CalibrationField field, List<? extends Unit<Q>> units) {
        missing(field);
        return quantity(field, units);
    }

    void missing(CalibrationField field) {
        if (draft.text(field).isBlank()) {
            problems.add(Problem.missing(field.field(), name(field)));
        }
    }

    private String name(CalibrationField field) {
        return texts.get("name." + field.field());
    }

    /** Reads a cell of a table, which must be filled in. */
    Optional<BigDecimal> cell(String field, String name, String typed) {
        missing(field, name, typed);
        return number(field, name, typed);
    }

    /** Reads a cell of a table, which must be filled in and may carry a unit of its own. */
    <Q> Optional<Typed<Q>> cell(String field, String name, String typed, String unit, List<? extends Unit<Q>> units) {
        missing(field, name, typed);
        return quantity(field, name, typed, unit, units);
    }

    private void missing(String field, String name, String typed) {
        if (typed.isBlank()) {
            problems.add(Problem.missing(field, name));
        }
    }

    private Optional<BigDecimal> number(String field, String name, String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = numbers.parse(typed);
        if (number.isEmpty()) {
            problems.add(Problem.notANumber(field, name, typed.strip()));
        }
        return number;
    }

    private <Q> Optional<Typed<Q>> quantity(
            String field, String name, String typed, String unit, List<? extends Unit<Q>> units) {
        Matcher own = WITH_UNIT.matcher(typed);
        Optional<? extends Unit<Q>> ownUnit = own.matches() ? Typed.parseUnit(own.group(2), units) : Optional.empty();
        if (ownUnit.isPresent() && numbers.parse(own.group(1)).isPresent()) {
            return Optional.of(new Typed<>(numbers.parse(own.group(1)).get(), ownUnit.get()));
        }
        Unit<Q> chosen = Typed.parseUnit(unit, units).orElseThrow();
        return number(field, name, typed).map(number -> new Typed<>(number, chosen));
    }
}

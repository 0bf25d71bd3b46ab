package porebench.desk.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.Trial;

/** Reads a draft: its numbers, and what is not filled in or not readable. */
final class TrialReader {
    /** Degrees Fahrenheit to a tenth come back the same from degrees Celsius to a hundredth. */
    private static final int CELSIUS_DECIMALS = 2;

    private final TrialDraft draft;
    private final Numbers numbers;
    private final Texts texts;
    private final List<Problem> problems = new ArrayList<>();

    TrialReader(TrialDraft draft, Numbers numbers, Texts texts) {
        this.draft = draft;
        this.numbers = numbers;
        this.texts = texts;
    }

    /**
     * Reads the readings for a meter; what cannot be read is left empty.
     *
     * @param type the type of the meter, whose fields alone are read
     * @param bowl its bowl
     */
    Readings readings(MeterType type, Typed<Volume> bowl) {
        boolean typeB = type == MeterType.B;
        return new Readings(
                type,
                bowl,
                mass(TrialField.FINE),
                mass(TrialField.COARSE),
                atLeastZero(TrialField.SOAK),
                celsius(),
                typeB
                        ? number(TrialField.WITHDRAWN).map(w -> new Withdrawal(w, draft.withdrawnUnit()))
                        : Optional.empty(),
                typeB ? number(TrialField.GAUGE) : Optional.empty(),
                typeB ? Optional.empty() : number(TrialField.H1),
                typeB ? Optional.empty() : number(TrialField.H2),
                draft.leaked());
    }

    /**
     * Reads how high above the sea the trial was made, in m. The form of a Type B meter does not ask for it.
     *
     * @param before the trial that is corrected, which keeps what it has where the form does not ask
     */
    Optional<BigDecimal> elevation(MeterType type, Optional<Trial> before) {
        if (type == MeterType.B) {
            return before.flatMap(Trial::elevationMetres);
        }
        Optional<BigDecimal> metres = number(TrialField.ELEVATION);
        if (metres.isPresent() && !Limit.ELEVATION.holds(metres.get())) {
            error(
                    TrialField.ELEVATION,
                    "form.out-of-range",
                    metres.get(),
                    Limit.ELEVATION.lowInclusive(),
                    Limit.ELEVATION.highInclusive());
            return Optional.empty();
        }
        return metres;
    }

    /** Reads when the trial was made. */
    Optional<LocalDateTime> testedAt() {
        String text = required(TrialField.TESTED_AT);
        Optional<LocalDateTime> moment = Moments.parse(text);
        if (!text.isEmpty() && moment.isEmpty()) {
            error(TrialField.TESTED_AT, "form.not-a-moment", text);
        }
        Optional<Problem> impossible =
                moment.flatMap(read -> Days.checkYear(TrialField.TESTED_AT.problemField(), read.toLocalDate()));
        impossible.ifPresent(problems::add);
        return impossible.isPresent() ? Optional.empty() : moment;
    }

    /** Reads a text that must not be empty; empty is a problem and comes back as it is. */
    String required(TrialField field) {
        String text = draft.text(field).strip();
        if (text.isEmpty()) {
            error(field, "form.required");
        }
        return text;
    }

    /** Returns what was found to be wrong so far. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private Optional<Typed<Mass>> mass(TrialField field) {
        return atLeastZero(field).map(number -> new Typed<>(number, draft.massUnit()));
    }

    private Optional<BigDecimal> celsius() {
        return number(TrialField.WATER)
                .map(typed -> draft.waterUnit() == TemperatureUnit.CELSIUS
                        ? typed
                        : BigDecimal.valueOf(draft.waterUnit()
                                        .of(typed.doubleValue())
                                        .celsius())
                                .setScale(CELSIUS_DECIMALS, RoundingMode.HALF_EVEN));
    }

    private Optional<BigDecimal> atLeastZero(TrialField field) {
        Optional<BigDecimal> number = number(field);
        if (number.isPresent() && number.get().signum() < 0) {
            error(field, "form.negative", number.get());
            return Optional.empty();
        }
        return number;
    }

    private Optional<BigDecimal> number(TrialField field) {
        String text = draft.text(field).strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = numbers.parse(text);
        if (number.isEmpty()) {
            error(field, "form.not-a-number", text);
        }
        return number;
    }

    private void error(TrialField field, String code, Object... values) {
        List<Object> all = new ArrayList<>();
        all.add(texts.get(field.nameKey()));
        all.addAll(List.of(values));
        problems.add(Problem.error(field.problemField(), code, all.toArray()));
    }
}

package porebench.desk.trial;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Evidence;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.Meter;
import porebench.record.Trial;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;

/** What stands in the entry form before anybody types: a saved trial, or what the next one begins with. */
final class TrialDrafts {
    private static final TypedDraft WITHDRAWN_UNIT =
            TypedDraft.BLANK.withUnit(TrialColumns.WITHDRAWN, Withdrawal.Unit.MILLILITRE.symbol());

    private final DeskModel desk;

    TrialDrafts(DeskModel desk) {
        this.desk = desk;
    }

    /** Returns the name under which the draft of a mix's next trial is kept. */
    static String nameOfNew(MixId mix) {
        return "trial/" + mix.text();
    }

    /** Returns the name under which the draft of a correction is kept. */
    static String nameOfCorrection(MixId mix, String trialId) {
        return nameOfNew(mix) + '\t' + trialId;
    }

    /** Returns the name of the draft that a mix is found with again: the one of its next trial, or else of a correction. */
    String placeOf(MixId mix) {
        List<String> corrections = desk.unsaved().names(nameOfCorrection(mix, ""));
        boolean isNewBegun = desk.unsaved().find(nameOfNew(mix)).isPresent();
        return isNewBegun || corrections.isEmpty() ? nameOfNew(mix) : corrections.get(0);
    }

    /** Returns a saved trial as it would be typed, digits and units as they were, its two masses in one unit. */
    TypedDraft of(Trial trial) {
        Numbers numbers = desk.tools().numbers();
        MassUnit unit = trial.readings()
                .fine()
                .or(trial.readings()::coarse)
                .map(Typed::unit)
                .filter(MassUnit.class::isInstance)
                .map(MassUnit.class::cast)
                .orElse(MassUnit.GRAM);
        return TypedDraft.of(TrialColumns.ALL, trial, numbers)
                .orFrom(WITHDRAWN_UNIT)
                .withUnit(TrialColumns.FINE, unit.symbol())
                .with(
                        TrialColumns.COARSE,
                        trial.readings()
                                .coarse()
                                .map(mass -> Masses.typedIn(mass, unit, numbers))
                                .orElse(""));
    }

    /**
     * Returns the form of a new trial, with what stays the same from one trial to the next.
     *
     * @param meters the meters to choose from today
     */
    TypedDraft next(List<Meter> meters) {
        Optional<Trial> last = desk.evidence().flatMap(TrialDrafts::lastTrial);
        TypedDraft before = last.map(this::of)
                .orElse(WITHDRAWN_UNIT.withUnit(
                        TrialColumns.FINE, desk.units().benchMass().symbol()));
        return TypedDraft.BLANK
                .with(TrialColumns.ID, proposedId(last))
                .with(TrialColumns.TESTED_AT, now())
                .with(TrialColumns.OPERATOR, desk.person())
                .with(
                        TrialColumns.METER,
                        meters.stream()
                                .map(meter -> meter.id().text())
                                .filter(before.text(TrialColumns.METER)::equals)
                                .findFirst()
                                .or(() -> meters.stream()
                                        .findFirst()
                                        .map(meter -> meter.id().text()))
                                .orElse(""))
                .with(TrialColumns.ELEVATION, before.text(TrialColumns.ELEVATION))
                .withUnit(TrialColumns.FINE, massUnit(before.unit(TrialColumns.FINE)))
                .withUnit(TrialColumns.ELEVATION, before.unit(TrialColumns.ELEVATION))
                .withUnit(TrialColumns.WATER, desk.units().temperature().symbol())
                .withUnit(TrialColumns.WITHDRAWN, before.unit(TrialColumns.WITHDRAWN));
    }

    /** Returns the unit of the trial before where it is one of the units that the screen shows, and else theirs for the bench. */
    private String massUnit(String before) {
        MassUnit bench = desk.units().benchMass();
        Set<MassUnit> known = bench == MassUnit.POUND
                ? EnumSet.of(MassUnit.POUND, MassUnit.OUNCE)
                : EnumSet.of(MassUnit.GRAM, MassUnit.KILOGRAM);
        return known.stream()
                .map(MassUnit::symbol)
                .filter(before::equals)
                .findFirst()
                .orElse(bench.symbol());
    }

    /** Returns the moment as the laboratory's clock shows it. */
    String now() {
        return Days.show(desk.tools().clock().instant(), desk.tools().zone());
    }

    private String proposedId(Optional<Trial> last) {
        return desk.selected()
                .map(mixId -> desk.answer(new NextOf(mixId))
                        .orElseGet(() ->
                                NextTrialId.after(last.map(trial -> trial.id().text()), mixId.text(), name -> false)))
                .orElse("");
    }

    /** Asks for the name of the next trial of a mix. */
    private record NextOf(MixId mix) implements Question<String> {
        @Override
        public String answer(Reading seen) {
            Optional<Trial> last = seen.standing().evidence(mix).flatMap(TrialDrafts::lastTrial);
            return NextTrialId.after(
                    last.map(trial -> trial.id().text()),
                    mix.text(),
                    name -> seen.book().latest(Trial.class, name).isPresent());
        }
    }

    /** Returns whether the lab book has a trial of a name, as far as that was looked up: it refuses a second one in any case. */
    boolean isTaken(String trialId) {
        return desk.answer(new Question.One<>(Trial.class, trialId))
                .flatMap(found -> found)
                .isPresent();
    }

    private static Optional<Trial> lastTrial(Evidence evidence) {
        return evidence.determinations().stream()
                .flatMap(judged -> judged.trials().stream())
                .map(judged -> judged.trial().value())
                .max(Comparator.comparing(Trial::testedAt).thenComparing(Trial::id));
    }
}

package porebench.evidence.budget;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.MeterScale;
import porebench.evidence.MeterStory;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.budget.Budget;
import porebench.method.budget.DialCorrection;
import porebench.method.budget.FieldInputs;
import porebench.method.meter.DialCurve;
import porebench.record.id.MeterId;

/**
 * What the records say for the budget of a field reading.
 *
 * @param determination the determination of the factor
 * @param stories what is known of the meters, by id
 * @param profile whose scatter of field readings and whose limits hold
 * @param equipment by which the known air of dial checks was made
 * @param factor the budget of the factor
 */
public record FieldBudgetInputs(
        JudgedDetermination determination,
        Map<MeterId, MeterStory> stories,
        Profile profile,
        LaboratoryEquipment equipment,
        Budget factor) {
    /**
     * Returns what there is for a reading.
     *
     * @param readingPercent the reading, in % air
     * @param meterId the meter it was read on; empty when it is not one of the laboratory's
     * @param day on which it was read
     * @param factorPercent the factor as handed out, in % air
     * @param factorStepPercent the step to which it was rounded, in % air
     */
    public FieldInputs of(
            double readingPercent,
            Optional<MeterId> meterId,
            LocalDate day,
            double factorPercent,
            OptionalDouble factorStepPercent) {
        Optional<MeterStory> meter = meterId.flatMap(id -> Optional.ofNullable(stories.get(id)));
        Optional<DialCurve> curve = meter.flatMap(story -> story.dialCurveOn(day));
        boolean isOneDial = curve.isPresent() && meterId.isPresent() && isDialOfTrials(meterId.get(), curve.get());
        return new FieldInputs(
                readingPercent,
                meter.map(story -> story.meter().value().divisionPercent().doubleValue())
                        .orElse(MeterScale.USUAL_DIVISION_PERCENT),
                curve.map(known -> dial(readingPercent, known, meter.orElseThrow(), day)),
                profile.number(FigureName.FIELD_SCATTER),
                factorPercent,
                factor,
                isOneDial ? curve.orElseThrow().coefficient(readingPercent, meanReading()) : 0,
                isOneDial,
                factorStepPercent);
    }

    private DialCorrection dial(double readingPercent, DialCurve curve, MeterStory story, LocalDate day) {
        DialCurve.Corrected corrected = curve.trueOf(readingPercent);
        return new DialCorrection(
                corrected.correctionPercent(),
                corrected.standardUncertaintyPercent(),
                CalibrationDegrees.ofDial(curve, story),
                false,
                new DialMeasure(new MeasureLimits(profile, equipment))
                        .of(story, day, readingPercent, DialMeasure.Uses.NONE));
    }

    private List<JudgedTrial> trials() {
        return determination.trials().stream().filter(JudgedTrial::counts).toList();
    }

    /** Returns whether every trial was read on a meter, corrected along the same curve. */
    private boolean isDialOfTrials(MeterId meterId, DialCurve curve) {
        return trials().stream()
                .map(one -> one.trial().value())
                .allMatch(trial -> trial.meterId().equals(meterId)
                        && Optional.ofNullable(stories.get(meterId))
                                .flatMap(story ->
                                        story.dialCurveOn(trial.testedAt().toLocalDate()))
                                .filter(curve::equals)
                                .isPresent());
    }

    private double meanReading() {
        return trials().stream()
                .flatMap(one -> one.trial().value().readings().gaugePercent().stream())
                .mapToDouble(Number::doubleValue)
                .average()
                .orElse(0);
    }
}

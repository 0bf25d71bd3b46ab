package porebench.method.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Answer;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.quantity.Mass;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * A correction sample weighed from a stockpile that is wetter or drier today than the mix design says.
 *
 * <p>The dry matter in the bowl stays: with m its oven-dry mass and w today's total moisture over m, m (1 + w) is weighed, and
 * what this is heavier than the design's mass is water less to inundate with. The batch volume and the sample's share of it
 * stay as designed. Source: derived from the definitions of ASTM C127 and C128 (recalled).
 */
public final class TodaysMoisture {
    private TodaysMoisture() {}

    /**
     * Weighs a sample by today's moisture.
     *
     * @param designed the sample by the moisture of the mix design
     * @param moisturePercent today's total moisture of each component, in % of the oven-dry mass; empty leaves a component as
     *     designed
     * @return the sample of today, or a problem for each component under {@code moisture.<index>}
     * @throws IllegalArgumentException if there is not one entry a component
     */
    public static Answer<CorrectionSample> of(CorrectionSample designed, List<Optional<BigDecimal>> moisturePercent) {
        if (moisturePercent.size() != designed.components().size()) {
            throw new IllegalArgumentException("moisturePercent must have an entry a component, but is "
                    + moisturePercent + " for " + designed.components().size());
        }
        List<Problem> problems = new ArrayList<>();
        List<CorrectionSample.Component> components = new ArrayList<>();
        for (int index = 0; index < moisturePercent.size(); index++) {
            CorrectionSample.Component component = designed.components().get(index);
            Optional<BigDecimal> today = moisturePercent.get(index);
            components.add(today.isPresent() ? weighed(component, today.get(), index, problems) : component);
        }
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        double heavierKilograms = kilograms(components) - kilograms(designed.components());
        return Answer.of(
                new CorrectionSample(
                        components,
                        designed.batchVolume(),
                        designed.bowl(),
                        designed.oneThird(),
                        designed.inundation().flatMap(water -> lessWater(water, heavierKilograms, problems)),
                        designed.withdrawal()),
                problems);
    }

    private static CorrectionSample.Component weighed(
            CorrectionSample.Component component, BigDecimal moisture, int index, List<Problem> problems) {
        String field = "moisture." + index;
        if (!Limit.MOISTURE.holds(moisture)) {
            problems.add(Problem.error(
                    field, "mix.moisture-out-of-range", component.name(), moisture, Limit.MOISTURE.highInclusive()));
            return component;
        }
        if (component.ovenDryKilograms().isEmpty()) {
            problems.add(Problem.error(field, "mix.absorption-missing", component.name()));
            return component;
        }
        double dry = component.ovenDryKilograms().getAsDouble();
        return new CorrectionSample.Component(
                component.name(),
                component.source(),
                component.role(),
                new Mass(dry * (1 + moisture.doubleValue() / 100)),
                component.ovenDryKilograms(),
                component.passingShare());
    }

    /** Returns the water left to inundate with; not known when the design's own stock was already too wet for the bowl. */
    private static Optional<Volume> lessWater(Volume designed, double heavierKilograms, List<Problem> problems) {
        if (designed.cubicMetres() <= 0) {
            return Optional.empty();
        }
        Volume heavier = new Volume(heavierKilograms / Materials.WATER_KILOGRAMS_PER_CUBIC_METRE);
        if (heavier.compareTo(designed) > 0) {
            problems.add(Problem.warning(
                    "moisture",
                    "sample.wetter-than-room",
                    heavier.in(VolumeUnit.LITRE),
                    designed.in(VolumeUnit.LITRE)));
            return Optional.of(new Volume(0));
        }
        return Optional.of(designed.minus(heavier));
    }

    private static double kilograms(List<CorrectionSample.Component> components) {
        return components.stream()
                .mapToDouble(component -> component.mass().kilograms())
                .sum();
    }
}

package porebench.method.air;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Profile;
import porebench.quantity.Require;

/**
 * What a gauge reading means for a load: the table of the factor card.
 *
 * <p>A load passes when its reported air content lies within the target air and its tolerance, both limits included; the
 * reported value is compared, as a person does who reads it off the card.
 *
 * @param rows every reading of the table in rising order, one division apart
 * @param lowestPassing the lowest reading of the table at which the load passes, in % air; empty when none does
 * @param highestPassing the highest reading of the table at which the load passes, in % air; empty when none does
 */
public record PassWindow(List<Row> rows, Optional<BigDecimal> lowestPassing, Optional<BigDecimal> highestPassing) {
    public PassWindow {
        rows = List.copyOf(rows);
    }

    /**
     * One line of the table.
     *
     * @param reading the gauge reading, in % air
     * @param air the air content reported for it, in % air
     * @param passes whether the load passes
     * @param step the step to which that air is reported, in % air
     */
    public record Row(BigDecimal reading, BigDecimal air, boolean passes, BigDecimal step) {}

    /**
     * Computes the table for a mix.
     *
     * @param factor the factor in force, in % air, from -100 to 100
     * @param target the mix's target air, in % air
     * @param tolerance the tolerance on it, in % air, at least 0
     * @param division a division of the gauge, in % air, greater than 0 and at most 10
     * @param scaleTop the highest reading of the table, in % air, from 0 to 100
     * @param profile the rules of rounding
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static PassWindow of(
            BigDecimal factor,
            BigDecimal target,
            BigDecimal tolerance,
            BigDecimal division,
            BigDecimal scaleTop,
            Profile profile) {
        Require.within("factor", factor.doubleValue(), -100, 100);
        Require.atLeastZero("tolerance", tolerance.doubleValue());
        Require.positive("division", division.doubleValue());
        Require.within("division", division.doubleValue(), 0, 10);
        Require.within("scaleTop", scaleTop.doubleValue(), 0, 100);
        BigDecimal low = target.subtract(tolerance);
        BigDecimal high = target.add(tolerance);
        List<Row> rows = new ArrayList<>();
        for (BigDecimal reading = BigDecimal.ZERO.setScale(division.scale());
                reading.compareTo(scaleTop) <= 0;
                reading = reading.add(division)) {
            AirContent content =
                    AirContent.of(reading, factor, division, profile).value().orElseThrow();
            BigDecimal air = content.reported();
            boolean passes = air.compareTo(low) >= 0 && air.compareTo(high) <= 0;
            rows.add(new Row(reading, air, passes, content.rule().step()));
        }
        List<BigDecimal> passing =
                rows.stream().filter(Row::passes).map(Row::reading).toList();
        return passing.isEmpty()
                ? new PassWindow(rows, Optional.empty(), Optional.empty())
                : new PassWindow(rows, Optional.of(passing.get(0)), Optional.of(passing.get(passing.size() - 1)));
    }
}

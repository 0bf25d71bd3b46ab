package porebench.evidence.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Answer;
import porebench.method.Profile;
import porebench.method.air.AirContent;
import porebench.method.air.PassWindow;
import porebench.method.air.SievedAir;
import porebench.method.sample.Batch;
import porebench.method.sample.SievedVolumes;

/**
 * What the readings of a wet-sieved concrete mean for the full mixture and for the mortar.
 *
 * @param volumes the air-free volumes of the mix design, which spread the air
 * @param rows the readings of the card's table, in rising order; of those that mean less than no air there are none
 */
public record SievedAirs(SievedVolumes volumes, List<Row> rows) {
    public SievedAirs {
        rows = List.copyOf(rows);
    }

    /**
     * One reading.
     *
     * @param reading the gauge reading, in % air
     * @param sieved the air of the sieved concrete as reported, in %
     * @param fullMixture the air of the full mixture as reported, in %
     * @param mortar the air of the mortar as reported, in %
     * @param passes whether the load passes, by the air of the sieved concrete
     */
    public record Row(
            BigDecimal reading, BigDecimal sieved, BigDecimal fullMixture, BigDecimal mortar, boolean passes) {}

    /**
     * What one air of the sieved concrete means.
     *
     * @param fullMixturePercent the air of the full mixture as reported, in %
     * @param mortarPercent the air of the mortar as reported, in %
     */
    public record Spread(BigDecimal fullMixturePercent, BigDecimal mortarPercent) {}

    /**
     * Works them out of a mix's volumes. The air of the sieved concrete goes in as it is before it is rounded; each air is rounded
     * once, to the step of the profile.
     *
     * @param factor the factor, in % air
     * @param division a division of the meter's scale, in % air
     * @param window the card's table
     * @return empty where the concrete is not wet-sieved, or its design does not give the volumes
     */
    public static Optional<SievedAirs> of(
            Batch batch, BigDecimal factor, BigDecimal division, PassWindow window, Profile profile) {
        return SievedVolumes.of(batch).map(volumes -> {
            List<Row> rows = new ArrayList<>();
            for (PassWindow.Row row : window.rows()) {
                BigDecimal air = AirContent.of(row.reading(), factor, division, profile)
                        .value()
                        .orElseThrow()
                        .percent();
                spread(volumes, air, profile)
                        .map(spread -> new Row(
                                row.reading(),
                                row.air(),
                                spread.fullMixturePercent(),
                                spread.mortarPercent(),
                                row.passes()))
                        .ifPresent(rows::add);
            }
            return new SievedAirs(volumes, rows);
        });
    }

    /**
     * Spreads the air of the sieved concrete over the full mixture and over the mortar.
     *
     * @param sieved air of the wet-sieved concrete, in %, from 0 up to but not 100
     * @return both airs, not rounded, or what is wrong
     */
    public static Answer<SievedAir> air(SievedVolumes volumes, double sieved) {
        return SievedAir.of(sieved, volumes.passing(), volumes.total(), volumes.held(), volumes.mortar());
    }

    /**
     * Spreads the air of the sieved concrete, and reports each air by the step of the profile.
     *
     * @param sieved air of the wet-sieved concrete, not rounded, in %
     * @return empty where it is no air that concrete can have
     */
    public static Optional<Spread> spread(SievedVolumes volumes, BigDecimal sieved, Profile profile) {
        return air(volumes, sieved.doubleValue())
                .value()
                .map(airs -> new Spread(
                        profile.airRounding().round(BigDecimal.valueOf(airs.fullMixturePercent())),
                        profile.airRounding().round(BigDecimal.valueOf(airs.mortarPercent()))));
    }

    /** Returns the lowest reading at which the load passes. */
    public Optional<Row> lowest() {
        return rows.stream().filter(Row::passes).findFirst();
    }

    /** Returns the highest reading at which the load passes. */
    public Optional<Row> highest() {
        return rows.stream().filter(Row::passes).reduce((lower, higher) -> higher);
    }
}

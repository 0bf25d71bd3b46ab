package porebench.method.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Role;

/**
 * What is impossible or doubtful about a batch, constituent by constituent.
 *
 * <p>The limits on absorption and moisture are common practice, no source: they tell a slip of the pen from stone.
 */
final class BatchCheck {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Aggregate that takes up more than this, in %, is not relatively dense: the pressure method does not fit it. */
    private static final BigDecimal POROUS_ABOVE = BigDecimal.valueOf(5);
    /** No aggregate for concrete absorbs more than this, in %. */
    private static final BigDecimal HIGHEST_ABSORPTION = BigDecimal.valueOf(40);
    /** No aggregate on a bench holds more water than this, in %. */
    private static final BigDecimal HIGHEST_MOISTURE = BigDecimal.valueOf(60);

    private static final BigDecimal LOWEST_RELATIVE_DENSITY = new BigDecimal("0.5");
    private static final BigDecimal HIGHEST_RELATIVE_DENSITY = new BigDecimal("8");

    private final Batch batch;
    private final List<Problem> problems = new ArrayList<>();

    private BatchCheck(Batch batch) {
        this.batch = batch;
    }

    static List<Problem> problems(Batch batch) {
        BatchCheck check = new BatchCheck(batch);
        check.whole();
        for (int row = 0; row < batch.constituents().size(); row++) {
            check.constituent(batch.constituents().get(row), "constituents." + row + ".");
        }
        return check.problems;
    }

    private void whole() {
        BigDecimal air = batch.targetAirPercent();
        if (air.signum() < 0 || air.compareTo(BigDecimal.valueOf(30)) > 0) {
            problems.add(Problem.error("targetAir", "mix.target-air-out-of-range", air));
        }
        if (batch.constituents().stream().noneMatch(c -> c.role().isAggregate())) {
            problems.add(Problem.error("constituents", "mix.no-aggregate"));
        }
        if (batch.volume() instanceof BatchVolume.Stated stated
                && stated.volume().value().cubicMetres() <= 0) {
            problems.add(Problem.error(
                    "batchVolume", "mix.volume-not-positive", stated.volume().number()));
        }
        if (batch.volume() instanceof BatchVolume.FromDensity measured) {
            double density = measured.density().value().kilogramsPerCubicMetre();
            if (density < 1000 || density > 4500) {
                problems.add(Problem.error("density", "mix.density-out-of-range", density));
            }
        }
    }

    private void constituent(Constituent c, String field) {
        if (c.mass().number().signum() < 0) {
            problems.add(Problem.error(
                    field + "mass", "mix.mass-negative", c.name(), c.mass().toString()));
        } else if (c.mass().number().signum() == 0) {
            problems.add(Problem.warning(field + "mass", "mix.mass-zero", c.name()));
        }
        relativeDensity(c, field);
        BigDecimal retained = c.retainedPercent();
        if (retained.signum() < 0 || retained.compareTo(HUNDRED) > 0) {
            problems.add(Problem.error(field + "retained", "mix.retained-out-of-range", c.name(), retained));
        }
        if (c.role().isAggregate()) {
            moisture(c, field);
        } else if (c.state() != MoistureState.SSD && c.state() != MoistureState.STOCK) {
            problems.add(Problem.warning(field + "massState", "mix.state-not-aggregate", c.name()));
        }
    }

    private void relativeDensity(Constituent c, String field) {
        Optional<BigDecimal> density = c.relativeDensity();
        if (density.isEmpty()) {
            if (c.role() == Role.WATER) {
                return;
            }
            boolean needed = batch.volume() instanceof BatchVolume.FromConstituents || batch.wetSieved();
            problems.add(
                    needed
                            ? Problem.error(field + "relativeDensity", "mix.relative-density-missing", c.name())
                            : Problem.warning(
                                    field + "relativeDensity", "mix.relative-density-missing-unchecked", c.name()));
        } else if (density.get().compareTo(LOWEST_RELATIVE_DENSITY) < 0
                || density.get().compareTo(HIGHEST_RELATIVE_DENSITY) > 0) {
            problems.add(Problem.error(
                    field + "relativeDensity",
                    "mix.relative-density-out-of-range",
                    c.name(),
                    density.get(),
                    LOWEST_RELATIVE_DENSITY,
                    HIGHEST_RELATIVE_DENSITY));
        }
    }

    private void moisture(Constituent c, String field) {
        c.absorptionPercent().ifPresent(absorption -> absorption(c, field, absorption));
        c.moisturePercent().ifPresent(moisture -> {
            if (moisture.signum() < 0 || moisture.compareTo(HIGHEST_MOISTURE) > 0) {
                problems.add(Problem.error(
                        field + "moisture", "mix.moisture-out-of-range", c.name(), moisture, HIGHEST_MOISTURE));
            }
        });
        boolean moistureGiven = c.moisturePercent().isPresent();
        if (c.state() == MoistureState.STOCK && !moistureGiven) {
            problems.add(Problem.error(field + "moisture", "mix.stock-moisture-missing", c.name()));
        }
        if (c.absorptionPercent().isEmpty()) {
            boolean needed = c.state() == MoistureState.SSD ? moistureGiven : !moistureGiven;
            problems.add(
                    needed
                            ? Problem.error(field + "absorption", "mix.absorption-missing", c.name())
                            : Problem.warning(field + "absorption", "mix.absorption-missing-unchecked", c.name()));
        }
    }

    private void absorption(Constituent c, String field, BigDecimal absorption) {
        if (absorption.signum() < 0 || absorption.compareTo(HIGHEST_ABSORPTION) > 0) {
            problems.add(Problem.error(
                    field + "absorption", "mix.absorption-out-of-range", c.name(), absorption, HIGHEST_ABSORPTION));
        } else if (absorption.compareTo(POROUS_ABOVE) > 0) {
            problems.add(
                    Problem.warning(field + "absorption", "mix.porous-aggregate", c.name(), absorption, POROUS_ABOVE));
        }
    }
}

package porebench.method.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.method.Limit;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Role;

/**
 * What is impossible or doubtful about a batch, constituent by constituent.
 *
 * <p>What cannot be is refused by {@link Limit}. Unless another source stands beside them, the limits of what is doubtful are
 * common practice, no source.
 */
final class BatchCheck {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Aggregate of normal weight has a particle density above this, over water: EN 206, definitions (recalled). */
    private static final BigDecimal LIGHT_BELOW = new BigDecimal("2.0");
    /** Aggregate that takes up more than this, in %, is not relatively dense: the pressure method does not fit it. */
    private static final BigDecimal POROUS_ABOVE = BigDecimal.valueOf(5);

    private final Batch batch;
    private final boolean volumeIsComputed;
    private final List<Problem> problems = new ArrayList<>();

    private BatchCheck(Batch batch) {
        this.batch = batch;
        this.volumeIsComputed = batch.wetSieved() || batch.volume() instanceof BatchVolume.FromConstituents;
    }

    static List<Problem> problems(Batch batch) {
        BatchCheck check = new BatchCheck(batch);
        check.targetAir();
        check.aggregate();
        check.volume();
        for (int row = 0; row < batch.constituents().size(); row++) {
            check.constituent(batch.constituents().get(row), "constituents." + row + ".");
        }
        return check.problems;
    }

    private void targetAir() {
        BigDecimal air = batch.targetAirPercent();
        if (!Limit.TARGET_AIR.holds(air)) {
            problems.add(
                    Problem.error("targetAir", "mix.target-air-out-of-range", air, Limit.TARGET_AIR.highInclusive())
                            .of(Problem.Kind.OUT_OF_RANGE));
        }
    }

    private void aggregate() {
        List<Constituent> aggregates = batch.constituents().stream()
                .filter(c -> c.role().isAggregate() && c.mass().number().signum() != 0)
                .toList();
        if (aggregates.isEmpty()) {
            problems.add(Problem.error("constituents", "mix.no-aggregate"));
        } else if (batch.wetSieved() && aggregates.stream().allMatch(c -> new Materials(c).passingShare() == 0)) {
            problems.add(Problem.error("constituents", "mix.no-aggregate-passes"));
        }
    }

    private void volume() {
        if (batch.volume() instanceof BatchVolume.Stated stated) {
            double cubicMetres = stated.volume().value().cubicMetres();
            if (cubicMetres <= 0) {
                problems.add(Problem.error("batchVolume", "mix.volume-not-positive", stated.volume())
                        .of(Problem.Kind.OUT_OF_RANGE));
            } else if (!Limit.BATCH_VOLUME.holds(cubicMetres)) {
                problems.add(Problem.error("batchVolume", "mix.volume-impossible", stated.volume())
                        .of(Problem.Kind.OUT_OF_RANGE));
            }
        }
        if (batch.volume() instanceof BatchVolume.FromDensity measured) {
            double density = measured.density().value().kilogramsPerCubicMetre();
            if (!Limit.CONCRETE_DENSITY.holds(density)) {
                problems.add(Problem.error(
                                "density",
                                "mix.density-out-of-range",
                                density,
                                Limit.CONCRETE_DENSITY.lowInclusive(),
                                Limit.CONCRETE_DENSITY.highInclusive())
                        .of(Problem.Kind.OUT_OF_RANGE));
            }
        }
    }

    private void constituent(Constituent c, String field) {
        if (c.mass().number().signum() < 0) {
            problems.add(Problem.error(field + "mass", "mix.mass-negative", c.name(), c.mass()));
        } else if (c.mass().number().signum() == 0) {
            problems.add(Problem.warning(field + "mass", "mix.mass-zero", c.name()));
        }
        relativeDensity(c, field);
        retained(c, field);
        if (c.role().isAggregate()) {
            moisture(c, field);
            absorption(c, field);
        } else if (c.state() == MoistureState.OVEN_DRY) {
            problems.add(Problem.warning(field + "massState", "mix.state-not-aggregate", c.name()));
        }
    }

    private void relativeDensity(Constituent c, String field) {
        if (c.relativeDensity().isEmpty()) {
            if (c.role() == Role.WATER) {
                return;
            }
            problems.add(
                    volumeIsComputed
                            ? Problem.error(field + "relativeDensity", "mix.relative-density-missing", c.name())
                            : Problem.warning(
                                    field + "relativeDensity", "mix.relative-density-missing-unchecked", c.name()));
            return;
        }
        BigDecimal density = c.relativeDensity().get();
        if (!Limit.RELATIVE_DENSITY.holds(density)) {
            problems.add(Problem.error(
                    field + "relativeDensity",
                    "mix.relative-density-out-of-range",
                    c.name(),
                    density,
                    Limit.RELATIVE_DENSITY.lowInclusive(),
                    Limit.RELATIVE_DENSITY.highInclusive()));
        } else if (c.role().isAggregate() && density.compareTo(LIGHT_BELOW) < 0) {
            problems.add(
                    Problem.warning(field + "relativeDensity", "mix.light-aggregate", c.name(), density, LIGHT_BELOW));
        }
    }

    private void retained(Constituent c, String field) {
        BigDecimal retained = c.retainedPercent();
        if (retained.signum() < 0 || retained.compareTo(HUNDRED) > 0) {
            problems.add(Problem.error(field + "retained", "mix.retained-out-of-range", c.name(), retained));
        } else if (retained.signum() > 0 && c.role() != Role.COARSE) {
            problems.add(Problem.warning(field + "retained", "mix.retained-not-coarse", c.name(), retained));
        }
    }

    private void moisture(Constituent c, String field) {
        c.moisturePercent().ifPresent(moisture -> {
            if (!Limit.MOISTURE.holds(moisture)) {
                problems.add(Problem.error(
                        field + "moisture",
                        "mix.moisture-out-of-range",
                        c.name(),
                        moisture,
                        Limit.MOISTURE.highInclusive()));
            }
        });
        if (c.state() == MoistureState.STOCK && c.moisturePercent().isEmpty()) {
            problems.add(Problem.error(field + "moisture", "mix.stock-moisture-missing", c.name()));
        }
    }

    private void absorption(Constituent c, String field) {
        if (c.absorptionPercent().isEmpty()) {
            problems.add(absorptionMissing(c, field + "absorption"));
            return;
        }
        BigDecimal absorption = c.absorptionPercent().get();
        if (!Limit.ABSORPTION.holds(absorption)) {
            problems.add(Problem.error(
                    field + "absorption",
                    "mix.absorption-out-of-range",
                    c.name(),
                    absorption,
                    Limit.ABSORPTION.highInclusive()));
            return;
        }
        if (absorption.compareTo(POROUS_ABOVE) > 0) {
            problems.add(
                    Problem.warning(field + "absorption", "mix.porous-aggregate", c.name(), absorption, POROUS_ABOVE));
        }
        c.relativeDensity()
                .filter(density -> poreShare(c.state(), absorption, density) >= 1)
                .ifPresent(density -> problems.add(Problem.error(
                        field + "absorption", "mix.pores-exceed-particle", c.name(), absorption, density)));
    }

    /** Returns what the absence of the absorption means for this mass and this batch. */
    private Problem absorptionMissing(Constituent c, String field) {
        boolean moistureGiven = c.moisturePercent().isPresent();
        boolean needsMass = switch (c.state()) {
            case SSD -> moistureGiven;
            case OVEN_DRY -> !moistureGiven;
            case STOCK -> false;
        };
        if (needsMass) {
            return Problem.error(field, "mix.absorption-missing", c.name());
        }
        boolean needsVolume = switch (c.state()) {
            case SSD -> false;
            case OVEN_DRY -> batch.volume() instanceof BatchVolume.FromDensity;
            case STOCK -> volumeIsComputed;
        };
        if (needsVolume) {
            return Problem.error(field, "mix.absorption-missing-for-volume", c.name());
        }
        return c.state() == MoistureState.SSD
                ? Problem.warning(field, "mix.absorption-missing-no-oven-dry", c.name())
                : Problem.warning(field, "mix.absorption-missing-no-free-water", c.name());
    }

    /** Returns the volume of the water in the pores at SSD over that of the whole particle; below 1 in any stone. */
    private static double poreShare(MoistureState state, BigDecimal absorptionPercent, BigDecimal relativeDensity) {
        double absorption = absorptionPercent.doubleValue() / 100;
        double ovenDryDensity = state == MoistureState.OVEN_DRY
                ? relativeDensity.doubleValue()
                : relativeDensity.doubleValue() / (1 + absorption);
        return absorption * ovenDryDensity;
    }
}

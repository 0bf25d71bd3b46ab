package porebench.method.simulate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import porebench.method.BoyleTypeA;
import porebench.method.BoyleTypeB;
import porebench.method.DialScale;
import porebench.method.MeterType;
import porebench.method.Surroundings;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/** Makes one trial at a bench, with the luck of that trial. */
final class Operator {
    private static final double WATER_SCATTER_MILLILITRES = 3;
    private static final double WEIGHING_SCATTER_GRAMS = 2;
    private static final double USUAL_CELSIUS = 20;

    private static final double WRONG_LINE = 1.04;
    private static final double LEAST_LEAK = 0.03;
    private static final double LEAK_RANGE = 0.03;
    private static final double LEAST_FOAM_PERCENT = 0.35;
    private static final double FOAM_RANGE_PERCENT = 0.3;

    /** Pores fill as 1 - exp(-t / 12 min), and a dry start holds half as much air again: made up, no source. */
    private static final double SOAK_MINUTES = 12;

    private static final double SOAK_SHARE = 0.5;
    private static final int LEAST_SOAK_MINUTES = 2;
    private static final int SOAK_RANGE_MINUTES = 5;

    /** Where the level of a Type A meter comes to rest after the pressure is released, in % air. */
    private static final double REST_PERCENT = 0.2;

    /** Standard deviations of the gauge that keep its second reading off the foot of the scale. */
    private static final double STEADY = 4;

    private static final Pressure COLUMN_PRESSURE = Pressure.of(100, PressureUnit.KILOPASCAL);

    private final Bench bench;
    private final Chance luck;

    Operator(Bench bench, Chance luck) {
        this.bench = bench;
        this.luck = luck;
    }

    SimulatedTrial trial(int number) {
        boolean isTypeB = bench.gauge().type() == MeterType.B;
        long withdrawn = Math.max(0, Math.round(meantMillilitres() + luck.water() * WATER_SCATTER_MILLILITRES));
        double scatter = bench.gauge().scatterPercent();
        double rest = Math.max(REST_PERCENT, STEADY * scatter) + luck.rest() * scatter;
        return new SimulatedTrial(
                number,
                bench.gauge().type(),
                bench.gauge().bowl(),
                weighed(bench.filling().fine(), luck.fine()),
                weighed(bench.filling().coarse(), luck.coarse()),
                BigDecimal.valueOf(soaked()),
                BigDecimal.valueOf(USUAL_CELSIUS + luck.warmth()).setScale(1, RoundingMode.HALF_EVEN),
                isTypeB ? Optional.of(BigDecimal.valueOf(withdrawn)) : Optional.empty(),
                isTypeB ? Optional.of(written(dial(withdrawn))) : Optional.empty(),
                isTypeB ? Optional.empty() : Optional.of(written(rest + level())),
                isTypeB ? Optional.empty() : Optional.of(written(rest)));
    }

    private double bowlMillilitres() {
        return bench.gauge().bowl().value().in(VolumeUnit.MILLILITRE);
    }

    private double meantMillilitres() {
        return bowlMillilitres() * bench.filling().airPercent() / 100;
    }

    /** Returns what the dial shows with the withdrawn water's room and the pores full of air, before it is read. */
    private double dial(long withdrawnMillilitres) {
        DialScale scale = DialScale.usual(bench.gauge().bowl().value());
        BoyleTypeB made = BoyleTypeB.of(scale, Surroundings.at(0));
        double air = Math.max(0, 100 * withdrawnMillilitres / bowlMillilitres() + heldAir());
        double pumped = scale.initialGauge().pascals() * (has(Fault.LINE) ? WRONG_LINE : 1);
        Pressure left = made.withChamber(scale.chamber().times(bench.gauge().chamberRatio()))
                .withInitialGauge(new Pressure(pumped))
                .finalGauge(air);
        return bench.gauge().dial().readingOf(scale.readingAt(new Pressure(left.pascals() * kept())))
                + luck.hand() * bench.gauge().scatterPercent();
    }

    /** Returns by how much the level of a Type A meter falls, in % air, before it is read. */
    private double level() {
        Surroundings here = Surroundings.at(0);
        Pressure pressed = new Pressure(COLUMN_PRESSURE.pascals() * (has(Fault.LINE) ? WRONG_LINE : 1) * kept());
        BoyleTypeA right = BoyleTypeA.of(COLUMN_PRESSURE);
        double ratio = BoyleTypeA.of(pressed).lossRatio(here) / right.lossRatio(here);
        return heldAir() * ratio + luck.hand() * bench.gauge().scatterPercent();
    }

    /** Returns the air that is neither withdrawn water's room nor meant to be there, in % of the bowl. */
    private double heldAir() {
        double pores = bench.trueFactorPercent()
                * unfilled(soaked())
                / unfilled(bench.filling().soakMinutes());
        double foam = has(Fault.FOAM) ? LEAST_FOAM_PERCENT + luck.foam() * FOAM_RANGE_PERCENT : 0;
        return pores + luck.sample() * bench.operatorScatterPercent() + foam;
    }

    private double kept() {
        return has(Fault.LEAK) ? 1 - LEAST_LEAK - luck.leak() * LEAK_RANGE : 1;
    }

    private int soaked() {
        int hasty = LEAST_SOAK_MINUTES + (int) (luck.haste() * SOAK_RANGE_MINUTES);
        int right = bench.filling().soakMinutes();
        return has(Fault.SOAK) ? Math.min(hasty, right) : right;
    }

    private boolean has(Fault fault) {
        return bench.faults().contains(fault);
    }

    private static double unfilled(int minutes) {
        return 1 + SOAK_SHARE * Math.exp(-minutes / SOAK_MINUTES);
    }

    private static Typed<Mass> weighed(Mass meant, double luck) {
        long grams = Math.round(meant.in(MassUnit.GRAM) + luck * WEIGHING_SCATTER_GRAMS);
        return new Typed<>(BigDecimal.valueOf(Math.max(0, grams)), MassUnit.GRAM);
    }

    /** Returns the nearest division of the scale, which has no readings below 0. */
    private BigDecimal written(double shown) {
        BigDecimal division = bench.gauge().divisionPercent();
        BigDecimal divisions = BigDecimal.valueOf(Math.max(0, shown)).divide(division, 0, RoundingMode.HALF_EVEN);
        return divisions.multiply(division);
    }
}

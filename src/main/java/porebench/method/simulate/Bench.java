package porebench.method.simulate;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import porebench.method.MeterType;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Require;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * A simulated bench: an aggregate with a known true factor, a meter by the law of Boyle and Mariotte, and an operator.
 *
 * <p>The same bench and seed give the same trials on every machine. The operator's scatter is in the sample: how full of
 * air its pores are from trial to trial. The gauge's scatter is in the hand or the level; what is written down is the
 * nearest division of the scale. Both together should be about a division or more: an interval made of the scatter of
 * readings that all land on one division knows nothing of the rest of it.
 *
 * @param gauge the meter
 * @param filling what goes into its bowl
 * @param trueFactorPercent G, in % air, from 0 to 10
 * @param operatorScatterPercent standard deviation of the sample's pore air, in % air, at least 0
 * @param faults what goes wrong
 */
public record Bench(
        Gauge gauge, Filling filling, double trueFactorPercent, double operatorScatterPercent, Set<Fault> faults) {
    public Bench {
        Require.within("trueFactorPercent", trueFactorPercent, 0, 10);
        Require.atLeastZero("operatorScatterPercent", operatorScatterPercent);
        faults = Set.copyOf(faults);
    }

    /**
     * The meter of the bench.
     *
     * @param type the type of the meter
     * @param bowl the bowl volume, greater than 0
     * @param divisionPercent a division of the scale, in % air, greater than 0
     * @param scatterPercent standard deviation of a reading before it is rounded, in % air, at least 0
     * @param chamberRatio Type B: the chamber divided by the one the dial is graduated for, from 0.5 to 2; 1 is a true
     *     dial, less reads high
     * @param dial Type B: what the dial shows of what it would show without error, as its calibration found
     */
    public record Gauge(
            MeterType type,
            Typed<Volume> bowl,
            BigDecimal divisionPercent,
            double scatterPercent,
            double chamberRatio,
            Dial dial) {
        public Gauge {
            Require.positive("bowl", bowl.value().cubicMetres());
            Require.positive("divisionPercent", divisionPercent.doubleValue());
            Require.atLeastZero("scatterPercent", scatterPercent);
            Require.within("chamberRatio", chamberRatio, 0.5, 2);
        }

        /** Makes a meter whose dial has no other error than its chamber's. */
        public Gauge(
                MeterType type,
                Typed<Volume> bowl,
                BigDecimal divisionPercent,
                double scatterPercent,
                double chamberRatio) {
            this(type, bowl, divisionPercent, scatterPercent, chamberRatio, Dial.TRUE);
        }

        /** Returns an everyday meter: a 7.00 L bowl, divisions of 0.1 %, scatter 0.06 %, a true dial. */
        public static Gauge of(MeterType type) {
            return new Gauge(type, Typed.of("7.00", VolumeUnit.LITRE), new BigDecimal("0.1"), 0.06, 1);
        }
    }

    /**
     * What is weighed out for each trial.
     *
     * @param airPercent Type B: the water to withdraw, in % of the bowl, from 0 to 20
     * @param fine mass of fine aggregate, at least 0
     * @param coarse mass of coarse aggregate, at least 0
     * @param soakMinutes time to soak, in minutes, at least 0
     */
    public record Filling(double airPercent, Mass fine, Mass coarse, int soakMinutes) {
        /** An everyday sample: 5 % withdrawn, 4.50 kg of fine and 6.50 kg of coarse aggregate, 30 minutes of soaking. */
        public static final Filling USUAL =
                new Filling(5, Mass.of(4500, MassUnit.GRAM), Mass.of(6500, MassUnit.GRAM), 30);

        public Filling {
            Require.within("airPercent", airPercent, 0, 20);
            Require.atLeastZero("fine", fine.kilograms());
            Require.atLeastZero("coarse", coarse.kilograms());
            Require.atLeast("soakMinutes", soakMinutes, 0);
        }
    }

    /**
     * Returns an everyday bench without faults, its operator's scatter 0.08 %.
     *
     * @param type the type of the meter
     * @param trueFactorPercent G, in % air, from 0 to 10
     */
    public static Bench of(MeterType type, double trueFactorPercent) {
        return new Bench(Gauge.of(type), Filling.USUAL, trueFactorPercent, 0.08, Set.of());
    }

    /** Returns this bench with something going wrong as well. */
    public Bench with(Fault fault) {
        Set<Fault> more = EnumSet.of(fault);
        more.addAll(faults);
        return new Bench(gauge, filling, trueFactorPercent, operatorScatterPercent, more);
    }

    /** Returns this bench with another meter. */
    public Bench with(Gauge other) {
        return new Bench(other, filling, trueFactorPercent, operatorScatterPercent, faults);
    }

    /** Returns this bench with another sample. */
    public Bench with(Filling other) {
        return new Bench(gauge, other, trueFactorPercent, operatorScatterPercent, faults);
    }

    /** Returns this bench with another operator, scatter in % air. */
    Bench withOperatorScatter(double percent) {
        return new Bench(gauge, filling, trueFactorPercent, percent, faults);
    }

    /** Returns this bench with nothing going wrong. */
    public Bench withoutFaults() {
        return new Bench(gauge, filling, trueFactorPercent, operatorScatterPercent, Set.of());
    }

    /**
     * Makes some trials of which only some go wrong; the others are those of the same bench without faults.
     *
     * @param count how many, at least 1
     * @param seed the seed
     * @param faulty the numbers of the trials in which the faults are, counted from 1
     */
    public List<SimulatedTrial> trials(int count, long seed, Set<Integer> faulty) {
        List<SimulatedTrial> wrong = trials(count, seed);
        List<SimulatedTrial> right = withoutFaults().trials(count, seed);
        return IntStream.range(0, count)
                .mapToObj(index -> faulty.contains(index + 1) ? wrong.get(index) : right.get(index))
                .toList();
    }

    /**
     * Makes some trials.
     *
     * @param count how many, at least 1
     * @param seed the seed: the same one gives the same trials, and the first of many are those of few
     */
    public List<SimulatedTrial> trials(int count, long seed) {
        Require.atLeast("count", count, 1);
        // The algorithm of this class is part of its specification, so a seed means the same on every Java.
        Random random = new Random(seed);
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Operator(this, Chance.draw(random)).trial(number))
                .toList();
    }
}

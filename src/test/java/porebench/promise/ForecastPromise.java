package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import porebench.method.forecast.Bowlful;
import porebench.method.forecast.Forecast;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.TestedBowls;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

/** The interval of a forecast, in laboratories whose sources are known. */
final class ForecastPromise implements Promise {
    private static final Volume BOWL = new Volume(0.007);

    /** 0.1 % over the root of 12. */
    private static final double DIAL = 0.0288675;

    private static final int TRIALS = 3;
    private static final double DIVISION = 0.1;
    private static final double AT_LEAST = 0.94;
    private static final double AT_MOST = 0.96;

    /**
     * A laboratory: every mix has one of the sands and one of the stones, up to so many determinations of two to five trials.
     *
     * @param betweenMixes what is peculiar to a mix, as a standard deviation in % air
     * @param betweenDeterminations what is peculiar to a determination
     * @param betweenTrials what is peculiar to a trial, before it is read in divisions
     */
    private record Laboratory(
            int mixes,
            int sands,
            int stones,
            int determinations,
            double betweenMixes,
            double betweenDeterminations,
            double betweenTrials) {
        String name() {
            return String.format(
                    Locale.ROOT,
                    "%d mixes of %d sands and %d stones, up to %d determinations, scatter %s, %s, %s",
                    mixes,
                    sands,
                    stones,
                    determinations,
                    betweenMixes,
                    betweenDeterminations,
                    betweenTrials);
        }
    }

    private static final List<Laboratory> LABORATORIES = List.of(
            new Laboratory(9, 2, 3, 2, 0.04, 0.03, 0.05),
            new Laboratory(12, 2, 4, 1, 0.04, 0.03, 0.05),
            new Laboratory(12, 2, 4, 3, 0.08, 0.02, 0.05),
            new Laboratory(30, 3, 6, 3, 0.04, 0.03, 0.05),
            new Laboratory(100, 4, 8, 3, 0.03, 0.03, 0.05));

    /** Where mixes have nothing of their own the interval is wider than it need be: only that it holds is said. */
    private static final Laboratory QUIET = new Laboratory(12, 2, 4, 3, 0, 0.03, 0.05);

    @Override
    public String name() {
        return "The forecast of a new mix";
    }

    @Override
    public String sentence() {
        return "94 to 96 of 100 such intervals hold the determination that is then made";
    }

    @Override
    public int fewRuns() {
        return 24;
    }

    @Override
    public int manyRuns() {
        return 4000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        int[] all = new int[2];
        for (Laboratory laboratory : LABORATORIES) {
            int[] seen = count(laboratory, runs);
            all[0] += seen[0];
            all[1] += seen[1];
            cells.add(Cell.counted(laboratory.name(), Cell.Way.AT_LEAST, AT_LEAST, seen[0], seen[1]));
            cells.add(Cell.counted(laboratory.name(), Cell.Way.AT_MOST, AT_MOST, seen[0], seen[1]));
        }
        cells.add(Cell.counted("all of these", Cell.Way.AT_LEAST, AT_LEAST, all[0], all[1]));
        cells.add(Cell.counted("all of these", Cell.Way.AT_MOST, AT_MOST, all[0], all[1]));
        int[] quiet = count(QUIET, runs);
        cells.add(Cell.counted(QUIET.name(), Cell.Way.AT_LEAST, AT_LEAST, quiet[0], quiet[1]));
        return cells;
    }

    /** Returns how many intervals held the determination, of how many that were made. */
    private static int[] count(Laboratory laboratory, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_129L + laboratory.hashCode());
        int[] seen = new int[2];
        for (int run = 0; run < runs; run++) {
            Drawn drawn = new Drawn(laboratory, random);
            TestedBowls.Builder tested = new TestedBowls.Builder();
            for (int mix = 0; mix < laboratory.mixes(); mix++) {
                drawn.add(mix, tested);
            }
            Bowlful bowl = drawn.bowl(laboratory.mixes());
            double found = mean(drawn.trials(bowl, drawn.ofMix(), TRIALS));
            Optional<Forecast> forecast = PoreAir.of(tested.build(), DIAL)
                    .value()
                    .flatMap(air -> air.forecast(bowl, TRIALS).value());
            if (forecast.isPresent()) {
                seen[1]++;
                seen[0] += forecast.get().lowPercent() <= found
                                && found <= forecast.get().highPercent()
                        ? 1
                        : 0;
            }
        }
        return seen;
    }

    private static double mean(double... values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** One laboratory as it was drawn: the pore air of its sources, from 0.5 to 5 mL/kg. */
    private static final class Drawn {
        private final Laboratory laboratory;
        private final SplittableRandom random;
        private final double[] air;

        Drawn(Laboratory laboratory, SplittableRandom random) {
            this.laboratory = laboratory;
            this.random = random;
            this.air = random.doubles(laboratory.sands() + laboratory.stones(), 0.5, 5)
                    .toArray();
        }

        void add(int mix, TestedBowls.Builder tested) {
            Bowlful bowl = bowl(mix);
            double own = ofMix();
            int determinations = 1 + random.nextInt(laboratory.determinations());
            for (int number = 0; number < determinations; number++) {
                tested.add("M" + mix, "D" + number, bowl, trials(bowl, own, 2 + random.nextInt(4)));
            }
        }

        /** Returns the bowl of a mix: the first mixes take one source after the other, so that each is tested. */
        Bowlful bowl(int mix) {
            int sand = mix < laboratory.sands() ? mix : random.nextInt(laboratory.sands());
            int stone = mix < laboratory.stones() ? mix : random.nextInt(laboratory.stones());
            double kilograms = 11.5 + 1.5 * random.nextDouble();
            double share = 0.33 + 0.14 * random.nextDouble();
            return new Bowlful(
                    Map.of(
                            "S" + sand,
                            new Mass(kilograms * share),
                            "S" + (laboratory.sands() + stone),
                            new Mass(kilograms * (1 - share))),
                    BOWL);
        }

        double ofMix() {
            return laboratory.betweenMixes() * random.nextGaussian();
        }

        double[] trials(Bowlful bowl, double ofMix, int count) {
            double factor = ofMix + laboratory.betweenDeterminations() * random.nextGaussian();
            for (Map.Entry<String, Mass> one : bowl.masses().entrySet()) {
                factor += air[Integer.parseInt(one.getKey().substring(1))]
                        * one.getValue().kilograms()
                        / 70;
            }
            double[] read = new double[count];
            for (int trial = 0; trial < count; trial++) {
                double g = factor + laboratory.betweenTrials() * random.nextGaussian();
                read[trial] = DIVISION * Math.rint(g / DIVISION);
            }
            return read;
        }
    }
}

package porebench.promise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.method.trial.Scatter;
import porebench.method.trial.ScatterElsewhere;
import porebench.method.trial.StopRule;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.OtherSets;

/**
 * The stop rule: trials are made one at a time from the third on until it says that they are enough; the mean should then lie
 * within the profile's half-width of the true factor. Where the division of the scale decides, no confidence is stated, but
 * the cell counts all the same.
 */
final class StopPromise implements Promise {
    private static final double WANTED = Profiles.standard().number(FigureName.HALF_WIDTH);
    private static final int FIRST = 3;
    private static final int LAST = 200;
    private static final double ROUNDING = 1e-9;

    /** How the mixes of the laboratory scatter. */
    private enum Mixes {
        NONE("no other mix"),
        THREE("3 others that scatter alike"),
        ALIKE("8 others that scatter alike"),
        UNLIKE("8 others, 4 of them half as much"),
        TWICE("8 others, all half as much"),
        EARLIER("no other mix, 2 earlier determinations of this one", 2),
        EARLIER_ALIKE("8 others that scatter alike, 2 earlier determinations of this one", 2),
        EARLIER_TWICE("8 others, all half as much, 1 earlier determination of this one", 1);

        private final String words;

        /** Determinations of four trials that were made of this mix before. */
        private final int earlier;

        Mixes(String words) {
            this(words, 0);
        }

        Mixes(String words, int earlier) {
            this.words = words;
            this.earlier = earlier;
        }

        private double[] scatters(double sigma) {
            double[] others = new double[this == NONE || this == EARLIER ? 0 : this == THREE ? 3 : 8];
            for (int i = 0; i < others.length; i++) {
                boolean half = this == TWICE || this == EARLIER_TWICE || this == UNLIKE && i % 2 == 1;
                others[i] = half ? sigma / 2 : sigma;
            }
            return others;
        }
    }

    @Override
    public String name() {
        return "Enough trials";
    }

    @Override
    public String sentence() {
        return "in at least 90 of 100 determinations that the rule calls enough the mean lies within 0.05 % of the true factor";
    }

    @Override
    public int fewRuns() {
        return 40;
    }

    @Override
    public int manyRuns() {
        return 2000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (Mixes mixes : Mixes.values()) {
            for (double division : new double[] {0.01, 0.05, 0.1}) {
                for (double sigma : new double[] {0.02, 0.03, 0.05, 0.08, 0.1, 0.15}) {
                    cells.add(cell(mixes, new Dial(MeterType.B, division), sigma, runs));
                }
            }
        }
        for (double sigma : new double[] {0.02, 0.05, 0.1, 0.15}) {
            cells.add(cell(Mixes.ALIKE, new Dial(MeterType.A, 0.05), sigma, runs));
        }
        return cells;
    }

    private static Cell cell(Mixes mixes, Dial dial, double sigma, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_127L + mixes.ordinal() + Math.round(1000 * sigma));
        int ended = 0;
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            List<PooledDeviation> others = new ArrayList<>();
            for (double scatter : mixes.scatters(sigma)) {
                double[] four = dial.read(dial.anyFactor(random), scatter, 4, random);
                others.addAll(
                        PooledDeviation.of(List.of(Summary.of(four))).stream().toList());
            }
            List<Summary> before = new ArrayList<>();
            for (int i = 0; i < mixes.earlier; i++) {
                before.add(Summary.of(dial.read(dial.anyFactor(random), sigma, 4, random)));
            }
            ScatterElsewhere elsewhere = new ScatterElsewhere(PooledDeviation.of(before), OtherSets.of(others));
            double factor = dial.anyFactor(random);
            Optional<Summary> enough = untilEnough(dial, dial.read(factor, sigma, LAST, random), elsewhere);
            if (enough.isPresent()) {
                ended++;
                hits += Math.abs(enough.get().mean() - factor) <= WANTED + ROUNDING ? 1 : 0;
            }
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "Type %s, division %s, scatter %s, %s",
                        dial.type(),
                        dial.division(),
                        sigma,
                        mixes.words),
                Cell.Way.AT_LEAST,
                StopRule.STATED_CONFIDENCE,
                hits,
                ended);
    }

    private static Optional<Summary> untilEnough(Dial dial, double[] factors, ScatterElsewhere elsewhere) {
        for (int count = FIRST; count <= factors.length; count++) {
            Summary made = Summary.of(Arrays.copyOf(factors, count));
            double half = Scatter.of(made, dial.type(), dial.division(), elsewhere)
                    .orElseThrow()
                    .halfWidthPercent(count);
            if (half <= WANTED + ROUNDING) {
                return Optional.of(made);
            }
        }
        return Optional.empty();
    }
}

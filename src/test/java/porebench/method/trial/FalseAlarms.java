package porebench.method.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.method.simulate.HonestTrials;
import porebench.statistics.outlier.DixonTest;
import porebench.statistics.outlier.GrubbsPairTest;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.summary.AndersonDarlingTest;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.ShapiroWilkTest;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.OtherSets;

/**
 * Counts how often the Variability page is alarmed by faultless simulated trials.
 *
 * <p>The profile's repeatability is the standard deviation that the trials really have, the rounding of their readings in it;
 * the laboratory has eight other determinations of four trials. Beside it stands the page as textbooks would have it: every
 * test made wherever it is defined, each at 5 %, whatever the dial.
 *
 * @param runs how many determinations were looked at
 * @param byAlarm how many of them had each alarm
 * @param any how many had any
 * @param textbook how many had any by the textbook, of every fourth one
 */
record FalseAlarms(int runs, Map<Variability.Alarm, Integer> byAlarm, int any, int textbook) {
    private static final double SIGNIFICANCE = 0.05;
    private static final int LABORATORIES = 60;

    static FalseAlarms count(MeterType type, double scatter, int trials, int runs, long seed, boolean withTextbook) {
        HonestTrials stock = new HonestTrials(type, scatter, LABORATORIES * 32 + runs * trials, seed);
        List<ScatterElsewhere> laboratories = new ArrayList<>();
        for (int i = 0; i < LABORATORIES; i++) {
            laboratories.add(new ScatterElsewhere(
                    Optional.empty(),
                    OtherSets.of(stock.determinations(8, 4).stream()
                            .flatMap(factors -> PooledDeviation.of(List.of(Summary.of(factors))).stream())
                            .toList())));
        }
        Profile profile = profile(Math.hypot(scatter, Scatter.ofTheDial(type, HonestTrials.DIVISION)));
        Map<Variability.Alarm, Integer> byAlarm = new EnumMap<>(Variability.Alarm.class);
        int any = 0;
        int textbook = 0;
        for (int run = 0; run < runs; run++) {
            double[] factors = stock.next(trials);
            Set<Variability.Alarm> alarms = Variability.of(
                            factors, type, HonestTrials.DIVISION, profile, laboratories.get(run % LABORATORIES))
                    .orElseThrow()
                    .alarms();
            alarms.forEach(alarm -> byAlarm.merge(alarm, 1, Integer::sum));
            any += alarms.isEmpty() ? 0 : 1;
            // Two more integrations for each: a quarter of the runs is enough to see how bad it is.
            textbook += withTextbook && run % 4 == 0 && textbookAlarms(profile, factors) ? 1 : 0;
        }
        return new FalseAlarms(runs, byAlarm, any, textbook);
    }

    private static Profile profile(double repeatability) {
        String figure = String.format(Locale.ROOT, "%.4f", repeatability);
        return Profiles.standard()
                .copyAs("simulated", "Simulated")
                .with(FigureName.REPEATABILITY, new Figure(figure, "as simulated", Mark.LABORATORY));
    }

    private static boolean textbookAlarms(Profile profile, double... factors) {
        return !CriticalRange.check(
                                Summary.of(factors).range(), factors.length, profile.number(FigureName.REPEATABILITY))
                        .passes()
                || GrubbsTest.of(factors)
                        .filter(test -> test.p() < SIGNIFICANCE)
                        .isPresent()
                || GrubbsPairTest.of(factors)
                        .filter(test -> test.p() < SIGNIFICANCE)
                        .isPresent()
                || DixonTest.of(factors).filter(test -> test.p() < SIGNIFICANCE).isPresent()
                || AndersonDarlingTest.of(factors)
                        .filter(test -> test.p() < SIGNIFICANCE)
                        .isPresent()
                || ShapiroWilkTest.of(factors)
                        .filter(test -> test.p() < SIGNIFICANCE)
                        .isPresent();
    }

    double share() {
        return (double) any / runs;
    }

    double share(Variability.Alarm alarm) {
        return byAlarm.getOrDefault(alarm, 0) / (double) runs;
    }

    double textbookShare() {
        return 4.0 * textbook / runs;
    }

    /** Prints the table of the documentation; arguments: the type of meter, how many determinations in each case, scatters. */
    public static void main(String[] arguments) {
        MeterType type = MeterType.valueOf(arguments[0]);
        int runs = Integer.parseInt(arguments[1]);
        for (String scatter : List.of(arguments).subList(2, arguments.length)) {
            double divisions = Double.parseDouble(scatter);
            for (int trials : new int[] {2, 3, 4, 5, 6, 8, 10}) {
                // A seed of its own each, or all cases would share one run of luck.
                long seed = 20_261_125L + trials + Math.round(10_000 * divisions);
                FalseAlarms found = count(type, divisions * HonestTrials.DIVISION, trials, runs, seed, true);
                System.out.printf(
                        Locale.ROOT,
                        "%s %.2f %2d  any %5.1f %%  range %4.1f  laboratory %4.1f  outlier %4.1f  shape %4.1f"
                                + "  textbook %5.1f%n",
                        type,
                        divisions,
                        trials,
                        100 * found.share(),
                        100 * found.share(Variability.Alarm.RANGE),
                        100 * found.share(Variability.Alarm.LABORATORY),
                        100 * found.share(Variability.Alarm.OUTLIER),
                        100 * found.share(Variability.Alarm.SHAPE),
                        100 * found.textbookShare());
            }
        }
    }
}

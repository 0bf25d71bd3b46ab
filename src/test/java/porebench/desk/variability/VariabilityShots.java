package porebench.desk.variability;

import java.nio.file.Path;
import java.time.LocalDate;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Shots;
import porebench.desk.frame.Theme;

/**
 * Saves pictures of the Variability page for determinations of every kind, for people to look at.
 *
 * <p>Arguments: the folder for the pictures, light or dark, and the scale in %.
 */
final class VariabilityShots {
    private static final int WIDTH = 980;
    private static final int HEIGHT = 1500;
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private VariabilityShots() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Theme theme = Theme.ofSymbol(arguments[1]);
        int percent = Integer.parseInt(arguments[2]);
        Object[][] kinds = {
            {"one", "T", new String[] {"6.4"}},
            {"two", "T", new String[] {"6.4", "6.5"}},
            {"equal", "T", new String[] {"6.4", "6.4", "6.4", "6.4"}},
            {"ties", "T", new String[] {"6.4", "6.4", "6.5", "6.4", "6.5"}},
            {"agree", "T", new String[] {"6.3", "6.4", "6.4", "6.5"}},
            {"out", "T", new String[] {"6.4", "6.4", "6.5", "6.4", "6.5", "7.4"}},
            {"wide", "T", new String[] {"6.1", "6.4", "6.7"}},
            {
                "many",
                "North quarry repeat series of the second operator, trial ",
                ("6.4 6.5 6.4 6.3 6.5 6.4 6.6 6.4 6.5 6.3 6.4 6.2 6.4 6.5 6.4 6.3 6.5 6.4 6.6 6.4 6.5 6.3 6.4 7.9")
                        .split(" ")
            }
        };
        for (Object[] kind : kinds) {
            BenchBook bench = new BenchBook();
            for (int number = 2; number < 5; number++) {
                LocalDate before = DAY.minusDays(100L - number);
                bench.keep(BenchBook.determination(number, before));
                for (int i = 0; i < 5; i++) {
                    String gauge = i % 2 == 0 ? "6.4" : "6.5";
                    bench.keep(BenchBook.trial("U" + number + "-" + i, number, before, gauge));
                }
            }
            bench.keep(BenchBook.determination(1, DAY));
            String[] gauges = (String[]) kind[2];
            for (int i = 0; i < gauges.length; i++) {
                bench.keep(BenchBook.trial(kind[1].toString() + (i + 1), 1, DAY, gauges[i]));
            }
            EventThread.run(theme::apply);
            Shots.component(
                    theme,
                    WIDTH * percent / 100,
                    HEIGHT * percent / 100,
                    () -> new VariabilityPage(bench.select().desk, trial -> {}).component(),
                    folder.resolve(kind[0] + "-" + theme.symbol() + "-" + percent + ".png"));
        }
    }
}

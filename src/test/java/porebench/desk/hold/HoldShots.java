package porebench.desk.hold;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import porebench.desk.EventThread;
import porebench.desk.Shots;
import porebench.desk.frame.Theme;

/**
 * Saves pictures of the part that says whether a factor still holds, for people to look at.
 *
 * <p>Arguments: the folder for the pictures, light or dark, and the language.
 */
final class HoldShots {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 900;

    private HoldShots() {}

    private static double[] drawn(int before, int after, double shift) {
        SplittableRandom random = new SplittableRandom(7);
        double[] drawn = new double[before + after];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = Math.round(10 * (0.2 + 0.3 * random.nextGaussian() + (i < before ? 0 : shift))) / 10.0;
        }
        return drawn;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Theme theme = Theme.ofSymbol(arguments[1]);
        Locale locale = Locale.forLanguageTag(arguments[2]);
        Object[][] kinds = {{"none", new double[0]}, {"quiet", drawn(40, 0, 0)}, {"shifted", drawn(24, 12, 0.6)}};
        for (Object[] kind : kinds) {
            Path book = Files.createTempDirectory("hold-shots");
            EventThread.run(theme::apply);
            Shots.component(
                    theme,
                    WIDTH,
                    HEIGHT,
                    () -> {
                        HoldDesk made = new HoldDesk(book, locale);
                        made.read((double[]) kind[1]);
                        HoldSection section = new HoldSection(made.desk, mix -> {}, reading -> {});
                        section.show(Optional.empty());
                        return section.component();
                    },
                    folder.resolve("hold-" + kind[0] + "-" + theme.symbol() + "-" + arguments[2] + ".png"));
        }
    }
}

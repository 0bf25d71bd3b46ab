package porebench.desk.manual;

import java.awt.Frame;
import java.awt.Window;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import porebench.desk.EventThread;
import porebench.desk.Shots;
import porebench.desk.form.Tasks;
import porebench.desk.frame.Theme;
import porebench.method.Texts;

/**
 * Saves pictures of pages of the manual, for people to look at.
 *
 * <p>Arguments: the folder, light or dark, a language, then the names of pages, such as {@code doubts} or {@code formulas#air}.
 */
final class ManualShots {
    private ManualShots() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Theme theme = Theme.ofSymbol(arguments[1]);
        Locale locale = Locale.forLanguageTag(arguments[2]);
        EventThread.run(theme::apply);
        ManualModel model = new ManualModel(Manual.read(locale));
        ManualWindow window = EventThread.call(() -> new ManualWindow(
                model, Texts.of("porebench.desk.manual.manual", locale), Tasks.direct(), List.of(), new Frame()));
        for (int index = 3; index < arguments.length; index++) {
            String[] spot = arguments[index].split("#", 2);
            ManualModel.Spot place = new ManualModel.Spot(spot[0], spot.length > 1 ? spot[1] : "");
            EventThread.run(() -> window.show(place));
            EventThread.settle();
            Path picture = folder.resolve(
                    String.join("-", arguments[index].replace('#', '-'), theme.symbol(), arguments[2]) + ".png");
            EventThread.run(() -> Shots.save(window.frame().getRootPane(), picture));
        }
        EventThread.run(window::dispose);
        for (Window each : Window.getWindows()) {
            each.dispose();
        }
    }
}

package porebench.desk.frame;

import java.awt.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import porebench.desk.EventThread;
import porebench.desk.Page;
import porebench.desk.Shots;
import porebench.record.id.MixId;

/**
 * Saves a picture of every page and register of the window on the demo lab book, for people to look at.
 *
 * <p>Arguments: the folder for the pictures, light or dark, width, height, and the ids of the mixes to show. The window
 * speaks English where the property {@code porebench.shots.language} names no other language, such as {@code es-ES};
 * its type is as large as the property {@code porebench.shots.type} says, in %.
 */
final class WindowShots {
    private WindowShots() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Theme theme = Theme.ofSymbol(arguments[1]);
        Dimension size = new Dimension(Integer.parseInt(arguments[2]), Integer.parseInt(arguments[3]));
        Path books = Files.createTempDirectory("porebench-shots");
        Locale language = Locale.forLanguageTag(System.getProperty("porebench.shots.language", "en"));
        TypeSize type = TypeSize.ofSymbol(System.getProperty("porebench.shots.type", ""));
        EventThread.run(type::use);
        EventThread.run(theme::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(books, language));
        demo.memory.remember(size);
        demo.memory.remember(theme);
        WorkbenchFrame window = EventThread.call(() -> demo.open());
        for (int index = 4; index < arguments.length; index++) {
            MixId mix = new MixId(arguments[index]);
            EventThread.run(() -> window.openMix(mix));
            for (Page page : window.pages().all()) {
                EventThread.run(() -> window.turnTo(page));
                EventThread.settle();
                String name = arguments[index] + "-" + page.name() + "-" + theme.symbol() + ".png";
                EventThread.run(() -> Shots.save(window.frame().getRootPane(), folder.resolve(name)));
            }
        }
        EventThread.run(window::close);
    }
}

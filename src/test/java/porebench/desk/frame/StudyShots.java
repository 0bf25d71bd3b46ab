package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JScrollPane;
import porebench.desk.EventThread;
import porebench.desk.Page;
import porebench.desk.Shots;

/**
 * Saves pictures of the Studies screen on the demo lab book, for people to look at.
 *
 * <p>Arguments: the folder for the pictures, light or dark, width, height, and one file for each study but the first: layers,
 * operators, laboratories. The window speaks the language of the property {@code porebench.shots.language}, as that of
 * {@link WindowShots} does.
 */
final class StudyShots {
    private StudyShots() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        Theme theme = Theme.ofSymbol(arguments[1]);
        Path books = Files.createTempDirectory("porebench-shots");
        EventThread.run(theme::apply);
        Locale language = Locale.forLanguageTag(System.getProperty("porebench.shots.language", "en"));
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(books, language));
        demo.memory.remember(new Dimension(Integer.parseInt(arguments[2]), Integer.parseInt(arguments[3])));
        demo.memory.remember(theme);
        WorkbenchFrame window = EventThread.call(() -> demo.open());
        Page page = window.pages().named("studies").orElseThrow();
        EventThread.run(() -> window.turnTo(page));
        save(window, page, folder.resolve("book-" + theme.symbol()));
        String[] kinds = {"operators", "laboratories"};
        for (int i = 0; i < kinds.length; i++) {
            int index = i == 0 ? 0 : 2;
            EventThread.run(() -> ((JComboBox<?>) find(page.component(), "study.kind")).setSelectedIndex(index));
            save(window, page, folder.resolve(kinds[i] + "-empty-" + theme.symbol()));
            demo.asker.filesToOpen.add(Path.of(arguments[4 + i]));
            EventThread.run(() -> ((JButton) find(page.component(), "study.open")).doClick());
            save(window, page, folder.resolve(kinds[i] + "-" + theme.symbol()));
        }
        EventThread.run(window::close);
    }

    private static void save(WorkbenchFrame window, Page page, Path base) throws Exception {
        for (int part = 0; part < 2; part++) {
            int turned = part;
            EventThread.settle();
            EventThread.run(() -> {
                JScrollPane scroll = (JScrollPane) page.component();
                scroll.getVerticalScrollBar()
                        .setValue(turned * scroll.getVerticalScrollBar().getMaximum());
            });
            EventThread.settle();
            Path png = Path.of(base + "-" + part + ".png");
            EventThread.run(() -> Shots.save(window.frame().getRootPane(), png));
        }
    }

    static Component find(Container parent, String name) {
        for (Component child : parent.getComponents()) {
            if (name.equals(child.getName())) {
                return child;
            }
            if (child instanceof Container container) {
                Component found = find(container, name);
                if (found != container) {
                    return found;
                }
            }
        }
        return parent;
    }
}

package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.plaf.basic.BasicHTML;
import porebench.desk.EventThread;
import porebench.desk.Page;
import porebench.record.id.MixId;

/**
 * Finds labels and buttons of the window that have less room than their words: they would end in dots. Run as a program it lists them.
 *
 * <p>Arguments: language, width, height, and the ids of the mixes to look at.
 */
final class CutTexts {
    private CutTexts() {}

    public static void main(String[] arguments) throws Exception {
        Path books = Files.createTempDirectory("porebench-cut");
        Dimension size = new Dimension(Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]));
        Locale language = Locale.forLanguageTag(arguments[0]);
        EventThread.run(Theme.LIGHT::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(books, language));
        demo.memory.remember(size);
        WorkbenchFrame window = EventThread.call(() -> demo.open());
        for (int index = 3; index < arguments.length; index++) {
            in(window, new MixId(arguments[index])).forEach(System.out::println);
        }
        EventThread.run(window::close);
        System.exit(0);
    }

    /** Returns what is cut off on the pages of a mix and of the registers: page, name, words, pixels that are lacking. */
    static Set<String> in(WorkbenchFrame window, MixId mix) throws Exception {
        Set<String> cut = new TreeSet<>();
        EventThread.run(() -> window.openMix(mix));
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            EventThread.settle();
            EventThread.run(() -> of(window.frame().getRootPane()).forEach(text -> cut.add(page.name() + ": " + text)));
        }
        return cut;
    }

    private static List<String> of(Container container) {
        List<String> cut = new ArrayList<>();
        for (Component each : container.getComponents()) {
            if (!each.isVisible()) {
                continue;
            }
            if (each instanceof JLabel label) {
                look(label, label.getText(), cut);
            } else if (each instanceof AbstractButton button) {
                look(button, button.getText(), cut);
            }
            if (each instanceof Container inner) {
                cut.addAll(of(inner));
            }
        }
        return cut;
    }

    private static void look(JComponent component, String text, List<String> cut) {
        boolean isWrapped = component.getClientProperty(BasicHTML.propertyKey) != null;
        int lacking = component.getPreferredSize().width - component.getWidth();
        if (text != null
                && !text.isBlank()
                && !isWrapped
                && component.isShowing()
                && component.getWidth() > 0
                && lacking > 1) {
            cut.add(component.getName() + " \"" + text + "\" " + lacking);
        }
    }
}

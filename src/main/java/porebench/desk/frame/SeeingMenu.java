package porebench.desk.frame;

import java.awt.Component;
import java.util.HashSet;
import java.util.Set;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import porebench.desk.form.Commands;
import porebench.desk.form.Motion;
import porebench.method.Texts;

/** What a person chooses for the eyes beside the theme: how large the type is, and whether things may move. */
final class SeeingMenu {
    private SeeingMenu() {}

    /** Adds the choices to a menu. */
    static void addTo(JMenu menu, WorkbenchFrame window) {
        Texts texts = window.texts();
        JMenu sizes = named(new JMenu(), "menu.size", texts.get("menu.size"));
        ButtonGroup group = new ButtonGroup();
        Set<Character> letters = new HashSet<>();
        for (TypeSize size : TypeSize.values()) {
            JRadioButtonMenuItem item = named(
                    new JRadioButtonMenuItem(),
                    "menu.size." + size.symbol(),
                    lettered(texts.get("menu.size.percent", size.symbol()), letters));
            item.setSelected(window.memory().typeSize() == size);
            item.addActionListener(event -> size.show(window));
            group.add(item);
            sizes.add(item);
        }
        menu.add((Component) sizes);
        JCheckBoxMenuItem still = named(new JCheckBoxMenuItem(), "menu.still", texts.get("menu.still"));
        still.setSelected(window.memory().isStill());
        still.addActionListener(event -> {
            window.memory().rememberStill(still.isSelected());
            Motion.keepStill(still.isSelected());
        });
        menu.add((Component) still);
    }

    /** Gives a size the first of its digits that no size above it has as its letter. */
    private static String lettered(String words, Set<Character> taken) {
        for (int at = 0; at < words.length(); at++) {
            if (Character.isDigit(words.charAt(at)) && taken.add(words.charAt(at))) {
                return words.substring(0, at) + "&" + words.substring(at);
            }
        }
        return words;
    }

    private static <T extends JMenuItem> T named(T item, String name, String words) {
        item.setName(name);
        Commands.say(item, words);
        return item;
    }
}

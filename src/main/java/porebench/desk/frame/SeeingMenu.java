package porebench.desk.frame;

import java.awt.Component;
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
        for (TypeSize size : TypeSize.values()) {
            JRadioButtonMenuItem item = named(
                    new JRadioButtonMenuItem(),
                    "menu.size." + size.symbol(),
                    texts.get("menu.size.percent", size.symbol()));
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

    private static <T extends JMenuItem> T named(T item, String name, String words) {
        item.setName(name);
        Commands.say(item, words);
        return item;
    }
}

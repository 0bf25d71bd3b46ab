package porebench.desk.frame;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.jspecify.annotations.Nullable;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.desk.form.UnitSystem;
import porebench.desk.frame.book.BookCommands;
import porebench.desk.frame.book.BookWork;
import porebench.desk.frame.book.Turning;
import porebench.desk.frame.dialog.About;
import porebench.desk.frame.dialog.LaboratoryDialog;
import porebench.desk.frame.dialog.LogDialog;
import porebench.desk.frame.dialog.ProfileDialog;
import porebench.method.Texts;

/** The menu bar. */
final class FrameMenus {
    private final JMenuBar bar = new JMenuBar();
    private final WorkbenchFrame window;
    private final BookWork work;
    private final List<Action> forBook = new ArrayList<>();
    private final DeskModel desk;
    private final Texts texts;
    private final JMenu practice;
    private final Action undo;
    private final Action redo;
    private final EditCommands edit;

    FrameMenus(WorkbenchFrame window, BookWork work, Action newMix, Supplier<Optional<Path>> log) {
        this.window = window;
        this.work = work;
        this.desk = window.desk();
        this.texts = window.texts();
        undo = command("menu.undo.nothing", "ctrl Z", () -> window.current().undo());
        redo = command("menu.redo.nothing", "ctrl Y", () -> window.current().redo());
        edit = new EditCommands(window.content(), texts);
        bar.add(bookMenu());
        bar.add(editMenu(newMix));
        bar.add(viewMenu());
        practice = practiceMenu();
        bar.add(practice);
        bar.add(helpMenu(new LogDialog(desk.tools(), texts, log)));
        saveByEnter();
    }

    /** Ctrl and Enter saves on every page, from the keypad as well. */
    private void saveByEnter() {
        JComponent content = window.content();
        content.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK), "save page");
        content.getActionMap().put("save page", Commands.of("", () -> {
            if (desk.hasBook()) {
                window.current().save();
            }
        }));
    }

    JMenuBar bar() {
        return bar;
    }

    private Action command(String key, @Nullable String stroke, Runnable what) {
        return stroke == null ? Commands.of(texts.get(key), what) : Commands.of(texts.get(key), stroke, what);
    }

    private JMenu menu(String key) {
        JMenu menu = new JMenu(command(key, null, () -> {}));
        menu.setName(key);
        return menu;
    }

    private void add(JMenu menu, String key, @Nullable String stroke, Runnable what) {
        menu.add(command(key, stroke, what)).setName(key);
    }

    /** Adds a command that there is only while a lab book is open. */
    private void addForBook(JMenu menu, String key, @Nullable String stroke, Runnable what) {
        Action command = command(key, stroke, what);
        forBook.add(command);
        menu.add(command).setName(key);
    }

    /** Offers what can be done with a lab book only while one is open, and practice only in a training book. */
    void offer(boolean hasBook, boolean isTraining) {
        practice.setVisible(isTraining);
        forBook.forEach(command -> command.setEnabled(hasBook));
    }

    private JMenu bookMenu() {
        JMenu menu = menu("menu.book");
        BookCommands book = work.commands();
        Turning turning = work.turning();
        add(menu, "menu.new", "ctrl N", turning::begin);
        add(menu, "menu.training.new", null, turning::beginTraining);
        add(menu, "menu.open", "ctrl O", turning::open);
        JMenu recent = menu("menu.recent");
        menu.add(recent);
        onOpening(menu, () -> fill(recent), () -> {});
        add(menu, "menu.demo", null, turning::openDemo);
        menu.addSeparator();
        addForBook(menu, "menu.backup", "ctrl B", book::backUp);
        add(menu, "menu.restore", null, work.replacing()::restore);
        addForBook(menu, "menu.copy", "ctrl shift S", book::saveCopy);
        menu.addSeparator();
        addForBook(menu, "menu.import", "ctrl I", book::importCsv);
        addForBook(menu, "menu.export", "ctrl E", book::exportCsv);
        addForBook(menu, "menu.whole", null, book::exportWhole);
        add(menu, "menu.rebuild", null, work.replacing()::rebuild);
        addForBook(menu, "menu.verify", null, book::verify);
        menu.addSeparator();
        addForBook(menu, "menu.laboratory", null, () -> new LaboratoryDialog(desk, texts).ask(window.content()));
        addForBook(menu, "menu.profiles", null, () -> ProfileDialog.open(desk, texts, window.content()));
        menu.addSeparator();
        add(menu, "menu.quit", "ctrl Q", window::close);
        return menu;
    }

    private void fill(JMenu recent) {
        recent.removeAll();
        for (Path file : window.memory().recentFiles()) {
            JMenuItem item = recent.add(file.toString());
            item.addActionListener(event -> work.turning().open(file));
        }
        recent.setEnabled(recent.getItemCount() > 0);
    }

    private JMenu editMenu(Action newMix) {
        JMenu menu = menu("menu.edit");
        menu.add(undo).setName("menu.undo");
        menu.add(redo).setName("menu.redo");
        onOpening(menu, this::sayWhatWouldBeUndone, this::letTheKeysWork);
        menu.addSeparator();
        menu.add(edit.cut).setName("menu.cut");
        menu.add(edit.copy).setName("menu.copy-text");
        menu.add(edit.paste).setName("menu.paste");
        menu.addSeparator();
        JMenuItem mix = menu.add(newMix);
        mix.setName("menu.newMix");
        Commands.say(mix, texts.get("menu.newMix"));
        addForBook(menu, "menu.save", "ctrl S", () -> window.current().save());
        addForBook(menu, "menu.find", "ctrl F", window::find);
        forBook.addAll(List.of(newMix, undo, redo));
        return menu;
    }

    private void sayWhatWouldBeUndone() {
        sayWhat(undo, "menu.undo", window.current().undoLabel());
        sayWhat(redo, "menu.redo", window.current().redoLabel());
        edit.refresh();
    }

    /** With the menu closed nobody sees what is grey, and by a key it may have something to do by now. */
    private void letTheKeysWork() {
        undo.setEnabled(desk.hasBook());
        redo.setEnabled(desk.hasBook());
        edit.release();
    }

    private void sayWhat(Action action, String key, Optional<String> step) {
        action.setEnabled(step.isPresent());
        Commands.say(action, step.map(label -> texts.get(key, label)).orElse(texts.get(key + ".nothing")));
    }

    private JMenu viewMenu() {
        JMenu menu = menu("menu.view");
        addForBook(menu, "menu.bench", "F11", () -> window.pages().bench().open(window.content()));
        add(menu, "menu.balance", null, () -> window.pages().bench().askForBalance(window.content(), texts));
        menu.addSeparator();
        ButtonGroup units = new ButtonGroup();
        for (UnitSystem system : UnitSystem.values()) {
            choice(menu, units, "menu.units." + system.name(), desk.units() == system, on -> window.show(system));
        }
        menu.addSeparator();
        ButtonGroup themes = new ButtonGroup();
        for (Theme theme : Theme.values()) {
            choice(
                    menu,
                    themes,
                    "menu.theme." + theme.symbol(),
                    window.memory().theme() == theme,
                    on -> window.show(theme));
        }
        SeeingMenu.addTo(menu, window);
        menu.add(languageMenu());
        menu.addSeparator();
        add(menu, "menu.person", null, this::changePerson);
        return menu;
    }

    private JMenu languageMenu() {
        JMenu menu = menu("menu.language");
        ButtonGroup languages = new ButtonGroup();
        for (Language language : Language.values()) {
            choice(
                    menu,
                    languages,
                    "menu.language." + language.symbol(),
                    window.memory().language() == language,
                    on -> changeLanguage(language));
        }
        return menu;
    }

    /** Remembers the language and makes the window anew in it; where that is impossible, it shows the next time. */
    private void changeLanguage(Language language) {
        window.memory().remember(language);
        window.anew()
                .ifPresentOrElse(
                        Runnable::run,
                        () -> desk.tools()
                                .asker()
                                .tell(window.content(), texts.get("language.title"), texts.get("language.next-start")));
    }

    private void choice(JMenu menu, ButtonGroup group, String key, boolean isOn, Consumer<Boolean> what) {
        JRadioButtonMenuItem item = new JRadioButtonMenuItem(command(key, null, () -> what.accept(true)));
        item.setName(key);
        item.setSelected(isOn);
        group.add(item);
        menu.add(item);
    }

    /** Asks anew who works here; taken back, the person before goes on. */
    private void changePerson() {
        String before = desk.person();
        desk.setPerson("");
        if (desk.tools().asker().person(window.content()).isEmpty()) {
            desk.setPerson(before);
        }
    }

    private JMenu practiceMenu() {
        JMenu menu = menu("menu.practice");
        addForBook(menu, "menu.practice.simulate", "ctrl T", work.practice()::simulate);
        addForBook(menu, "menu.practice.planted", null, work.practice()::tellPlanted);
        return menu;
    }

    private JMenu helpMenu(LogDialog log) {
        JMenu menu = menu("menu.help");
        About about = new About(texts);
        ManualDoor manual = new ManualDoor(window);
        add(menu, "menu.manual.here", "F1", manual::openHere);
        add(menu, "menu.manual", null, manual::open);
        menu.addSeparator();
        addForBook(menu, "menu.first-steps", null, window::openFirstSteps);
        add(menu, "menu.steps", null, () -> about.showSteps(window.content()));
        add(menu, "menu.keys", "ctrl F1", () -> about.showKeys(window.content()));
        add(menu, "menu.words", null, () -> about.showWords(window.content()));
        menu.addSeparator();
        add(menu, "menu.cautions", "shift F1", () -> about.showCautions(window.content()));
        add(menu, "menu.log", null, () -> log.show(window.content()));
        add(menu, "menu.about", null, () -> about.showAbout(window.content()));
        return menu;
    }

    private static void onOpening(JMenu menu, Runnable opened, Runnable closed) {
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                opened.run();
            }

            @Override
            public void menuDeselected(MenuEvent event) {
                closed.run();
            }

            @Override
            public void menuCanceled(MenuEvent event) {
                closed.run();
            }
        });
    }
}

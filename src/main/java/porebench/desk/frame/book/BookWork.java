package porebench.desk.frame.book;

import java.util.function.Consumer;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.method.Texts;
import porebench.record.id.TrialId;

/**
 * All that can be done with lab books as a whole.
 *
 * @param commands copying, checking, bringing in and out
 * @param turning turning to another lab book
 * @param replacing putting another lab book in a place
 * @param practice simulating trials in a training book
 */
public record BookWork(BookCommands commands, Turning turning, Replacing replacing, PracticeCommands practice) {
    /**
     * Makes it.
     *
     * @param over what dialogs stand over
     * @param leaving asks about unsaved drafts, and goes on when the window may turn
     * @param window hears how it went
     * @param openTrial turns the window to a trial
     */
    public static BookWork of(
            DeskModel desk,
            Texts texts,
            JComponent over,
            InventedBooks invented,
            Consumer<Runnable> leaving,
            Turning.Window window,
            Consumer<TrialId> openTrial) {
        Turning turning = new Turning(desk, texts, over, invented, leaving, window);
        Importing importing = new Importing(desk, texts, over, turning);
        FileDrop.on(over, importing::dropped);
        return new BookWork(
                new BookCommands(desk, texts, over, turning, importing),
                turning,
                new Replacing(desk, texts, over, turning),
                new PracticeCommands(desk, texts, over, turning, openTrial));
    }

    /** Offers on the page without a lab book what can be done there. */
    public void offer(NoBookPage page, Texts texts) {
        page.addForDemo(
                "noBook.demoAnew",
                Commands.of(texts.get("no-book.demo-anew.action"), replacing::demoAnew),
                texts.get("no-book.demo-anew"));
        offer(page, texts, "open", "menu.open", turning::open);
        offer(page, texts, "new", "menu.new", turning::begin);
        offer(page, texts, "restore", "menu.restore", replacing::restore);
        offer(page, texts, "rebuild", "menu.rebuild", replacing::rebuild);
        offer(page, texts, "training", "menu.training.new", turning::beginTraining);
        offer(page, texts, "demo", "menu.demo", turning::openDemo);
    }

    private static void offer(NoBookPage page, Texts texts, String name, String key, Runnable doing) {
        page.add("noBook." + name, Commands.of(texts.get(key), doing), texts.get("no-book." + name));
    }
}

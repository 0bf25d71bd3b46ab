package porebench.desk.frame;

import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import porebench.desk.DeskModel;
import porebench.desk.frame.book.BookWork;
import porebench.desk.frame.book.WarningBar;
import porebench.desk.frame.dialog.TrainingBand;
import porebench.desk.frame.start.FirstStepsBar;
import porebench.desk.frame.start.FirstStepsModel;
import porebench.method.Texts;

/**
 * What stands across the window on every page: over it that its lab book is for training or the invented demo; below it, where what
 * comes and goes moves no field, what is to be known of the lab book and the way through its first steps.
 */
final class Bands {
    private final JPanel above = new JPanel(new BorderLayout());
    private final TrainingBand training;
    private final TrainingBand demo;
    private final WarningBar warnings;
    private final FirstStepsModel firstSteps;
    private final FirstStepsBar steps;
    private final WorkbenchFrame window;

    Bands(WorkbenchFrame window, BookWork work) {
        this.window = window;
        DeskModel desk = window.desk();
        Texts texts = window.texts();
        training = TrainingBand.ofTraining(texts);
        demo = TrainingBand.ofDemo(texts);
        warnings = new WarningBar(desk, texts, work.turning(), work.replacing());
        firstSteps = new FirstStepsModel(desk, window.memory().settings());
        window.pages().bench().inventedBecause(this::invented);
        steps = new FirstStepsBar(firstSteps, texts, this::openFirstSteps, new Leading(window)::go);
        above.add(training, BorderLayout.NORTH);
        above.add(demo, BorderLayout.CENTER);
    }

    /** Returns what stands over the pages. */
    JComponent above() {
        return above;
    }

    /** Returns what stands below the pages, down to the strip at the edge of the window. */
    JComponent below(JComponent strip) {
        JPanel below = new JPanel(new BorderLayout());
        below.add(steps.component(), BorderLayout.NORTH);
        below.add(warnings.component(), BorderLayout.CENTER);
        below.add(strip, BorderLayout.SOUTH);
        return below;
    }

    /** Turns to the list of first steps, also where it was put away. */
    void openFirstSteps() {
        firstSteps.putAway(false);
        window.turnTo(window.pages().first());
    }

    /** Says why nothing in the lab book was measured; empty text where it is real. */
    private String invented() {
        Texts texts = window.texts();
        boolean isTraining = window.desk().isTraining();
        String word = isTraining ? texts.get("training.word") : window.desk().isDemo() ? texts.get("demo.word") : "";
        return word.isEmpty() ? "" : word + ". " + texts.get(isTraining ? "training.why" : "demo.why");
    }

    void refresh() {
        boolean isTraining = window.desk().isTraining();
        training.setVisible(isTraining);
        demo.setVisible(window.desk().isDemo());
        TrainingBand.mark(window.content(), isTraining);
        warnings.refresh();
        steps.refresh(window.current() == window.pages().first());
    }
}

package porebench.desk.meter;

import javax.swing.Action;
import porebench.desk.form.Commands;
import porebench.method.Texts;

/** What can be done on the page of a meter, each with its words and when it can be done. */
final class MeterActions {
    final Action back;
    final Action begin;
    final Action correct;
    final Action save;
    final Action drop;

    private final MeterModel model;
    private final Texts texts;

    /**
     * Makes the actions.
     *
     * @param page does what needs a dialog or another page
     */
    MeterActions(MeterModel model, Doing page) {
        this.model = model;
        this.texts = model.texts();
        back = Commands.of(texts.get("action.back"), page::back);
        begin = Commands.of(texts.get("action.begin"), page::begin);
        correct = Commands.of(texts.get("action.correct"), page::correct);
        save = Commands.of(texts.get("action.save.new"), page::save);
        drop = Commands.of(texts.get("action.drop"), page::drop);
    }

    /** What needs a dialog or another page. */
    interface Doing {
        void back();

        void begin();

        void correct();

        void save();

        void drop();
    }

    /** Offers what can be done now. */
    void refresh() {
        CalibrationModel entry = model.entry();
        begin.setEnabled(model.story().isPresent());
        correct.setEnabled(model.chosen().isPresent());
        save.setEnabled(
                entry.isOpen() && (entry.base().isEmpty() || entry.history().isChanged()));
        Commands.say(
                save,
                entry.base()
                        .map(version -> texts.get("action.save.version", Integer.toString(version.number() + 1)))
                        .orElseGet(() -> texts.get("action.save.new")));
    }
}

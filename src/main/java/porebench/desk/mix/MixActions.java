package porebench.desk.mix;

import javax.swing.Action;
import porebench.desk.form.Commands;
import porebench.method.Texts;

/** What can be done on the mix design page, each with its words and when it can be done. */
final class MixActions {
    final Action begin;
    final Action save;
    final Action revert;
    final Action addRow;
    final Action removeRow;
    final Action moveUp;
    final Action moveDown;

    private final MixModel model;
    private final Texts texts;

    /**
     * Makes the actions.
     *
     * @param page does what needs a dialog
     * @param rows does what needs to know the selected row
     */
    MixActions(MixModel model, Doing page, Rows rows) {
        this.model = model;
        this.texts = model.texts();
        begin = Commands.of(texts.get("action.new"), page::begin);
        save = Commands.of(texts.get("action.save.new"), page::save);
        revert = Commands.of(texts.get("action.revert"), page::dropDraft);
        addRow = Commands.of(
                texts.get("action.add-row"), () -> rows.select(model.steps().addRow(rows.selected())));
        removeRow = Commands.of(texts.get("action.remove-row"), () -> {
            int row = rows.selected();
            model.steps().removeRow(row);
            rows.select(Math.min(row, model.rows().size() - 1));
        });
        moveUp = Commands.of(texts.get("action.move-up"), () -> move(rows, -1));
        moveDown = Commands.of(texts.get("action.move-down"), () -> move(rows, 1));
    }

    /** What needs a dialog or another page. */
    interface Doing {
        void begin();

        void save();

        void dropDraft();
    }

    /** The selected row of the table. */
    interface Rows {
        /** Returns the selected row, -1 for none. */
        int selected();

        /** Selects a row; what is being typed has been taken over before. */
        void select(int row);
    }

    private void move(Rows rows, int by) {
        int row = rows.selected();
        model.steps().moveRow(row, by);
        rows.select(row + by);
    }

    /** Follows the draft and the selection. */
    void refresh(int selectedRow) {
        int count = model.rows().size();
        Commands.say(
                save,
                model.base()
                        .map(version -> texts.get("action.save.version", Integer.toString(version.number() + 1)))
                        .orElseGet(() -> texts.get("action.save.new")));
        save.setEnabled(model.history().isChanged());
        revert.setEnabled(model.history().isChanged() || model.base().isEmpty());
        removeRow.setEnabled(selectedRow >= 0 && selectedRow < count);
        moveUp.setEnabled(selectedRow > 0 && selectedRow < count);
        moveDown.setEnabled(selectedRow >= 0 && selectedRow < count - 1);
    }
}

package porebench.desk.meter;

import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Screen;
import porebench.desk.form.History;
import porebench.method.Texts;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.MeterId;

/** The page of one meter: its state, its calibrations, and the form in which a calibration is entered or corrected. */
public final class MeterPage implements Screen {
    private final DeskModel desk;
    private final MeterModel model;
    private final Texts texts;
    private final MeterPanel panel;

    /**
     * Makes the page.
     *
     * @param toRegister turns the window to the register of meters
     */
    public MeterPage(DeskModel desk, Runnable toRegister) {
        this.desk = desk;
        this.model = new MeterModel(desk);
        this.texts = model.texts();
        this.panel = new MeterPanel(model, new MeterActions(model, new MeterActions.Doing() {
            @Override
            public void back() {
                toRegister.run();
            }

            @Override
            public void begin() {
                model.begin();
                panel.focusFirst();
            }

            @Override
            public void correct() {
                model.correctChosen();
                panel.focusFirst();
            }

            @Override
            public void save() {
                MeterPage.this.save();
            }

            @Override
            public void drop() {
                dropDraft();
            }
        }));
    }

    /** Looks at a meter; a draft not saved before is lost. */
    public void open(MeterId meter) {
        dropDraft();
        model.open(meter);
    }

    @Override
    public JComponent component() {
        return panel.component();
    }

    @Override
    public boolean hasUnsavedDraft() {
        finishTyping();
        return model.entry().hasUnsavedDraft();
    }

    @Override
    public void finishTyping() {
        panel.finishTyping();
    }

    @Override
    public void dropDraft() {
        finishTyping();
        if (model.entry().isOpen()) {
            model.entry().close();
        }
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.entry().history());
    }

    /** Keeps the draft; a correction is asked why, and what must be corrected is shown. */
    @Override
    public void save() {
        finishTyping();
        CalibrationModel entry = model.entry();
        if (!entry.isOpen()) {
            return;
        }
        boolean isGood = entry.trySaving();
        panel.refresh();
        Asker asker = desk.tools().asker();
        if (!isGood || asker.person(component()).isEmpty()) {
            return;
        }
        String id = entry.draft().text(CalibrationColumns.ID).strip();
        Optional<String> why = entry.base().isEmpty()
                ? Optional.of(texts.get("save.first"))
                : asker.reason(component(), texts.get("save.reason.title", id), texts.get("save.reason.question"));
        why.ifPresent(reason -> keep(asker, id, reason));
    }

    private void keep(Asker asker, String id, String why) {
        model.entry()
                .save(
                        why,
                        Outcome.of(
                                refused -> {
                                    if (refused.isEmpty()) {
                                        model.lookAt(id);
                                    } else {
                                        asker.problems(component(), texts.get("save.refused.title"), refused);
                                    }
                                },
                                failure -> asker.failure(component(), texts.get("save.doing", id), failure)));
    }
}

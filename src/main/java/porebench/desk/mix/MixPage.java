package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.NewerVersion;
import porebench.desk.Outcome;
import porebench.desk.Screen;
import porebench.desk.form.Commands;
import porebench.desk.form.History;
import porebench.method.Texts;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/** The page on which the selected mix design is read and corrected, or a new one is entered. */
public final class MixPage implements Screen {
    private final DeskModel desk;
    private final MixModel model;
    private final NewerVersion<MixDesign> newer;
    private final MixPanel panel;
    private final Texts texts;
    private final Action begin;
    private final Action save;
    private final Action revert;
    private final Action readings;
    private final Action copy;
    private final Action compare;

    public MixPage(DeskModel desk) {
        this(desk, mix -> {});
    }

    /**
     * Makes the page.
     *
     * @param openReadings turns the window to the field readings of a mix
     */
    public MixPage(DeskModel desk, Consumer<MixId> openReadings) {
        this.desk = desk;
        this.model = new MixModel(desk);
        this.texts = model.texts();
        begin = Commands.of(texts.get("action.new"), this::begin);
        save = Commands.of(texts.get("action.save.new"), this::save);
        revert = Commands.of(texts.get("action.revert"), this::dropDraft);
        readings =
                Commands.of(texts.get("action.readings"), () -> desk.selected().ifPresent(openReadings));
        newer = new NewerVersion<>(model, this::component);
        copy = Commands.of(texts.get("action.copy"), this::copy);
        compare = Commands.of(texts.get("action.compare"), this::compare);
        panel = new MixPanel(model, newer, begin, List.of(save, revert, readings, copy, compare));
        model.history().onChange(this::refresh);
        desk.onChange(() -> {
            model.followDesk();
            refresh();
        });
        refresh();
    }

    private void refresh() {
        Commands.say(
                save,
                newer.act(model.base()
                        .map(version -> texts.get("action.save.version", Integer.toString(version.number() + 1)))
                        .orElseGet(() -> texts.get("action.save.new"))));
        save.setEnabled(model.history().isChanged());
        revert.setEnabled(model.history().isChanged() || model.isNew());
        readings.setEnabled(desk.selected().isPresent());
        copy.setEnabled(model.base().isPresent());
        compare.setEnabled(model.base().isPresent() && desk.rows().size() > 1);
        panel.refresh();
    }

    /** Begins a new mix design, or goes on with the one that was begun and not saved. */
    public void begin() {
        panel.finishTyping();
        model.begin();
        desk.selectNone();
        panel.focusFirst();
    }

    /** Begins a new mix design as a copy of the one on view; one that was begun and not saved is dropped only by a yes. */
    private void copy() {
        panel.finishTyping();
        boolean goesOn = !model.isOneBegun()
                || desk.tools()
                        .asker()
                        .confirm(
                                component(), texts.get("copy.title"), texts.get("copy.drops"), texts.get("copy.go-on"));
        if (goesOn) {
            model.beginCopy();
            desk.selectNone();
            refresh();
            panel.focusFirst();
        }
    }

    private void compare() {
        model.base().ifPresent(version -> new MixBesideDialog(model, version).show(component()));
    }

    @Override
    public JComponent component() {
        return panel.component();
    }

    @Override
    public void finishTyping() {
        panel.finishTyping();
    }

    @Override
    public void dropDraft() {
        panel.finishTyping();
        model.dropDraft();
    }

    /**
     * Saves the draft; shows before what somebody else kept meanwhile and says what would become untrue, asks why, and shows what
     * must be corrected.
     */
    @Override
    public void save() {
        panel.finishTyping();
        newer.save(this::saveNewest);
    }

    private void saveNewest() {
        model.trySaving();
        refresh();
        if (!model.history().isChanged() || model.reading().mix().isEmpty()) {
            return;
        }
        Asker asker = desk.tools().asker();
        if (asker.person(component()).isPresent()) {
            model.effects(effects -> save(asker, effects));
        }
    }

    private void save(Asker asker, SavingEffects effects) {
        if (model.reading().mix().isEmpty() || !goesOnInSpiteOf(effects, asker)) {
            return;
        }
        String id = model.reading().mix().orElseThrow().id().text();
        Optional<String> why = model.base().isEmpty()
                ? Optional.of(model.copied().orElse(texts.get("save.new.why")))
                : asker.reason(
                        component(),
                        texts.get("save.reason.title", id),
                        texts.get("save.reason.question"),
                        texts.get("save.reason.act"));
        why.ifPresent(reason -> model.save(
                reason,
                Outcome.of(
                        refused -> {
                            if (!refused.isEmpty()) {
                                asker.problems(component(), texts.get("save.refused.title"), refused);
                            }
                        },
                        failure -> asker.failure(component(), texts.get("save.failed", id), failure))));
    }

    private boolean goesOnInSpiteOf(SavingEffects effects, Asker asker) {
        List<String> said = new ArrayList<>();
        effects.untrueFactor()
                .ifPresent(issue -> said.add(texts.get(
                        "effects.factor",
                        desk.tools().numbers().show(issue.factorPercent()),
                        Integer.toString(issue.revision()))));
        effects.trialsLeftBehind()
                .ifPresent(open -> said.add(texts.get(
                        "effects.trials",
                        Integer.toString(open.trials().size()),
                        open.determination().value().id().text(),
                        Integer.toString(open.determination().value().mixVersion()))));
        String id = model.reading().mix().orElseThrow().id().text();
        return said.isEmpty()
                || asker.confirm(
                        component(),
                        texts.get("effects.title", id),
                        String.join("\n\n", said),
                        texts.get("effects.go-on"));
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }
}

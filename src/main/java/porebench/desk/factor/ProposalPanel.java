package porebench.desk.factor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.method.Problem;
import porebench.method.Texts;

/** The draft of the next revision that is open: its step in words, who took which, and the buttons for the next one. */
final class ProposalPanel {
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
    private final DeskModel desk;
    private final ProposalModel model;
    private final Texts texts;
    private final WrappedText title = new WrappedText("factor.draft-title", "h2");
    private final WrappedText content = new WrappedText("factor.draft-content", "");
    private final WrappedText ground = new WrappedText("factor.draft-ground", "");
    private final JCheckBox forGroup = new JCheckBox();
    private final WrappedText steps = new WrappedText("factor.draft-steps", "quiet");
    private final ProblemLines against;
    private final Map<ProposalModel.Act, Action> actions = new EnumMap<>(ProposalModel.Act.class);

    ProposalPanel(DeskModel desk, ProposalModel model, Texts texts) {
        this.desk = desk;
        this.model = model;
        this.texts = texts;
        against = new ProblemLines("factor.draft-against", desk.tools().problemText());
        actions.put(ProposalModel.Act.CHECK, Commands.of(texts.get("draft.check.action"), this::check));
        actions.put(ProposalModel.Act.PUT_IN_FORCE, Commands.of(texts.get("draft.put.action"), this::putInForce));
        actions.put(ProposalModel.Act.SEND_BACK, Commands.of(texts.get("draft.back.action"), this::sendBack));
        actions.put(ProposalModel.Act.DROP, Commands.of(texts.get("draft.drop.action"), this::drop));
        panel.setOpaque(false);
        panel.add(title, "wmin 0");
        panel.add(content, "wmin 0");
        panel.add(ground, "wmin 0");
        panel.add(steps, "wmin 0");
        panel.add(against.panel(), "wmin 0");
        forGroup.setName("factor.draft.forGroup");
        forGroup.setOpaque(false);
        forGroup.addActionListener(event -> model.takeForGroup(forGroup.isSelected()));
        panel.add(forGroup, "wmin 0, gaptop 4");
        JPanel buttons = new JPanel(new MigLayout("insets 0, hidemode 3, wrap 2, gapy 4"));
        buttons.setOpaque(false);
        actions.forEach((act, action) ->
                buttons.add(Commands.button("factor.draft." + act.name(), action), "sizegroupx drafts"));
        panel.add(buttons, "growx 0, gaptop 4");
    }

    JComponent component() {
        return panel;
    }

    /** Shows the draft that is open; not visible while none is. */
    void refresh() {
        panel.setVisible(model.open().isPresent());
        title.say(model.title());
        content.say(model.content());
        ground.say(model.ground());
        forGroup.setText(model.groupWords());
        forGroup.setVisible(model.group().isPresent());
        forGroup.setSelected(model.isForGroup());
        steps.say(String.join("\n", model.steps()));
        actions.forEach((act, action) -> action.setEnabled(model.against(act).isEmpty()));
        against.show(model.open().isEmpty() ? List.of() : model.why());
    }

    private void check() {
        ask("draft.check.action", "draft.check.question", "draft.check.act")
                .ifPresent(said -> act(ProposalModel.Act.CHECK, said));
    }

    private void putInForce() {
        if (hasPerson()) {
            desk.tools()
                    .asker()
                    .remark(
                            panel,
                            texts.get("draft.put.action"),
                            texts.get("draft.put.question", (model.ground() + " " + model.content()).strip()),
                            texts.get("draft.put.act"))
                    .ifPresent(said -> act(ProposalModel.Act.PUT_IN_FORCE, said));
        }
    }

    private void sendBack() {
        ask("draft.back.action", "draft.back.question", "draft.back.act")
                .ifPresent(said -> act(ProposalModel.Act.SEND_BACK, said));
    }

    private void drop() {
        ask("draft.drop.action", "draft.drop.question", "draft.drop.act")
                .ifPresent(said -> act(ProposalModel.Act.DROP, said));
    }

    private boolean hasPerson() {
        return desk.tools().asker().person(panel).isPresent();
    }

    private Optional<String> ask(String title, String question, String act) {
        return hasPerson()
                ? desk.tools().asker().reason(panel, texts.get(title), texts.get(question), texts.get(act))
                : Optional.empty();
    }

    private void act(ProposalModel.Act act, String said) {
        model.act(act, said, this::report);
    }

    private void report(List<Problem> refused) {
        if (!refused.isEmpty()) {
            desk.tools().asker().problems(panel, texts.get("draft.refused"), refused);
        }
    }
}

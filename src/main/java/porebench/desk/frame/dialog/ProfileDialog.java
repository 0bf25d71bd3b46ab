package porebench.desk.frame.dialog;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.form.Choices;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.SourceText;
import porebench.method.Texts;
import porebench.record.LaboratoryProfile;
import porebench.record.book.Draft;
import porebench.record.book.Version;

/** Shows the figures of a profile with their clauses, and lets the laboratory keep its own copy with other figures. */
public final class ProfileDialog {
    private static final Question<List<Version<LaboratoryProfile>>> OWN =
            new Question.Newest<>(LaboratoryProfile.class);

    private final DeskModel desk;
    private final Texts texts;
    private final ProfileModel model;
    private final JComboBox<Profile> choice;
    private final ColumnForm form;
    private final JPanel names = new JPanel(new MigLayout("insets 0", "[grow,fill]", "[]"));
    private final WrappedText edition = new WrappedText("edition", "quiet");
    private final FigureTable figures;
    private final ProblemLines problems;
    private final JButton copy;
    private final JButton save;
    private JButton close = new JButton();

    private ProfileDialog(DeskModel desk, Texts texts, List<Version<LaboratoryProfile>> own) {
        this.desk = desk;
        this.texts = texts;
        String chosen = desk.evidence()
                .map(evidence -> evidence.mix().value().profileId())
                .orElse("");
        model = new ProfileModel(own, texts, chosen);
        form = new ColumnForm(model, desk.tools().problemText()).addAll(List.of(ProfileModel.ID, ProfileModel.TITLE));
        problems = new ProblemLines("profile.problems", desk.tools().problemText()).keepingRoom(2);
        choice = Choices.of("profile", List.of(), Profile::title, this::choose);
        copy = Commands.button("copy", Commands.of(texts.get("profile.copy.action"), model::copy));
        save = Commands.button("save", Commands.of(texts.get("profile.save"), this::save));
        figures = new FigureTable(model, texts, desk.tools().problemText());
    }

    /** Shows the dialog, once the laboratory's own profiles have been read, until it is closed. */
    public static void open(DeskModel desk, Texts texts, JComponent over) {
        desk.ask(OWN, own -> new ProfileDialog(desk, texts, own).show(over));
    }

    private void show(JComponent over) {
        AskDialog dialog = new AskDialog(over, texts.get("profile.title"), content());
        close = dialog.button("close", texts.get("ask.close"));
        dialog.closesOnlyIf(close, this::mayDrop);
        model.history().onChange(this::refresh);
        fillChoice();
        refresh();
        dialog.ask();
    }

    private JComponent content() {
        JPanel content = new JPanel(
                new MigLayout("insets 0, wrap 1, hidemode 3", "[grow,fill]", "[]6[]10[]10[grow,fill]8[]8[]"));
        JPanel top = new JPanel(new MigLayout("insets 0", "[]8[grow,fill]", "[]"));
        top.add(Form.label(texts.get("profile.choose"), choice));
        top.add(choice);
        content.add(top);
        content.add(edition, "wmin 0");
        names.add(form.panel());
        content.add(names);
        content.add(figures.component());
        content.add(problems.panel(), "wmin 0");
        content.add(buttons(), "alignx leading, growx 0");
        return content;
    }

    private JComponent buttons() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 10", "[][]"));
        row.add(copy);
        row.add(save);
        row.add(new JLabel());
        return row;
    }

    private void fillChoice() {
        Choices.show(choice, model.profiles(), Optional.of(model.shown()));
    }

    private void choose(Profile profile) {
        if (!profile.equals(model.shown())) {
            if (mayDrop()) {
                model.show(profile);
            } else {
                fillChoice();
            }
        }
    }

    /** Asks before changes that are not saved would be lost. */
    private boolean mayDrop() {
        return !model.isChanged()
                || desk.tools()
                        .asker()
                        .confirm(
                                choice,
                                texts.get("profile.title"),
                                texts.get("profile.drop"),
                                texts.get("ask.draft.drop"));
    }

    private void refresh() {
        form.pull();
        names.setVisible(model.isOwn());
        edition.setText(
                model.isOwn()
                        ? texts.get("profile.based-on", model.shown().basedOn().orElse(""))
                        : SourceText.in(texts.locale()).say(model.shown().edition()));
        choice.setEnabled(!model.isNew());
        copy.setEnabled(!model.isChanged());
        save.setEnabled(model.canSave());
        // Enter never drops what was typed.
        Optional.ofNullable(SwingUtilities.getRootPane(save))
                .ifPresent(root -> root.setDefaultButton(model.isChanged() ? save : close));
        List<Problem> wrong = model.isOwn() ? model.problems() : List.of();
        problems.show(
                form.show(wrong).stream().map(new FigureWords(texts)::named).toList());
        figures.refresh();
    }

    private void save() {
        String heading = texts.get("profile.title");
        Optional<Draft> draft = model.record();
        if (draft.isEmpty()) {
            return;
        }
        Optional<String> why =
                desk.tools().asker().reason(choice, heading, texts.get("profile.why"), texts.get("profile.act"));
        if (why.isEmpty() || desk.tools().asker().person(choice).isEmpty()) {
            return;
        }
        String kept = draft.get().value().recordId();
        desk.keep(List.of(draft.get()), why.get(), refused -> {
            if (refused.isEmpty()) {
                desk.ask(OWN, own -> show(own, kept));
            } else {
                desk.tools().asker().problems(choice, heading, refused);
            }
        });
    }

    private void show(List<Version<LaboratoryProfile>> own, String kept) {
        model.know(own);
        model.profiles().stream()
                .filter(profile -> profile.id().equals(kept))
                .findFirst()
                .ifPresent(model::show);
        fillChoice();
        refresh();
    }
}

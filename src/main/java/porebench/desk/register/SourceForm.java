package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.TextLink;
import porebench.desk.form.Texts;
import porebench.method.Role;

/** The fields of a source. */
final class SourceForm implements RecordForm {
    private final SourcesModel model;
    private final Texts texts;
    private final Form form;
    private final List<Runnable> pulls = new ArrayList<>();
    private final JTextField id;
    private final JComboBox<Role> role;

    SourceForm(SourcesModel model) {
        this.model = model;
        this.texts = model.texts();
        this.form = new Form(model.desk().tools().problemText());
        id = text("id", "", SourceDraft::id, SourceDraft::withId);
        text("name", "", SourceDraft::name, SourceDraft::withName);
        role = Choices.of(
                "role",
                List.of(Role.FINE, Role.COARSE),
                model::roleWords,
                chosen -> model.history()
                        .update(texts.get("source.role.plain"), model.draft().withRole(chosen)));
        form.add("role", texts.get("source.role"), role, "");
        text("place", "", SourceDraft::place, SourceDraft::withPlace);
        text("ledge", "", SourceDraft::ledge, SourceDraft::withLedge);
        text("relativeDensity", "", SourceDraft::relativeDensity, SourceDraft::withRelativeDensity);
        text("absorption", "%", SourceDraft::absorption, SourceDraft::withAbsorption);
        text("remarks", "", SourceDraft::remarks, SourceDraft::withRemarks);
    }

    private JTextField text(
            String field,
            String unit,
            Function<SourceDraft, String> get,
            BiFunction<SourceDraft, String, SourceDraft> with) {
        JTextField input = new JTextField();
        String words = texts.get("source." + field + ".plain");
        TextLink link = new TextLink(input, typed -> model.history().update(words, with.apply(model.draft(), typed)));
        pulls.add(() -> link.pull(get.apply(model.draft())));
        form.add(field, texts.get("source." + field), input, unit);
        return input;
    }

    @Override
    public Form form() {
        return form;
    }

    @Override
    public void pull() {
        pulls.forEach(Runnable::run);
        if (model.draft().role() != role.getSelectedItem()) {
            role.setSelectedItem(model.draft().role());
        }
        id.setEditable(model.isNew());
    }
}

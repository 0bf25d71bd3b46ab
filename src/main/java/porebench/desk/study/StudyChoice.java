package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Choices;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.method.Texts;
import porebench.record.KeptStudy.Layout;
import porebench.record.column.Column;

/** The rows in which a study and its data are chosen. */
final class StudyChoice {
    private static final String ARROW = "\u203a";
    private static final String CROSS = "\u00d7";

    /** Wide enough for every choice, so that choosing moves nothing. */
    private static final String WIDE = "wmin 260";

    private static final String LAYER_WIDTH = "wmin 150";

    private final StudyModel model;
    private final Consumer<Optional<String>> keptChosen;
    private final Texts texts;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 2, hidemode 3", "[]10[grow,fill,0::]"));
    private final ColumnForm form;
    private final JComponent data;
    private final JLabel dataLabel;
    private final JPanel layerRow = new JPanel(new MigLayout("insets 0"));
    private final List<JLabel> arrows = new ArrayList<>();
    private final JLabel layerLabel;
    private final JCheckBox interaction;
    private final JCheckBox crossed;
    private final JLabel file = new JLabel();
    private final JComponent openButton;
    private final JComboBox<Optional<KeptStudies.Choice>> keptBox;
    private final JLabel keptLabel;
    private final Action keepAction;
    private final JComponent keepButton;

    StudyChoice(
            StudyModel model, Runnable open, Runnable saveForm, Runnable keep, Consumer<Optional<String>> keptChosen) {
        this.model = model;
        this.keptChosen = keptChosen;
        this.texts = model.texts();
        form = new ColumnForm(model, model.desk().tools().problemText());
        JComponent kind = form.alone(StudyModel.KIND);
        data = form.alone(StudyModel.DATA);
        dataLabel = Form.label(texts.get("label.data"), data);
        interaction = form.alone(StudyModel.INTERACTION);
        crossed = form.alone(StudyModel.CROSSED);
        crossed.setToolTipText(texts.get("hint.crossed"));
        StudyModel.LAYERS.forEach(this::addLayer);
        layerLabel = Form.label(
                texts.get("label.layers"), form.field(StudyModel.LAYERS.get(0).field()));
        panel.add(Form.label(texts.get("label.kind"), kind));
        JPanel kindRow = new JPanel(new MigLayout("insets 0, hidemode 3"));
        kindRow.add(kind, WIDE);
        kindRow.add(interaction, "gapleft 12, wmin 0");
        kindRow.add(crossed, "gapleft 12, wmin 0");
        panel.add(kindRow, "wmin 0");
        panel.add(dataLabel);
        panel.add(data, "growx 0, " + WIDE);
        panel.add(layerLabel);
        panel.add(layerRow, "wmin 0");
        openButton = Commands.button("study.open", Commands.of(texts.get("action.open"), open));
        keepAction = Commands.of(texts.get("action.keep"), keep);
        keepButton = Commands.button("study.keep", keepAction);
        file.setName("study.file");
        keptBox = Choices.of(
                "study.kept",
                List.of(Optional.<KeptStudies.Choice>empty()),
                one -> one.map(KeptStudies.Choice::words).orElse(texts.get("kept.none")),
                one -> chooseKept(one.map(KeptStudies.Choice::id)));
        keptLabel = Form.label(texts.get("label.kept"), keptBox);
        JPanel buttons = new JPanel(new MigLayout("insets 0, hidemode 3", "[]8[]8[]"));
        buttons.add(openButton);
        buttons.add(Commands.button("study.form", Commands.of(texts.get("action.form"), saveForm)));
        buttons.add(keepButton);
        panel.add(keptLabel);
        panel.add(keptBox, "growx 0, wmin 0, " + WIDE);
        panel.add(buttons, "skip 1, wmin 0");
        panel.add(file, "skip 1, wmin 0");
    }

    private void addLayer(Column<StudyShown, String> column) {
        JComponent box = form.alone(column);
        int place = StudyModel.LAYERS.indexOf(column);
        box.getAccessibleContext().setAccessibleName(texts.get("label.layer", Integer.toString(place + 1)));
        if (place > 0) {
            JLabel arrow = new JLabel(ARROW);
            arrows.add(arrow);
            layerRow.add(arrow);
        }
        layerRow.add(box, LAYER_WIDTH);
    }

    JComponent component() {
        return panel;
    }

    private void chooseKept(Optional<String> id) {
        if (!id.equals(shownKept())) {
            keptChosen.accept(id);
        }
    }

    private Optional<String> shownKept() {
        return model.opened()
                .flatMap(Opened::kept)
                .map(version -> version.value().recordId());
    }

    private void refreshKept() {
        List<Optional<KeptStudies.Choice>> now = Stream.concat(
                        Stream.of(Optional.<KeptStudies.Choice>empty()),
                        model.kept().stream().map(Optional::of))
                .toList();
        Optional<String> shown = shownKept();
        Choices.show(
                keptBox,
                now,
                now.stream()
                        .filter(one -> one.map(KeptStudies.Choice::id).equals(shown))
                        .findFirst()
                        .or(() -> Optional.of(Optional.empty())));
        keptBox.setVisible(now.size() > 1);
        keptLabel.setVisible(now.size() > 1);
        keepButton.setVisible(!model.isFromBook());
        keepAction.setEnabled(model.keeping().isPossible() && !model.keeping().isOpen());
    }

    /** Shows what is chosen. */
    void refresh() {
        boolean isOfLayers = model.kind() == Layout.LAYERS;
        form.pull();
        data.setVisible(isOfLayers);
        dataLabel.setVisible(isOfLayers);
        layerRow.setVisible(model.isFromBook());
        layerLabel.setVisible(model.isFromBook());
        crossed.setVisible(isOfLayers);
        arrows.forEach(arrow -> arrow.setText(model.draft().isYes(StudyModel.CROSSED) ? CROSS : ARROW));
        interaction.setVisible(model.kind() == Layout.OPERATORS);
        openButton.setVisible(!model.isFromBook());
        file.setText(
                model.opened().map(one -> one.words(texts)).orElse(model.isFromBook() ? "" : texts.get("file.none")));
        refreshKept();
    }
}

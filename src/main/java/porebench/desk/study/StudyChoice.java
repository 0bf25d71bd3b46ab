package porebench.desk.study;

import java.util.ArrayList;
import java.util.Arrays;
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
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.evidence.study.TrialLayer;
import porebench.method.Texts;
import porebench.record.KeptStudy.Layout;

/** The rows in which a study and its data are chosen. */
final class StudyChoice {
    private static final String ARROW = "\u203a";
    private static final String CROSS = "\u00d7";

    /** Wide enough for every choice, so that choosing moves nothing. */
    private static final String WIDE = "wmin 260";

    private static final String LAYER_WIDTH = "wmin 150";

    private static final List<Optional<TrialLayer>> LAYERS = Stream.concat(
                    Stream.of(Optional.<TrialLayer>empty()),
                    Arrays.stream(TrialLayer.values()).map(Optional::of))
            .toList();

    private final StudyModel model;
    private final Consumer<Optional<String>> keptChosen;
    private final Texts texts;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 2, hidemode 3", "[]10[grow,fill,0::]"));
    private final JComboBox<Layout> kind;
    private final JComboBox<Boolean> data;
    private final JLabel dataLabel;
    private final List<JComboBox<Optional<TrialLayer>>> layers = new ArrayList<>();
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
        kind = Choices.of("study.kind", Arrays.asList(Layout.values()), this::words, model::choose);
        data = Choices.of("study.data", List.of(true, false), this::dataWords, model::takeFromBook);
        dataLabel = Form.label(texts.get("label.data"), data);
        interaction = new JCheckBox(texts.get("label.interaction"));
        interaction.setName("study.interaction");
        interaction.addActionListener(event -> model.keepInteraction(interaction.isSelected()));
        crossed = new JCheckBox(texts.get("label.crossed"));
        crossed.setName("study.crossed");
        crossed.setToolTipText(texts.get("hint.crossed"));
        crossed.addActionListener(event -> model.cross(crossed.isSelected()));
        for (int place = 0; place < StudyModel.LAYERS; place++) {
            addLayer(place);
        }
        layerLabel = Form.label(texts.get("label.layers"), layers.get(0));
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

    private void addLayer(int place) {
        JComboBox<Optional<TrialLayer>> box = Choices.of(
                "study.layer." + place,
                LAYERS,
                layer -> layer.map(model::words).orElse(texts.get("layer.none")),
                layer -> model.chooseLayer(place, layer));
        box.getAccessibleContext().setAccessibleName(texts.get("label.layer", Integer.toString(place + 1)));
        if (place > 0) {
            JLabel arrow = new JLabel(ARROW);
            arrows.add(arrow);
            layerRow.add(arrow);
        }
        layerRow.add(box, LAYER_WIDTH);
        layers.add(box);
    }

    JComponent component() {
        return panel;
    }

    private String words(Layout one) {
        return texts.get("kind." + one.name());
    }

    private String dataWords(boolean fromBook) {
        return texts.get(fromBook ? "data.book" : "data.file");
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
        Choices.show(kind, List.of(Layout.values()), Optional.of(model.kind()));
        Choices.show(data, List.of(true, false), Optional.of(model.isFromBook()));
        data.setVisible(isOfLayers);
        dataLabel.setVisible(isOfLayers);
        layerRow.setVisible(model.isFromBook());
        layerLabel.setVisible(model.isFromBook());
        for (int place = 0; place < layers.size(); place++) {
            Choices.show(layers.get(place), LAYERS, Optional.of(model.layers().get(place)));
        }
        crossed.setVisible(isOfLayers);
        crossed.setSelected(model.isCrossed());
        arrows.forEach(arrow -> arrow.setText(model.isCrossed() ? CROSS : ARROW));
        interaction.setVisible(model.kind() == Layout.OPERATORS);
        interaction.setSelected(model.isWithInteraction());
        openButton.setVisible(!model.isFromBook());
        file.setText(
                model.opened().map(one -> one.words(texts)).orElse(model.isFromBook() ? "" : texts.get("file.none")));
        refreshKept();
    }
}

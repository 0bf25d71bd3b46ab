package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.desk.frame.dialog.AskDialog;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** Asks of which mixes cards are to be made in one go, and how they look. */
final class CardsDialog {
    private static final List<Integer> PER_SHEET = List.of(CardLook.ALL, 1, 2, 3, 4);

    private final CardsModel model;
    private final Texts texts;
    private final Form form;
    private final WrappedText said = new WrappedText("cards.said", "quiet").keepingRoom(2);
    private final JComboBox<String> plants;
    private final JComboBox<Optional<PaperLanguage>> seconds;
    private final JComboBox<Integer> perSheet;
    private final JCheckBox onOne = new JCheckBox();
    private final JCheckBox chart = new JCheckBox();
    private JButton accept = new JButton();

    CardsDialog(CardsModel model, ProblemText problemText) {
        this.model = model;
        this.texts = model.texts();
        this.form = new Form(problemText);
        plants = Choices.of("cards.plant", model.plants(), name -> name, name -> {
            model.takePlant(name);
            refresh();
        });
        seconds = Choices.of("cards.second", List.<Optional<PaperLanguage>>of(), this::second, model::takeSecond);
        perSheet = Choices.of("cards.per-sheet", PER_SHEET, this::perSheet, model::takePerSheet);
    }

    /** Asks; returns whether the cards are to be made. */
    boolean ask(JComponent over) {
        AskDialog dialog = new AskDialog(over, texts.get("cards.title"), content());
        accept = dialog.button("accept", texts.get("cards.save"));
        dialog.button("cancel", texts.get("cards.cancel"));
        refresh();
        return dialog.ask() == 0;
    }

    private JComponent content() {
        JComboBox<CardsModel.Which> which =
                Choices.of("cards.which", model.whichOnes(), one -> texts.get("cards.which." + one.symbol()), one -> {
                    model.take(one);
                    refresh();
                });
        JComboBox<CardSize> size = Choices.of(
                "cards.size",
                List.of(CardSize.values()),
                one -> texts.get("cards.size." + one.symbol()),
                one -> model.take(one));
        JComboBox<PaperLanguage> first =
                Choices.of("cards.first", List.of(PaperLanguage.values()), this::language, one -> {
                    model.take(one);
                    refresh();
                });
        first.setSelectedItem(model.first());
        JComboBox<Optional<CardLook.Sheet>> sheet = Choices.of(
                "cards.sheet",
                List.of(Optional.empty(), Optional.of(CardLook.Sheet.A4), Optional.of(CardLook.Sheet.LETTER)),
                one -> texts.get(
                        "cards.sheet." + one.map(CardLook.Sheet::symbol).orElse("none")),
                one -> {
                    model.takeSheet(one);
                    refresh();
                });
        form.add("which", texts.get("cards.which"), which, "");
        if (!model.plants().isEmpty()) {
            form.add("plant", texts.get("cards.plant"), plants, "");
        }
        form.add("size", texts.get("cards.size"), size, "");
        form.add("first", texts.get("cards.first"), first, "");
        form.add("second", texts.get("cards.second"), seconds, "");
        form.add("sheet", texts.get("cards.sheet"), sheet, "");
        form.add("perSheet", texts.get("cards.per-sheet"), perSheet, "");
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill,460::]", "[]12[]8[]8[]"));
        content.add(form.panel());
        if (!model.plants().isEmpty()) {
            choice(onOne, "cards.on-one", model::onOne);
            content.add(onOne);
        }
        choice(chart, "cards.chart", model::chart);
        content.add(chart);
        JCheckBox leaveOut = new JCheckBox();
        choice(leaveOut, "cards.leave-out", model::leaveOut);
        content.add(leaveOut);
        content.add(said, "wmin 0");
        return content;
    }

    private void choice(JCheckBox box, String name, Consumer<Boolean> chosen) {
        box.setName(name);
        box.setOpaque(false);
        Commands.say(box, texts.get(name));
        box.addActionListener(event -> {
            chosen.accept(box.isSelected());
            refresh();
        });
    }

    private String language(PaperLanguage language) {
        return texts.get("cards.language." + language.symbol());
    }

    private String second(Optional<PaperLanguage> language) {
        return language.map(this::language).orElseGet(() -> texts.get("cards.second.none"));
    }

    private String perSheet(int most) {
        return most == CardLook.ALL ? texts.get("cards.per-sheet.all") : Integer.toString(most);
    }

    private void refresh() {
        plants.setEnabled(model.which() == CardsModel.Which.PLANT);
        onOne.setEnabled(model.which() == CardsModel.Which.PLANT);
        perSheet.setEnabled(model.isOnSheets());
        Choices.show(seconds, model.seconds(), Optional.of(model.second()));
        said.setText(model.said());
        accept.setEnabled(model.isAny());
    }
}

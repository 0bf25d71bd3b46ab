package porebench.desk.factor;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.method.Texts;
import porebench.port.Paper;
import porebench.port.Press;
import porebench.port.Spoken;
import porebench.record.CardPrint;
import porebench.record.book.Version;

/** The card of the revision looked at, or of the one being prepared, exactly as it will print, with its paper and its buttons. */
final class CardPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final List<Paper> PAPERS = List.of(Paper.A6, Paper.CARD_4X6, Paper.HALF_LETTER, Paper.WALLET);
    private static final int SCREEN_DOTS_PER_INCH = 192;
    private static final int HIGHEST_DOTS_PER_INCH = 400;

    private final transient DeskModel desk;
    private final transient FactorModel model;
    private final transient FactorActions actions;
    private final transient Texts texts;
    private final transient Runnable turned;
    private final CardPreview preview = new CardPreview();
    private final JLabel which = Form.heading("", "h2");
    private final JLabel printed = Form.heading("", "quiet");
    private final JButton turn = new JButton();
    private final MigLayout row = new MigLayout("insets 0", "[][grow][]8[]");
    private final JPanel buttons = new JPanel(row);
    private final JComboBox<Paper> paper;
    private final JButton savePdf;
    private final JButton print;
    private boolean isNarrow;
    private transient Optional<Shown> drawn = Optional.empty();

    private final JCheckBox chart = new JCheckBox();
    private final JButton turnOver = new JButton();
    private boolean isBack;

    /**
     * What is shown.
     *
     * @param look how it looks where it has a chart on its back
     * @param back whether that back is shown
     */
    private record Shown(FactorCard card, Paper paper, Optional<CardLook> look, boolean back) {
        int page() {
            return back ? 1 : 0;
        }
    }

    CardPanel(DeskModel desk, FactorModel model, FactorActions actions, Runnable turned) {
        super(new MigLayout("insets 0, hidemode 3, wrap 1", "[grow,fill]"));
        this.desk = desk;
        this.model = model;
        this.actions = actions;
        this.turned = turned;
        this.texts = model.texts();
        paper = Choices.of("factor.paper", PAPERS, size -> texts.get("paper." + size.name()), size -> {
            actions.choose(size);
            refresh();
        });
        paper.getAccessibleContext().setAccessibleName(texts.get("paper"));
        savePdf = Commands.button("factor.savePdf", actions.savePdf);
        print = Commands.button("factor.print", actions.print);
        preview.setName("factor.preview");
        printed.setName("factor.printed");
        buttons.add(paper);
        buttons.add(savePdf, "skip 1");
        buttons.add(print);
        turn.setName("factor.turnCard");
        turn.addActionListener(event -> turn());
        // Words of another length must not make the form beside the card wider or narrower.
        add(which, "w 0:0:");
        add(buttons, "gapbottom 4");
        add(preview, "growx 0");
        add(printed, "gaptop 4, w 0:0:");
        add(sides(), "gaptop 4, w 0:pref:");
        JPanel field = new JPanel(new MigLayout("insets 0, wrap 1", "[fill]"));
        field.setOpaque(false);
        field.add(Commands.button("factor.phonePage", actions.phonePage));
        field.add(Commands.button("factor.fieldSheet", actions.fieldSheet));
        field.add(Commands.button("factor.cardsOut", actions.cardsOut));
        field.add(Commands.button("factor.checkText", actions.checkText));
        add(field, "gaptop 4, w 0:pref:");
        add(turn, "growx 0, gaptop 4, hidemode 0");
    }

    /** Returns the tick for a chart on the back, and beside it what turns the card over. */
    private JPanel sides() {
        chart.setName("factor.chart");
        chart.setOpaque(false);
        Commands.say(chart, texts.get("card.chart"));
        chart.addActionListener(event -> {
            // Who asks for the back wants to see it.
            isBack = chart.isSelected();
            actions.chart(chart.isSelected());
            refresh();
        });
        turnOver.setName("factor.turnOver");
        turnOver.addActionListener(event -> {
            isBack = !isBack;
            refresh();
        });
        JPanel sides = new JPanel(new MigLayout("insets 0, hidemode 0, wrap 1", "[]"));
        sides.setOpaque(false);
        sides.add(chart);
        sides.add(turnOver);
        return sides;
    }

    /**
     * Shows the card no larger than some pixels.
     *
     * @param narrow whether it stands first and what is done with it below, and not the other way round
     */
    void showWithin(boolean narrow, Dimension pixels) {
        preview.setMost(pixels);
        if (narrow != isNarrow) {
            isNarrow = narrow;
            remove(buttons);
            add(buttons, narrow ? "gaptop 4" : "gapbottom 4", narrow ? 2 : 1);
            row.setColumnConstraints(narrow ? "[][grow]" : "[][grow][]8[]");
            row.setComponentConstraints(paper, narrow ? "spanx, growx, w 0:0:, wrap" : "");
            row.setComponentConstraints(savePdf, narrow ? "" : "skip 1");
            revalidate();
        }
    }

    void refresh() {
        Optional<FactorCard> card = model.card();
        which.setText(card.map(known ->
                        texts.get(title(), Integer.toString(known.issue().revision())))
                .orElse(texts.get("card.none-title")));
        printed.setText(
                card.isEmpty() ? " " : model.isNext() ? texts.get("card.next-stays") : printedSentence(model.prints()));
        Commands.say(turn, texts.get(model.isNext() ? "card.see-issued" : "card.see-next"));
        turn.setVisible(
                model.isNext() ? !model.revisions().isEmpty() : desk.evidence().isPresent());
        Commands.say(turnOver, texts.get(isBack ? "card.see-front" : "card.see-back"));
        turnOver.setVisible(card.isPresent() && chart.isSelected());
        if (card.isEmpty()) {
            drawn = Optional.empty();
            preview.showInstead(texts.get(model.isNext() ? "card.none-next" : "card.none"));
        } else {
            draw(new Shown(card.get(), actions.paper(), actions.withChart(), isBack));
        }
    }

    private String title() {
        if (model.isNext()) {
            return "card.title-next";
        }
        return model.isCardCurrent() ? "card.title" : "card.title-old";
    }

    /** Turns from the card to come to the issued one, and back. */
    private void turn() {
        if (model.isNext()) {
            model.lookAtIssued();
        } else {
            model.lookAtNext();
        }
        turned.run();
    }

    private String printedSentence(List<Version<CardPrint>> prints) {
        if (prints.isEmpty()) {
            return texts.get("card.never-printed");
        }
        List<String> said = new ArrayList<>();
        for (CardPrint.Way way : CardPrint.Way.values()) {
            long count =
                    prints.stream().filter(print -> print.value().way() == way).count();
            if (count > 0) {
                said.add(texts.get("card.way." + way, Long.toString(count)));
            }
        }
        Version<CardPrint> last = prints.stream()
                .max(Comparator.comparing(print -> print.stamp().at()))
                .orElseThrow();
        said.add(texts.get(
                "card.last",
                Days.show(last.stamp().at(), desk.tools().zone()),
                last.stamp().who()));
        return String.join("; ", said);
    }

    private void draw(Shown wanted) {
        if (drawn.equals(Optional.of(wanted))) {
            return;
        }
        boolean isOfSame = drawn.filter(
                        before -> before.card().mixId().equals(wanted.card().mixId()))
                .isPresent();
        if (!isOfSame) {
            // Neither the card of another mix nor that there is none is to be read while this one is drawn.
            preview.showInstead("");
        }
        drawn = Optional.of(wanted);
        int dots = Math.min(HIGHEST_DOTS_PER_INCH, Math.round(UIScale.scale((float) SCREEN_DOTS_PER_INCH)));
        desk.tools().tasks().workOut(() -> pages(wanted, dots), pages -> show(wanted, pages), failure -> {
            drawn = Optional.empty();
            preview.showInstead(texts.get("card.cannot-draw", said(failure)));
        });
    }

    private List<BufferedImage> pages(Shown wanted, int dots) {
        Press press = desk.tools().press();
        return wanted.look().isPresent()
                ? press.preview(wanted.card(), wanted.look().get(), dots)
                : press.preview(wanted.card(), wanted.paper(), texts.locale(), dots);
    }

    private String said(Exception failure) {
        return failure instanceof Spoken spoken ? spoken.say(texts.locale()) : String.valueOf(failure.getMessage());
    }

    private void show(Shown wanted, List<BufferedImage> pages) {
        // Another card may have been asked for while this one was drawn.
        if (drawn.equals(Optional.of(wanted))) {
            preview.show(pages.get(wanted.page()), wanted.paper());
        }
    }
}

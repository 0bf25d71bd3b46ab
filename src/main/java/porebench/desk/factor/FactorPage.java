package porebench.desk.factor;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.History;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.DecisionChanges;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.Recheck;
import porebench.evidence.ShownUncertainty;
import porebench.evidence.custody.Holders;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.id.ChangeDecisionId;

/**
 * Page 5 of a mix, its factor issued, replaced or withdrawn: what holds now, the next revision and the history on the left, the
 * card on the right.
 */
public final class FactorPage implements Screen {
    /** In pixels at 100 %: in less the form would be squeezed beside the card as large as it prints, which then is drawn smaller. */
    private static final int LEAST_BESIDE = 860;
    /** What the form takes beside a card that is drawn smaller, and what is left of that card in any case. */
    private static final int FORM_WIDTH = 420;

    private static final int LEAST_CARD = 170;
    private static final int LEAST_HEIGHT = 240;
    private static final int ABOVE = 54;
    private static final int ABOVE_WITH_BUTTONS = 100;
    private static final int GAPS = 24 + 24 + 24;

    private final MigLayout layout = new MigLayout("insets 20 24 24 24, fillx, hidemode 3", "", "[top]");
    private final TallPanel panel = new TallPanel(layout);
    private final JScrollPane scroll = panel.scrolled();
    private boolean isBeside;
    private final DeskModel desk;
    private final FactorModel model;
    private final FactorActions actions;
    private final Texts texts;
    private final JLabel factor = Form.heading("", "number");
    private final WrappedText state = new WrappedText("factor.state", "h2");
    private final WrappedText dates = new WrappedText("factor.dates", "quiet");
    private final WrappedText group = new WrappedText("factor.group", "quiet");
    private final WrappedText cards = new WrappedText("factor.cards", "quiet");
    private final ProblemLines changes;
    private final ProposalPanel proposal;
    private final IssueForm form;
    private final RowTable<FactorIssue> history;
    private final CardPanel card;
    private final SievedTable sieved;
    private final JPanel left;
    private final JPanel past = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));

    /** Makes the page of a window in which nothing leads to the cards that are out. */
    public FactorPage(DeskModel desk) {
        this(desk, cards -> {});
    }

    /**
     * Makes the page.
     *
     * @param openCards turns the window to cards, by the names of their records; without any to those that have to come back
     */
    public FactorPage(DeskModel desk, Consumer<List<String>> openCards) {
        this.desk = desk;
        model = new FactorModel(desk);
        texts = model.texts();
        actions = new FactorActions(desk, model, panel, openCards);
        changes = new ProblemLines("factor.changes", desk.tools().problemText());
        proposal = new ProposalPanel(desk, model.proposal(), texts);
        form = new IssueForm(desk, model, actions);
        history = new RowTable<>("factor.history", texts.get("history.title"), columns());
        history.onSelect(chosen -> chosen.ifPresent(issue -> {
            model.look(issue.revision());
            refresh();
        }));
        sieved = new SievedTable(texts, desk.tools().numbers());
        card = new CardPanel(desk, model, actions, this::refresh);
        left = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
        left.setOpaque(false);
        left.add(Form.heading(texts.get("page.title"), "h1"), "gapbottom 8");
        factor.setName("factor.inForce");
        left.add(factor, "wmin 0");
        left.add(state, "wmin 0");
        left.add(dates, "wmin 0");
        left.add(group, "wmin 0");
        left.add(cards, "wmin 0");
        left.add(changes.panel(), "wmin 0");
        left.add(proposal.component(), "wmin 0, gaptop 20");
        left.add(form.component(), "wmin 0, gaptop 20");
        past.setOpaque(false);
        past.add(historyHead(), "wmin 0");
        past.add(history.scrolled(), "wmin 0");
        past.add(sieved.component(), "wmin 0, gaptop 20");
        panel.add(left, "growx, pushx, wmin 0");
        panel.add(card, "top");
        arrange(true);
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                boolean hasRoom = scroll.getViewport().getWidth() >= UIScale.scale(LEAST_BESIDE);
                if (hasRoom != isBeside) {
                    arrange(hasRoom);
                }
                fitCard();
            }
        });
        desk.onChange(() -> {
            model.follow();
            refresh();
        });
        model.history().onChange(this::refresh);
        refresh();
    }

    /** Where the card is drawn smaller, the history has the whole width below both. */
    private void arrange(boolean beside) {
        isBeside = beside;
        layout.setColumnConstraints("[grow,fill,0::]24[]");
        if (beside) {
            left.add(past, "wmin 0, gaptop 20");
        } else {
            panel.add(past, "newline, span 2, growx, wmin 0, gaptop 20");
        }
        panel.revalidate();
    }

    /** The card is seen whole on the first screen where it can be: before it is issued, it is what matters. */
    private void fitCard() {
        int above = UIScale.scale(isBeside ? ABOVE_WITH_BUTTONS : ABOVE);
        int high = Math.max(UIScale.scale(LEAST_HEIGHT), scroll.getViewport().getHeight() - above);
        int wide = isBeside
                ? scroll.getViewport().getWidth()
                : Math.max(
                        UIScale.scale(LEAST_CARD),
                        scroll.getViewport().getWidth() - UIScale.scale(FORM_WIDTH) - UIScale.scale(GAPS));
        card.showWithin(!isBeside, new Dimension(wide, high));
    }

    private List<ShownColumn<FactorIssue>> columns() {
        return List.of(
                new ShownColumn<>(texts.get("history.revision"), 50, issue -> Integer.toString(issue.revision())),
                new ShownColumn<>(
                        texts.get("history.action"),
                        90,
                        issue -> texts.get("action." + issue.action().name())),
                new ShownColumn<>(
                        texts.get("history.factor"),
                        80,
                        issue -> texts.get(
                                "history.percent", desk.tools().numbers().show(issue.factorPercent()))),
                new ShownColumn<>(
                        texts.get("history.uncertainty"),
                        70,
                        issue -> ShownUncertainty.of(issue)
                                .expandedPercent()
                                .map(u -> desk.tools().numbers().show(u.doubleValue(), Digits.AIR))
                                .orElse("")),
                new ShownColumn<>(texts.get("history.from"), 115, FactorPage::from),
                new ShownColumn<>(
                        texts.get("history.recheck"),
                        100,
                        issue -> issue.isIssue() ? Days.show(issue.recheckBy()) : ""),
                new ShownColumn<>(texts.get("history.issued"), 120, FactorIssue::issuedBy),
                new ShownColumn<>(texts.get("history.approved"), 120, FactorIssue::approvedBy),
                new ShownColumn<>(
                        texts.get("history.checked"),
                        120,
                        issue -> issue.terms().checkedBy()),
                new ShownColumn<>(
                        texts.get("history.kept"),
                        100,
                        issue -> issue.grounds()
                                .keptBy()
                                .map(ChangeDecisionId::text)
                                .orElse("")),
                new ShownColumn<>(texts.get("history.reason"), 260, FactorIssue::reason),
                new ShownColumn<>(
                        texts.get("history.conditions"),
                        200,
                        issue -> issue.terms().conditions()));
    }

    /** Returns from when a revision holds: its first day, and the hour where it says one. */
    private static String from(FactorIssue issue) {
        return (Days.show(issue.inForceFrom()) + " " + issue.terms().atText()).strip();
    }

    private JPanel historyHead() {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill][]"));
        head.setOpaque(false);
        head.add(Form.heading(texts.get("history.title"), "h2"));
        head.add(Commands.button("factor.withdraw", actions.withdraw));
        return head;
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public void dropDraft() {
        model.begin();
    }

    @Override
    public void save() {
        actions.issue();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }

    /** Shows everything anew. */
    private void refresh() {
        Optional<FactorIssue> inForce = model.inForce();
        FactorState now = model.state().orElse(FactorState.NO_FACTOR);
        factor.setText(inForce.map(issue -> texts.get(
                        now.isUsable() ? "head.subtract" : "head.do-not-subtract",
                        desk.tools().numbers().show(issue.factorPercent())))
                .orElse(texts.get("head.none")));
        cards.say(LookedCard.out(desk)
                .map(out -> texts.get(
                        "cards.called-back", desk.tools().problemText().say(Holders.named(out))))
                .orElse(""));
        boolean isLarge = now.isUsable() || inForce.isEmpty();
        factor.putClientProperty("FlatLaf.styleClass", isLarge ? "number" : "doubtfulNumber");
        state.putClientProperty("FlatLaf.styleClass", isLarge ? "h2" : "h1");
        state.setText(texts.get("state." + now.name()));
        dates.say(inForce.map(issue -> texts.get(
                        "head.dates",
                        Integer.toString(issue.revision()),
                        from(issue),
                        Days.show(issue.recheckBy()),
                        issue.meterType().name()))
                .orElse(""));
        group.say(inForce.flatMap(this::group).orElse(""));
        changes.show(inForce.map(this::changes).orElse(List.of()));
        proposal.refresh();
        form.refresh();
        history.show(model.revisions().stream()
                .sorted(Comparator.comparing(FactorIssue::revision).reversed())
                .toList());
        history.select(issue -> model.looked().filter(issue::equals).isPresent());
        model.card().ifPresentOrElse(sieved::show, sieved::hide);
        card.refresh();
        actions.refresh();
    }

    /** Says of which group a revision's factor is, and on which mix it was found; empty where it is of the mix alone. */
    private Optional<String> group(FactorIssue issue) {
        return issue.grounds()
                .group()
                .map(ground -> texts.get(
                        issue.isLent() ? "head.group" : "head.group.tested",
                        ground.group().text(),
                        Integer.toString(ground.version()),
                        ground.testedMix().text(),
                        issue.determinationId().text()));
    }

    private List<Problem> changes(FactorIssue issue) {
        Evidence evidence = desk.evidence().orElseThrow();
        LocalDate today = desk.tools().today();
        List<Problem> said = new ArrayList<>(evidence.whyUntrue(issue, today));
        said.addAll(evidence.seenComing(issue, today));
        said.addAll(evidence.recheck(issue).besideItsDay(today));
        said.addAll(evidence.recheck(issue).why(today, Recheck.Level.NOTE));
        said.addAll(DecisionChanges.of(evidence, issue, today));
        ShownUncertainty.of(issue).note().ifPresent(said::add);
        issue.takenOn()
                .forEach(doubt -> said.add(Problem.warning(
                        "override", "register.doubt-taken-on", doubt.by(), doubt.words(), doubt.reason())));
        return said;
    }
}

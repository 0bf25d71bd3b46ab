package porebench.desk.register;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.StateMark;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.KeptRoom;
import porebench.desk.form.Numbers;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.source.SourceTouch;
import porebench.evidence.source.TouchedMix;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/** What rests on a source, what its draft would do to that, and the stones it was. */
final class SourceSections implements RecordSections {
    private static final int MARK_SIDE = 12;
    private static final int MOST_MIXES = 8;
    private static final int MOST_STONES = 6;
    private static final BigDecimal BELOW_ALL = BigDecimal.valueOf(-100);

    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]6[]4[]14[]4[]"));
    private final SourcesModel model;
    private final Texts texts;
    private final Numbers numbers;
    private final WrappedText touch = new WrappedText("source.touch", "quiet");
    private final RowTable<TouchedMix> mixes;
    private final RowTable<SourcePeriod> stones;
    private final JLabel stonesTitle;
    private final Action open;
    private final MeasurementSection measured;
    private final TrialsSection trials;
    private Optional<String> of = Optional.empty();

    SourceSections(SourcesModel model, Consumer<MixId> openMix, Consumer<TrialId> openTrial) {
        this.model = model;
        this.texts = model.texts();
        this.numbers = model.desk().tools().numbers();
        mixes = new RowTable<>("source.mixes", texts.get("source.mixes"), mixColumns());
        mixes.setMostRows(MOST_MIXES);
        stones = new RowTable<>("source.stones", texts.get("source.stones"), stoneColumns());
        stones.setMostRows(MOST_STONES);
        open = Commands.of(
                texts.get("source.open"),
                () -> mixes.selected().map(TouchedMix::mixId).ifPresent(openMix));
        mixes.on("ENTER", open);
        mixes.onSelect(chosen -> open.setEnabled(chosen.isPresent()));
        mixes.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && mixes.rowAtPoint(event.getPoint()) >= 0) {
                    mixes.selected().map(TouchedMix::mixId).ifPresent(openMix);
                }
            }
        });
        stonesTitle = Form.heading(texts.get("source.stones"), "h2");
        panel.setOpaque(false);
        panel.setName("source.sections");
        panel.add(Form.heading(texts.get("source.mixes"), "h2"));
        panel.add(new KeptRoom(touch, 2), "wmin 0");
        panel.add(mixes.scrolled(), "wmin 0");
        panel.add(Commands.button("source.open", open), "growx 0");
        panel.add(stonesTitle);
        panel.add(stones.scrolled(), "wmin 0");
        measured = new MeasurementSection(model);
        panel.add(measured.component(), "wmin 0, gaptop 10");
        trials = new TrialsSection(model, openTrial);
        panel.add(trials.component(), "wmin 0, gaptop 14");
    }

    private List<ShownColumn<TouchedMix>> mixColumns() {
        return List.of(
                new ShownColumn<TouchedMix>(
                                texts.get("register.mix"),
                                76,
                                mix -> mix.mixId().text())
                        .sortedBy(TouchedMix::mixId),
                new ShownColumn<TouchedMix>(
                                texts.get("register.factor"),
                                52,
                                mix -> factor(mix).map(numbers::show).orElse(""))
                        .number()
                        .sortedBy(mix -> factor(mix).orElse(BELOW_ALL)),
                new ShownColumn<TouchedMix>(
                                texts.get("register.state"),
                                106,
                                mix -> stateWords(mix.state().symbol()))
                        .mark((mix, selected) -> new StateMark(mix.state(), MARK_SIDE))
                        .sortedBy(TouchedMix::state),
                new ShownColumn<TouchedMix>(
                                texts.get("source.then"),
                                118,
                                mix -> stateWords(mix.then().symbol()))
                        .mark((mix, selected) -> new StateMark(mix.then(), MARK_SIDE))
                        .sortedBy(TouchedMix::then),
                new ShownColumn<TouchedMix>(texts.get("source.cards"), 60, mix -> Integer.toString(mix.cardsOut()))
                        .number()
                        .sortedBy(TouchedMix::cardsOut)
                        .tip(texts.get("source.cards.tip")),
                new ShownColumn<TouchedMix>(texts.get("register.trials"), 55, mix -> Integer.toString(mix.trials()))
                        .number()
                        .sortedBy(TouchedMix::trials),
                new ShownColumn<TouchedMix>(texts.get("register.mixTitle"), 150, TouchedMix::title)
                        .sortedBy(TouchedMix::title));
    }

    private static Optional<BigDecimal> factor(TouchedMix mix) {
        return mix.inForce().map(FactorIssue::factorPercent);
    }

    private String stateWords(String symbol) {
        return texts.get("state." + symbol.replace(' ', '-'));
    }

    private List<ShownColumn<SourcePeriod>> stoneColumns() {
        return List.of(
                new ShownColumn<SourcePeriod>(
                        texts.get("source.since"),
                        88,
                        stone -> stone.from().map(Days::show).orElse("")),
                new ShownColumn<SourcePeriod>(
                        texts.get("source.ledge.plain"),
                        100,
                        stone -> stone.newest().value().ledge()),
                new ShownColumn<SourcePeriod>(
                                texts.get("source.relativeDensity.short"),
                                64,
                                stone -> shown(stone.newest().value().relativeDensity()))
                        .number(),
                new ShownColumn<SourcePeriod>(
                                texts.get("source.absorption.short"),
                                56,
                                stone -> shown(stone.newest().value().absorptionPercent()))
                        .number(),
                new ShownColumn<SourcePeriod>(
                        texts.get("source.by"),
                        90,
                        stone -> stone.begun().stamp().who()),
                new ShownColumn<SourcePeriod>(texts.get("source.why"), 170, SourcePeriod::why).wrapped());
    }

    private String shown(Optional<BigDecimal> number) {
        return number.map(numbers::show).orElse("");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void refresh() {
        panel.setVisible(!model.isNew());
        Optional<String> source = model.base().map(version -> version.value().recordId());
        Optional<SourceTouch> found = model.touch();
        // While it is looked up anew what was found of the same source stays, so that nothing flickers.
        if (found.isPresent() || !source.equals(of)) {
            of = source;
            touch.say(model.touchWords());
            show(mixes, found.map(SourceTouch::mixes).orElse(List.of()));
            open.setEnabled(mixes.selected().isPresent());
        }
        List<SourcePeriod> told =
                new ArrayList<>(model.story().map(SourceStory::periods).orElse(List.of()));
        Collections.reverse(told);
        show(stones, told);
        measured.refresh();
        trials.refresh();
    }

    /** Shows other rows, none of them chosen; the same rows keep what is chosen. */
    private static <R> void show(RowTable<R> table, List<R> rows) {
        if (!rows.equals(table.shown())) {
            table.clearSelection();
            table.show(rows);
        }
    }
}

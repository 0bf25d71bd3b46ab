package porebench.desk.register;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.source.SourceTrial;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.record.id.TrialId;

/** The trials made with a source, by stone; one leads to the page of its trials. */
final class TrialsSection {
    private static final int MOST_ROWS = 8;
    private static final double BELOW_ALL = -100;

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
    private final SourcesModel model;
    private final Texts texts;
    private final WrappedText said = new WrappedText("source.trials.said", "quiet");
    private final RowTable<SourceTrial> table;
    private final Action open;
    private Optional<String> of = Optional.empty();

    TrialsSection(SourcesModel model, Consumer<TrialId> openTrial) {
        this.model = model;
        texts = model.texts();
        table = new RowTable<>("source.trials", texts.get("source.trials"), columns());
        table.setMostRows(MOST_ROWS);
        Runnable opening = () -> table.selected().map(SourceTrial::trial).ifPresent(openTrial);
        open = Commands.of(texts.get("source.open-trial"), opening);
        table.on("ENTER", open);
        table.onSelect(chosen -> open.setEnabled(chosen.isPresent()));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && table.rowAtPoint(event.getPoint()) >= 0) {
                    opening.run();
                }
            }
        });
        panel.setOpaque(false);
        panel.add(Form.heading(texts.get("source.trials"), "h2"));
        panel.add(said, "wmin 0");
        panel.add(table.scrolled(), "wmin 0");
        panel.add(Commands.button("source.open-trial", open), "growx 0");
    }

    private List<ShownColumn<SourceTrial>> columns() {
        Numbers numbers = model.desk().tools().numbers();
        return List.of(
                new ShownColumn<SourceTrial>(texts.get("source.measured.on"), 84, trial -> Days.show(trial.on()))
                        .sortedBy(SourceTrial::on),
                new ShownColumn<SourceTrial>(texts.get("source.measured.stone"), 72, TrialsSection::stone)
                        .sortedBy(TrialsSection::stone),
                new ShownColumn<SourceTrial>(
                                texts.get("register.mix"),
                                62,
                                trial -> trial.mix().text())
                        .sortedBy(SourceTrial::mix),
                new ShownColumn<SourceTrial>(
                                texts.get("register.factor"),
                                48,
                                trial -> trial.factorPercent().isPresent()
                                        ? numbers.show(trial.factorPercent().getAsDouble(), Digits.AIR)
                                        : "")
                        .number()
                        .sortedBy(trial -> trial.factorPercent().orElse(BELOW_ALL)),
                new ShownColumn<SourceTrial>(
                                texts.get("source.counts"),
                                54,
                                trial -> texts.get(trial.counts() ? "source.counts.yes" : "source.counts.no"))
                        .sortedBy(SourceTrial::counts),
                new ShownColumn<SourceTrial>(
                                texts.get("source.trial"),
                                60,
                                trial -> trial.trial().text())
                        .sortedBy(SourceTrial::trial),
                new ShownColumn<SourceTrial>(
                                texts.get("source.determination"),
                                90,
                                trial -> trial.determination().text())
                        .sortedBy(SourceTrial::determination));
    }

    private static String stone(SourceTrial trial) {
        return trial.stones().stream()
                .map(stone -> stone.newest().value().ledge())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    JComponent component() {
        return panel;
    }

    void refresh() {
        Optional<String> source = model.base().map(version -> version.value().recordId());
        Optional<List<SourceTrial>> found = model.trials();
        // While it is looked up anew what was found of the same source stays, so that nothing flickers.
        if (found.isEmpty() && source.equals(of)) {
            return;
        }
        of = source;
        List<SourceTrial> trials = found.orElse(List.of());
        if (!trials.equals(table.shown())) {
            table.clearSelection();
            table.show(trials);
        }
        open.setEnabled(table.selected().isPresent());
        said.say(texts.get(
                "source.trials.said",
                trials.size(),
                trials.stream().filter(SourceTrial::counts).count()));
    }
}

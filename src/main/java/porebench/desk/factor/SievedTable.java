package porebench.desk.factor;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Texts;

/** What each reading of a wet-sieved concrete means for the full mixture and for the mortar; not seen with any other concrete. */
final class SievedTable {
    private static final int MOST_ROWS = 12;

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
    private final RowTable<SievedAirs.Row> table;
    private final WrappedText note = new WrappedText("factor.sieved-note", "quiet");
    private final Texts texts;

    SievedTable(Texts texts, Numbers numbers) {
        this.texts = texts;
        table = new RowTable<>(
                "factor.sieved",
                texts.get("sieved.title"),
                List.of(
                        air("sieved.reading", numbers, SievedAirs.Row::reading),
                        air("sieved.concrete", numbers, SievedAirs.Row::sieved),
                        air("sieved.full", numbers, SievedAirs.Row::fullMixture),
                        air("sieved.mortar", numbers, SievedAirs.Row::mortar),
                        new ShownColumn<>(
                                texts.get("sieved.verdict"),
                                90,
                                row -> texts.get(row.passes() ? "sieved.passes" : "sieved.fails"))));
        table.setMostRows(MOST_ROWS);
        panel.setOpaque(false);
        panel.add(Form.heading(texts.get("sieved.title"), "h2"));
        panel.add(note, "wmin 0");
        panel.add(table.scrolled(), "wmin 0");
    }

    private ShownColumn<SievedAirs.Row> air(String key, Numbers numbers, Function<SievedAirs.Row, BigDecimal> value) {
        return new ShownColumn<SievedAirs.Row>(texts.get(key), 110, row -> numbers.show(value.apply(row)))
                .number()
                .sortedBy(value);
    }

    JComponent component() {
        return panel;
    }

    /** Shows the readings of a card, the lowest at which a load passes selected; nothing of one that is not of wet-sieved concrete. */
    void show(FactorCard card) {
        panel.setVisible(card.wetSieved());
        table.show(card.sievedAirs().map(SievedAirs::rows).orElse(List.of()));
        card.sievedAirs().flatMap(SievedAirs::lowest).ifPresent(lowest -> table.select(lowest::equals));
        boolean isKnown = card.sievedAirs().isPresent();
        table.getParent().getParent().setVisible(isKnown);
        note.say(texts.get(isKnown ? "sieved.note" : "sieved.unknown"));
    }

    /** Shows nothing. */
    void hide() {
        panel.setVisible(false);
    }
}

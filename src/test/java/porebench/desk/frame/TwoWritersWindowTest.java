package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.ScriptedAsker;
import porebench.desk.Settings;
import porebench.desk.form.TwoVersions;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.method.sample.Batch;
import porebench.method.sample.Constituent;
import porebench.quantity.Typed;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;
import porebench.store.SqliteShelf;

/** Two people write into one lab book: the second sees both versions before a reason is asked, and loses nothing. */
@NeedsDisplay
class TwoWritersWindowTest {
    private static final MixId MIX = new MixId("HG-101");
    private static final Dimension SMALL = new Dimension(1024, 700);
    private static final int MASS = 3;

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    /** Shows both versions as the program does, and answers all else from the script. */
    private final ScriptedAsker asker = new ScriptedAsker() {
        private final SwingAsker real = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);

        @Override
        public Optional<List<Boolean>> both(
                JComponent over, String record, Stamp theirs, int number, List<TwoVersions.Line> lines) {
            compared.addAll(lines);
            return real.both(over, record, theirs, number, lines);
        }
    };

    private Keys keys;
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openTheBook() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        EventThread.run(() -> window.frame().setSize(SMALL));
        started.startWith(null);
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
        EventThread.run(() -> window.openMix(MIX));
        assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(MIX))))
                .isTrue();
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> {
            for (Window each : Window.getWindows()) {
                if (each instanceof JDialog) {
                    each.dispose();
                }
            }
        });
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        started.close();
        assertThat(asker.failures).isEmpty();
        assertThat(asker.problemsShown).isEmpty();
    }

    private void turnTo(String page) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
        settles();
    }

    private void settles() throws Exception {
        assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                .isTrue();
    }

    /** Keeps another version over a connection of its own. */
    private <T extends Kept> void keptThere(Class<T> kind, String id, UnaryOperator<T> change) {
        try (LabBook there = new SqliteShelf(DemoDesk.DAY).open(started.demoFile())) {
            Version<T> before = there.latest(kind, id).orElseThrow();
            assertThat(there.keep(
                            List.of(Draft.correcting(before, change.apply(before.value()))), "N. Orrin", "meanwhile"))
                    .isEmpty();
        }
    }

    private <T extends Kept> Version<T> newest(Class<T> kind, String id) {
        try (LabBook there = new SqliteShelf(DemoDesk.DAY).open(started.demoFile())) {
            return there.latest(kind, id).orElseThrow();
        }
    }

    private JTextComponent field(String name) {
        return Named.in(window.current().component(), JTextComponent.class, name);
    }

    private AbstractButton button(String name) {
        return Named.in(window.current().component(), AbstractButton.class, name);
    }

    /** Types digits in the place of what a field says. */
    private void type(String field, String digits) throws Exception {
        Keys.bringTo(() -> field(field));
        EventThread.run(() -> field(field).selectAll());
        digits.chars().forEach(keys::strike);
        assertThat(EventThread.comes(() -> field(field).getText().equals(digits)))
                .as("what is typed into " + field + ", which says "
                        + field(field).getText())
                .isTrue();
    }

    private static Optional<JTable> shown() {
        Window active = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusedWindow();
        return active instanceof JDialog dialog && "ask".equals(dialog.getName())
                ? Optional.of(Named.in(dialog, JTable.class, "both"))
                : Optional.empty();
    }

    /** Waits for both versions on view, the keyboard in them, the dialog within the window. */
    private JTable both() throws Exception {
        assertThat(EventThread.comes(() -> shown().isPresent())).isTrue();
        JTable table = EventThread.call(() -> shown().orElseThrow());
        Keys.bringTo(() -> table);
        Dimension size = EventThread.call(() -> table.getTopLevelAncestor().getSize());
        assertThat(size.width).isLessThanOrEqualTo(SMALL.width);
        assertThat(size.height).isLessThanOrEqualTo(SMALL.height);
        assertThat(asker.acts).as("no reason is asked before").isEmpty();
        return table;
    }

    /** Leaves the table for the button behind it, and presses that. */
    private void goOn() throws Exception {
        keys.strikeUntil(
                () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
                                instanceof AbstractButton button
                        && "goOn".equals(button.getName()),
                "the button that goes on",
                KeyEvent.VK_TAB);
        keys.strikeUntil(() -> shown().isEmpty(), "the end of the choice", KeyEvent.VK_ENTER);
    }

    private void save() throws Exception {
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    }

    /** Types another mass into the first constituent. */
    private void typeMass(String digits) throws Exception {
        JTable constituents = Named.in(window.current().component(), JTable.class, "constituents");
        EventThread.run(() -> constituents.changeSelection(0, MASS, false, false));
        Keys.bringTo(() -> constituents);
        for (int at = 0; at < digits.length(); at++) {
            String sofar = digits.substring(0, at + 1);
            keys.strikeUntil(() -> Keys.isTyping(constituents, sofar), sofar, digits.charAt(at));
        }
        keys.strikeUntil(() -> !constituents.isEditing(), "the end of typing", KeyEvent.VK_ENTER);
    }

    @Test
    void aMixThatTwoPeopleEditComesTogetherLineByLineBeforeAReasonIsAsked() throws Exception {
        turnTo("mix");
        typeMass("682");
        type("soakMinutes", "20");
        keptThere(MixDesign.class, "HG-101", TwoWritersWindowTest::othersMix);
        save();
        JTable table = both();
        assertThat(SortedVersions.cells(table))
                .containsExactly(
                        "Target air | 5.5 % air | \u25CF 6.0 % air | \u25CB 5.5 % air",
                        "Soak time | 15 min | \u25CB 25 min | \u25CF 20 min",
                        "Velmar sand, mass | 670 kg | \u25CB 670 kg | \u25CF 682 kg",
                        "Drennick granite 20 mm, mass | 1050 kg | \u25CF 1040 kg | \u25CB 1050 kg");
        SortedVersions.takeWhatIsClicked(table, keys);
        // Back to the draft: nothing has changed, and nothing is asked.
        keys.strikeUntil(() -> shown().isEmpty(), "the end of the choice", KeyEvent.VK_ESCAPE);
        assertThat(EventThread.call(() -> field("soakMinutes").getText())).isEqualTo("20");
        assertThat(asker.acts).isEmpty();
        // Theirs of what both changed, with the keys.
        Keys.bringTo(() -> field("soakMinutes"));
        // The factor that the mix has becomes untrue.
        asker.confirmations.add(true);
        asker.reasons.add("both of us measured");
        save();
        JTable again = both();
        keys.strikeUntil(() -> again.getSelectedRow() == 1, "the second line", KeyEvent.VK_DOWN);
        keys.strikeUntil(
                () -> String.valueOf(again.getValueAt(1, 2)).startsWith("\u25CF"), "theirs", KeyEvent.VK_SPACE);
        goOn();
        assertThat(EventThread.comes(() -> newest(MixDesign.class, "HG-101").number() == 3))
                .isTrue();
        settles();
        Version<MixDesign> kept = newest(MixDesign.class, "HG-101");
        assertThat(kept.stamp().why()).isEqualTo("both of us measured");
        assertThat(kept.value().soakMinutes()).contains(new BigDecimal("25"));
        assertThat(kept.value().batch().targetAirPercent()).isEqualTo("6.0");
        assertThat(kept.value().batch().constituents())
                .extracting(one -> one.mass().toString())
                .startsWith("682 kg", "1040 kg");
        assertThat(asker.acts).as("one reason, at the end").hasSize(1);
    }

    private static MixDesign othersMix(MixDesign mix) {
        Batch batch = mix.batch();
        List<Constituent> rows = new ArrayList<>(batch.constituents());
        Constituent stone = rows.get(1);
        rows.set(
                1,
                new Constituent(
                        stone.name(),
                        stone.role(),
                        stone.sourceId(),
                        Typed.of("1040", stone.mass().unit()),
                        stone.state(),
                        stone.absorptionPercent(),
                        stone.moisturePercent(),
                        stone.relativeDensity(),
                        stone.retainedPercent()));
        return new MixDesign(
                mix.id(),
                mix.title(),
                new Batch(rows, batch.volume(), new BigDecimal("6.0"), batch.wetSieved()),
                Optional.of(new BigDecimal("25")),
                mix.airTolerancePercent(),
                mix.profileId(),
                mix.remarks(),
                mix.plant());
    }

    @Test
    void aSourceSaysThatSomebodyKeptAnotherVersionAndUndoBringsTheDraftBack() throws Exception {
        turnTo("sources");
        type("absorption", "1.3");
        int ledge = EventThread.call(() -> field("ledge").getLocationOnScreen().y);
        keptThere(
                Source.class,
                "S-01",
                source -> new Source(
                                source.id(),
                                source.name(),
                                source.role(),
                                source.place(),
                                source.ledge(),
                                source.relativeDensity(),
                                Optional.of(new BigDecimal("1.5")),
                                "washed")
                        .as(Optional.of(SourceStep.CORRECTED), Optional.empty(), Optional.of("mistyped")));
        EventThread.run(() -> window.desk().refresh());
        assertThat(EventThread.comes(() -> button("source.save").getText().equals("See both ...")))
                .isTrue();
        assertThat(EventThread.call(() -> field("source.newer").getText())).startsWith("N. Orrin saved version 2 on ");
        assertThat(EventThread.call(() -> field("ledge").getLocationOnScreen().y))
                .as("no field has moved")
                .isEqualTo(ledge);
        EventThread.run(
                () -> Named.in(window.content(), JComboBox.class, "step").setSelectedIndex(1));
        type("changedOn", window.desk().tools().today().toString());
        EventThread.run(() -> field("reason").setText("tested again"));
        // Factors become untrue.
        asker.confirmations.add(false);
        save();
        JTable table = both();
        assertThat(SortedVersions.cells(table))
                .containsExactly(
                        "Absorption | 1.1 % | \u25CB 1.5 % | \u25CF 1.3 %",
                        "Remarks | nothing | \u25CF washed | \u25CB nothing",
                        "What this version is | nothing | ○ nothing | ● Other material from a day on",
                        "First day of the stone | nothing | \u25CB nothing | \u25CF "
                                + window.desk().tools().today(),
                        "Reason | nothing | \u25CB nothing | \u25CF tested again");
        goOn();
        // The person thinks better of it where it is said what it does: what was chosen stands in the form.
        assertThat(EventThread.comes(() -> button("source.save").getText().equals("Save")))
                .isTrue();
        assertThat(EventThread.comes(asker.confirmations::isEmpty)).isTrue();
        assertThat(EventThread.call(() -> field("remarks").getText())).isEqualTo("washed");
        assertThat(EventThread.call(() -> field("absorption").getText())).isEqualTo("1.3");
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(EventThread.comes(() -> field("remarks").getText().isEmpty()))
                .isTrue();
        assertThat(EventThread.call(() -> field("absorption").getText())).isEqualTo("1.3");
        assertThat(EventThread.call(() -> button("source.save").getText())).isEqualTo("See both ...");
        assertThat(newest(Source.class, "S-01").number()).isEqualTo(2);
    }

    @Test
    void aTrialThatTwoPeopleCorrectComesTogetherToo() throws Exception {
        EventThread.run(() -> window.openTrial(new TrialId("T-040")));
        settles();
        EventThread.run(() -> button("correct").doClick(0));
        type("gauge", "5.9");
        keptThere(Trial.class, "T-040", TwoWritersWindowTest::windy);
        asker.reasons.add("misread");
        save();
        JTable table = both();
        assertThat(SortedVersions.cells(table))
                .containsExactly(
                        "Gauge reading | 6.0 % air | \u25CB 6.0 % air | \u25CF 5.9 % air",
                        "Remarks | nothing | \u25CF windy | \u25CB nothing");
        goOn();
        assertThat(EventThread.comes(() -> newest(Trial.class, "T-040").number() == 3))
                .isTrue();
        settles();
        Trial kept = newest(Trial.class, "T-040").value();
        assertThat(kept.remarks()).isEqualTo("windy");
        assertThat(kept.readings().gaugePercent()).contains(new BigDecimal("5.9"));
        assertThat(asker.acts).as("one reason, at the end").hasSize(1);
    }

    private static Trial windy(Trial trial) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                trial.meterId(),
                trial.readings(),
                "windy",
                trial.keptBecause(),
                trial.struckBecause(),
                trial.elevationMetres(),
                trial.simulated());
    }
}

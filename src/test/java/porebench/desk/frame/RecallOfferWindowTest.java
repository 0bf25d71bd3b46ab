package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
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
import porebench.desk.ScriptedAsker;
import porebench.desk.table.RowTable;
import porebench.exchange.DemoCards;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** After a change of a source the list of cards to call back is offered; from the page of a factor one key leads to its cards. */
@NeedsDisplay
class RecallOfferWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheBook() throws Exception {
        keys = new Keys();
        Path file = folder.resolve("cards.porebench");
        try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
            new DemoCards().fill(book);
        }
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(file);
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> window.current().dropDraft());
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private <T extends Component> T on(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    private void type(String field, String letters) throws Exception {
        Keys.bringTo(() -> on(JTextComponent.class, field));
        EventThread.run(() -> on(JTextComponent.class, field).selectAll());
        letters.chars().forEach(letter -> keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter)));
        assertThat(EventThread.comes(
                        () -> on(JTextComponent.class, field).getText().equalsIgnoreCase(letters)))
                .as(field)
                .isTrue();
    }

    private void press(String button) throws Exception {
        Keys.bringTo(() -> on(AbstractButton.class, button));
        keys.strike(KeyEvent.VK_SPACE);
    }

    private boolean isOnCardsOut() {
        return window.pages()
                .named("cards")
                .filter(page -> page == window.current())
                .isPresent();
    }

    private JTable cards() {
        return on(JTable.class, "cards.table");
    }

    private long cardsOf(String mix) {
        return IntStream.range(0, cards().getRowCount())
                .filter(row -> mix.equals(cards().getValueAt(row, 0)))
                .count();
    }

    private void changeTheSource() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        assertThat(EventThread.comes(() -> on(RowTable.class, "source.table").getRowCount() > 1))
                .isTrue();
        EventThread.run(() -> {
            JTable table = on(RowTable.class, "source.table");
            int row = IntStream.range(0, table.getRowCount())
                    .filter(one -> IntStream.range(0, table.getColumnCount())
                            .anyMatch(column -> "Drennick granite 20 mm".equals(table.getValueAt(one, column))))
                    .findFirst()
                    .orElseThrow();
            table.setRowSelectionInterval(row, row);
        });
        assertThat(EventThread.comes(() -> {
                    JTable mixes = on(RowTable.class, "source.mixes");
                    return IntStream.range(0, mixes.getRowCount())
                            .anyMatch(row -> "HG-101".equals(mixes.getValueAt(row, 0)));
                }))
                .isTrue();
        LocalDate today = EventThread.call(() -> window.desk().tools().today());
        type("ledge", "b 3");
        Keys.bringTo(() -> on(JComboBox.class, "step"));
        keys.strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(
                        () -> "changed".equals(on(JComboBox.class, "step").getSelectedItem())))
                .isTrue();
        type("changedOn", today.toString());
        type("reason", "moved");
        press("source.save");
    }

    @Test
    void afterASourceChangeTheListOfCardsIsOfferedAndShown() throws Exception {
        asker.confirmations.add(true);
        asker.confirmations.add(true);
        changeTheSource();
        assertThat(EventThread.comes(this::isOnCardsOut))
                .as(asker.asked.toString())
                .isTrue();
        assertThat(asker.asked).contains("Cards to call back");
        assertThat(asker.questions).last().asString().contains("truck 12 (HG-101/r2/");
        // Three of its revision 2, whose source has changed, and the one of revision 1 that was out already.
        assertThat(EventThread.comes(() -> cardsOf("HG-101") == 4)).isTrue();
        assertThat(EventThread.call(() -> ((JComboBox<?>) on(JComboBox.class, "cards.view")).getSelectedIndex()))
                .isZero();
    }

    @Test
    void whoDoesNotWantTheListStaysOnThePage() throws Exception {
        asker.confirmations.add(true);
        asker.confirmations.add(false);
        changeTheSource();
        assertThat(EventThread.comes(() -> asker.questions.size() == 2)).isTrue();
        EventThread.settle();
        assertThat(EventThread.call(this::isOnCardsOut)).isFalse();
    }

    @Test
    void onePressLeadsFromTheFactorToTheCardsThatAreOut() throws Exception {
        EventThread.run(() -> {
            window.openMix(new MixId("HG-101"));
            window.turnTo(window.pages().steps().get(4));
        });
        assertThat(EventThread.comes(
                        () -> on(AbstractButton.class, "factor.cardsOut").isEnabled()))
                .isTrue();
        press("factor.cardsOut");
        assertThat(EventThread.comes(this::isOnCardsOut)).isTrue();
        assertThat(EventThread.comes(() -> cards().getSelectedRowCount() == 4)).isTrue();
        for (int row : EventThread.call(() -> cards().getSelectedRows())) {
            assertThat(EventThread.call(() -> cards().getValueAt(row, 0))).isEqualTo("HG-101");
        }
    }
}

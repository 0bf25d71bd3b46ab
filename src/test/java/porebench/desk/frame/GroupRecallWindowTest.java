package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
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
import porebench.evidence.Bench;
import porebench.evidence.GroupBench;
import porebench.record.CardHolder;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Truck 12 holds a card of a member of a group: it is named before the group's factor is issued, and its card called back after. */
@NeedsDisplay
class GroupRecallWindowTest {
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
        started = new StartedWindow(folder, asker);
        window = started.window();
        new GroupBench(Files.createDirectories(folder.resolve("own"))).close();
        Path file = folder.resolve("own").resolve("book.porebench");
        try (LabBook book = Books.SHELF.open(file)) {
            Books.keep(
                    book,
                    Samples.determination("M-2/1", "M-2"),
                    Samples.trial("M-2-T", "M-2", "M-2/1", "5.4"),
                    Samples.issue("M-2", 1, "M-2/1", LocalDate.of(2026, 3, 9)));
            Books.keep(book, new CardPrint(new MixId("M-2"), 1, 1, "A6", CardPrint.PRINTER));
            Books.keep(
                    book,
                    new CardStep(
                            new MixId("M-2"),
                            1,
                            1,
                            1,
                            CardStep.Act.HANDED_OUT,
                            Optional.of(new CardHolder(CardHolder.Kind.TRUCK, "12")),
                            LocalDateTime.of(2026, 3, 10, 8, 0),
                            "M. Ash",
                            ""));
        }
        started.startWith(file);
        EventThread.run(() -> {
            window.openMix(Bench.MIX);
            window.turnTo(window.pages().named("factor").orElseThrow());
        });
        assertThat(EventThread.comes(
                        () -> on(AbstractButton.class, "factor.issueForGroup").isShowing()))
                .isTrue();
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

    private void issueForTheGroup() throws Exception {
        type("reason", "one for all");
        int boxes =
                EventThread.call(() -> on(JPanel.class, "factor.doubt-boxes").getComponentCount() / 2);
        for (int box = 0; box < boxes; box++) {
            String name = "factor.doubt." + box;
            press(name);
            assertThat(EventThread.comes(() -> on(AbstractButton.class, name).isSelected()))
                    .isTrue();
        }
        type("overrideBy", "ada");
        type("overrideReason", "looked at");
        press("factor.issueForGroup");
    }

    @Test
    void whoHoldsACardOfAMemberIsNamedBeforeAndItsCardIsOfferedAfter() throws Exception {
        asker.confirmations.addAll(List.of(true, true));
        issueForTheGroup();
        assertThat(EventThread.comes(() -> window.pages()
                        .named("cards")
                        .filter(page -> page == window.current())
                        .isPresent()))
                .as("%s %s", asker.problemsShown, asker.questions)
                .isTrue();
        assertThat(asker.questions.get(0)).contains("M-1, M-2, M-3", "truck 12 (M-2/r1/1)");
        assertThat(asker.questions.get(1)).contains("truck 12 (M-2/r1/1)");
        assertThat(EventThread.comes(() -> on(JTable.class, "cards.table").getRowCount() == 1))
                .isTrue();
    }

    @Test
    void whoDoesNotGoOnChangesNothing() throws Exception {
        issueForTheGroup();
        assertThat(EventThread.comes(() -> asker.questions.size() == 1)).isTrue();
        EventThread.settle();
        assertThat(EventThread.call(() -> window.desk().evidence().orElseThrow().issues()))
                .isEmpty();
        assertThat(asker.questions).hasSize(1);
    }
}

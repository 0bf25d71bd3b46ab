package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
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
import porebench.desk.form.WrappedText;
import porebench.evidence.RegisterRow;
import porebench.exchange.DemoYear;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** The list of mixes of a laboratory with 400 of them, by real keys, in the smallest usual window. */
@NeedsDisplay
class MixRailWindowTest {
    private static final int MIXES = 400;

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openALargeLaboratory() throws Exception {
        keys = new Keys();
        Path file = folder.resolve("large.porebench");
        try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
            // A laboratory of its own: no band says that it is the demo.
            assertThat(book.keep(
                            List.of(Draft.of(new Laboratory("Large laboratory", "", false))),
                            "T. Ester",
                            "made for a test"))
                    .isEmpty();
            new DemoYear().fill(book);
            MixDesign demo =
                    book.latest(MixDesign.class, "HG-104").orElseThrow().value();
            List<Draft> more = new ArrayList<>();
            for (int number = 9; number <= MIXES; number++) {
                Optional<String> plant =
                        number == 250 ? Optional.of("Planta de Almería, línea 2") : Optional.<String>empty();
                more.add(Draft.of(new MixDesign(
                        new MixId("HS-%03d".formatted(number)),
                        "Slab %d".formatted(number),
                        demo.batch(),
                        demo.soakMinutes(),
                        demo.airTolerancePercent(),
                        demo.profileId(),
                        "",
                        plant)));
            }
            assertThat(book.keep(more, "T. Ester", "made for a test")).isEmpty();
        }
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(file);
        EventThread.run(() -> window.frame().setSize(new Dimension(1024, 700)));
        boolean isThere = EventThread.comesWithin(
                10,
                () -> open().equals("HG-101")
                        && window.content().getWidth() <= 1024
                        && count().equals("400")
                        && focus().equals("mixes"));
        assertThat(isThere)
                .as(
                        "%s of %s, %s wide, keyboard at %s",
                        open(), count(), window.content().getWidth(), focus())
                .isTrue();
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
        assertThat(asker.asked).isEmpty();
    }

    private JList<?> mixes() {
        return Named.in(window.content(), JList.class, "mixes");
    }

    private JTextField search() {
        return Named.in(window.content(), JTextField.class, "findMix");
    }

    private String count() {
        return Named.in(window.content(), JLabel.class, "mixes.count").getText();
    }

    private String open() {
        return window.desk().selected().map(MixId::text).orElse("");
    }

    private static String focus() {
        return Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .map(Component::getName)
                .orElse("");
    }

    private void goToSearch() throws Exception {
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
        assertThat(EventThread.comesWithin(10, () -> focus().equals("findMix")))
                .as("the keyboard is at %s", focus())
                .isTrue();
    }

    private void type(String words) throws Exception {
        for (char letter : words.toUpperCase(java.util.Locale.ROOT).toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        assertThat(EventThread.comesWithin(10, () -> search().getText().equals(words)))
                .as("%s typed, but the field has %s", words, search().getText())
                .isTrue();
    }

    private boolean comesToCount(String words) throws Exception {
        boolean comes = EventThread.comesWithin(10, () -> count().equals(words));
        assertThat(count()).as("with the keyboard at %s", focus()).isEqualTo(words);
        return comes;
    }

    @Test
    void theListSaysHowManyThereAreAndShowsAsManyAsFit() throws Exception {
        assertThat(count()).isEqualTo("400");
        int shown = EventThread.call(() -> mixes().getVisibleRect().height / mixes().getFixedCellHeight());
        assertThat(shown)
                .as("%s high in %s", mixes().getFixedCellHeight(), mixes().getVisibleRect())
                .isGreaterThanOrEqualTo(10);
        assertThat(mixes().getFixedCellHeight()).isPositive();
    }

    @Test
    void wordsOfItsPlantInAnyOrderFindAMixWithoutAccentsOrCapitals() throws Exception {
        goToSearch();
        type("linea almeria");
        assertThat(comesToCount("1 of 400")).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comesWithin(10, () -> open().equals("HS-250"))).isTrue();
        assertThat(EventThread.comesWithin(10, () -> focus().equals("mixes")))
                .as("the keyboard is at %s", focus())
                .isTrue();
    }

    @Test
    void aMixIsFoundByTheNameOfASourceAndByItsState() throws Exception {
        String source =
                window.desk().evidence().orElseThrow().sources().get(0).value().name();
        EventThread.run(() -> search().setText(source + " in force"));
        assertThat(EventThread.comesWithin(10, () -> {
                    List<String> found = found();
                    return found.contains("HG-101") && found.size() < 8;
                }))
                .isTrue();
    }

    private List<String> found() {
        List<String> found = new ArrayList<>();
        for (int index = 0; index < mixes().getModel().getSize(); index++) {
            found.add(((RegisterRow) mixes().getModel().getElementAt(index))
                    .mixId()
                    .text());
        }
        return found;
    }

    @Test
    void enterWithSeveralPutsTheKeyboardOnThemAndOpensNone() throws Exception {
        String before = open();
        goToSearch();
        type("slab 3");
        assertThat(EventThread.comesWithin(10, () -> count().endsWith(" of 400")))
                .isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comesWithin(10, () -> focus().equals("mixes")))
                .as("the keyboard is at %s", focus())
                .isTrue();
        assertThat(open()).isEqualTo(before);
        String first = found().get(0);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comesWithin(10, () -> open().equals(first))).isTrue();
    }

    @Test
    void downGoesToTheListAndEscapeClearsTheSearch() throws Exception {
        goToSearch();
        type("slab 077");
        assertThat(comesToCount("1 of 400")).isTrue();
        keys.strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comesWithin(10, () -> focus().equals("mixes")))
                .as("the keyboard is at %s", focus())
                .isTrue();
        goToSearch();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(comesToCount("400")).isTrue();
        assertThat(focus()).isEqualTo("findMix");
        assertThat(search().getText()).isEmpty();
    }

    @Test
    void aLetterOnTheListOpensNothing() throws Exception {
        String before = open();
        EventThread.run(() -> mixes().requestFocusInWindow());
        assertThat(EventThread.comesWithin(10, () -> focus().equals("mixes")))
                .as("the keyboard is at %s", focus())
                .isTrue();
        keys.strike(KeyEvent.VK_R);
        keys.strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comesWithin(10, () -> !open().equals(before))).isTrue();
        assertThat(open()).isEqualTo("HG-102");
    }

    @Test
    void theKeyboardThatLosesItsPlaceComesToTheListAndNotToNewMix() throws Exception {
        JTextField title = Named.in(window.pages().named("mix").orElseThrow().place(), JTextField.class, "title");
        EventThread.run(() -> title.requestFocusInWindow());
        assertThat(EventThread.comesWithin(10, title::isFocusOwner)).isTrue();
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        assertThat(EventThread.comesWithin(10, () -> !title.isFocusOwner() && !focus().isEmpty()))
                .isTrue();
        assertThat(focus()).isNotEqualTo("newMix");
    }

    @Test
    void tabGoesFromTheListThroughTheRegistersToTheSearchAndThenToNewMix() throws Exception {
        EventThread.run(() -> mixes().requestFocusInWindow());
        assertThat(EventThread.comesWithin(10, () -> focus().equals("mixes")))
                .as("the keyboard is at %s", focus())
                .isTrue();
        List<String> passed = new ArrayList<>();
        while (!focus().equals("newMix")) {
            String before = EventThread.call(MixRailWindowTest::focus);
            keys.strikeUntil(() -> !focus().equals(before), "what follows " + before, KeyEvent.VK_TAB);
            passed.add(focus());
            assertThat(passed).hasSizeLessThan(20);
        }
        assertThat(passed).startsWith("register.sources").endsWith("findMix", "newMix");
    }

    @Test
    void aSlowBookIsLookedUpAndNotTakenForOneWithoutTheMix() throws Exception {
        started.gate().shut("latest");
        EventThread.run(() -> search().setText("almeria"));
        assertThat(said()).isEqualTo("Looking …");
        goToSearch();
        keys.strike(KeyEvent.VK_ENTER);
        started.gate().open();
        assertThat(EventThread.comesWithin(10, () -> open().equals("HS-250"))).isTrue();
        EventThread.run(() -> search().setText("almeria nowhere"));
        assertThat(said()).isEqualTo("No mix has all of these words.");
    }

    private String said() {
        return Named.in(window.content(), WrappedText.class, "mixes.nothing").getText();
    }
}

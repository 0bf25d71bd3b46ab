package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
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
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** In every form, fields, boxes, buttons and tables stay where they are when something is said of what was typed. */
@NeedsDisplay
class StillFormsWindowTest {
    private static final String NO_NUMBER = "five";

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheDemoInASmallWindow() throws Exception {
        keys = new Keys();
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(demo::open);
        EventThread.run(() -> window.desk().setPerson("M. Sorrel"));
        EventThread.run(() -> window.frame().setSize(new Dimension(1024, 700)));
        MixId open = new MixId("HG-108");
        EventThread.run(() -> window.openMix(open));
        assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(open))))
                .isTrue();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(window::close);
        assertThat(demo.asker.failures).isEmpty();
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    private static Stream<Component> all(Container within) {
        return Stream.of(within.getComponents())
                .flatMap(child -> child instanceof Container inner
                        ? Stream.concat(Stream.of(child), all(inner))
                        : Stream.of(child));
    }

    /** Returns where on the page everything stands that can be typed in, chosen from, pressed or looked up. */
    private Map<String, Rectangle> places() {
        Map<String, Rectangle> places = new LinkedHashMap<>();
        Container page = window.current().component();
        List<Component> parts = all(page)
                .filter(each -> each.isShowing() && each.getName() != null)
                .filter(each -> each instanceof JTextField
                        || each instanceof JComboBox<?>
                        || each instanceof AbstractButton
                        || each instanceof JTable)
                .toList();
        for (Component part : parts) {
            // Within what is scrolled, since the page follows the keyboard.
            Container scrolled = SwingUtilities.getAncestorOfClass(porebench.desk.form.TallPanel.class, part);
            Container within = scrolled == null ? page : scrolled;
            Rectangle place = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), within);
            if (part instanceof JTable) {
                // What its rows need is theirs; what stands below it tells.
                place.height = 0;
            }
            places.put(part.getName(), place);
        }
        return places;
    }

    /** Returns what stands elsewhere now. */
    private List<String> moved(Map<String, Rectangle> before) throws Exception {
        Map<String, Rectangle> now = EventThread.call(this::places);
        return before.entrySet().stream()
                .filter(each -> !each.getValue().equals(now.get(each.getKey())))
                .map(each -> each.getKey() + " from " + each.getValue() + " to " + now.get(each.getKey()))
                .toList();
    }

    private List<String> said() {
        return all(window.current().component())
                .filter(each -> each.isShowing() && each instanceof JTextComponent && each.getName() != null)
                .filter(each ->
                        each.getName().endsWith(".message") || each.getName().matches(".*(roblems|oubts)\\.\\d+"))
                .map(each -> each.getName() + ": " + ((JTextComponent) each).getText())
                .filter(each -> !each.endsWith(": "))
                .toList();
    }

    private void turnTo(String page) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
        assertThat(EventThread.call(() -> window.current().name())).isEqualTo(page);
    }

    /** Types what is no number into fields, leaves the last one by the tabulator, then takes it out again. */
    private void nothingMovesWhenWrong(String... fields) throws Exception {
        Map<String, Rectangle> before = EventThread.call(this::places);
        List<String> saidBefore = EventThread.call(this::said);
        Map<String, String> texts = new LinkedHashMap<>();
        for (String field : fields) {
            Keys.bringTo(() -> named(JTextField.class, field));
            texts.put(
                    field, EventThread.call(() -> named(JTextField.class, field).getText()));
            EventThread.run(() -> named(JTextField.class, field).setText(NO_NUMBER));
            keys.strike(KeyEvent.VK_TAB);
            assertThat(EventThread.comes(() -> !named(JTextField.class, field).isFocusOwner()))
                    .isTrue();
            assertThat(moved(before)).as("with " + field).isEmpty();
        }
        assertThat(EventThread.call(this::said)).as("what is said").hasSizeGreaterThan(saidBefore.size());
        for (String field : fields) {
            EventThread.run(() -> named(JTextField.class, field).setText(texts.get(field)));
            assertThat(moved(before)).as("without " + field).isEmpty();
        }
    }

    /** Returns the fields of a part of the page in which something can be typed. */
    private String[] fields(String part) throws Exception {
        return EventThread.call(() -> all(part.isEmpty() ? window.current().component() : named(JComponent.class, part))
                .filter(each -> each instanceof JTextField field
                        && field.isShowing()
                        && field.isEditable()
                        && field.isEnabled()
                        && field.getName() != null)
                .map(Component::getName)
                .toArray(String[]::new));
    }

    @Test
    void nothingMovesOnThePagesOfAMix() throws Exception {
        for (String page : List.of("mix", "sample", "trials", "factor")) {
            turnTo(page);
            if (page.equals("sample")) {
                EventThread.run(
                        () -> named(AbstractButton.class, "sample.settings").doClick());
            }
            nothingMovesWhenWrong(fields(""));
            EventThread.run(() -> window.current().dropDraft());
        }
    }

    /** What is found late, as by the look through the lab book, comes below the page. */
    @Test
    void nothingMovesWhenABarComesAcrossTheWindow() throws Exception {
        for (String bar : List.of("warnings", "firstSteps")) {
            turnTo("mix");
            Point before =
                    EventThread.call(() -> named(JTextField.class, "title").getLocationOnScreen());
            EventThread.run(() -> {
                JComponent part = Named.in(window.content(), JComponent.class, bar);
                assertThat(part.isVisible()).as(bar).isFalse();
                part.setVisible(true);
                window.content().validate();
                assertThat(part.getHeight()).as(bar).isPositive();
                assertThat(named(JTextField.class, "title").getLocationOnScreen())
                        .isEqualTo(before);
                part.setVisible(false);
            });
        }
    }

    @Test
    void nothingMovesInTheFormsOfTheRegisters() throws Exception {
        for (String page : List.of("sources", "meters", "equipment")) {
            turnTo(page);
            String what = page.equals("equipment") ? "equipment" : page.substring(0, page.length() - 1);
            EventThread.run(() -> named(JTable.class, what + ".table").changeSelection(0, 0, false, false));
            nothingMovesWhenWrong(fields(what + ".record"));
            EventThread.run(() -> window.current().dropDraft());
        }
    }

    @Test
    void nothingMovesWhenAChangeOfASourceIsSaidToEndFactorsAndLongWordsAreReadWhole() throws Exception {
        turnTo("sources");
        EventThread.run(() -> named(JTable.class, "source.table").changeSelection(0, 0, false, false));
        Map<String, Rectangle> before = EventThread.call(this::places);
        EventThread.run(() -> named(JTextField.class, "relativeDensity").setText("2.71"));
        EventThread.run(() -> named(JComboBox.class, "step").setSelectedIndex(1));
        EventThread.run(() -> named(JTextField.class, "changedOn")
                .setText(window.desk().tools().today().toString()));
        assertThat(EventThread.comes(
                        () -> named(JComponent.class, "source.effects").isShowing()))
                .isTrue();
        assertThat(moved(before)).isEmpty();
        Keys.bringTo(() -> named(JTextField.class, "absorption"));
        EventThread.run(() -> named(JTextField.class, "absorption").setText("1,15,3"));
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(
                        () -> named(JComponent.class, "absorption.message").isShowing()))
                .isTrue();
        assertThat(whole("absorption")).isEmpty();
        Keys.bringTo(() -> named(JTextField.class, "absorption"));
        assertThat(EventThread.comes(() -> !whole("absorption").isEmpty())).isTrue();
        assertThat(whole("absorption"))
                .isEqualTo(EventThread.call(
                        () -> named(JTextComponent.class, "absorption.message").getText()))
                .contains("Type a point as the decimal sign");
        assertThat(moved(before)).isEmpty();
        EventThread.run(() -> window.current().dropDraft());
    }

    /** Returns what is said whole of a field, over what lies below; empty text where nothing is. */
    private String whole(String field) {
        return all(window.frame().getLayeredPane())
                .filter(each -> (field + ".message.whole").equals(each.getName()) && each.isShowing())
                .map(each -> ((JTextComponent) each).getText())
                .findFirst()
                .orElse("");
    }

    @Test
    void noFieldOfATrialMovesWhenSomebodyElseKeepsAnotherVersionMeanwhile() throws Exception {
        turnTo("trials");
        EventThread.run(() -> named(JTable.class, "trials").changeSelection(0, 0, false, false));
        EventThread.run(() -> named(AbstractButton.class, "correct").doClick());
        EventThread.run(() -> named(JTextField.class, "remarks").setText("mine"));
        String id = EventThread.call(
                () -> String.valueOf(named(JTable.class, "trials").getValueAt(0, 0)));
        Map<String, Rectangle> before = EventThread.call(this::places);
        DemoDesk.aside(() -> {
            LabBook book = demo.desk.book();
            Books.correct(
                    book, book.latest(Trial.class, id).orElseThrow().value().struck("spilt"));
            return true;
        });
        EventThread.run(demo.desk::refresh);
        assertThat(EventThread.comes(() -> named(JComponent.class, "newer").isShowing()))
                .isTrue();
        // What is told of the trial below the table is longer now: it was struck.
        assertThat(moved(before)).allMatch(each -> each.startsWith("photo"));
        EventThread.run(() -> window.current().dropDraft());
    }

    @Test
    void nothingMovesInTheFormOfACalibration() throws Exception {
        EventThread.run(() -> window.openMeter(new MeterId("B-1")));
        assertThat(EventThread.comes(
                        () -> named(AbstractButton.class, "meter.begin").isShowing()))
                .isTrue();
        EventThread.run(() -> named(AbstractButton.class, "meter.begin").doClick());
        nothingMovesWhenWrong(fields("entry.form"));
        Map<String, Rectangle> before = EventThread.call(this::places);
        EventThread.run(() -> named(AbstractButton.class, "entry.save").doClick());
        assertThat(EventThread.comes(
                        () -> named(JTextComponent.class, "entry.refusal").isShowing()))
                .isTrue();
        assertThat(moved(before)).isEmpty();
        EventThread.run(() -> window.current().dropDraft());
    }
}

package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.form.UnitSystem;
import porebench.desk.frame.Theme;

/** The decimal key of the keypad, and units typed behind a number, in a real window. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class DecimalKeyWindowTest {
    private BenchBook bench = new BenchBook();
    private JFrame frame = new JFrame();
    private boolean locked;

    private void open(String locale) throws Exception {
        bench = new BenchBook(Locale.forLanguageTag(locale));
        bench.select();
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            frame = new JFrame();
            frame.setContentPane(new TrialsPage(bench.desk).component());
            frame.setSize(1000, 900);
            frame.setVisible(true);
        });
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> frame.dispose());
        if (locked) {
            new Keys().strike(KeyEvent.VK_NUM_LOCK);
        }
    }

    private static Stream<Component> all(Container within) {
        return Stream.of(within.getComponents())
                .flatMap(child -> child instanceof Container inner
                        ? Stream.concat(Stream.of(child), all(inner))
                        : Stream.of(child));
    }

    private Component named(String name) {
        return all(frame)
                .filter(component -> name.equals(component.getName()))
                .findFirst()
                .orElseThrow();
    }

    private void focus(String name) throws Exception {
        Keys.bringTo(() -> named(name));
    }

    private void type(String field, int... struck) throws Exception {
        focus(field);
        Keys keys = new Keys();
        Toolkit toolkit = Toolkit.getDefaultToolkit();
        if (!toolkit.getLockingKeyState(KeyEvent.VK_NUM_LOCK)) {
            keys.strike(KeyEvent.VK_NUM_LOCK);
            locked = true;
            assertThat(EventThread.comes(() -> toolkit.getLockingKeyState(KeyEvent.VK_NUM_LOCK)))
                    .isTrue();
        }
        for (int key : struck) {
            keys.strike(key);
        }
    }

    private void comes(String field, String text) throws Exception {
        assertThat(EventThread.comes(() -> ((JTextField) named(field)).getText().equals(text)))
                .as(field + " holds " + text + ", but " + EventThread.call(() -> ((JTextField) named(field)).getText()))
                .isTrue();
    }

    private String said(String name) {
        return named(name) instanceof JTextComponent text ? text.getText() : ((JLabel) named(name)).getText();
    }

    @Test
    void theKeypadsPointIsACommaWhereTheLanguageWritesOne() throws Exception {
        open("es-ES");
        type("gauge", KeyEvent.VK_NUMPAD6, KeyEvent.VK_DECIMAL, KeyEvent.VK_NUMPAD4);
        comes("gauge", "6.4");
        EventThread.run(() -> assertThat(named("gauge.message").isShowing()).isFalse());
    }

    @Test
    void aPointThatMayBeThousandsIsAskedAbout() throws Exception {
        open("es-ES");
        type(
                "fine",
                KeyEvent.VK_NUMPAD4,
                KeyEvent.VK_DECIMAL,
                KeyEvent.VK_NUMPAD9,
                KeyEvent.VK_NUMPAD0,
                KeyEvent.VK_NUMPAD5);
        comes("fine", "4.905");
        assertThat(EventThread.comes(() -> said("fine.message").contains("Escribir 4,905 o 4905")))
                .isTrue();
    }

    @Test
    void aUnitBehindTheNumberGoesIntoTheBoxBesideItWhenTheFieldIsLeft() throws Exception {
        open("en");
        type(
                "waterTemperature",
                KeyEvent.VK_NUMPAD7,
                KeyEvent.VK_NUMPAD2,
                KeyEvent.VK_SPACE,
                KeyEvent.VK_F,
                KeyEvent.VK_ENTER);
        comes("waterTemperature", "72");
        EventThread.run(() -> assertThat(((JComboBox<?>) named("waterTemperatureUnit")).getSelectedItem())
                .hasToString("F"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"es-MX", "es-US"})
    void thePointStaysAPointWhereTheCountryWritesOne(String locale) throws Exception {
        open(locale);
        type(
                "fine",
                KeyEvent.VK_NUMPAD4,
                KeyEvent.VK_DECIMAL,
                KeyEvent.VK_NUMPAD9,
                KeyEvent.VK_NUMPAD0,
                KeyEvent.VK_NUMPAD5,
                KeyEvent.VK_ENTER);
        comes("fine", "4.905");
        assertThat(EventThread.comes(() -> !named("fine").isFocusOwner())).isTrue();
        assertThat(EventThread.call(() -> said("fine.message"))).doesNotContain("4905");
    }

    /** As a page of another program gives it: a space that does not break and a degree sign, which no keypad has. */
    @Test
    void aPastedQuantityIsUnderstoodWithItsDegreeSignAndItsSpace() throws Exception {
        open("en");
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection("22\u00a0\u00b0C"), null);
        focus("waterTemperature");
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
        comes("waterTemperature", "22\u00a0\u00b0C");
        new Keys().strike(KeyEvent.VK_ENTER);
        comes("waterTemperature", "22");
        EventThread.run(() -> assertThat(((JComboBox<?>) named("waterTemperatureUnit")).getSelectedItem())
                .hasToString("C"));
        EventThread.run(
                () -> assertThat(named("waterTemperature.message").isShowing()).isFalse());
    }

    /** A cubic centimetre is a millilitre by another name. */
    @Test
    void cubicCentimetresAreMillilitres() throws Exception {
        open("en");
        type(
                "withdrawn",
                KeyEvent.VK_NUMPAD4,
                KeyEvent.VK_NUMPAD2,
                KeyEvent.VK_NUMPAD0,
                KeyEvent.VK_SPACE,
                KeyEvent.VK_C,
                KeyEvent.VK_M,
                KeyEvent.VK_3,
                KeyEvent.VK_ENTER);
        comes("withdrawn", "420");
        EventThread.run(() -> assertThat(((JComboBox<?>) named("withdrawnUnit")).getSelectedItem())
                .hasToString("mL"));
    }

    @Test
    void aRefusedQuantitySaysWhichHalfIsWrong() throws Exception {
        open("en");
        type("waterTemperature", KeyEvent.VK_NUMPAD2, KeyEvent.VK_NUMPAD2, KeyEvent.VK_SPACE, KeyEvent.VK_K);
        assertThat(EventThread.comes(() -> said("waterTemperature.message").contains("\"k\" is not one of its units")))
                .as(said("waterTemperature.message"))
                .isTrue();
        type("soak", KeyEvent.VK_NUMPAD1, KeyEvent.VK_DECIMAL, KeyEvent.VK_DECIMAL, KeyEvent.VK_NUMPAD5);
        assertThat(EventThread.comes(() -> said("soak.message").contains("\"1..5\" is not a number")))
                .as(said("soak.message"))
                .isTrue();
    }

    @Test
    void waterThatCannotBeIsDoubtedWhileItIsTyped() throws Exception {
        open("en");
        type("waterTemperature", KeyEvent.VK_NUMPAD4, KeyEvent.VK_NUMPAD4);
        comes("waterTemperature", "44");
        assertThat(said("waterTemperature.message")).doesNotContain("must be");
        type("waterTemperature", KeyEvent.VK_END, KeyEvent.VK_NUMPAD0);
        assertThat(EventThread.comes(() -> said("waterTemperature.message").contains("440 must be from -20 to 100")))
                .as(said("waterTemperature.message"))
                .isTrue();
    }

    @Test
    void aUsScreenSaysWhatCannotBeInUsUnits() throws Exception {
        open("en-US");
        EventThread.run(() -> bench.desk.show(UnitSystem.US));
        type(
                "waterTemperature",
                KeyEvent.VK_NUMPAD8,
                KeyEvent.VK_NUMPAD2,
                KeyEvent.VK_NUMPAD4,
                KeyEvent.VK_SPACE,
                KeyEvent.VK_F,
                KeyEvent.VK_ENTER);
        comes("waterTemperature", "824");
        assertThat(EventThread.comes(() -> said("waterTemperature.message")
                        .equals("Water temperature: 824 must be from -4 to 212. " + "Correct it.")))
                .as(said("waterTemperature.message"))
                .isTrue();
    }
}

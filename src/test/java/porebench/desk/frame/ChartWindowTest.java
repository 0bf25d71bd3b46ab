package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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
import porebench.port.Paper;
import porebench.print.PdfPress;
import porebench.record.id.MixId;

/** A chart on the back of cards, asked for by the keyboard in a real window. */
@NeedsDisplay
class ChartWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker, new PdfPress("Porebench", DemoDesk.DAY, ZoneId.of("UTC")));
        window = started.window();
        started.startWith(null);
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> dialog().ifPresent(Window::dispose));
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private static Optional<JDialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && "ask".equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private AbstractButton button(String name) {
        return Named.in(window.content(), AbstractButton.class, name);
    }

    private boolean isQuiet() {
        return !window.desk().tools().tasks().isAwaited();
    }

    private static String text(Path file, int pages) throws Exception {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages);
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void theCardOfAMixIsSeenFromBothSidesAndSavedWithItsChart() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        assertThat(EventThread.comes(() -> button("factor.savePdf").isEnabled() && isQuiet()))
                .isTrue();
        assertThat(EventThread.call(() -> button("factor.turnOver").isVisible()))
                .isFalse();
        Keys.bringTo(() -> button("factor.chart"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> button("factor.turnOver").isVisible() && isQuiet()))
                .isTrue();
        assertThat(EventThread.call(() -> button("factor.turnOver").getText())).isEqualTo("See the front");
        Keys.bringTo(() -> button("factor.turnOver"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> button("factor.turnOver").getText().equals("See the back") && isQuiet()))
                .isTrue();
        Path file = folder.resolve("card.pdf");
        asker.filesToWrite.add(file);
        Keys.bringTo(() -> button("factor.savePdf"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> file.toFile().exists() && isQuiet())).isTrue();
        assertThat(text(file, 2)).contains("SUBTRACT", "Lay a ruler from the dot");
        assertThat(asker.problemsShown).isEmpty();
        Keys.bringTo(() -> button("factor.chart"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> !button("factor.turnOver").isVisible() && isQuiet()))
                .isTrue();
    }

    @Test
    void aWalletCardLiesOpenInThePreviewAndHasNoRoomForAChart() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        assertThat(EventThread.comes(() -> button("factor.savePdf").isEnabled() && isQuiet()))
                .isTrue();
        JComboBox<?> paper = Named.in(window.content(), JComboBox.class, "factor.paper");
        Keys.bringTo(() -> paper);
        keys.strike(KeyEvent.VK_END);
        assertThat(EventThread.comes(() -> paper.getSelectedItem() == Paper.WALLET && isQuiet()))
                .isTrue();
        // Front and back side by side: 171.2 mm by 54 mm.
        Component preview = Named.in(window.content(), JComponent.class, "factor.preview");
        assertThat(EventThread.comes(() -> {
                    Dimension size = preview.getPreferredSize();
                    return Math.abs((size.width - 2.0) / (size.height - 2.0) - 171.2 / 54) < 0.03;
                }))
                .isTrue();
        Path file = folder.resolve("wallet.pdf");
        asker.filesToWrite.add(file);
        Keys.bringTo(() -> button("factor.savePdf"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> file.toFile().exists() && isQuiet())).isTrue();
        assertThat(text(file, 1)).contains("SUBTRACT", "0.3");
        Keys.bringTo(() -> button("factor.chart"));
        keys.strike(KeyEvent.VK_SPACE);
        JTextComponent instead = Named.in(window.content(), JTextComponent.class, "card.instead");
        // Blank while the card is drawn.
        assertThat(EventThread.comes(
                        () -> instead.isVisible() && !instead.getText().isBlank() && isQuiet()))
                .isTrue();
        String words = EventThread.call(instead::getText);
        assertThat(words).contains("not made with a chart at size wallet", "0.11 % air off", "Take a larger card");
        assertThat(asker.problemsShown).isEmpty();
    }

    @Test
    void soAreTheCardsOfManyMixes() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("register").orElseThrow()));
        Path file = folder.resolve("cards.pdf");
        asker.filesToWrite.add(file);
        Keys.bringTo(() -> button("register.manyCards"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> dialog().isPresent())).isTrue();
        Keys.bringTo(() -> asked(JComboBox.class, "which"));
        keys.strikeUntil(() -> asked(JComboBox.class, "which").getSelectedIndex() == 1, "which", KeyEvent.VK_A);
        Keys.bringTo(() -> asked(AbstractButton.class, "cards.chart"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(
                        () -> asked(AbstractButton.class, "cards.chart").isSelected()))
                .isTrue();
        Keys.bringTo(() -> asked(JButton.class, "accept"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> Named.in(window.content(), JLabel.class, "register.told")
                        .getText()
                        .contains("Cards made: 4.")))
                .isTrue();
        // Four cards, each with a page behind it.
        assertThat(text(file, 8)).contains("HG-101", "Lay a ruler from the dot");
    }

    private static <T extends Component> T asked(Class<T> type, String name) {
        return Named.in(dialog().orElseThrow(), type, name);
    }
}

package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTException;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
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
import porebench.record.SheetPhoto;
import porebench.record.book.LabBook;
import porebench.record.book.Photos;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** A photo of the signed sheet added, opened large, written out and withdrawn by the keyboard alone, in a guarded lab book. */
@NeedsDisplay
class SheetPhotoWindowTest {
    private static final TrialId TRIAL = new TrialId("T-001");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private final Keys keys = newKeys();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Path sheet;

    private static Keys newKeys() {
        try {
            return new Keys();
        } catch (AWTException failure) {
            throw new IllegalStateException(failure);
        }
    }

    @BeforeEach
    void lookAtATrial() throws Exception {
        sheet = picture("IMG 7.jpg");
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        assertThat(EventThread.comes(() -> window.desk().selected().isPresent()))
                .isTrue();
        EventThread.run(() -> window.turnTo(window.pages().trials()));
        EventThread.run(() -> window.openTrial(TRIAL));
        settles();
    }

    private Path picture(String name) throws IOException {
        BufferedImage image = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 1600, 1200);
        g.setColor(Color.BLUE);
        g.drawString("T-001, signed", 200, 300);
        g.dispose();
        File file = folder.resolve(name).toFile();
        assertThat(ImageIO.write(image, "jpg", file)).isTrue();
        return file.toPath();
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.gate().open();
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private void settles() throws Exception {
        assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                .isTrue();
        EventThread.settle();
    }

    private List<Version<SheetPhoto>> photos() throws Exception {
        LabBook book = EventThread.call(() -> window.desk().book());
        return Photos.of(book, TRIAL);
    }

    private Container place() {
        return window.pages().trials().place();
    }

    private static String focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null ? "" : String.valueOf(owner.getName());
    }

    /** Brings the caret onto a button; what follows is struck. */
    private void goTo(Container where, String name) throws Exception {
        Keys.bringTo(() -> Named.in(where, AbstractButton.class, name));
    }

    private void strike(Container where, String name) throws Exception {
        goTo(where, name);
        keys.strike(KeyEvent.VK_SPACE);
    }

    private static Optional<Window> dialog() {
        return Arrays.stream(Window.getWindows())
                .filter(one -> one instanceof Dialog && one.isVisible() && "ask".equals(one.getName()))
                .findFirst();
    }

    private boolean hasThumbnail() {
        return all(place())
                .anyMatch(one -> one instanceof AbstractButton button
                        && "photo1".equals(button.getName())
                        && button.getIcon() != null);
    }

    private static Stream<Component> all(Container in) {
        return Arrays.stream(in.getComponents())
                .flatMap(one ->
                        Stream.concat(Stream.of(one), one instanceof Container inner ? all(inner) : Stream.empty()));
    }

    private void add() throws Exception {
        asker.filesToOpen.add(sheet);
        strike(place(), "photoAdd");
        assertThat(EventThread.comes(this::hasThumbnail))
                .as("the photo is there, small")
                .isTrue();
        settles();
    }

    /** Returns where on the screen the page and the button to add a photo stand. */
    private List<Point> places() throws Exception {
        return EventThread.call(() -> List.of(
                Named.in(place(), AbstractButton.class, "photoAdd").getLocationOnScreen(),
                Named.in(place(), AbstractButton.class, "begin").getLocationOnScreen()));
    }

    @Test
    void addingAPhotoMovesNeitherThePageNorTheButton() throws Exception {
        // The story above the button is read beside the event thread, and pushes it down when it comes.
        assertThat(EventThread.comes(() -> !Named.in(place(), JTextComponent.class, "story")
                        .getText()
                        .isBlank()))
                .isTrue();
        goTo(place(), "photoAdd");
        settles();
        List<Point> before = places();
        add();
        assertThat(places()).isEqualTo(before);
        assertThat(focused()).isEqualTo("photoAdd");
    }

    private Window openLarge() throws Exception {
        strike(place(), "photo1");
        assertThat(EventThread.comes(() -> dialog().isPresent()))
                .as("the photo is large")
                .isTrue();
        return EventThread.call(() -> dialog().orElseThrow());
    }

    private static Component photo(Window large) {
        return Named.in(large, Component.class, "photo");
    }

    private void closes(Window large) throws Exception {
        assertThat(EventThread.comes(() -> !large.isVisible()))
                .as("the dialog is closed")
                .isTrue();
        settles();
    }

    @Test
    void aPhotoIsAddedOpenedLargeTurnedAndClosed() throws Exception {
        add();
        assertThat(photos()).singleElement().satisfies(photo -> {
            assertThat(photo.value().fileName()).isEqualTo("IMG 7.jpg");
            assertThat(photo.stamp().who()).isEqualTo("R. Vale");
        });
        Window large = openLarge();
        assertThat(EventThread.call(
                        () -> Named.in(large, Component.class, "photo").getWidth()))
                .isGreaterThan(300);
        strike(large, "photoDots");
        assertThat(EventThread.comes(() -> photo(large).getWidth() == 1600))
                .as("the photo of 1600 x 1200 dots is there dot for dot")
                .isTrue();
        strike(large, "photoTurn");
        assertThat(EventThread.comes(() -> photo(large).getHeight() == 1600))
                .as("it stands where it lay")
                .isTrue();
        keys.strike(KeyEvent.VK_ESCAPE);
        closes(large);
        assertThat(photos()).hasSize(1);
    }

    @Test
    void aPhotoIsWrittenOutByteForByte() throws Exception {
        add();
        Path out = Files.createDirectory(folder.resolve("out"));
        asker.folders.add(out);
        Window large = openLarge();
        strike(large, "photoSave");
        closes(large);
        Path written = out.resolve(photos().get(0).value().file().name());
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        assertThat(Files.readAllBytes(written)).isEqualTo(Files.readAllBytes(sheet));
    }

    @Test
    void aPhotoIsWithdrawnWithAReasonAndSaidSo() throws Exception {
        add();
        asker.reasons.add("another sheet");
        Window large = openLarge();
        strike(large, "photoWithdraw");
        closes(large);
        assertThat(EventThread.comes(() -> !hasThumbnail())).isTrue();
        assertThat(photos().get(0).value().withdrawn()).isTrue();
        assertThat(photos().get(0).stamp().why()).isEqualTo("another sheet");
    }

    @Test
    void aFileThatIsNoPictureIsRefusedInWords() throws Exception {
        asker.filesToOpen.add(Files.writeString(folder.resolve("words.jpg"), "words"));
        strike(place(), "photoAdd");
        assertThat(EventThread.comes(() -> !asker.problemsShown.isEmpty())).isTrue();
        assertThat(asker.problemsShown.get(0).code()).isEqualTo("photo.not-a-picture");
        assertThat(photos()).isEmpty();
    }

    /** On a busy machine a picture may only begin to be read when the window is closed already: nobody is told of that. */
    @Test
    void whatIsStillReadWhenTheWindowIsClosedIsGivenUp() throws Exception {
        started.outerGate().shut("withBytes");
        asker.filesToOpen.add(sheet);
        strike(place(), "photoAdd");
        assertThat(EventThread.comes(() -> started.outerGate().isWaitedAt())).isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Q);
        assertThat(EventThread.comes(() -> !window.frame().isDisplayable()))
                .as("closing waits for nobody")
                .isTrue();
        int before = started.outerGate().over();
        started.outerGate().open();
        assertThat(EventThread.comes(() -> started.outerGate().over() > before)).isTrue();
        // What is worked out later is told later.
        AtomicBoolean isLaterTold = new AtomicBoolean();
        EventThread.run(() -> window.desk()
                .tools()
                .tasks()
                .workOut(() -> true, isLaterTold::set, failure -> asker.failures.add(failure)));
        assertThat(EventThread.comes(isLaterTold::get)).isTrue();
        assertThat(asker.failures).isEmpty();
    }
}

package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
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
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Issues a factor with doubts by the keyboard alone: one box a doubt, a name and a reason. */
@NeedsDisplay
class FactorFormWindowTest {
    private static final MixId DOUBTFUL = new MixId("HG-105");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openThePage() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.openMix(DOUBTFUL));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> window.current().dropDraft());
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    private void focus(JComponent component) throws Exception {
        assertThat(EventThread.comes(() -> {
                    component.requestFocus();
                    return component.isFocusOwner();
                }))
                .isTrue();
    }

    private void tabTo(String name) throws Exception {
        new Keys()
                .strikeUntil(
                        () -> named(JComponent.class, name).isFocusOwner(), "the focus on " + name, KeyEvent.VK_TAB);
    }

    private void type(String letters) throws Exception {
        Keys keys = new Keys();
        for (char letter : letters.toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
    }

    private FactorIssue newest() {
        return window.desk().evidence().orElseThrow().newestIssue().orElseThrow();
    }

    @Test
    void theTabulatorFollowsTheFormAndEveryDoubtIsTakenOnByItself() throws Exception {
        assertThat(EventThread.call(this::newest).revision()).isEqualTo(2);
        focus(named(JTextField.class, "inForceFrom"));
        for (String next : List.of("inForceAt", "recheckBy", "conditions", "approvedBy", "reason")) {
            tabTo(next);
        }
        type("recheck after the new quarry face was opened");
        int doubts = EventThread.call(this::boxes);
        assertThat(doubts).isEqualTo(4);
        for (int index = 0; index < doubts; index++) {
            JCheckBox box = named(JCheckBox.class, "factor.doubt." + index);
            tabTo(box.getName());
            new Keys().strike(KeyEvent.VK_SPACE);
            assertThat(EventThread.comes(() -> box.isSelected() && box.isFocusOwner()))
                    .isTrue();
        }
        tabTo("overrideBy");
        type("ada");
        tabTo("overrideReason");
        type("the volumetric test agrees");
        assertThat(EventThread.comes(() ->
                        named(JTextField.class, "overrideReason").getText().equals("the volumetric test agrees")))
                .isTrue();
        assertThat(EventThread.call(() -> named(JTextField.class, "reason").getText()))
                .isEqualTo("recheck after the new quarry face was opened");
        tabTo("factor.issue");
        new Keys().strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> newest().revision() == 3)).isTrue();
        assertThat(EventThread.call(this::newest).takenOn()).hasSize(4).allSatisfy(doubt -> {
            assertThat(doubt.by()).isEqualTo("ada");
            assertThat(doubt.reason()).isEqualTo("the volumetric test agrees");
        });
    }

    /** A doubt has a box of its own, and words beside it. */
    private int boxes() {
        return named(JPanel.class, "factor.doubt-boxes").getComponentCount() / 2;
    }

    @Test
    void anIssueThatIsRefusedLeadsToTheFieldThatIsWanting() throws Exception {
        focus(named(AbstractButton.class, "factor.issue"));
        new Keys().strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> named(JTextField.class, "reason").isFocusOwner()))
                .isTrue();
        assertThat(EventThread.call(this::newest).revision()).isEqualTo(2);
    }

    @Test
    void nothingIsIssuedWhileOneDoubtIsNotTakenOn() throws Exception {
        assertThat(EventThread.call(this::newest).revision()).isEqualTo(2);
        EventThread.run(() -> named(JTextField.class, "reason").setText("recheck"));
        for (int index = 0; index < 3; index++) {
            AbstractButton box = named(JCheckBox.class, "factor.doubt." + index);
            EventThread.run(() -> box.doClick(0));
        }
        EventThread.run(() -> named(JTextField.class, "overrideBy").setText("ada"));
        EventThread.run(() -> named(JTextField.class, "overrideReason").setText("seen"));
        focus(named(JTextField.class, "overrideReason"));
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
        assertThat(EventThread.comes(() ->
                        Named.in(window.content(), JTextField.class, "findMix").isFocusOwner()))
                .isTrue();
        assertThat(EventThread.call(this::newest).revision()).isEqualTo(2);
    }

    @Test
    void theCardIsSeenWholeOnTheFirstScreenBesideTheFormAlsoInASmallWindow() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        for (Dimension size : List.of(new Dimension(1024, 700), new Dimension(1280, 720), new Dimension(1500, 900))) {
            EventThread.run(() -> window.frame().setSize(size));
            assertThat(EventThread.comes(() -> window.frame().getSize().equals(size)
                            && isWhole("factor.preview")
                            && onPage("factor.preview").x > onPage("reason").getMaxX()))
                    .as("the card beside the form at " + size)
                    .isTrue();
        }
        int full = EventThread.call(() -> onPage("factor.preview").width);
        EventThread.run(() -> window.frame().setSize(new Dimension(1024, 700)));
        assertThat(EventThread.comes(() -> onPage("factor.preview").width < full))
                .as("smaller where there is less room")
                .isTrue();
        assertThat(EventThread.call(() -> onPage("factor.print").getMaxX()))
                .as("and its buttons are within the page")
                .isLessThanOrEqualTo(
                        EventThread.call(() -> window.current().component().getWidth()));
    }

    /** Puts HG-108, which has no factor yet, under a profile that asks for three people, and shows it. */
    private void askForThree() throws Exception {
        LabBook book = EventThread.call(() -> window.desk().book());
        DemoDesk.aside(() -> {
            Books.keep(
                    book,
                    new LaboratoryProfile(Profiles.standard()
                            .copyAs("own", "Own rules")
                            .with(FigureName.FACTOR_STEPS, new Figure("three", "Own choice", Mark.LABORATORY))));
            MixDesign mix = book.latest(MixDesign.class, "HG-108").orElseThrow().value();
            Books.correct(
                    book,
                    new MixDesign(
                            mix.id(),
                            mix.title(),
                            mix.batch(),
                            mix.soakMinutes(),
                            mix.airTolerancePercent(),
                            "own",
                            mix.remarks(),
                            mix.plant()));
            return mix;
        });
        EventThread.run(() -> window.desk().refresh());
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        assertThat(EventThread.comes(
                        () -> named(AbstractButton.class, "factor.draft").isShowing()
                                && named(AbstractButton.class, "factor.draft").isEnabled()))
                .isTrue();
    }

    private void press(String person, String button) throws Exception {
        EventThread.run(() -> window.desk().setPerson(person));
        assertThat(EventThread.comes(() -> named(AbstractButton.class, button).isEnabled()))
                .as(button)
                .isTrue();
        EventThread.run(() -> named(AbstractButton.class, button).doClick(0));
    }

    private String draftTitle() {
        return named(JTextArea.class, "factor.draft-title").getText();
    }

    @Test
    void threePeopleBringAFactorInForceByTheButtonsOfThePage() throws Exception {
        askForThree();
        assertThat(EventThread.call(
                        () -> named(AbstractButton.class, "factor.issue").isShowing()))
                .isFalse();
        EventThread.run(() -> named(JTextField.class, "inForceAt").setText("00:01"));
        EventThread.run(() -> named(JTextField.class, "conditions").setText("sand Alder only"));
        EventThread.run(() -> named(JTextField.class, "reason").setText("first factor"));
        press("R. Vale", "factor.draft");
        assertThat(EventThread.comes(() -> draftTitle().equals("Draft 1 waits for a check")))
                .isTrue();
        assertThat(EventThread.call(
                        () -> named(AbstractButton.class, "factor.draft.CHECK").isEnabled()))
                .as("who drafted it cannot check it")
                .isFalse();
        asker.reasons.add("recalculated");
        press("M. Ash", "factor.draft.CHECK");
        assertThat(EventThread.comes(() -> draftTitle().equals("Draft 1 is checked, ready to be put in force")))
                .isTrue();
        asker.confirmations.add(true);
        asker.said.add("agreed with the plant");
        press("T. Oak", "factor.draft.PUT_IN_FORCE");
        assertThat(EventThread.comes(() ->
                        window.desk().evidence().orElseThrow().newestIssue().isPresent()))
                .isTrue();
        FactorIssue issue = EventThread.call(this::newest);
        assertThat(List.of(issue.issuedBy(), issue.terms().checkedBy(), issue.approvedBy()))
                .containsExactly("R. Vale", "M. Ash", "T. Oak");
        assertThat(window.desk().book().latest(FactorProposal.class))
                .extracting(draft -> draft.value().remark())
                .containsExactly("agreed with the plant");
        assertThat(EventThread.comes(
                        () -> !named(JTextArea.class, "factor.draft-title").isShowing()))
                .isTrue();
        assertThat(asker.problemsShown).isEmpty();
    }

    private boolean isWhole(String name) {
        JComponent shown = named(JComponent.class, name);
        return shown.getHeight() > 0 && shown.getVisibleRect().getSize().equals(shown.getSize());
    }

    private Rectangle onPage(String name) {
        JComponent component = named(JComponent.class, name);
        return SwingUtilities.convertRectangle(
                component.getParent(), component.getBounds(), window.current().component());
    }
}

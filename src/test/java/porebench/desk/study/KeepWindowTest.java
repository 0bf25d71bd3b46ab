package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Tools;
import porebench.desk.form.HeldInput;
import porebench.desk.form.Tasks;
import porebench.desk.frame.Theme;
import porebench.record.KeptStudy;
import porebench.record.SampleStudies;

/** Leaves the draft of a kept study in a real window, where keeping takes its time in the background. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class KeepWindowTest {
    private BenchBook bench;
    private StudyPage page;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            bench = new BenchBook();
            bench.keep(SampleStudies.operators("O-1"), SampleStudies.operators("O-2"));
            frame = new JFrame();
            DeskModel desk = new DeskModel(inBackground(bench.desk.tools()), bench.book);
            desk.setPerson("R. Vane");
            page = new StudyPage(desk);
            frame.add(page.component());
            frame.setSize(1000, 900);
            frame.setVisible(true);
            find(JComboBox.class, "study.kind").setSelectedIndex(0);
        });
        assertThat(EventThread.comes(() -> find(JComboBox.class, "study.kept").getItemCount() == 3))
                .isTrue();
        EventThread.run(() -> {
            find(JComboBox.class, "study.kept").setSelectedIndex(1);
            find(AbstractButton.class, "study.keep").doClick();
            find(JTextComponent.class, "keep.remarks").setText("dry");
            assertThat(page.history().orElseThrow().isChanged()).isTrue();
        });
    }

    private Tools inBackground(Tools tools) {
        return new Tools(
                tools.shelf(),
                tools.sheets(),
                tools.press(),
                Tasks.inBackground(() -> frame, Locale.ENGLISH, title -> title, new HeldInput()),
                tools.asker(),
                tools.clock(),
                tools.zone(),
                tools.locale());
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(frame::dispose);
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Named.in(frame.getContentPane(), type, name);
    }

    private String remarks(String id) {
        return bench.book.latest(KeptStudy.class, id).orElseThrow().value().remarks();
    }

    @Test
    void whatIsSavedToLeaveIsKeptOnceItMayBeLeft() throws Exception {
        EventThread.run(() -> {
            bench.asker.reasons.add("was wet");
            page.save();
            assertThat(page.history().orElseThrow().isChanged()).isFalse();
        });
        assertThat(remarks("O-1")).isEqualTo("dry");
        assertThat(bench.asker.failures).isEmpty();
    }

    @Test
    void whatIsSavedWhileAnotherKindIsOnViewIsKeptToo() throws Exception {
        EventThread.run(() -> find(JComboBox.class, "study.kind").setSelectedIndex(1));
        EventThread.run(() -> {
            assertThat(page.history().orElseThrow().isChanged()).isTrue();
            bench.asker.reasons.add("was wet");
            page.save();
            assertThat(page.history().orElseThrow().isChanged()).isFalse();
        });
        assertThat(remarks("O-1")).isEqualTo("dry");
    }

    @Test
    void anotherKeptStudyIsShownWithoutAQuestionAndTheDraftIsFoundAgainWithItsOwn() throws Exception {
        JComboBox<?> kept = find(JComboBox.class, "study.kept");
        JLabel file = find(JLabel.class, "study.file");
        EventThread.run(() -> kept.setSelectedIndex(2));
        assertThat(EventThread.comes(() -> file.getText().startsWith("O-2, "))).isTrue();
        EventThread.run(() ->
                assertThat(find(Component.class, "keep.remarks").isShowing()).isFalse());
        EventThread.run(() -> kept.setSelectedIndex(1));
        assertThat(EventThread.comes(() -> find(Component.class, "keep.remarks").isShowing()))
                .isTrue();
        EventThread.run(() -> {
            assertThat(file.getText()).startsWith("O-1, ");
            assertThat(find(JTextComponent.class, "keep.remarks").getText()).isEqualTo("dry");
            kept.setSelectedIndex(0);
        });
        assertThat(EventThread.comes(() -> file.getText().equals("No file is open.")))
                .as(file.getText())
                .isTrue();
        EventThread.run(() -> {
            assertThat(kept.getSelectedIndex()).isZero();
            assertThat(find(AbstractButton.class, "study.keep").isEnabled()).isFalse();
            assertThat(find(Component.class, "keep.id").isShowing()).isFalse();
        });
        assertThat(remarks("O-1")).isEmpty();
        assertThat(bench.asker.asked).isEmpty();
    }
}

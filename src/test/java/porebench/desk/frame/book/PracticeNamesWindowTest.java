package porebench.desk.frame.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.EventThread;
import porebench.desk.NeedsDisplay;
import porebench.desk.access.OpenedDialog;
import porebench.desk.frame.dialog.FrameTexts;
import porebench.method.ProblemText;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Everything that can be come to in the dialog of the practice laboratory says its name. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class PracticeNamesWindowTest {
    @Test
    void theDialogOfThePracticeLaboratorySaysItsNames() throws Exception {
        PracticeDialog dialog = EventThread.call(
                () -> new PracticeDialog(FrameTexts.in(Locale.ENGLISH), ProblemText.in(Locale.ENGLISH)));
        List<PracticeModel.PracticeMeter> meters =
                List.of(new PracticeModel.PracticeMeter(new MeterId("B-1"), "B", true));
        assertThat(OpenedDialog.faults("practice", () -> dialog.ask(new JPanel(), new MixId("HG-101"), meters)))
                .isEmpty();
    }
}

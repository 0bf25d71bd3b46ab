package porebench.desk.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;
import porebench.record.id.MixId;

class ChangeModelTest {
    private final ChangeDesk made = new ChangeDesk(Locale.ENGLISH);
    private final ChangeModel model = new ChangeModel(made.desk);

    @Test
    void nothingIsShownWhereNothingChanged() {
        assertThat(model.isShown()).isFalse();
        assertThat(model.moved()).isEmpty();
        made.desk.selectNone();
        assertThat(model.isShown()).isFalse();
        assertThat(model.subject()).isEmpty();
    }

    @Test
    void saysWhatIsWantingWhileTheNewIsNotTested() {
        made.changeLedge();
        assertThat(model.isShown()).isTrue();
        assertThat(model.verdict())
                .isEqualTo("Mix M-1 has no trials that count of source S-2 as it is now. Test it first.");
        assertThat(model.doubts()).isEmpty();
        assertThat(model.difference()).isEmpty();
        assertThat(model.lines()).isEmpty();
        assertThat(model.reasons()).isEmpty();
    }

    /** Means 0.43333 and 0.83333, 0.4 apart: SourceChangeTest. */
    @Test
    void comparesOnceTheNewIsTested() {
        made.changeLedge();
        made.testNew(0.8, 0.9, 0.8);
        assertThat(model.verdict()).startsWith("Replace the factor: it moved by 0.400 %");
        assertThat(model.difference().orElseThrow().differencePercent()).isCloseTo(0.4, within(1e-9));
        assertThat(model.difference().orElseThrow().marginPercent()).isEqualTo(0.05);
        assertThat(model.difference().orElseThrow().half90Percent())
                .isLessThan(model.difference().orElseThrow().half95Percent());
        assertThat(model.lines())
                .containsExactly(
                        new ChangeModel.Line("Source that changed", "S-2"),
                        new ChangeModel.Line("Before", "mean 0.433 %, 3 trials of M-1/1"),
                        new ChangeModel.Line("After", "mean 0.833 %, 3 trials of M-1/2"));
        assertThat(model.reasons()).isNotEmpty();
        assertThat(model.doubts()).isNotEmpty();
        assertThat(model.moved().orElseThrow()).isCloseTo(0.4, within(1e-9));
        assertThat(model.subject()).isEqualTo("M-1");
        assertThat(model.pictureName("difference")).isEqualTo("M-1-difference.png");
    }

    @Test
    void anotherMixHasItsOwnAnswer() {
        made.changeLedge();
        made.testNew(0.8, 0.9, 0.8);
        assertThat(model.isShown()).isTrue();
        made.desk.select(new MixId("M-2"));
        assertThat(model.isShown()).isFalse();
    }

    /** Nothing is worked out on the thread of the window, and who listens hears when it is there. */
    @Test
    void itIsWorkedOutAsideAndToldOf() {
        made.changeLedge();
        made.testNew(0.8, 0.9, 0.8);
        HeldTasks held = new HeldTasks();
        DeskModel desk = new DeskModel(held.in(made.desk.tools()), made.laboratory.book);
        desk.select(new MixId("M-1"));
        ChangeModel waiting = new ChangeModel(desk);
        int[] heard = {0};
        waiting.onChange(() -> heard[0]++);
        assertThat(waiting.isShown()).isTrue();
        assertThat(waiting.verdict()).isEqualTo("Comparing the trials\u2026");
        held.end();
        assertThat(heard[0]).isEqualTo(1);
        assertThat(waiting.verdict()).startsWith("Replace the factor");
    }

    @Test
    void saysThatItCouldNotBeWorkedOut() {
        made.changeLedge();
        made.testNew(0.8, 0.9, 0.8);
        HeldTasks held = new HeldTasks();
        DeskModel desk = new DeskModel(held.in(made.desk.tools()), made.laboratory.book);
        desk.select(new MixId("M-1"));
        ChangeModel waiting = new ChangeModel(desk);
        assertThat(waiting.verdict()).isEqualTo("Comparing the trials\u2026");
        held.stop();
        assertThat(waiting.verdict()).startsWith("The trials could not be compared.");
    }
}

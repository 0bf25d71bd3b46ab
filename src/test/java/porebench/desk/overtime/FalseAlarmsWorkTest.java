package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;

/** How often chance alone signals takes a while to find; it is asked for as often as the page is shown. */
class FalseAlarmsWorkTest {
    private final OverTimeDesk made = new OverTimeDesk();
    private final HeldTasks held = new HeldTasks();

    private OverTimeModel model() {
        made.quiet(20);
        OverTimeModel model = new OverTimeModel(new DeskModel(held.in(made.desk.tools()), made.lab.book));
        // The trials are read beside the event thread, too.
        held.end();
        return model;
    }

    @Test
    void whatIsAskedForTwiceIsWorkedOutOnce() {
        OverTimeModel model = model();
        model.workOutFalseAlarms();
        model.workOutFalseAlarms();
        assertThat(held.count()).isEqualTo(1);
        held.end();
        assertThat(model.falseAlarms()).startsWith("By chance alone, ");
        model.workOutFalseAlarms();
        assertThat(held.count()).isZero();
    }

    @Test
    void whatAPersonStoppedIsSaidToBeStoppedAndWhoeverShowsItHearsOfIt() {
        OverTimeModel model = model();
        int[] heard = {0};
        model.onChange(() -> heard[0]++);
        model.workOutFalseAlarms();
        held.stop();
        assertThat(heard[0]).isEqualTo(1);
        assertThat(model.falseAlarms()).isNotEqualTo("How often chance alone signals is being computed.");
        assertThat(model.knownFalseAlarms()).isEmpty();
    }
}

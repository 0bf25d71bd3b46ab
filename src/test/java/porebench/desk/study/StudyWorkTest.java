package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;
import porebench.record.KeptStudy.Layout;

/** A study that takes long may be overtaken by another, stopped, and asked for again. */
class StudyWorkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private final HeldTasks held = new HeldTasks();
    private final StudyModel model = model();
    private int heard;

    private StudyModel model() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.4"), BenchBook.trial("T2", 1, DAY, "6.5"));
        StudyModel made = new StudyModel(new DeskModel(held.in(bench.desk.tools()), bench.book));
        made.onChange(() -> heard++);
        return made;
    }

    @Test
    void whatIsAskedForTwiceIsMadeOnce() {
        model.update();
        model.update();
        assertThat(held.count()).isEqualTo(1);
        assertThat(model.shown()).isEmpty();
        assertThat(heard).isZero();
        held.end();
        assertThat(model.shown()).isPresent();
        assertThat(heard).isEqualTo(1);
        model.update();
        assertThat(held.count()).isZero();
    }

    @Test
    void aStudyThatIsOvertakenIsNotShown() {
        model.update();
        Chosen.choose(model, Layout.OPERATORS);
        held.end();
        assertThat(model.shown()).isEmpty();
        assertThat(heard).isZero();
        held.end();
        assertThat(heard).isEqualTo(1);
        assertThat(model.shown()).as("no file of operators was opened").isEmpty();
    }

    @Test
    void aStudyThatWasStoppedShowsNothingUntilItIsAskedForAgain() {
        model.update();
        held.end();
        assertThat(model.shown()).isPresent();
        Chosen.chooseLayer(model, 0, Optional.empty());
        held.stop();
        assertThat(model.shown()).isEmpty();
        assertThat(model.problems()).isEmpty();
        assertThat(heard).isEqualTo(2);
        model.update();
        held.end();
        assertThat(model.shown()).isPresent();
        assertThat(heard).isEqualTo(3);
    }
}

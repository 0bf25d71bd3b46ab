package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;

/** A study that takes long may be overtaken by another, stopped, and asked for again. */
class StudyWorkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private final Deque<Consumer<Boolean>> underWay = new ArrayDeque<>();
    private final StudyModel model = model();
    private int heard;

    /** Work goes on when the test says so, to its end or to a stop by the person. */
    private final class Waiting implements Tasks {
        @Override
        public <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            underWay.add(isStopped -> {
                if (isStopped) {
                    failed.accept(new CancellationException("stopped by the person"));
                } else {
                    Tasks.direct().run(title, work, done, failed);
                }
            });
        }
    }

    private StudyModel model() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.4"), BenchBook.trial("T2", 1, DAY, "6.5"));
        Tools tools = bench.desk.tools();
        StudyModel made = new StudyModel(new DeskModel(
                new Tools(
                        tools.shelf(),
                        tools.sheets(),
                        tools.press(),
                        new Waiting(),
                        tools.asker(),
                        tools.clock(),
                        tools.zone(),
                        tools.locale()),
                bench.book));
        made.onChange(() -> heard++);
        return made;
    }

    private void end() {
        underWay.remove().accept(false);
    }

    private void stop() {
        underWay.remove().accept(true);
    }

    @Test
    void whatIsAskedForTwiceIsMadeOnce() {
        model.update();
        model.update();
        assertThat(underWay).hasSize(1);
        assertThat(model.shown()).isEmpty();
        assertThat(heard).isZero();
        end();
        assertThat(model.shown()).isPresent();
        assertThat(heard).isEqualTo(1);
        model.update();
        assertThat(underWay).isEmpty();
    }

    @Test
    void aStudyThatIsOvertakenIsNotShown() {
        model.update();
        model.choose(StudyKind.OPERATORS);
        end();
        assertThat(model.shown()).isEmpty();
        assertThat(heard).isZero();
        end();
        assertThat(heard).isEqualTo(1);
        assertThat(model.shown()).as("no file of operators was opened").isEmpty();
    }

    @Test
    void aStudyThatWasStoppedShowsNothingUntilItIsAskedForAgain() {
        model.update();
        end();
        assertThat(model.shown()).isPresent();
        model.chooseLayer(0, Optional.empty());
        stop();
        assertThat(model.shown()).isEmpty();
        assertThat(model.problems()).isEmpty();
        assertThat(heard).isEqualTo(2);
        model.update();
        end();
        assertThat(model.shown()).isPresent();
        assertThat(heard).isEqualTo(3);
    }
}

package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Page;
import porebench.desk.Settings;
import porebench.desk.form.UnitSystem;
import porebench.desk.frame.start.FirstStepsPage;

/** A page is made when it is first shown and computes nothing while it is hidden. */
class LatePageTest {
    private final BenchBook bench = new BenchBook();
    private final List<String> heard = new ArrayList<>();

    private final class Plain implements Page {
        private final JComponent component = new JPanel();

        Plain() {
            heard.add("made");
            bench.desk.onChange(() -> heard.add("shown in " + bench.desk.units()));
        }

        @Override
        public String name() {
            return "plain";
        }

        @Override
        public String title() {
            return "Plain";
        }

        @Override
        public JComponent component() {
            return component;
        }

        @Override
        public void finishTyping() {
            heard.add("typing taken over");
        }

        @Override
        public void dropDraft() {
            heard.add("draft dropped");
        }
    }

    private final LatePage<Plain> late = new LatePage<>(bench.desk, "plain", "Plain", Plain::new, Settings.inMemory());

    @Test
    void aPageThatNobodySawIsNotMade() {
        bench.desk.show(UnitSystem.US);
        late.finishTyping();
        late.dropDraft();
        late.save();
        late.undo();
        late.redo();
        assertThat(late.name()).isEqualTo("plain");
        assertThat(late.title()).isEqualTo("Plain");
        assertThat(late.history()).isEmpty();
        assertThat(late.undoLabel()).isEqualTo(Optional.empty());
        assertThat(late.redoLabel()).isEqualTo(Optional.empty());
        assertThat(late.place().getComponentCount()).isZero();
        assertThat(heard).isEmpty();
    }

    @Test
    void aPageIsMadeOnceAndFilledAtOnce() {
        assertThat(late.page()).isSameAs(late.page());
        assertThat(late.component()).isSameAs(late.place());
        assertThat(late.place().getComponents()).containsExactly(late.page().component());
        assertThat(heard).containsExactly("made", "shown in SI");
    }

    @Test
    void aHiddenPageHearsOnceOfAllThatChangedMeanwhile() {
        late.page();
        heard.clear();
        late.rest();
        bench.desk.show(UnitSystem.US);
        bench.desk.setPerson("Ada");
        assertThat(heard).isEmpty();
        late.page();
        assertThat(heard).containsExactly("shown in US");
        late.rest();
        late.page();
        assertThat(heard).hasSize(1);
        bench.desk.show(UnitSystem.SI);
        assertThat(heard).containsExactly("shown in US", "shown in SI");
    }

    @Test
    void whatIsTypedOnItIsTakenOverAndDroppedAlsoWhileItIsHidden() {
        late.page();
        late.rest();
        late.finishTyping();
        late.dropDraft();
        assertThat(heard).endsWith("typing taken over", "draft dropped");
    }

    /** The head and the rail say a page's title before the page is there. */
    @Test
    void everyPageIsCalledByItsNameAndTitleBeforeItIsThere() {
        Pages pages = Pages.of(
                bench.desk,
                mix -> {},
                meter -> {},
                () -> {},
                trial -> {},
                new FirstStepsPage.Nowhere(),
                Settings.inMemory());
        assertThat(pages.all())
                .allSatisfy(page -> assertThat(page.place().getComponentCount()).isZero());
        assertThat(pages.all().stream().map(page -> page.name() + ": " + page.title()))
                .containsExactly(
                        "mix: Mix design",
                        "sample: Correction sample",
                        "trials: Trials",
                        "variability: Variability",
                        "factor: Factor and card",
                        "sources: Sources",
                        "groups: Groups",
                        "meters: Meters",
                        "equipment: Equipment",
                        "production: Production",
                        "readings: Field readings",
                        "register: Factor register",
                        "cards: Cards out",
                        "plan: Plan of tests",
                        "overtime: Over time",
                        "studies: Studies",
                        "meter: Meter and its calibrations",
                        "firstSteps: First steps");
        assertThat(pages.all()).allSatisfy(page -> {
            assertThat(page.component()).isSameAs(page.place());
        });
    }

    @Test
    void onlyThePageShownFollowsTheDesk() {
        Pages pages = Pages.of(
                bench.desk,
                mix -> {},
                meter -> {},
                () -> {},
                trial -> {},
                new FirstStepsPage.Nowhere(),
                Settings.inMemory());
        pages.show(pages.trials(), Optional.empty());
        assertThat(pages.all())
                .filteredOn(page -> page.place().getComponentCount() > 0)
                .containsExactly(pages.trials());
        pages.show(pages.mix(), Optional.empty());
        assertThat(pages.all())
                .filteredOn(page -> page.place().getComponentCount() > 0)
                .containsExactly(pages.mix(), pages.trials());
    }
}

package porebench.desk.variability;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;
import porebench.desk.Settings;
import porebench.record.id.DeterminationId;

/** What the laboratory knows besides takes a while in a large lab book. */
class KnownWorkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private final HeldTasks held = new HeldTasks();
    private int heard;

    private VariabilityModel model() {
        for (int i = 1; i < 3; i++) {
            bench.keep(BenchBook.determination(i, DAY.plusDays(i)));
            bench.keep(BenchBook.trial("T" + i, i, DAY.plusDays(i), "6.4"));
        }
        DeskModel desk = new DeskModel(held.in(bench.desk.tools()), bench.book);
        desk.select(bench.select().desk.selected().orElseThrow());
        VariabilityModel model = new VariabilityModel(desk, Settings.inMemory());
        model.onChange(() -> heard++);
        return model;
    }

    private static String said(VariabilityModel model) {
        return model.known().orElseThrow().answer();
    }

    @Test
    void isWorkedOutOnceAndSaidWhenItIsKnown() {
        VariabilityModel model = model();
        model.workOutKnown();
        model.workOutKnown();
        assertThat(held.count()).isEqualTo(1);
        assertThat(said(model)).isEqualTo("Being computed.");
        held.end();
        assertThat(heard).isEqualTo(1);
        assertThat(said(model)).startsWith("Not known yet");
        model.workOutKnown();
        assertThat(held.count()).isZero();
    }

    @Test
    void whatIsOvertakenByAnotherDeterminationIsNotShown() {
        VariabilityModel model = model();
        model.workOutKnown();
        model.choose(new DeterminationId("K7/1"));
        model.workOutKnown();
        assertThat(held.count()).isEqualTo(2);
        held.end();
        assertThat(said(model)).isEqualTo("Being computed.");
        held.end();
        assertThat(said(model)).startsWith("Not known yet");
    }

    @Test
    void whatDidNotSucceedIsWorkedOutWhenTheDeterminationIsChosenAgain() {
        VariabilityModel model = model();
        model.workOutKnown();
        held.stop();
        assertThat(said(model)).startsWith("It could not be computed");
        model.workOutKnown();
        assertThat(held.count()).isZero();
        model.choose(new DeterminationId("K7/2"));
        model.workOutKnown();
        held.end();
        assertThat(said(model)).startsWith("Not known yet");
    }

    @Test
    void whoDoesNotWantToSeeItLetsNothingBeWorkedOut() {
        VariabilityModel model = model();
        model.showKnown(false);
        model.workOutKnown();
        assertThat(held.count()).isZero();
        assertThat(model.known()).isEmpty();
    }

    @Test
    void aPageThatNobodyLooksAtLetsNothingBeWorkedOut() {
        VariabilityModel model = model();
        new VariabilityPage(model.desk(), trial -> {});
        bench.keep(BenchBook.trial("T9", 2, DAY.plusDays(2), "6.5"));
        model.desk().refresh();
        assertThat(held.count()).as("reading the lab book anew").isEqualTo(1);
        held.end();
        assertThat(held.count()).isZero();
    }
}

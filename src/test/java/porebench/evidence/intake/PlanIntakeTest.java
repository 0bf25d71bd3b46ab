package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.record.Kept;
import porebench.record.SamplePlans;
import porebench.record.TestPlan;
import porebench.store.Books;

/** Plans of a week from files, held against the lab book. */
class PlanIntakeTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private Intake.Result check(Kept value) {
        return Intake.check(bench.book, List.of(new Incoming(Place.of("file.csv", 2), value)), Bench.START);
    }

    @Test
    void itNamesMixesAndMetersThatAreKnown() {
        TestPlan good = SamplePlans.plan(Bench.START, SamplePlans.row(Bench.MIX.text(), Bench.START.plusDays(6)));
        assertThat(check(good).problems()).isEmpty();
        assertThat(check(good).drafts()).hasSize(1);
        Intake.Result strange = check(SamplePlans.plan(
                Bench.START, SamplePlans.row("M-77", Bench.START, "", 3, "B-77", TestPlan.Mark.ASKED, "")));
        assertThat(Books.codes(strange.problems())).containsExactly("plan.unknown-mix", "plan.unknown-meter");
        assertThat(strange.drafts()).isEmpty();
        Intake.Result outside =
                check(SamplePlans.plan(Bench.START, SamplePlans.row(Bench.MIX.text(), Bench.START.plusDays(7))));
        assertThat(Books.codes(outside.problems())).containsExactly("plan.day-outside");
        assertThat(outside.drafts()).isEmpty();
    }

    /** The lab book refuses nothing of the first, and keeps both. */
    @Test
    void anotherArrangementIsANewVersion() {
        TestPlan first = SamplePlans.plan(Bench.START, SamplePlans.row(Bench.MIX.text(), Bench.START));
        assertThat(bench.book.keep(check(first).drafts(), "R. Vale", "imported"))
                .isEmpty();
        TestPlan moved = SamplePlans.plan(Bench.START, SamplePlans.row(Bench.MIX.text(), Bench.START.plusDays(1)));
        Intake.Result again = check(moved);
        assertThat(Books.codes(again.problems())).containsExactly("import.new-version");
        assertThat(bench.book.keep(again.drafts(), "R. Vale", "imported")).isEmpty();
        assertThat(check(moved).alreadyThere()).isEqualTo(1);
        assertThat(bench.book.history(TestPlan.class, first.recordId()))
                .extracting(version -> version.value())
                .containsExactly(first, moved);
        assertThat(bench.book.verify()).isEmpty();
    }
}

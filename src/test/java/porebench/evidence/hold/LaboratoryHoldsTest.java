package porebench.evidence.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.plan.WeekPlan;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.id.MixId;
import porebench.store.Books;

class LaboratoryHoldsTest {
    @TempDir
    Path folder;

    private PairsBench made;

    @BeforeEach
    void begin() {
        made = new PairsBench(folder);
        Books.keep(made.bench.book, PairsBench.whole("M-2"));
    }

    @AfterEach
    void end() {
        made.close();
    }

    private LaboratoryHolds holds() {
        LaboratoryStanding standing = LaboratoryStanding.of(made.bench.book);
        return LaboratoryHolds.of(made.bench.book, standing, standing.rows(PairsBench.NOW), PairsBench.NOW);
    }

    @Test
    void onlyAMixWithALastingShiftHasARemarkAndItsStateStays() {
        made.keep(PairsBench.readings("M-1", PairsBench.SHIFTED));
        made.keep(PairsBench.readings("M-2", PairsBench.SHIFTED));
        LaboratoryHolds holds = holds();
        assertThat(holds.remarks()).containsOnlyKeys(Bench.MIX);
        assertThat(holds.of(Bench.MIX).orElseThrow().pairs()).isEqualTo(14);
        assertThat(holds.of(new MixId("M-2"))).as("it has no factor").isEmpty();
        List<RegisterRow> rows = LaboratoryStanding.of(made.bench.book).rows(PairsBench.NOW);
        List<RegisterRow> marked = holds.marked(rows);
        assertThat(marked.get(0).missing().get(0).code()).isEqualTo("register.recheck-g");
        assertThat(marked.get(0).missing()).hasSize(rows.get(0).missing().size() + 1);
        assertThat(marked.get(0).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(marked.get(1)).isEqualTo(rows.get(1));
        assertThat(rows.get(0).state()).isEqualTo(FactorState.IN_FORCE);
        assertThat(rows.get(0).missing()).extracting(problem -> problem.code()).doesNotContain("register.recheck-g");
    }

    @Test
    void quietPairsHaveNone() {
        made.keep(PairsBench.readings("M-1", PairsBench.QUIET));
        assertThat(holds()).isEqualTo(LaboratoryHolds.NONE);
    }

    /** Seven pairs say nothing; struck readings and those without a density do not make eight. */
    @Test
    void fewPairsHaveNone() {
        List<FieldReading> all = PairsBench.readings("M-1", PairsBench.SHIFTED);
        made.keep(all.subList(0, 7));
        made.keep(List.of(
                PairsBench.with(all.get(8), true, true),
                PairsBench.with(all.get(9), false, false),
                PairsBench.with(all.get(10), false, false)));
        assertThat(holds().remarks()).isEmpty();
    }

    /** One pair far out, the first, the last or in the middle, up or down, among thirteen quiet ones. */
    @Test
    void aSinglePairNeverRaisesOne() {
        for (double far : new double[] {-4, 60}) {
            for (int place : new int[] {0, 1, 7, 12, 13}) {
                double[] differences = Arrays.copyOf(PairsBench.QUIET, PairsBench.QUIET.length);
                differences[place] = far;
                MixHold hold = MixHold.of(
                                made.bench.book.history(MixDesign.class, "M-1"),
                                made.bench.evidence(),
                                PairsBench.readings("M-1", differences),
                                Correcting.by(made.bench.evidence()),
                                PairsBench.NOW)
                        .value()
                        .orElseThrow();
                assertThat(hold.remark()).as("%s at %s", far, place).isEmpty();
            }
        }
    }

    /** Its factor is in force and due next year, so that nothing else asks for a test of it. */
    @Test
    void aPlanOfTheWeekHasIt() {
        made.keep(PairsBench.readings("M-1", PairsBench.SHIFTED));
        LocalDate day = PairsBench.NOW.toLocalDate();
        WeekPlan.Wish wish = new WeekPlan.Wish(day, day, 5, 10, OptionalDouble.empty(), List.of(), Set.of());
        WeekPlan plan = WeekPlan.of(
                made.bench.book,
                LaboratoryStanding.of(made.bench.book),
                wish,
                Optional.empty(),
                (mixes, until) -> Map.of());
        assertThat(plan.tests())
                .extracting(test -> test.mixId().text() + " " + test.need())
                .containsExactly("M-2 NEVER_TESTED", "M-1 RECHECK_G");
    }
}

package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.desk.Reading;
import porebench.evidence.TimeBook;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.statistics.control.PhasedChart;

/** What is put together, what is taken as its reference, and what is left out. */
class SeriesTest {
    private static final MixId FIRST = new MixId("M-1");
    private static final MixId SECOND = new MixId("M-2");

    private final OverTimeDesk made = new OverTimeDesk();

    /** The page with single trials charted. */
    private OverTimeModel trials() {
        OverTimeModel model = made.model();
        OverTimeDesk.choose(model, PhasedChart.Kind.TRIALS);
        return model;
    }

    private static List<Double> values(Series series) {
        return series.points().stream()
                .flatMap(point -> point.values().stream())
                .map(value -> Math.rint(1000 * value) / 1000)
                .toList();
    }

    @Test
    void oneMixIsChartedByItsFactors() {
        made.one(3);
        Series series = trials().outcome().series();
        assertThat(series.isDifference()).isFalse();
        assertThat(values(series)).containsExactly(0.4, 0.5, 0.4);
    }

    /** M-1 has 0.4 and 0.6, mean 0.5, and M-2 has 0.9 and 1.0, mean 0.95, in the base of four points. */
    @Test
    void severalMixesAreChartedByTheirDifferencesFromTheirOwnMeans() {
        made.lab.begin("M-1/1", "M-1");
        made.lab.begin("M-2/1", "M-2");
        LocalDate next = made.lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.6);
        next = made.lab.trials("M-2/1", "M-2", next, 0.9, 1.0);
        made.lab.trials("M-1/1", "M-1", next, 0.7);
        OverTimeModel model = trials();
        OverTimeDesk.typeBase(model, false, "4", "", "");
        OverTimeDesk.choose(model, GroupedBy.SOURCE);
        OverTimeDesk.choose(model, "S-1");
        Series series = model.outcome().series();
        assertThat(values(series)).containsExactly(-0.1, 0.1, -0.05, 0.05, 0.2);
        assertThat(series.late()).isEmpty();
        assertThat(model.remarks())
                .contains("Several mixes stand together (M-1, M-2):"
                        + " every point is the difference from the mean of its own mix in the base period.");
        assertThat(model.plot().orElseThrow().levelAxis()).isEqualTo("difference (% air)");
        OverTimeDesk.choose(model, "S-3");
        assertThat(model.outcome().series().isDifference()).isFalse();
        assertThat(values(model.outcome().series())).containsExactly(0.9, 1.0);
    }

    @Test
    void aMixThatBeganAfterTheBaseIsReferredToItsFirstDetermination() {
        made.lab.begin("M-1/1", "M-1");
        made.lab.begin("M-2/1", "M-2");
        LocalDate next = made.lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.6);
        made.lab.trials("M-2/1", "M-2", next, 0.9, 1.0);
        OverTimeModel model = trials();
        OverTimeDesk.choose(model, GroupedBy.METER);
        OverTimeDesk.typeBase(model, false, "2", "", "");
        assertThat(model.outcome().series().late()).containsExactly(SECOND);
        assertThat(values(model.outcome().series())).containsExactly(-0.1, 0.1, -0.05, 0.05);
        assertThat(model.remarks())
                .contains("Of M-2 fewer than two trials lie in the base period:"
                        + " differences are from the mean of the first determination with two.");
    }

    @Test
    void aMixWithoutTwoTrialsIsLeftOutAndTheRestIsOneMixAgain() {
        made.lab.begin("M-2/1", "M-2");
        LocalDate next = made.one(3);
        made.lab.trials("M-2/1", "M-2", next, 0.9);
        OverTimeModel model = trials();
        OverTimeDesk.choose(model, GroupedBy.METER);
        Series series = model.outcome().series();
        assertThat(series.unreferenced()).containsExactly(SECOND);
        assertThat(series.isDifference()).isFalse();
        assertThat(values(series)).containsExactly(0.4, 0.5, 0.4);
        assertThat(model.remarks())
                .contains("Left out, as no determination here has two trials to take a mean from: M-2.");
    }

    @Test
    void determinationsAreSubgroupsAndThoseOfOneTrialAreLeftOut() {
        made.lab.begin("M-1/1", "M-1");
        made.lab.begin("M-1/2", "M-1");
        made.lab.begin("M-1/3", "M-1");
        LocalDate next = made.lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.5);
        next = made.lab.trials("M-1/2", "M-1", next, 0.9);
        made.lab.trials("M-1/3", "M-1", next, 0.5, 0.6, 0.7);
        OverTimeModel model = trials();
        OverTimeDesk.choose(model, PhasedChart.Kind.MEAN_RANGE);
        Series series = model.outcome().series();
        assertThat(series.points()).extracting(point -> point.values().size()).containsExactly(2, 3);
        assertThat(model.remarks()).contains("Not in the chart: 1 determination of which only one trial counts.");
        assertThat(model.verdict()).startsWith("2 determinations");
        assertThat(model.signalWords().point(1)).isEqualTo("M-1/3 (2026-01-08)");
    }

    /** The difference of the only determination of a mix from its own mean is 0 by itself, and says nothing. */
    @Test
    void aMixOfOneDeterminationHasNothingToCompareItsMeanWith() {
        made.lab.begin("M-1/1", "M-1");
        made.lab.begin("M-1/2", "M-1");
        made.lab.begin("M-2/1", "M-2");
        LocalDate next = made.lab.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.5);
        next = made.lab.trials("M-2/1", "M-2", next, 0.9, 1.0);
        made.lab.trials("M-1/2", "M-1", next, 0.5, 0.6);
        OverTimeModel model = trials();
        OverTimeDesk.choose(model, GroupedBy.METER);
        OverTimeDesk.choose(model, PhasedChart.Kind.MEAN_DEVIATION);
        assertThat(model.outcome().series().points()).hasSize(2);
        assertThat(model.remarks())
                .contains("Left out, as there are no two determinations of two trials to compare: M-2.");
    }

    @Test
    void trialsArePutTogetherByOperatorToo() {
        made.lab.begin("M-1/1", "M-1");
        made.lab.keep(
                made.lab.trial("M-1/1", "M-1", TimeBook.START, "A. Dunn", "B-1", 0.4),
                made.lab.trial("M-1/1", "M-1", TimeBook.START.plusDays(1), "R. Vale", "B-2", 0.5),
                made.lab.trial("M-1/1", "M-1", TimeBook.START.plusDays(2), "A. Dunn", "B-1", 0.6));
        OverTimeModel model = trials();
        OverTimeDesk.choose(model, GroupedBy.OPERATOR);
        assertThat(model.ids()).containsExactly("A. Dunn", "R. Vale");
        assertThat(model.wishes().id()).as("the one with the most trials").isEqualTo("A. Dunn");
        assertThat(values(model.outcome().series())).containsExactly(0.4, 0.6);
        OverTimeDesk.choose(model, GroupedBy.METER);
        OverTimeDesk.choose(model, "B-2");
        assertThat(values(model.outcome().series())).containsExactly(0.5);
    }

    @Test
    void theSelectedMixIsLookedAtFirstAndAnotherBookBeginsAnew() {
        made.lab.begin("M-2/1", "M-2");
        LocalDate next = made.one(3);
        made.lab.trials("M-2/1", "M-2", next, 0.9, 1.0);
        made.desk.refresh();
        made.desk.select(SECOND);
        OverTimeModel model = trials();
        assertThat(model.wishes().id()).isEqualTo("M-2");
        LabBook other = otherBook();
        made.desk.turnTo(Reading.of(other, made.desk.tools().now()));
        assertThat(model.wishes().id()).isEqualTo(FIRST.text());
        assertThat(values(model.outcome().series())).containsExactly(0.7, 0.8);
    }

    private static LabBook otherBook() {
        TimeBook other = new TimeBook();
        other.begin("M-1/1", "M-1");
        other.trials("M-1/1", "M-1", TimeBook.START, 0.7, 0.8);
        return other.book;
    }

    @Test
    void nothingIsWorkedOutAnewWhileTheLabBookIsTheSame() {
        made.one(3);
        OverTimeModel model = trials();
        Charted before = model.outcome();
        made.desk.select(FIRST);
        made.desk.setPerson("A. Dunn");
        assertThat(model.outcome()).isSameAs(before);
        made.lab.trials("M-1/1", "M-1", TimeBook.START.plusDays(9), 0.4);
        made.desk.refresh();
        assertThat(model.outcome().series().points()).hasSize(4);
    }
}

package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.FactorHistory.HistoryChange;
import porebench.exchange.DemoYear;
import porebench.record.book.LabBook;
import porebench.statistics.control.PhasedChart;
import porebench.store.Books;

/** Control charts of the demo lab book. */
class OverTimeDemoTest {
    @TempDir
    Path folder;

    private LabBook book;
    private OverTimeModel model;

    @BeforeEach
    void open() {
        book = Books.fresh(folder.resolve("demo.porebench"));
        new DemoYear().fill(book);
        model = new OverTimeModel(new OverTimeDesk().deskOn(book));
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** HG-101 has three trials of December and six of June, all of which count; B-1 was calibrated in between. */
    @Test
    void aMixIsChartedWithItsPhases() {
        OverTimeDesk.choose(model, "HG-101");
        assertThat(model.verdict()).startsWith("2 determinations");
        assertThat(model.phases()).hasSize(2);
        assertThat(model.phases().get(1)).contains("begun by: B-1 calibrated");
    }

    @Test
    void aMeterCrossesMixesAndStruckTrialsAreNotThere() {
        OverTimeDesk.choose(model, GroupedBy.METER);
        OverTimeDesk.choose(model, "B-1");
        Set<String> mixes = model.outcome().series().points().stream()
                .map(point -> point.first().trial().mixId().text())
                .collect(Collectors.toSet());
        assertThat(mixes).as("with two determinations to compare").containsExactlyInAnyOrder("HG-101", "HG-103");
        assertThat(model.outcome().series().struck()).isPositive();
        assertThat(model.outcome().series().points())
                .allSatisfy(point ->
                        assertThat(point.first().trial().struckBecause()).isEmpty());
        assertThat(model.outcome().series().points().stream()
                        .flatMap(point -> point.changes().stream())
                        .map(HistoryChange::of))
                .contains(HistoryChange.Of.CALIBRATION);
    }

    @Test
    void everythingCanBeChartedInEveryWay() {
        for (GroupedBy by : GroupedBy.values()) {
            OverTimeDesk.choose(model, by);
            for (String id : model.ids()) {
                OverTimeDesk.choose(model, id);
                for (PhasedChart.Kind kind : PhasedChart.Kind.values()) {
                    OverTimeDesk.choose(model, kind);
                    for (boolean isKept : new boolean[] {true, false}) {
                        OverTimeDesk.keepLimits(model, isKept);
                        assertThatCode(() -> model.plot())
                                .as("%s %s %s", by, id, kind)
                                .doesNotThrowAnyException();
                        assertThat(model.verdict())
                                .as("%s %s %s", by, id, kind)
                                .endsWith(".")
                                .doesNotContain("{");
                        assertThat(model.remarks())
                                .allSatisfy(remark -> assertThat(remark).endsWith("."));
                    }
                }
            }
        }
    }
}

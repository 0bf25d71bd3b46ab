package porebench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.chart.factor.CoverageOverTime;
import porebench.chart.meter.BowlHistory;
import porebench.chart.meter.DialErrors;
import porebench.chart.meter.ElevationReadings;
import porebench.chart.source.StoneFigures;
import porebench.port.DataTable;

class PlottableTest {
    private static String cell(DataTable table, int row, String column) {
        return table.rows().get(row).get(table.heading().indexOf(column));
    }

    @Test
    void trialsStandWithTheirStateAndWhatIsDrawnThroughThem() {
        DataTable table = PlotData.mixed().table();
        assertThat(table.rows()).hasSize(4);
        assertThat(cell(table, 0, "trial_id")).isEqualTo("K7-1");
        assertThat(cell(table, 0, "tested_at")).isEqualTo("2026-03-02T10:30");
        assertThat(cell(table, 0, "factor_pct_air")).isEqualTo("0.4");
        assertThat(cell(table, 0, "interval_low_pct_air")).isEqualTo("-0.1853");
        assertThat(cell(table, 2, "state")).isEqualTo("struck");
        assertThat(cell(table, 2, "reason")).isEqualTo("spilled <half> the water");
        assertThat(cell(table, 3, "factor_pct_air")).isEmpty();
        assertThat(cell(table, 3, "simulated")).isEqualTo("no");
        assertThat(cell(PlotData.simulated().table(), 0, "simulated")).isEqualTo("yes");
    }

    @Test
    void overTimeTheFactorInForceAndTheDeterminationsStandBelowTheTrials() {
        DataTable table = PlotData.overTime().table();
        assertThat(table.rows())
                .extracting(row -> row.get(0))
                .containsExactly(
                        "trial",
                        "trial",
                        "trial",
                        "trial",
                        "in-force",
                        "withdrawn",
                        "in-force",
                        "determination",
                        "determination");
        assertThat(cell(table, 4, "at")).isEqualTo("2026-01-10");
        assertThat(cell(table, 4, "factor_pct_air")).isEqualTo("0.3");
        assertThat(cell(table, 5, "factor_pct_air")).isEmpty();
    }

    @Test
    void figuresOfAStoneStandAsTheyWereWrittenDown() {
        LocalDate day = LocalDate.of(2026, 3, 11);
        StoneFigures figures = new StoneFigures(
                StoneFigures.Figure.ABSORPTION,
                List.of(new StoneFigures.Measured("S-9/m1", day, 1.2, "1.20", "R. Vale", "ledge 4", true)),
                List.of(new StoneFigures.Step(day, 1.6, "ledge 4")),
                day.plusDays(9));
        assertThat(figures.table().heading())
                .containsExactly("series", "measurement_id", "from", "absorption_pct", "by", "ledge", "far");
        assertThat(figures.table().rows())
                .containsExactly(
                        List.of("measured", "S-9/m1", "2026-03-11", "1.20", "R. Vale", "ledge 4", "yes"),
                        List.of("in-use", "", "2026-03-11", "1.6", "", "ledge 4", ""));
    }

    @Test
    void figuresOfMetersNameTheirUnits() {
        DataTable bowl = new BowlHistory(
                        List.of(new BowlHistory.Found("C-1", LocalDate.of(2026, 1, 10), 7.05, 0.002, 3, true)),
                        List.of(new BowlHistory.Step(LocalDate.of(2026, 1, 10), 7.05)),
                        LocalDate.of(2026, 4, 1),
                        "L")
                .table();
        assertThat(bowl.heading()).contains("volume_L", "expanded_uncertainty_L");
        assertThat(bowl.rows())
                .containsExactly(
                        List.of("found", "C-1", "2026-01-10", "7.05", "0.002", "3", "yes"),
                        List.of("in-force", "", "2026-01-10", "7.05", "", "", ""));
        DataTable dial = new DialErrors(
                        "C-1",
                        List.of(new DialErrors.Point(5, 0.1 + 0.2, 0.03, 2, false)),
                        List.of(new DialErrors.Predicted(10, 0.19)),
                        0.1)
                .table();
        assertThat(dial.rows())
                .containsExactly(
                        List.of("check-point", "C-1", "5", "0.3", "0.03", "2", "no", "0.1"),
                        List.of("model", "C-1", "10", "0.19", "", "", "", ""));
        DataTable elevation =
                new ElevationReadings(List.of(new ElevationReadings.Reading(1000, 5.3)), 5, 200, 183).table();
        assertThat(elevation.rows()).containsExactly(List.of("1000", "5.3", "5", "200", "183"));
    }

    @Test
    void coverageStandsStepByStep() {
        DataTable table = new CoverageOverTime(
                        List.of(
                                new CoverageOverTime.Step(LocalDate.of(2026, 1, 10), 3, 2),
                                new CoverageOverTime.Step(LocalDate.of(2026, 4, 1), 4, 1)),
                        LocalDate.of(2026, 5, 1))
                .table();
        assertThat(table.heading()).containsExactly("from", "mixes", "covered");
        assertThat(table.rows()).containsExactly(List.of("2026-01-10", "3", "2"), List.of("2026-04-01", "4", "1"));
    }
}

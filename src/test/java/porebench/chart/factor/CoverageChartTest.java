package porebench.chart.factor;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;

class CoverageChartTest {
    private static final LocalDate JANUARY = LocalDate.of(2026, 1, 10);
    private static final LocalDate APRIL = LocalDate.of(2026, 4, 1);
    private static final LocalDate MAY = LocalDate.of(2026, 5, 1);

    private static XYPlot plot(CoverageOverTime data) {
        return data.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static String points(XYDataset data) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < data.getItemCount(0); i++) {
            points.append(LocalDateTime.ofEpochSecond((long) (data.getXValue(0, i) / 1000), 0, ZoneOffset.UTC)
                            .toLocalDate())
                    .append('=')
                    .append((int) data.getYValue(0, i))
                    .append(' ');
        }
        return points.toString().strip();
    }

    @Test
    void eachNumberHoldsUntilTheNextDayOnWhichItChanges() {
        XYPlot plot = plot(new CoverageOverTime(
                List.of(new CoverageOverTime.Step(JANUARY, 3, 2), new CoverageOverTime.Step(APRIL, 4, 1)), MAY));
        assertThat(points(plot.getDataset(0))).isEqualTo("2026-01-10=3 2026-04-01=3 2026-04-01=4 2026-05-01=4");
        assertThat(points(plot.getDataset(1))).isEqualTo("2026-01-10=2 2026-04-01=2 2026-04-01=1 2026-05-01=1");
        assertThat(plot.getRangeAxis().getLowerBound()).isZero();
        assertThat(plot.getRangeAxis().getUpperBound()).isGreaterThan(4);
    }

    @Test
    void whatComesAfterTheLastDayIsNotDrawn() {
        XYPlot plot = plot(new CoverageOverTime(
                List.of(new CoverageOverTime.Step(JANUARY, 3, 2), new CoverageOverTime.Step(MAY.plusDays(3), 9, 9)),
                MAY));
        assertThat(points(plot.getDataset(1))).isEqualTo("2026-01-10=2 2026-05-01=2");
    }
}

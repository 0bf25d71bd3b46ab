package porebench.chart.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;

class BudgetChartTest {
    private static final BudgetBars DATA = new BudgetBars(
            List.of(
                    new BudgetBars.Bar("correction of the dial", 0.03, 0.69, false),
                    new BudgetBars.Bar("cylinder", 0.02, 0.31, true),
                    new BudgetBars.Bar("masses", 0.0001, 0, false)),
            0.0361);

    private static CategoryPlot plot(BudgetBars data) {
        return data.chart(PlotData.LOOK, Locale.ENGLISH).getCategoryPlot();
    }

    private static String label(CategoryPlot plot, int column) {
        return ((BarRenderer) plot.getRenderer())
                .getItemLabelGenerator(0, column)
                .generateLabel(plot.getDataset(), 0, column);
    }

    @Test
    void showsTheBarsInTheirOrderAndWhatTheyComeTo() {
        CategoryPlot plot = plot(DATA);
        assertThat(plot.getDataset().getColumnKeys().stream().map(Object::toString))
                .containsExactly("correction of the dial", "cylinder", "masses", "all together");
        assertThat(plot.getDataset().getValue(0, 3)).isEqualTo(0.0361);
    }

    /** Without colour: figures stand at the ends, and an assumed bar is hollow. */
    @Test
    void isReadWithoutColour() {
        CategoryPlot plot = plot(DATA);
        assertThat(label(plot, 0)).isEqualTo("0.030 (69 %)");
        assertThat(label(plot, 2)).isEqualTo("below 0.001");
        assertThat(label(plot, 3)).isEqualTo("0.036");
        BarRenderer renderer = (BarRenderer) plot.getRenderer();
        assertThat(renderer.getItemPaint(0, 0)).isEqualTo(PlotData.LOOK.counted());
        assertThat(renderer.getItemPaint(0, 1)).isEqualTo(PlotData.LOOK.background());
        assertThat(renderer.getItemPaint(0, 3)).isEqualTo(PlotData.LOOK.text());
        assertThat(renderer.isDrawBarOutline()).isTrue();
        assertThat(renderer.getToolTipGenerator(0, 1).generateToolTip(plot.getDataset(), 0, 1))
                .isEqualTo("<html>cylinder<br>0.020 (31 %)</html>");
    }

    @Test
    void saysInTheLegendWhatIsThere() {
        assertThat(legend(DATA))
                .containsExactly(
                        "found in the laboratory (in brackets: share of the variance)",
                        "not found in the laboratory: assumed, or from the profile");
        assertThat(legend(new BudgetBars(List.of(new BudgetBars.Bar("scatter", 0.1, 1, false)), 0.1)))
                .hasSize(1);
        assertThat(legend(new BudgetBars(List.of(), 0))).isEmpty();
    }

    private static List<String> legend(BudgetBars data) {
        CategoryPlot plot = plot(data);
        return IntStream.range(0, plot.getLegendItems().getItemCount())
                .mapToObj(i -> plot.getLegendItems().get(i))
                .map(LegendItem::getLabel)
                .toList();
    }

    @Test
    void isDrawnAlsoWhenEverythingIsNothing() {
        JFreeChart chart = new BudgetBars(List.of(new BudgetBars.Bar("scatter", 0, 0, false)), 0)
                .chart(PlotData.LOOK, Locale.ENGLISH);
        BufferedImage picture = chart.createBufferedImage(400, 200);
        assertThat(picture.getWidth()).isEqualTo(400);
    }

    @Test
    void refusesWhatIsNoShare() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BudgetBars.Bar("a", 0.1, 1.5, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new BudgetBars.Bar("a", -0.1, 0.5, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new BudgetBars(List.of(), Double.NaN));
    }
}

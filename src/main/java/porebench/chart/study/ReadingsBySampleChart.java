package porebench.chart.study;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.OperatorShape;
import porebench.chart.look.PlotDrawing;
import porebench.chart.study.ReadingsBySample.Reading;

/** The readings of every sample, a shape an operator, and a line through the means of each operator. */
final class ReadingsBySampleChart extends PlotDrawing {
    private static final double SIDE = 10;

    /** Operators stand side by side over a sample, this wide together. */
    private static final double SPREAD = 0.5;

    private final ReadingsBySample data;

    ReadingsBySampleChart(ReadingsBySample data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        SymbolAxis samples =
                new SymbolAxis(words.get("axis.sample"), data.samples().toArray(String[]::new));
        samples.setGridBandsVisible(false);
        samples.setRange(-0.6, data.samples().size() - 0.4);
        dress(samples);
        plot.setDomainAxis(samples);
        NumberAxis values = numbers(words.get("axis.reading"));
        values.setAutoRangeIncludesZero(false);
        plot.setRangeAxis(values);
        points(plot);
        means(plot);
        sayIfSimulated(data.isSimulated());
        return chart(plot);
    }

    private double place(int operator, int sample) {
        int operators = data.operators().size();
        return sample + SPREAD * ((operator + 0.5) / operators - 0.5);
    }

    private void points(XYPlot plot) {
        XYSeriesCollection points = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(false);
        for (int operator = 0; operator < data.operators().size(); operator++) {
            int own = operator;
            XYSeries series = new XYSeries("points " + operator, false, true);
            List<String> tips = new ArrayList<>();
            for (Reading reading : data.readings()) {
                if (reading.operator() == own) {
                    series.add(place(own, reading.sample()), reading.value());
                    tips.add(tip(reading));
                }
            }
            OperatorShape shape = OperatorShape.of(operator);
            points.addSeries(series);
            renderer.setSeriesShape(operator, shape.shape(SIDE * look.scale()));
            renderer.setSeriesShapesFilled(operator, shape.isFilled());
            renderer.setSeriesPaint(operator, shape.colour(look));
            renderer.setSeriesOutlineStroke(operator, stroke(1.6));
            renderer.setSeriesStroke(operator, stroke(1.6));
            renderer.setSeriesToolTipGenerator(operator, (dataset, index, item) -> tips.get(item));
            addLegendShape(shape, data.operators().get(operator));
        }
        plot.setDataset(POINTS, points);
        plot.setRenderer(POINTS, renderer);
    }

    private String tip(Reading reading) {
        return words.lines(
                words.get(
                        "tip.reading",
                        data.operators().get(reading.operator()),
                        data.samples().get(reading.sample()),
                        Integer.toString(reading.repeat())),
                words.plain(reading.value()));
    }

    private void means(XYPlot plot) {
        XYSeriesCollection means = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int operator = 0; operator < data.operators().size(); operator++) {
            int own = operator;
            XYSeries series = new XYSeries("means " + operator, false, true);
            for (int sample = 0; sample < data.samples().size(); sample++) {
                int read = sample;
                data.readings().stream()
                        .filter(reading -> reading.operator() == own && reading.sample() == read)
                        .mapToDouble(Reading::value)
                        .average()
                        .ifPresent(mean -> series.add(place(own, read), mean));
            }
            means.addSeries(series);
            renderer.setSeriesPaint(operator, OperatorShape.of(operator).colour(look));
            renderer.setSeriesStroke(operator, stroke(operator));
        }
        plot.setDataset(LINES, means);
        plot.setRenderer(LINES, renderer);
        addLegendLine(words.get("legend.means-of-operator"), stroke(1), look.text());
    }

    private BasicStroke stroke(int operator) {
        return switch (operator % 4) {
            case 0 -> stroke(1.2);
            case 1 -> dashes();
            case 2 -> dots();
            default -> limits();
        };
    }
}

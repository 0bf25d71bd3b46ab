package porebench.chart.factor;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.TrialPoint;

/** The factor of each trial of a determination in the order made, with mean, interval and reported factor. */
final class TrialOrderChart extends PlotDrawing {
    private static final int MOST_NAMES = 24;
    private static final int LONGEST_NAME = 16;
    private static final int MOST_CHARACTERS_IN_A_ROW = 90;
    private static final float BAND_STRENGTH = 0.22f;

    private final FactorByTrial data;

    TrialOrderChart(FactorByTrial data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        FactorAxis range = FactorAxis.of(data);
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(trialAxis());
        plot.setRangeAxis(factorAxis(range.low(), range.high()));
        plot.setDomainGridlinesVisible(false);
        addTrials(plot, data.trials(), index -> index + 1.0, range.foot());
        lines(plot);
        data.interval()
                .ifPresent(interval -> plot.addRangeMarker(
                        band(
                                words.get("legend.interval"),
                                interval.lowPercent(),
                                interval.highPercent(),
                                look.counted(),
                                BAND_STRENGTH),
                        Layer.BACKGROUND));
        return chart(plot);
    }

    private ValueAxis trialAxis() {
        int count = data.trials().size();
        NumberAxis axis = count > 0 && count <= MOST_NAMES
                ? new SymbolAxis(words.get("axis.trial"), names())
                : new NumberAxis(words.get("axis.trial"));
        if (axis instanceof SymbolAxis symbols) {
            symbols.setGridBandsVisible(false);
            axis.setVerticalTickLabels(String.join("", names()).length() > MOST_CHARACTERS_IN_A_ROW);
        } else {
            axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits(words.locale()));
        }
        axis.setRange(0.5, Math.max(1, count) + 0.5);
        dress(axis);
        return axis;
    }

    /** Returns the names by position; the axis counts from 0 and trials from 1. */
    private String[] names() {
        List<String> names = data.trials().stream()
                .map(TrialPoint::id)
                .map(TrialOrderChart::shortened)
                .toList();
        String[] fromZero = new String[names.size() + 1];
        fromZero[0] = "";
        for (int i = 0; i < names.size(); i++) {
            fromZero[i + 1] = names.get(i);
        }
        return fromZero;
    }

    /** Returns the end of a long name, in which trials of one mix differ. */
    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : "\u2026" + name.substring(name.length() - LONGEST_NAME + 1);
    }

    private void lines(XYPlot plot) {
        XYSeriesCollection dataset = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        data.meanPercent().ifPresent(mean -> {
            dataset.addSeries(level("mean", mean));
            renderer.setSeriesPaint(0, look.counted());
            renderer.setSeriesStroke(0, stroke(1.8));
            addLegendLine(words.get("legend.mean"), stroke(1.8), look.counted());
        });
        data.reportedPercent().ifPresent(reported -> {
            int index = dataset.getSeriesCount();
            dataset.addSeries(level("reported", reported));
            renderer.setSeriesPaint(index, look.factor());
            renderer.setSeriesStroke(index, dashes());
            addLegendLine(words.get("legend.reported"), dashes(), look.factor());
        });
        plot.setDataset(LINES, dataset);
        plot.setRenderer(LINES, renderer);
    }

    private XYSeries level(String name, double percent) {
        XYSeries level = new XYSeries(name);
        level.add(0.5, percent);
        level.add(Math.max(1, data.trials().size()) + 0.5, percent);
        return level;
    }
}

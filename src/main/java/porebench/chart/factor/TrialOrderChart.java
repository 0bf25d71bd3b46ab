package porebench.chart.factor;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotParts;
import porebench.chart.look.PlotWords;
import porebench.chart.look.TrialPoint;

/** The factor of each trial of a determination in the order made, with mean, interval and reported factor. */
public final class TrialOrderChart {
    private static final int MOST_NAMES = 24;
    private static final int LONGEST_NAME = 16;
    private static final int MOST_CHARACTERS_IN_A_ROW = 90;
    private static final float BAND_STRENGTH = 0.22f;

    private final FactorByTrial data;
    private final ChartLook look;
    private final PlotWords words;
    private final PlotParts parts;

    private TrialOrderChart(FactorByTrial data, ChartLook look, Locale locale) {
        this.data = data;
        this.look = look;
        this.words = new PlotWords(locale);
        this.parts = new PlotParts(look, words);
    }

    public static JFreeChart of(FactorByTrial data, ChartLook look, Locale locale) {
        return new TrialOrderChart(data, look, locale).chart();
    }

    private JFreeChart chart() {
        FactorAxis range = FactorAxis.of(data);
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(trialAxis());
        plot.setRangeAxis(parts.factorAxis(range.low(), range.high()));
        plot.setDomainGridlinesVisible(false);
        parts.addTrials(plot, data.trials(), index -> index + 1.0, range.foot());
        lines(plot);
        data.interval().ifPresent(interval -> band(plot, interval));
        return parts.chart(plot);
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
        parts.dress(axis);
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
            renderer.setSeriesStroke(0, parts.stroke(1.8));
            parts.addLegendLine(words.get("legend.mean"), parts.stroke(1.8), look.counted());
        });
        data.reportedPercent().ifPresent(reported -> {
            int index = dataset.getSeriesCount();
            dataset.addSeries(level("reported", reported));
            renderer.setSeriesPaint(index, look.factor());
            renderer.setSeriesStroke(index, parts.dashes());
            parts.addLegendLine(words.get("legend.reported"), parts.dashes(), look.factor());
        });
        plot.setDataset(PlotParts.LINES, dataset);
        plot.setRenderer(PlotParts.LINES, renderer);
    }

    private XYSeries level(String name, double percent) {
        XYSeries level = new XYSeries(name);
        level.add(0.5, percent);
        level.add(Math.max(1, data.trials().size()) + 0.5, percent);
        return level;
    }

    private void band(XYPlot plot, FactorByTrial.Interval interval) {
        IntervalMarker band = new IntervalMarker(interval.lowPercent(), interval.highPercent());
        band.setPaint(look.counted());
        band.setAlpha(BAND_STRENGTH);
        plot.addRangeMarker(band, Layer.BACKGROUND);
        Color counted = look.counted();
        parts.addLegendBand(
                words.get("legend.interval"),
                new Color(counted.getRed(), counted.getGreen(), counted.getBlue(), Math.round(255 * BAND_STRENGTH)));
    }
}

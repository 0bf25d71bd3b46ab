package porebench.chart.meter;

import java.awt.Color;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotParts;
import porebench.chart.look.PlotWords;
import porebench.chart.look.Span;

/** What a Type A meter reads of one amount of air by the elevation at which it is used. */
public final class ElevationChart {
    private static final float BAND_STRENGTH = 0.18f;

    private final ElevationReadings data;
    private final ChartLook look;
    private final PlotWords words;
    private final PlotParts parts;

    private ElevationChart(ElevationReadings data, ChartLook look, Locale locale) {
        this.data = data;
        this.look = look;
        this.words = new PlotWords(locale);
        this.parts = new PlotParts(look, words);
    }

    public static JFreeChart of(ElevationReadings data, ChartLook look, Locale locale) {
        return new ElevationChart(data, look, locale).chart();
    }

    private JFreeChart chart() {
        XYPlot plot = new XYPlot();
        XYSeries line = new XYSeries("reading");
        Span metres = new Span();
        Span percent = new Span();
        percent.hold(data.truePercent());
        for (ElevationReadings.Reading reading : data.readings()) {
            line.add(reading.elevationMetres(), reading.readingPercent());
            metres.hold(reading.elevationMetres());
            percent.hold(reading.readingPercent());
        }
        NumberAxis elevation = axis("axis.elevation");
        if (metres.low() < metres.high()) {
            elevation.setRange(metres.low(), metres.high());
        }
        // Metres above the sea run into thousands, where a separator would read as a decimal sign elsewhere.
        elevation.setNumberFormatOverride(words.wholeNumbers());
        plot.setDomainAxis(elevation);
        NumberAxis reads = axis("axis.reads");
        percent.show(reads, 0.2);
        plot.setRangeAxis(reads);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, look.factor());
        renderer.setSeriesStroke(0, parts.dashes());
        plot.setDataset(new XYSeriesCollection(line));
        plot.setRenderer(renderer);
        parts.addLegendLine(
                words.get("legend.reads", words.percent(data.truePercent())), parts.dashes(), look.factor());
        limits(plot);
        return parts.chart(plot);
    }

    private NumberAxis axis(String key) {
        NumberAxis axis = new NumberAxis(words.get(key));
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(words.locale()));
        parts.dress(axis);
        return axis;
    }

    private void limits(XYPlot plot) {
        IntervalMarker band = new IntervalMarker(
                data.calibratedMetres() - data.limitMetres(), data.calibratedMetres() + data.limitMetres());
        band.setPaint(look.struck());
        band.setAlpha(BAND_STRENGTH);
        plot.addDomainMarker(band, Layer.BACKGROUND);
        plot.addDomainMarker(
                new ValueMarker(data.calibratedMetres(), look.counted(), parts.stroke(1.8)), Layer.BACKGROUND);
        parts.addLegendLine(words.get("legend.calibrated-here"), parts.stroke(1.8), look.counted());
        Color shade = look.struck();
        parts.addLegendBand(
                words.get("legend.may-be-moved"),
                new Color(shade.getRed(), shade.getGreen(), shade.getBlue(), Math.round(255 * BAND_STRENGTH)));
    }
}

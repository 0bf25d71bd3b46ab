package porebench.chart.meter;

import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.Span;

/** What a Type A meter reads of one amount of air by the elevation at which it is used. */
final class ElevationChart extends PlotDrawing {
    private static final float BAND_STRENGTH = 0.18f;

    private final ElevationReadings data;

    ElevationChart(ElevationReadings data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
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
        NumberAxis elevation = numbers(words.get("axis.elevation"));
        if (metres.low() < metres.high()) {
            elevation.setRange(metres.low(), metres.high());
        }
        // Metres above the sea run into thousands, where a separator would read as a decimal sign elsewhere.
        elevation.setNumberFormatOverride(words.wholeNumbers());
        plot.setDomainAxis(elevation);
        NumberAxis reads = numbers(words.get("axis.reads"));
        percent.show(reads, 0.2);
        plot.setRangeAxis(reads);
        line(plot, POINTS, line, dashes(), look.factor());
        addLegendLine(words.get("legend.reads", words.percent(data.truePercent())), dashes(), look.factor());
        limits(plot);
        return chart(plot);
    }

    private void limits(XYPlot plot) {
        double home = data.calibratedMetres();
        addLegendLine(words.get("legend.calibrated-here"), stroke(1.8), look.counted());
        String word = words.get("legend.may-be-moved");
        plot.addDomainMarker(
                band(word, home - data.limitMetres(), home + data.limitMetres(), look.struck(), BAND_STRENGTH),
                Layer.BACKGROUND);
        plot.addDomainMarker(new ValueMarker(home, look.counted(), stroke(1.8)), Layer.BACKGROUND);
    }
}

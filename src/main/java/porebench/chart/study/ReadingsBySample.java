package porebench.chart.study;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.Plottable;
import porebench.chart.look.TableColumns;
import porebench.port.DataTable;

/**
 * Readings of the same samples by several operators.
 *
 * @param operators the operators, in the order of the study
 * @param samples the samples, in the order of the study
 * @param readings all readings
 * @param isSimulated whether nothing of it was measured, as in a book for training
 */
public record ReadingsBySample(
        List<String> operators, List<String> samples, List<Reading> readings, boolean isSimulated)
        implements Plottable {
    public ReadingsBySample {
        operators = List.copyOf(operators);
        samples = List.copyOf(samples);
        readings = List.copyOf(readings);
    }

    @Override
    public JFreeChart chart(ChartLook look, Locale locale) {
        return new ReadingsBySampleChart(this, look, locale).chart();
    }

    @Override
    public List<String> said(Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        said.axes(said.words().get("axis.sample"), said.words().get("axis.reading"));
        for (int at = 0; at < operators.size(); at++) {
            int operator = at;
            said.range(
                    operators.get(at),
                    readings.stream().filter(one -> one.operator() == operator).mapToDouble(Reading::value),
                    said.words()::plain);
        }
        for (int at = 0; at < samples.size(); at++) {
            int sample = at;
            said.range(
                    said.at(said.words().get("axis.sample"), samples.get(at)),
                    readings.stream().filter(one -> one.sample() == sample).mapToDouble(Reading::value),
                    said.words()::plain);
        }
        return said.simulated(isSimulated).sentences();
    }

    @Override
    public DataTable table() {
        // In the form that a study is read from.
        return new TableColumns<Reading>()
                .text("operator", reading -> operators.get(reading.operator()))
                .text("sample", reading -> samples.get(reading.sample()))
                .whole("repeat", Reading::repeat)
                .number("value", Reading::value)
                .table(readings);
    }

    /**
     * One reading.
     *
     * @param operator the place of the operator among them, from 0
     * @param sample the place of the sample among them, from 0
     * @param repeat which repeat it is, from 1
     * @param value in the unit of the readings
     */
    public record Reading(int operator, int sample, int repeat, double value) {}
}

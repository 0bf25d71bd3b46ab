package porebench.desk.study;

import java.util.List;
import java.util.Optional;
import porebench.chart.study.ComponentShares;
import porebench.chart.study.MandelPlot;
import porebench.chart.study.ReadingsBySample;

/**
 * What a study has to say.
 *
 * @param verdict one sentence
 * @param remarks sentences below it: what is withheld and why, what to do
 * @param shares the shares of the components; none where nothing varies
 * @param readings readings by sample and operator; of a study of operators only
 * @param h Mandel's h of laboratories; of a comparison of laboratories only
 * @param k Mandel's k of laboratories; of a comparison of laboratories only
 * @param tables the figures
 */
record StudyShown(
        String verdict,
        List<String> remarks,
        Optional<ComponentShares> shares,
        Optional<ReadingsBySample> readings,
        Optional<MandelPlot> h,
        Optional<MandelPlot> k,
        List<Table> tables) {
    StudyShown {
        remarks = List.copyOf(remarks);
        tables = List.copyOf(tables);
    }

    /** A study that is not a comparison of laboratories. */
    StudyShown(
            String verdict,
            List<String> remarks,
            Optional<ComponentShares> shares,
            Optional<ReadingsBySample> readings,
            List<Table> tables) {
        this(verdict, remarks, shares, readings, Optional.empty(), Optional.empty(), tables);
    }

    /**
     * A table.
     *
     * @param name a short stable name
     * @param title what stands above it, with the unit of its figures
     * @param columns the headings
     * @param rows the cells
     */
    record Table(String name, String title, List<Column> columns, List<List<String>> rows) {}

    /**
     * A column of a table.
     *
     * @param heading what stands above it
     * @param isNumber whether its cells stand at the right
     */
    record Column(String heading, boolean isNumber) {}

    /** Returns a study that has only a sentence to say. */
    static StudyShown of(String verdict) {
        return new StudyShown(verdict, List.of(), Optional.empty(), Optional.empty(), List.of());
    }
}

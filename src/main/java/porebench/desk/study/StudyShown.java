package porebench.desk.study;

import java.util.List;
import java.util.Optional;
import porebench.chart.ComponentShares;
import porebench.chart.ReadingsBySample;

/**
 * What a study has to say.
 *
 * @param verdict one sentence
 * @param remarks sentences below it: what is withheld and why, what to do
 * @param shares the shares of the components; none where nothing varies
 * @param readings readings by sample and operator; of a study of operators only
 * @param tables the figures
 */
record StudyShown(
        String verdict,
        List<String> remarks,
        Optional<ComponentShares> shares,
        Optional<ReadingsBySample> readings,
        List<Table> tables) {
    StudyShown {
        remarks = List.copyOf(remarks);
        tables = List.copyOf(tables);
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

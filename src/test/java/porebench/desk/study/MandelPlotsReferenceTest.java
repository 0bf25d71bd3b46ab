package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.chart.study.MandelPlot;
import porebench.desk.form.Numbers;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.LaboratoryLevels;
import porebench.evidence.study.ValueRow;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.statistics.comparison.Mandel;
import porebench.statistics.outlier.Suspicion;

/** Against the coal of ISO 5725-2:1994, annex B.1 (recalled), and critical values by R 4.2.2. */
class MandelPlotsReferenceTest {
    private static final List<ReferenceFile.Row> COAL =
            ReferenceFile.read("laboratories-coal.csv").rows();
    private static final ReferenceFile.Row CRITICAL = ReferenceFile.read("mandel-critical.csv").rows().stream()
            .filter(row -> row.whole("p") == 8)
            .findFirst()
            .orElseThrow();

    private static LaboratoriesStudy plots() {
        List<Sheet.Row<ValueRow>> rows = new ArrayList<>();
        for (ReferenceFile.Row cell : COAL) {
            for (double value : cell.numbers("values")) {
                rows.add(new Sheet.Row<>(
                        rows.size() + 2,
                        new ValueRow(
                                Map.of("laboratory", cell.text("laboratory"), "level", cell.text("level")),
                                BigDecimal.valueOf(value))));
            }
        }
        Texts texts = Texts.of("porebench.desk.study.study", Locale.ENGLISH);
        LaboratoryLevels levels = LaboratoryLevels.of(new Sheet<>("coal.csv", rows, List.of()), 0);
        return new LaboratoriesStudy(
                levels,
                levels.biases(0),
                List.of(),
                texts,
                new StudyFigures(texts, new Numbers(Locale.ENGLISH)),
                ProblemText.in(Locale.ENGLISH),
                false);
    }

    private static ReferenceFile.Row cell(MandelPlot plot, MandelPlot.Value value) {
        return COAL.stream()
                .filter(row -> row.text("level").equals(plot.levels().get(value.level()))
                        && row.text("laboratory").equals(plot.laboratories().get(value.laboratory())))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> out(MandelPlot plot, Suspicion suspicion) {
        return plot.values().stream()
                .filter(value -> value.found().orElseThrow().suspicion() == suspicion)
                .map(value -> plot.laboratories().get(value.laboratory()) + " at "
                        + plot.levels().get(value.level()))
                .toList();
    }

    /** h 1.807 of laboratory 6 is above 1.749 (5 %), 2.089 of 6 and 2.094 of 3 are above 2.065 (1 %). */
    @Test
    void hOfTheCoalStandsBesideItsCriticalValues() {
        MandelPlot h = plots().h();
        assertThat(h.statistic()).isEqualTo(MandelPlot.Statistic.H);
        assertThat(h.laboratories()).containsExactly("1", "2", "3", "4", "5", "6", "7", "8");
        assertThat(h.levels()).containsExactly("1", "2", "3", "4");
        assertThat(h.values()).hasSize(32);
        for (MandelPlot.Value value : h.values()) {
            Mandel found = value.found().orElseThrow();
            ReferenceFile.Row row = cell(h, value);
            assertThat(found.statistic()).isEqualTo(row.number("h"), offset(1e-9));
            assertThat(found.critical5()).isEqualTo(CRITICAL.number("h0.05"), offset(6e-7));
            assertThat(found.critical1()).isEqualTo(CRITICAL.number("h0.01"), offset(6e-7));
            assertThat(value.results()).isEqualTo(row.numbers("values").length);
            assertThat(value.whyNot()).isEmpty();
        }
        assertThat(out(h, Suspicion.STRAGGLER)).containsExactly("6 at 1");
        assertThat(out(h, Suspicion.OUTLIER)).containsExactly("6 at 2", "3 at 4");
    }

    /**
     * 5 % and 1 % values of k are 1.669 and 1.964 of three results, 1.499 and 1.714 of five: 1.674 of laboratory 8 and 1.572
     * of 5 lie between, 2.154 of 5 above.
     */
    @Test
    void kOfTheCoalStandsBesideTheCriticalValuesOfItsNumberOfResults() {
        MandelPlot k = plots().k();
        assertThat(k.statistic()).isEqualTo(MandelPlot.Statistic.K);
        for (MandelPlot.Value value : k.values()) {
            Mandel found = value.found().orElseThrow();
            assertThat(found.statistic()).isEqualTo(cell(k, value).number("k"), offset(1e-9));
            String column = "k_n" + value.results();
            assertThat(found.critical5()).isEqualTo(CRITICAL.number(column + "_0.05"), offset(6e-7));
            assertThat(found.critical1()).isEqualTo(CRITICAL.number(column + "_0.01"), offset(6e-7));
        }
        assertThat(out(k, Suspicion.STRAGGLER)).containsExactly("8 at 1", "5 at 4");
        assertThat(out(k, Suspicion.OUTLIER)).containsExactly("5 at 3");
    }
}

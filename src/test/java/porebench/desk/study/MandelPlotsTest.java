package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.chart.study.MandelPlot;
import porebench.desk.BenchBook;
import porebench.record.KeptStudy.Layout;
import porebench.record.Laboratory;
import porebench.statistics.comparison.Mandel;
import porebench.statistics.outlier.Suspicion;

/** What the plots of a comparison of laboratories hold, and what they say in place of a figure. */
class MandelPlotsTest {
    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();

    private StudyModel opened(Layout kind, String text) throws IOException {
        StudyModel model = new StudyModel(bench.desk);
        Chosen.choose(model, kind);
        Chosen.takeFromBook(model, false);
        model.open(Files.writeString(folder.resolve("v.csv"), text, StandardCharsets.UTF_8), failure -> {
            throw new AssertionError(failure);
        });
        return model;
    }

    private static StudyShown shown(StudyModel model) {
        return model.shown().orElseThrow();
    }

    /** Beck gave one result of the dense stone and none of the porous one, where all results are equal. */
    @Test
    void plotsHAndKOfLaboratoriesOrSaysWhyNot() throws IOException {
        StudyModel model = opened(
                Layout.LABORATORIES,
                "laboratory,level,value\nGill,dense,1\nGill,dense,3\nFell,dense,5\nFell,dense,8\nBeck,dense,4\n"
                        + "Fell,porous,7\nFell,porous,7\nGill,porous,7\nGill,porous,7\n");
        MandelPlot h = shown(model).h().orElseThrow();
        MandelPlot k = shown(model).k().orElseThrow();
        assertThat(h.laboratories()).containsExactly("Gill", "Fell", "Beck");
        assertThat(h.levels()).containsExactly("dense", "porous");
        assertThat(h.values())
                .extracting(MandelPlot.Value::laboratory, MandelPlot.Value::level, MandelPlot.Value::results)
                .containsExactly(tuple(0, 0, 2), tuple(1, 0, 2), tuple(2, 0, 1), tuple(0, 1, 2), tuple(1, 1, 2));
        assertThat(h.values())
                .extracting(MandelPlot.Value::whyNot)
                .containsExactly(
                        "",
                        "",
                        "",
                        "There are too few laboratories or results for this test.",
                        "There are too few laboratories or results for this test.");
        assertThat(k.values())
                .extracting(MandelPlot.Value::whyNot)
                .containsExactly(
                        "",
                        "",
                        "One result alone has no spread.",
                        "There is no spread to judge by.",
                        "There is no spread to judge by.");
        assertThat(k.values())
                .extracting(value -> value.found().isPresent())
                .containsExactly(true, true, false, false, false);
        assertThat(h.isSimulated()).isFalse();
        assertThat(shown(opened(Layout.LAYERS, "day,value\n1,1\n1,3\n2,5\n2,6\n"))
                        .h())
                .isEmpty();
    }

    /**
     * Two equal readings of a scale of 0.1 may hide a variance of 0.1^2 / 4 = 0.0025: beside 0.005 and 0.08 of the others k is
     * sqrt(2 0.005 / 0.0075) = 1.155 and sqrt(2 0.08 / 0.0825) = 1.393, both below 1.410.
     */
    @Test
    void twoLaboratoriesOfTwoReadingsAreNotAccused() throws IOException {
        String equal = "laboratory,level,value\nA,1,0.5\nA,1,0.5\nB,1,0.5\n";
        assertThat(ofB(opened(Layout.LABORATORIES, equal + "B,1,0.6\n")).statistic())
                .isEqualTo(1.1547, within(1e-4));
        Mandel wide = ofB(opened(Layout.LABORATORIES, equal + "B,1,0.9\n"));
        assertThat(wide.statistic()).isEqualTo(1.3926, within(1e-4));
        assertThat(wide.suspicion()).isEqualTo(Suspicion.NONE);
        StudyModel coarse = opened(Layout.LABORATORIES, equal + "B,1,0.6\nC,1,0.5\nC,1,0.5\n");
        assertThat(shown(coarse).k().orElseThrow().values())
                .allSatisfy(value -> assertThat(value.found()).isEmpty())
                .allSatisfy(
                        value -> assertThat(value.whyNot()).startsWith("The results differ by only a few divisions"));
    }

    /** Two values of k: 5 % of 2 is 0.1. */
    @Test
    void fewValuesAreNotSaidToGiveAStragglerByChance() throws IOException {
        assertThat(shown(opened(Layout.LABORATORIES, "laboratory,level,value\nA,1,1\nA,1,2\nB,1,2\nB,1,4\n"))
                        .remarks())
                .contains("Of 2 values of h and k, about 0.1 would be called stragglers by chance alone.");
    }

    private static Mandel ofB(StudyModel model) {
        return shown(model).k().orElseThrow().values().get(1).found().orElseThrow();
    }

    @Test
    void plotsOfATrainingBookSayThatNothingWasMeasured() throws IOException {
        bench.keep(new Laboratory("Hawmere Gate", "", true));
        bench.desk.refresh();
        StudyModel model =
                opened(Layout.LABORATORIES, "laboratory,level,value\nA,1,1\nA,1,2\nB,1,2\nB,1,4\nC,1,3\nC,1,7\n");
        assertThat(shown(model).h().orElseThrow().isSimulated()).isTrue();
        assertThat(shown(model).k().orElseThrow().isSimulated()).isTrue();
    }
}

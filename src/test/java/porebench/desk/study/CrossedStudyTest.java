package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.BenchBook;
import porebench.evidence.study.TrialLayer;

/** What a study of layers that cross one another says. */
class CrossedStudyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();

    private StudyModel opened(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("v.csv"), text, StandardCharsets.UTF_8);
        StudyModel model = new StudyModel(bench.desk);
        model.update();
        Chosen.takeFromBook(model, false);
        model.open(file, failure -> {
            throw new AssertionError(failure);
        });
        return model;
    }

    private static StudyShown shown(StudyModel model) {
        return model.shown().orElseThrow();
    }

    private static final String CROSSING = "operator,meter,value\nAda,M-1,5.1\nAda,M-2,5.6\nAda,M-2,5.5\n"
            + "Bo,M-1,5.2\nBo,M-1,5.1\nBo,M-2,5.6\nCy,M-1,5.2\nCy,M-2,5.7\n";

    @Test
    void layersCanCrossOneAnother() throws IOException {
        StudyModel model = opened(CROSSING);
        assertThat(shown(model).tables()).hasSize(2);
        Chosen.cross(model, true);
        assertThat(model.problems()).isEmpty();
        StudyShown shown = shown(model);
        assertThat(shown.verdict()).startsWith("Most of the variance").contains("layer \"meter\"");
        assertThat(shown.tables())
                .singleElement()
                .satisfies(table -> assertThat(table.rows())
                        .extracting(row -> row.get(0))
                        .containsExactly("operator", "meter", "What is left"));
        assertThat(shown.remarks()).anyMatch(words -> words.startsWith("Each layer by itself"));
        Chosen.cross(model, false);
        assertThat(shown(model).tables()).hasSize(2);
    }

    @Test
    void layersOfTheLabBookThatGoTogetherAreNamed() {
        bench.keep(BenchBook.determination(1, DAY), BenchBook.determination(2, DAY));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.4"), BenchBook.trial("T2", 1, DAY, "6.5"));
        bench.keep(BenchBook.trial("T3", 2, DAY, "6.8"), BenchBook.trial("T4", 2, DAY, "6.9"));
        bench.desk.refresh();
        StudyModel model = new StudyModel(bench.desk);
        Chosen.chooseLayer(model, 0, Optional.of(TrialLayer.DETERMINATION));
        Chosen.chooseLayer(model, 1, Optional.of(TrialLayer.OPERATOR));
        Chosen.chooseLayer(model, 2, Optional.empty());
        Chosen.cross(model, true);
        assertThat(model.shown()).isEmpty();
        assertThat(model.problems())
                .containsExactly(
                        "Layer Operator has one group only: there is nothing to compare it with. Leave the layer"
                                + " out.");
        Chosen.chooseLayer(model, 1, Optional.empty());
        assertThat(model.problems()).isEmpty();
        assertThat(shown(model).verdict()).contains("Determination", "% air");
    }

    @Test
    void layersThatExplainEverythingLeaveNothingToJudgeBy() throws IOException {
        StudyModel model =
                opened("operator,meter,value\nAda,M-1,5.1\nAda,M-2,5.2\nBo,M-1,5.3\nBo,M-2,5.4\nBo,M-2,5.4\n");
        Chosen.cross(model, true);
        assertThat(shown(model).verdict()).startsWith("The layers explain every value");
    }
}

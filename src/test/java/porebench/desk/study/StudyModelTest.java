package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.chart.study.ComponentShares;
import porebench.desk.BenchBook;
import porebench.evidence.study.LayeredReadings;
import porebench.evidence.study.TrialLayer;
import porebench.port.OutputFile;
import porebench.record.KeptStudy.Layout;

/** Trials of a gauge reading 6.x have the factor 0.x, because 6 % was withdrawn. */
class StudyModelTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final String HEAD = "operator,sample,repeat,value\n";

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();

    /** Keeps trials of one determination, one a day. */
    private void trials(int determination, String... gauges) {
        bench.keep(BenchBook.determination(determination, DAY));
        for (int i = 0; i < gauges.length; i++) {
            String id = "T" + determination + "-" + i;
            bench.keep(
                    gauges[i].equals("leak")
                            ? BenchBook.leaked(id, determination, DAY.plusDays(i))
                            : BenchBook.trial(id, determination, DAY.plusDays(i), gauges[i]));
        }
        bench.desk.refresh();
    }

    private StudyModel model() {
        StudyModel model = new StudyModel(bench.desk);
        model.update();
        return model;
    }

    private StudyModel opened(Layout kind, String text) throws IOException {
        StudyModel model = model();
        Chosen.choose(model, kind);
        Chosen.takeFromBook(model, false);
        open(model, file(text));
        return model;
    }

    private static StudyShown shown(StudyModel model) {
        return model.shown().orElseThrow();
    }

    private static List<String> row(StudyModel model, String table, String name) {
        return shown(model).tables().stream()
                .filter(each -> each.name().equals(table))
                .flatMap(each -> each.rows().stream())
                .filter(cells -> cells.get(0).equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void saysWhatIsMissingWhileNothingCounts() {
        StudyModel model = model();
        assertThat(model.kind()).isEqualTo(Layout.LAYERS);
        assertThat(model.isFromBook()).isTrue();
        assertThat(model.shown()).isEmpty();
        assertThat(model.problems()).isEmpty();
        assertThat(model.howTo()).startsWith("Fewer than two trials");
        assertThat(model.subject()).isEqualTo("Lab book");
    }

    /**
     * By hand: factors 0.4 0.5 0.4 and 0.8 0.9 0.9; mean square within 0.013333 / 4 = 0.0033333, between 0.281667; variance
     * between (0.281667 - 0.003333) / 3 = 0.092778, root 0.305, share 96.5 %.
     */
    @Test
    void dividesUpTheTrialsOfTheLabBookThatCount() {
        trials(1, "6.4", "6.5", "leak", "6.4");
        trials(2, "6.8", "6.9", "6.9");
        StudyModel model = model();
        assertThat(shown(model).verdict())
                .startsWith("Most of the variance, 97 %, lies between groups of the layer \"Determination\": a standard"
                        + " deviation of 0.305 % air (95 % interval ");
        assertThat(row(model, "components", "Determination")).contains("0.305", "0.0928", "97");
        assertThat(row(model, "components", "Repeats")).contains("0.0577", "0.00333", "3");
        assertThat(row(model, "components", "Mix")).containsExactly("Mix", "–", "–", "–", "–", "–");
        assertThat(row(model, "anova", "Repeats")).startsWith("Repeats", "4", "0.0133", "0.00333");
        assertThat(shown(model).remarks())
                .first()
                .asString()
                .startsWith("6 values; mean 0.650, with a standard uncertainty of 0.217 (% air).");
        assertThat(shown(model).remarks())
                .anySatisfy(words -> assertThat(words).startsWith("Mix: as many groups"))
                .anySatisfy(words -> assertThat(words).startsWith("Operator: as many groups"));
        List<ComponentShares.Share> shares = shown(model).shares().orElseThrow().shares();
        assertThat(shares)
                .extracting(ComponentShares.Share::name)
                .containsExactly("Mix", "Determination", "Operator", "Repeats");
        assertThat(shares.get(0).sharePercent()).isEmpty();
        assertThat(shares.get(1).sharePercent().orElseThrow()).isEqualTo(96.53, within(0.01));
    }

    @Test
    void takesTheLayersInTheOrderChosen() {
        trials(1, "6.4", "6.5");
        trials(2, "6.8", "6.9");
        StudyModel model = model();
        Chosen.chooseLayer(model, 0, Optional.of(TrialLayer.DAY));
        Chosen.chooseLayer(model, 1, Optional.empty());
        Chosen.chooseLayer(model, 2, Optional.of(TrialLayer.SOURCES));
        Chosen.chooseLayer(model, 3, Optional.of(TrialLayer.METER));
        assertThat(shown(model).shares().orElseThrow().shares())
                .extracting(ComponentShares.Share::name)
                .containsExactly("Day", "Sources together", "Meter", "Repeats");
        Chosen.chooseLayer(model, 3, Optional.of(TrialLayer.DAY));
        assertThat(model.shown()).isEmpty();
        assertThat(model.problems()).containsExactly("Day is chosen twice: choose each layer once.");
        Chosen.chooseLayer(model, 0, Optional.empty());
        Chosen.chooseLayer(model, 2, Optional.empty());
        Chosen.chooseLayer(model, 3, Optional.empty());
        assertThat(model.problems()).containsExactly("Choose at least one layer.");
    }

    /** M. Sorrel made the trials of both determinations. */
    @Test
    void saysThatANameWithinTwoGroupsIsTakenForTwo() {
        trials(1, "6.4", "6.5");
        trials(2, "6.8", "6.9");
        StudyModel model = model();
        assertThat(shown(model).remarks())
                .filteredOn(words -> words.contains("the same names"))
                .singleElement()
                .asString()
                .startsWith("Operator: the same names are in several groups");
    }

    @Test
    void saysThatTrialsOfATrainingBookAreSimulated() {
        LayeredReadings readings = new LayeredReadings(
                List.of("Day"),
                List.of(List.of("1"), List.of("1"), List.of("2"), List.of("2")),
                new double[] {1, 2, 5, 6});
        StudyModel model = model();
        StudyShown shown = new StudyComputing(
                        model.texts(),
                        bench.desk.tools().numbers(),
                        bench.desk.tools().problemText())
                .ofBook(readings, false, true)
                .shown()
                .orElseThrow();
        assertThat(shown.verdict()).startsWith("SIMULATED for training, nothing was measured. Most of the variance");
        assertThat(shown.shares().orElseThrow().isSimulated()).isTrue();
    }

    @Test
    void followsTheLabBook() {
        trials(1, "6.4", "6.5");
        StudyModel model = model();
        String before = shown(model).remarks().get(0);
        trials(2, "6.8", "6.9");
        model.update();
        assertThat(shown(model).remarks().get(0)).isNotEqualTo(before).startsWith("4 values");
    }

    @Test
    void saysThatEqualTrialsTellNothing() {
        trials(1, "6.4", "6.4");
        assertThat(shown(model()).verdict()).startsWith("All values are equal");
        assertThat(shown(model()).tables()).isEmpty();
    }

    /**
     * The same figures as in GaugeStudyTest by hand: variances of samples 8, operators 0.5, interaction raw -0.25, repeats 0.5;
     * reading 1 of 9, a third of the spread.
     */
    @Test
    void judgesOperatorsOnSharedSamples() throws IOException {
        StudyModel model = opened(
                Layout.OPERATORS, HEAD + "A,1,1,1\nA,1,2,2\nA,2,1,5\nA,2,2,6\nB,1,1,2\nB,1,2,3\nB,2,1,7\nB,2,2,6\n");
        assertThat(shown(model).verdict())
                .startsWith("Reading makes up 33 % of the spread, as standard deviations (95 % interval ")
                .endsWith("which is too much for most uses; it can sort samples into 3 groups.");
        assertThat(row(model, "components", "Samples")).contains("8.00", "89");
        assertThat(row(model, "components", "Reading, together")).contains("1.00", "11");
        assertThat(row(model, "anova", "Operators")).containsExactly("Operators", "1", "2.00", "2.00", "–", "–");
        assertThat(shown(model).remarks())
                .contains(
                        "Operator with sample: the variance came out below 0, at -0.250; the data show nothing of it, and"
                                + " it counts as 0.",
                        "The mean square that F would be held against is 0, so F and p are not shown.");
        assertThat(shown(model).readings().orElseThrow().readings()).hasSize(8);
        Chosen.keepInteraction(model, false);
        assertThat(row(model, "components", "Repeats")).contains("0.400");
        assertThat(row(model, "anova", "Operators")).contains("5.00");
        assertThat(shown(model).remarks())
                .anySatisfy(words -> assertThat(words).endsWith("so it is pooled with the repeats."));
        assertThat(model.subject()).isEqualTo("v.csv");
    }

    @Test
    void namesWhatIsWrongWithAFileAndWhere() throws IOException {
        StudyModel model = opened(Layout.OPERATORS, HEAD + "A,1,1,x\nA,1,1,2\nA,1,1,3\n");
        assertThat(model.shown()).isEmpty();
        assertThat(model.problems()).hasSize(2);
        assertThat(model.problems().get(0)).contains("v.csv", "2", "must be a plain number");
        assertThat(model.problems().get(1)).contains("stands here again");
        assertThat(model.howTo()).contains("operator,sample,repeat,value");
        Chosen.choose(model, Layout.LABORATORIES);
        assertThat(model.problems()).isEmpty();
        assertThat(model.howTo()).contains("laboratory,level,value");
    }

    @Test
    void withholdsWhatADialDoesNotTell() throws IOException {
        String still = HEAD + "A,1,1,1\nA,1,2,1\nA,2,1,1\nA,2,2,1\nB,1,1,1\nB,1,2,1\nB,2,1,1\nB,2,2,1\n";
        assertThat(shown(opened(Layout.OPERATORS, still)).verdict()).startsWith("All readings are equal");
        StudyModel exact = opened(
                Layout.OPERATORS, HEAD + "A,1,1,1\nA,1,2,1\nA,2,1,2\nA,2,2,2\nB,1,1,1\nB,1,2,1\nB,2,1,2\nB,2,2,2\n");
        assertThat(shown(exact).verdict()).startsWith("Repeats and operators never differ");
        StudyModel alike = opened(
                Layout.OPERATORS, HEAD + "A,1,1,1\nA,1,2,2\nA,2,1,1\nA,2,2,2\nB,1,1,2\nB,1,2,1\nB,2,1,2\nB,2,2,1\n");
        assertThat(shown(alike).verdict()).startsWith("The samples differ by no more");
        StudyModel repeats = opened(Layout.LAYERS, "day,value\n1,0.4\n1,0.4\n2,0.6\n2,0.6\n");
        assertThat(shown(repeats).remarks())
                .contains("Repeats: no difference was read. The readings are all alike, which shows the division "
                        + "of the scale and not the spread.");
        StudyModel single = opened(Layout.LAYERS, "day,value\n1,0.4\n2,0.4\n3,0.6\n");
        assertThat(shown(single).remarks())
                .anySatisfy(words -> assertThat(words).contains("one value"));
        StudyModel zero = opened(Layout.LAYERS, "day,value\n1,1\n1,3\n2,1.9\n2,2.1\n");
        assertThat(shown(zero).verdict()).contains("lies in the repeats", "(95 % interval");
        assertThat(shown(zero).remarks()).anySatisfy(words -> assertThat(words).contains("at its bound, 0"));
    }

    /**
     * Three laboratories, by hand: s of every one 1 (1, 2, 3 and so on), so s_r = 1 and r = 2.8;
     * s_d^2 = 3, s_L^2 = 2 / 3, s_R = 1.291, R = 3.61.
     */
    @Test
    void comparesLaboratories() throws IOException {
        StudyModel model = opened(
                Layout.LABORATORIES,
                "laboratory,level,value\nA,1,1\nA,1,2\nA,1,3\nB,1,2\nB,1,3\nB,1,4\nC,1,3\nC,1,4\nC,1,5\n");
        assertThat(shown(model).verdict())
                .isEqualTo("Two results of one laboratory may differ by 2.80 (repeatability limit), two of "
                        + "different laboratories by 3.61 (reproducibility limit); none stands out.");
        assertThat(row(model, "precision", "1")).startsWith("1", "3", "9", "3.00", "1.00");
        assertThat(row(model, "consistency", "1")).startsWith("1", "A", "3", "2.00", "1.00", "-1.00");
        // Means 2, 3, 4: A lies 1.5 below the other two.
        assertThat(row(model, "bias", "A")).startsWith("A", "1", "-1.50");
        // s_r^2 = 1 with 6 degrees: from sqrt(6 / 14.449) to sqrt(6 / 1.2373).
        assertThat(row(model, "intervals", "1")).startsWith("1", "0.644", "2.20");
        assertThat(shown(model).remarks()).last().asString().startsWith("Nothing was left out");
        StudyModel two = opened(Layout.LABORATORIES, "laboratory,level,value\nA,1,1\nA,1,2\nB,1,2\nB,1,3\n");
        assertThat(shown(two).remarks()).anySatisfy(words -> assertThat(words).startsWith("Level 1: h is not shown."));
        assertThat(opened(Layout.LABORATORIES, "laboratory,level,value\n").problems())
                .containsExactly("v.csv: The file holds no reading. Give a file of readings.");
    }

    /** Eight laboratories of two results, one of which spreads and lies far out. */
    @Test
    void namesWhatStandsOutAndLeavesNothingOut() throws IOException {
        StringBuilder rows = new StringBuilder("laboratory,level,value\n");
        double[] means = {5.0, 5.1, 4.9, 5.05, 4.95, 5.02, 4.98, 7.0};
        for (int level = 1; level <= 2; level++) {
            for (int i = 0; i < means.length; i++) {
                double half = i == 7 ? 0.5 : 0.05;
                rows.append(String.format(Locale.ROOT, "L%d,%d,%.2f%n", i, level, means[i] - half));
                rows.append(String.format(Locale.ROOT, "L%d,%d,%.2f%n", i, level, means[i] + half));
            }
        }
        StudyModel model = opened(Layout.LABORATORIES, rows.toString());
        assertThat(shown(model).verdict()).startsWith("8 laboratories at 2 levels: what stands out is named below (");
        assertThat(shown(model).remarks())
                .contains(
                        "L7 at level 1: its mean is an outlier (1 %) by h.",
                        "L7 at level 1: its own spread is an outlier (1 %) by k.",
                        "L7 at level 2: the largest spread is an outlier (1 %) by Cochran's test.",
                        "L7 at level 2: the mean farthest out is an outlier (1 %) by Grubbs's test.",
                        "Of 32 values of h and k, about 2 would be called stragglers by chance alone.");
    }

    @Test
    void savesABlankFormThatItReads() throws IOException {
        StudyModel model = model();
        for (Layout kind : Layout.values()) {
            Chosen.choose(model, kind);
            Path form = folder.resolve(model.formName());
            model.saveForm(OutputFile.fresh(form), failure -> {
                throw new AssertionError(failure);
            });
            assertThat(Files.readString(form, StandardCharsets.UTF_8).strip()).endsWith(",value");
            assertThat(bench.desk.tools().sheets().table(form, kind.columns()).problems())
                    .isEmpty();
        }
    }

    @Test
    void writesNumbersAsThePersonDoes() throws IOException {
        StudyModel german = new StudyModel(new BenchBook(Locale.GERMANY).desk);
        Chosen.takeFromBook(german, false);
        german.open(
                Files.writeString(folder.resolve("g.csv"), "day,value\n1,1\n1,2\n2,5\n2,6\n", StandardCharsets.UTF_8),
                failure -> {
                    throw new AssertionError(failure);
                });
        assertThat(row(german, "components", "Wiederholungen")).contains("0,500", "0,707");
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("v.csv"), text, StandardCharsets.UTF_8);
    }

    private static void open(StudyModel model, Path file) {
        model.open(file, failure -> {
            throw new AssertionError(failure);
        });
    }

    @Test
    void aFileThatIsOpenedIsStudiedAtOnceAndTheLabBookAgainWhenAskedFor() throws IOException {
        trials(1, "6.4", "6.5");
        trials(2, "6.8", "6.9");
        StudyModel model = model();
        Path file = file("day,value\n1,0.4\n1,0.5\n2,0.6\n");
        open(model, file);
        assertThat(model.isFromBook()).isFalse();
        assertThat(model.file()).contains(file);
        assertThat(shown(model).remarks().get(0)).startsWith("3 values");
        Chosen.takeFromBook(model, true);
        assertThat(model.file()).isEmpty();
        assertThat(shown(model).remarks().get(0)).startsWith("4 values");
    }

    @Test
    void aFileOfOperatorsDoesNotMoveWhereTheLayersComeFrom() throws IOException {
        Path file = file(HEAD + "A,1,1,1\nA,1,2,2\nB,1,1,2\nB,1,2,3\n");
        for (boolean fromBook : List.of(true, false)) {
            StudyModel model = model();
            Chosen.takeFromBook(model, fromBook);
            Chosen.choose(model, Layout.OPERATORS);
            open(model, file);
            Chosen.choose(model, Layout.LAYERS);
            assertThat(model.isFromBook()).isEqualTo(fromBook);
        }
    }

    @Test
    void theInteractionIsKeptApartUntilSomebodySaysOtherwise() {
        StudyModel model = model();
        assertThat(model.draft().isYes(StudyModel.INTERACTION)).isTrue();
        Chosen.keepInteraction(model, false);
        assertThat(model.draft().isYes(StudyModel.INTERACTION)).isFalse();
    }
}

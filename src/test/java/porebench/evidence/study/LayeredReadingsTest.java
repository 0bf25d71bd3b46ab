package porebench.evidence.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.evidence.Evidence;
import porebench.evidence.TimeBook;
import porebench.evidence.intake.Sheet;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Trial;

/** How trials and the rows of a sheet become readings in layers. */
class LayeredReadingsTest {
    private static final Place FILE = Place.of("layers.csv");

    /** Reads rows given as the names of their layers and a value; the layers are called a, b, c... */
    private static Answer<LayeredReadings> read(int layers, String... rows) {
        List<Sheet.Row<ValueRow>> all = new ArrayList<>();
        for (String row : rows) {
            String[] cells = row.split(" ");
            Map<String, String> names = new LinkedHashMap<>();
            for (int i = 0; i < layers; i++) {
                names.put(Character.toString('a' + i), cells[i]);
            }
            all.add(new Sheet.Row<>(
                    all.size() + 2, new ValueRow(names, BigDecimal.valueOf(Double.parseDouble(cells[layers])))));
        }
        return LayeredReadings.of(new Sheet<>("layers.csv", all, List.of()));
    }

    private static void isRefused(Answer<LayeredReadings> answer, Problem problem) {
        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems()).containsExactly(problem);
    }

    @Test
    void theColumnsOfASheetAreItsLayersFromTheOutermost() {
        LayeredReadings readings =
                read(2, "north Ada 5.1", "north Bo 5.2").value().orElseThrow();
        assertThat(readings.layers()).containsExactly("a", "b");
        assertThat(readings.paths()).containsExactly(List.of("north", "Ada"), List.of("north", "Bo"));
        assertThat(readings.values()).containsExactly(5.1, 5.2);
    }

    @Test
    void oneRowIsNoStudy() {
        isRefused(
                read(1, "north 5.1"),
                Problem.error("value", "study.too-few-rows", 1).at(FILE));
        assertThat(read(1, "north 5.1", "north 5.2").value()).isPresent();
    }

    @Test
    void fromOneToTheMostLayersCanBeTakenApart() {
        isRefused(
                read(0, "5.1", "5.2"), Problem.error("value", "study.no-layer").at(FILE));
        String most = "x ".repeat(LayeredReadings.MOST_LAYERS);
        assertThat(read(LayeredReadings.MOST_LAYERS, most + "5.1", most + "5.2").value())
                .isPresent();
        isRefused(
                read(LayeredReadings.MOST_LAYERS + 1, "x " + most + "5.1", "x " + most + "5.2"),
                Problem.error(
                                "value",
                                "study.too-many-layers",
                                LayeredReadings.MOST_LAYERS + 1,
                                LayeredReadings.MOST_LAYERS)
                        .at(FILE));
    }

    @Test
    void whatTheSheetItselfSaysStandsAlone() {
        Problem unread = Problem.error("value", "cell.not-a-number", "x");
        isRefused(LayeredReadings.of(new Sheet<>("layers.csv", List.of(), List.of(unread))), unread);
    }

    @Test
    void aNameInSeveralGroupsOfTheLayerAroundIsSaidToRecur() {
        assertThat(read(2, "north Ada 5.1", "south Ada 5.2")
                        .value()
                        .orElseThrow()
                        .recurring())
                .containsExactly("b");
        assertThat(read(2, "north Ada 5.1", "north Ada 5.3", "south Bo 5.2")
                        .value()
                        .orElseThrow()
                        .recurring())
                .isEmpty();
        // The outermost layer has none around it.
        assertThat(read(1, "north 5.1", "north 5.2").value().orElseThrow().recurring())
                .isEmpty();
        // In the third layer it is the third name that recurs.
        assertThat(read(3, "north Ada 1 5.1", "south Bo 1 5.2")
                        .value()
                        .orElseThrow()
                        .recurring())
                .containsExactly("c");
    }

    @Test
    void trialsThatCountAreLaidOutByWhatTheyAreGroupedBy() {
        TimeBook time = new TimeBook();
        time.begin("M-1/1", "M-1");
        time.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.5, 0.6);
        time.correct(
                Trial.class,
                time.book.latest(Trial.class, "T-002").orElseThrow().value().struck("spilled"));
        LayeredReadings readings = LayeredReadings.of(
                Evidence.ofAll(time.book),
                List.of(
                        TrialLayer.MIX,
                        TrialLayer.SOURCES,
                        TrialLayer.DETERMINATION,
                        TrialLayer.DAY,
                        TrialLayer.METER,
                        TrialLayer.OPERATOR),
                layer -> layer.name().toLowerCase(Locale.ROOT));
        assertThat(readings.layers()).containsExactly("mix", "sources", "determination", "day", "meter", "operator");
        assertThat(readings.paths())
                .containsExactly(
                        List.of("M-1", "S-1 + S-2", "M-1/1", "2026-01-05", "B-1", "R. Vale"),
                        List.of("M-1", "S-1 + S-2", "M-1/1", "2026-01-07", "B-1", "R. Vale"));
        assertThat(readings.values()).hasSize(2);
        assertThat(readings.values()[0]).isBetween(0.399, 0.401);
        assertThat(readings.values()[1]).isBetween(0.599, 0.601);
    }

    private static List<Problem> crossing(int layers, String... rows) {
        return read(layers, rows).value().orElseThrow().checkCrossing();
    }

    @Test
    void layersThatCrossMayMeetAsTheyCome() {
        assertThat(crossing(2, "Ada M-1 5.1", "Ada M-2 5.2", "Bo M-1 5.4", "Bo M-1 5.3"))
                .isEmpty();
    }

    @Test
    void layersThatGoTogetherCannotBeToldApart() {
        assertThat(crossing(2, "Ada M-1 5.1", "Ada M-1 5.2", "Bo M-2 5.4", "Bo M-2 5.3"))
                .containsExactly(Problem.error("value", "study.layers-alike", "a, b"));
    }

    @Test
    void aLayerOfOneGroupHasNothingToBeComparedWith() {
        assertThat(crossing(2, "Ada M-1 5.1", "Ada M-1 5.2", "Bo M-1 5.4"))
                .containsExactly(Problem.error("value", "study.one-group", "b"));
    }

    @Test
    void aGroupForEachReadingLeavesNothing() {
        assertThat(crossing(2, "Ada T-1 5.1", "Ada T-2 5.2", "Bo T-3 5.4"))
                .containsExactly(Problem.error("value", "study.nothing-left", "b"));
    }

    /** Two layers of as many groups each: those of one of them count. */
    @Test
    void moreGroupsThanCanBeToldApartAreRefused() {
        for (int groups : new int[] {LayeredReadings.MOST_CROSSING_GROUPS, LayeredReadings.MOST_CROSSING_GROUPS + 1}) {
            List<String> rows = new ArrayList<>();
            for (int i = 0; i < groups; i++) {
                rows.add("a" + i + " b" + i + " 1");
                rows.add("a" + i + " b" + (i + 1) % groups + " 2");
                rows.add("a" + i + " b" + (i + 1) % groups + " 3");
            }
            assertThat(crossing(2, rows.toArray(String[]::new)))
                    .extracting(Problem::code)
                    .isEqualTo(
                            groups > LayeredReadings.MOST_CROSSING_GROUPS
                                    ? List.of("study.too-many-groups")
                                    : List.of());
        }
    }
}

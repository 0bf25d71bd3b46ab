package porebench.promise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of confidences and alarms is true, as far as the runs of this build can tell. */
class PromisesTest {
    private static final List<Promise> ALL = List.of(
            new MeanIntervalPromise(),
            new StopPromise(),
            new NextTrialPromise(),
            new NextDeterminationPromise(),
            new EqualScatterPromise(),
            new SourceRangePromise(),
            new QuotedUncertaintyPromise(),
            new OccasionsPromise(),
            new FieldReadingPromise(),
            new OutlierPromise(),
            new UsualScatterPromise(),
            new UsualIntervalPromise(),
            new LayersPromise(),
            new StudiesPromise(),
            new ChartAlarmsPromise(),
            new DriftPromise(),
            new ChangeIntervalPromise(),
            new ChangeVerdictPromise(),
            new ChangeFollowedPromise(),
            new ForecastPromise(),
            new HoldAlarmsPromise(),
            new HoldShiftPromise());

    /** More than 1 in the profile {@code promises}: many runs, and the table is written anew. */
    private static final boolean MANY = Integer.getInteger("porebench.promises", 1) > 1;

    private static final Path TABLE = Path.of("docs", "variability.md");

    static Stream<Promise> all() {
        return ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void isKept(Promise promise) throws IOException {
        List<Cell> cells = promise.simulate(MANY ? promise.manyRuns() : promise.fewRuns());
        if (MANY) {
            write(promise, cells);
        }
        assertThat(cells).as(promise.sentence()).allMatch(Cell::holds);
    }

    /** Each promise stands in the documentation, with its sentence, and no cell of the table there breaks its word. */
    @Test
    void standsInTheDocumentation() throws IOException {
        String text = Files.readString(TABLE, StandardCharsets.UTF_8);
        for (Promise promise : ALL) {
            assertThat(text).contains(heading(promise)).contains(promise.sentence());
        }
        assertThat(text.lines().filter(line -> line.startsWith("### ")).count()).isEqualTo(ALL.size());
    }

    /** A cell that misses its word by more than half a point and three errors is seen to. */
    @Test
    void canFail() {
        assertThat(Cell.counted("", Cell.Way.AT_LEAST, 0.95, 940, 1000).holds()).isTrue();
        assertThat(Cell.counted("", Cell.Way.AT_LEAST, 0.95, 900, 1000).holds()).isFalse();
        assertThat(Cell.counted("", Cell.Way.AT_MOST, 0.05, 60, 1000).holds()).isTrue();
        assertThat(Cell.counted("", Cell.Way.AT_MOST, 0.05, 100, 1000).holds()).isFalse();
    }

    private static String heading(Promise promise) {
        return "### " + promise.name();
    }

    private static void write(Promise promise, List<Cell> cells) throws IOException {
        String text = Files.readString(TABLE, StandardCharsets.UTF_8);
        String rows = cells.stream().map(Cell::row).collect(Collectors.joining("\n"));
        String section = heading(promise) + "\n\nSaid: " + promise.sentence() + ". Runs a cell: " + promise.manyRuns()
                + ".\n\n| cell | said, % | seen, % | standard error |\n|---|---|---|---|\n" + rows + "\n";
        int start = text.indexOf(heading(promise));
        int next = start < 0 ? -1 : text.indexOf("\n### ", start);
        String before = start < 0 ? text.stripTrailing() + "\n\n" : text.substring(0, start);
        String after = next < 0 ? "" : text.substring(next);
        Files.writeString(TABLE, before + section + after, StandardCharsets.UTF_8);
    }
}

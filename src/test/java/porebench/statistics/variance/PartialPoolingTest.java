package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against the groups as lme4 1.1-31 in R 4.2.2 draws them, and by pencil. */
class PartialPoolingTest {
    private static final ReferenceFile DATA = ReferenceFile.read("layers-data.csv");
    private static final ReferenceFile EXPECTED = ReferenceFile.read("pooled-groups.csv");
    private static final ReferenceFile VARIANCES = ReferenceFile.read("layers-reml.csv");

    private static ReferenceFile.Row row(ReferenceFile file, String set) {
        return file.rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"dyestuff", "dyestuff2", "bulls", "oxide", "oxide-unbalanced", "pastes", "four-layers"})
    void drawsGroupsAsTheReferenceLibraryDoes(String set) {
        double[] all = row(VARIANCES, set).numbers("variances");
        double[] layers = Arrays.copyOf(all, all.length - 1);
        List<PartialPooling.Group> groups = groups(set, all[all.length - 1]);
        PartialPooling pooling = new PartialPooling(groups, layers);
        ReferenceFile.Row expected = row(EXPECTED, set);
        double[] pooled = expected.numbers("pooled");
        double[] error = expected.numbers("pooledError");
        double[] next = expected.numbers("next");
        double[] nextError = expected.numbers("nextError");
        assertThat(groups).hasSameSizeAs(pooled);
        for (int i = 0; i < pooled.length; i++) {
            PartialPooling.Known own = pooling.of(groups.get(i).path());
            assertThat(own.mean()).isCloseTo(pooled[i], within(1e-4 * Math.abs(pooled[i])));
            assertThat(Math.sqrt(own.variance())).isCloseTo(error[i], within(1e-4 * error[i]));
            PartialPooling.Known further = pooling.next(groups.get(i).path()).orElseThrow();
            assertThat(further.mean()).isCloseTo(next[i], within(1e-4 * Math.abs(next[i])));
            assertThat(Math.sqrt(further.variance())).isCloseTo(nextError[i], within(1e-4 * nextError[i]));
        }
    }

    private static List<PartialPooling.Group> groups(String set, double variance) {
        Map<List<String>, List<Double>> values = new LinkedHashMap<>();
        for (ReferenceFile.Row row : DATA.rows()) {
            if (row.text("set").equals(set)) {
                for (double value : row.numbers("values")) {
                    values.computeIfAbsent(List.of(row.text("path").split(";")), path -> new ArrayList<>())
                            .add(value);
                }
            }
        }
        return values.entrySet().stream()
                .map(entry -> new PartialPooling.Group(
                        entry.getKey(),
                        entry.getValue().stream().collect(Collectors.averagingDouble(value -> value)),
                        variance / entry.getValue().size()))
                .toList();
    }

    private static PartialPooling.Group group(double mean, double variance, String... path) {
        return new PartialPooling.Group(List.of(path), mean, variance);
    }

    /** Neighbours 1 and 3 say 2 with variance (1 + 1) / 2 = 1; widened by 1 to 2; own 5 with 1: (5 / 1 + 2 / 2) / (1 + 1/2) = 4. */
    @Test
    void aGroupIsDrawnTowardsItsNeighbours() {
        PartialPooling pooling = new PartialPooling(List.of(group(1, 1, "a"), group(3, 1, "b"), group(5, 1, "c")), 1);
        assertThat(pooling.around(List.of("c")).orElseThrow()).isEqualTo(new PartialPooling.Known(2, 1));
        assertThat(pooling.of(List.of("c")).mean()).isCloseTo(4, within(1e-12));
        assertThat(pooling.of(List.of("c")).variance()).isCloseTo(1 / 1.5, within(1e-12));
    }

    /** Three groups of variance 1 + 1: mean 3 with 2/3, and a further one is 1 wider. */
    @Test
    void aFurtherGroupIsExpectedWhereAllLie() {
        PartialPooling pooling = new PartialPooling(List.of(group(1, 1, "a"), group(3, 1, "b"), group(5, 1, "c")), 1);
        PartialPooling.Known next = pooling.next(List.of("c")).orElseThrow();
        assertThat(next.mean()).isCloseTo(3, within(1e-12));
        assertThat(next.variance()).isCloseTo(1 + 2.0 / 3, within(1e-12));
    }

    @Test
    void aGroupAloneStaysAsItIs() {
        PartialPooling pooling = new PartialPooling(List.of(group(5, 1, "a", "x")), 1, 1);
        assertThat(pooling.around(List.of("a", "x"))).isEmpty();
        assertThat(pooling.of(List.of("a", "x"))).isEqualTo(new PartialPooling.Known(5, 1));
    }

    @Test
    void groupsThatNeverDifferShareOneMean() {
        PartialPooling pooling = new PartialPooling(List.of(group(1, 1, "a"), group(5, 1, "b")), 0);
        assertThat(pooling.of(List.of("a")).mean()).isCloseTo(3, within(1e-12));
        assertThat(pooling.of(List.of("b")).mean()).isCloseTo(3, within(1e-12));
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartialPooling(List.of(group(1, 1, "a")), 1, 1))
                .withMessageContaining("[a]");
        assertThatIllegalArgumentException().isThrownBy(() -> new PartialPooling(List.of(), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new PartialPooling(List.of(group(1, 1, "a")), -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartialPooling(List.of(group(1, 1, "a"))).of(List.of("a")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartialPooling(List.of(group(1, 1, "a")), 1).of(List.of("b")))
                .withMessageContaining("[b]");
    }
}

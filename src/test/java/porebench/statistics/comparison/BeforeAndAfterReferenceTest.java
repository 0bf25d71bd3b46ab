package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.ReferenceFile;

/** Against R 4.2.2: t.test, lme4 and the power of two one-sided tests integrated. */
class BeforeAndAfterReferenceTest {
    /** A division that no reading here is too coarse for. */
    private static final double FINE = 1e-6;

    static Stream<ReferenceFile.Row> readings() {
        return ReferenceFile.read("before-and-after.csv").rows().stream();
    }

    static Stream<ReferenceFile.Row> sets() {
        return ReferenceFile.read("before-and-after-sets.csv").rows().stream();
    }

    static Stream<ReferenceFile.Row> powers() {
        return ReferenceFile.read("equivalence-power.csv").rows().stream();
    }

    @ParameterizedTest
    @MethodSource("readings")
    void agreesWithWelchAndTheTwoOneSidedTests(ReferenceFile.Row row) {
        BeforeAndAfter found = BeforeAndAfter.of(
                ReadingSets.of(List.of(row.numbers("before"))),
                ReadingSets.of(List.of(row.numbers("after"))),
                FINE,
                false,
                Optional.empty());
        assertThat(found.unit()).isEqualTo(BeforeAndAfter.Unit.READINGS);
        assertThat(found.difference()).isCloseTo(row.number("difference"), within(1e-12));
        assertThat(found.t()).isCloseTo(row.number("t"), withPercentage(1e-7));
        assertThat(found.degreesOfFreedom()).isCloseTo(row.number("degreesOfFreedom"), withPercentage(1e-7));
        assertThat(found.p()).isCloseTo(row.number("p"), withPercentage(1e-7));
        assertThat(found.difference() - found.halfWidth()).isCloseTo(row.number("low95"), within(1e-9));
        assertThat(found.difference() + found.halfWidth()).isCloseTo(row.number("high95"), within(1e-9));
        Equivalence tests = found.equivalence(row.number("margin"));
        assertThat(tests.low()).isCloseTo(row.number("low90"), within(1e-9));
        assertThat(tests.high()).isCloseTo(row.number("high90"), within(1e-9));
        assertThat(tests.pLow()).isCloseTo(row.number("pLow"), withPercentage(1e-7));
        assertThat(tests.pHigh()).isCloseTo(row.number("pHigh"), withPercentage(1e-7));
        assertThat(tests.isEquivalent()).isEqualTo(row.number("pLow") <= 0.05 && row.number("pHigh") <= 0.05);
    }

    @ParameterizedTest
    @MethodSource("sets")
    void agreesWithAMixedModelWhereDeterminationsAreEquallyMany(ReferenceFile.Row row) {
        BeforeAndAfter found =
                BeforeAndAfter.of(setsOf(row.text("before")), setsOf(row.text("after")), FINE, false, Optional.empty());
        assertThat(found.unit()).isEqualTo(BeforeAndAfter.Unit.DETERMINATIONS);
        assertThat(found.difference()).isCloseTo(row.number("difference"), within(1e-9));
        assertThat(found.standardError()).isCloseTo(row.number("standardError"), withPercentage(1e-3));
        assertThat(found.degreesOfFreedom()).isCloseTo(row.number("degreesOfFreedom"), withPercentage(1e-7));
    }

    private static ReadingSets setsOf(String cell) {
        return ReadingSets.of(Arrays.stream(cell.split("\\|"))
                .map(set -> Arrays.stream(set.split(";"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList());
    }

    @ParameterizedTest
    @MethodSource("powers")
    void hasThePowerOfTheIntegral(ReferenceFile.Row row) {
        int count = row.whole("count");
        Precision precision = new Precision(row.number("deviation") * Math.sqrt(2.0 / count), 2.0 * count - 2);
        assertThat(Equivalence.power(row.number("trueDifference"), precision, row.number("margin")))
                .isCloseTo(row.number("power"), withPercentage(1e-6));
    }
}

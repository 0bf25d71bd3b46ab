package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every curve of a dial, whatever its points. */
class DialCurvePropertyTest {
    static List<DialCurve> curves() {
        return IntStream.range(0, 50).mapToObj(DialCurvePropertyTest::curve).toList();
    }

    private static DialCurve curve(int seed) {
        Random random = new Random(seed);
        List<DialCurve.Knot> knots = new ArrayList<>();
        double truth = random.nextDouble() * 2;
        double reading = truth + random.nextGaussian() * 0.5;
        for (int i = 0; i < 2 + random.nextInt(6); i++) {
            knots.add(new DialCurve.Knot(truth, reading, 1, 0.01 + random.nextDouble() * 0.1));
            truth += 0.01 + random.nextDouble() * 4;
            reading += 0.01 + random.nextDouble() * 4;
        }
        return new DialCurve(knots, 0.1, "ours");
    }

    @ParameterizedTest
    @MethodSource("curves")
    void risesThroughout(DialCurve curve) {
        for (double reading = -3; reading < 40; reading += 0.05) {
            assertThat(curve.trueOf(reading + 0.05).truePercent())
                    .isGreaterThan(curve.trueOf(reading).truePercent());
            assertThat(curve.readingOf(reading + 0.05)).isGreaterThan(curve.readingOf(reading));
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void isItsOwnWayBack(DialCurve curve) {
        for (double reading = -3; reading < 40; reading += 0.05) {
            assertThat(curve.readingOf(curve.trueOf(reading).truePercent())).isCloseTo(reading, offset(1e-9));
            assertThat(curve.trueOf(curve.readingOf(reading)).truePercent()).isCloseTo(reading, offset(1e-9));
        }
    }

    /** No step where the curve bends or where it is held on beyond the points. */
    @ParameterizedTest
    @MethodSource("curves")
    void hasNoStep(DialCurve curve) {
        for (DialCurve.Knot knot : curve.knots()) {
            double before = curve.trueOf(knot.readingPercent() - 1e-9).truePercent();
            double after = curve.trueOf(knot.readingPercent() + 1e-9).truePercent();
            assertThat(before).isCloseTo(knot.truePercent(), offset(1e-5));
            assertThat(after).isCloseTo(knot.truePercent(), offset(1e-5));
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void goesThroughItsPointsAndIsExtrapolatedBeyondThemOnly(DialCurve curve) {
        for (DialCurve.Knot knot : curve.knots()) {
            DialCurve.Corrected corrected = curve.trueOf(knot.readingPercent());
            assertThat(corrected.truePercent()).isCloseTo(knot.truePercent(), offset(1e-9));
            assertThat(corrected.standardUncertaintyPercent())
                    .isCloseTo(knot.standardUncertaintyPercent(), offset(1e-9));
            assertThat(corrected.isExtrapolated()).isFalse();
        }
        DialCurve.Knot first = curve.knots().get(0);
        DialCurve.Knot last = curve.knots().get(curve.knots().size() - 1);
        DialCurve.Corrected below = curve.trueOf(first.readingPercent() - 1);
        DialCurve.Corrected above = curve.trueOf(last.readingPercent() + 1);
        assertThat(below.isExtrapolated() && above.isExtrapolated()).isTrue();
        assertThat(below.correctionPercent()).isCloseTo(-first.errorPercent(), offset(1e-9));
        assertThat(above.correctionPercent()).isCloseTo(-last.errorPercent(), offset(1e-9));
        // Holding an error on is never surer than the point it comes from.
        assertThat(below.standardUncertaintyPercent()).isGreaterThanOrEqualTo(first.standardUncertaintyPercent());
        assertThat(above.standardUncertaintyPercent()).isGreaterThanOrEqualTo(last.standardUncertaintyPercent());
    }
}

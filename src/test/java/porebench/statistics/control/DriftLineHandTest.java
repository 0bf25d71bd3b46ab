package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DriftLineHandTest {
    private static List<DriftLine.Point> points(String kind, double... means) {
        List<DriftLine.Point> points = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
            points.add(new DriftLine.Point(kind, i, means[i]));
        }
        return points;
    }

    private static DriftLine line(List<DriftLine.Point> points, double division) {
        return DriftLine.through(points, division, 0.95).orElseThrow();
    }

    /** x 0 to 3: Sxx 5. y 0 1 1 2: mean 1, Sxy 3, slope 0.6; squares left 2 - 1.8 = 0.2 over 2; t 4.3027. */
    @Test
    void agreesWithThePencil() {
        DriftLine line = line(points("M", 0, 1, 1, 2), 0);
        assertThat(line.slope()).isCloseTo(0.6, offset(1e-12));
        assertThat(line.degreesOfFreedom()).isEqualTo(2);
        assertThat(line.halfWidth()).isCloseTo(4.30265 * Math.sqrt(0.1 / 5), offset(1e-4));
        assertThat(line.judged(3, 0)).isEqualTo(DriftLine.Judgement.NONE);
    }

    /** The same line twice at two levels: Sxx 10, Sxy 6, slope 0.6 again; squares left 0.4 over 8 - 2 - 1 = 5. */
    @Test
    void everyKindHasItsOwnLevel() {
        List<DriftLine.Point> both = points("M", 0, 1, 1, 2);
        both.addAll(points("N", 10, 11, 11, 12));
        DriftLine line = line(both, 0);
        assertThat(line.slope()).isCloseTo(0.6, offset(1e-12));
        assertThat(line.degreesOfFreedom()).isEqualTo(5);
        assertThat(line.halfWidth()).isCloseTo(2.57058 * Math.sqrt(0.08 / 10), offset(1e-4));
        assertThat(line.judged(3, 0)).isEqualTo(DriftLine.Judgement.RISES);
    }

    /** Straight lines: the scatter is the division's, and a change of one division over the time is none. */
    @Test
    void theScaleBoundsWhatIsSeen() {
        DriftLine falls = line(points("M", 9, 6, 3, 0), 1);
        assertThat(falls.halfWidth()).isCloseTo(4.30265 / Math.sqrt(12 * 5), offset(1e-4));
        assertThat(falls.judged(3, 1)).isEqualTo(DriftLine.Judgement.FALLS);
        assertThat(falls.judged(3, 9)).isEqualTo(DriftLine.Judgement.WITHIN_ONE_DIVISION);
        assertThat(falls.judged(3, 8.9)).isEqualTo(DriftLine.Judgement.FALLS);
    }

    @Test
    void withoutTimeOrPointsThereIsNoLine() {
        assertThat(DriftLine.through(points("M", 1, 2), 0, 0.95)).isEmpty();
        assertThat(DriftLine.through(
                        List.of(
                                new DriftLine.Point("M", 4, 1),
                                new DriftLine.Point("M", 4, 2),
                                new DriftLine.Point("M", 4, 3)),
                        0,
                        0.95))
                .isEmpty();
    }
}

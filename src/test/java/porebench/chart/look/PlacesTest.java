package porebench.chart.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jfree.data.Range;
import org.junit.jupiter.api.Test;

/** Of many places only those are drawn that pixels can show, and of few all. */
class PlacesTest {
    /** Two columns of pixels: x from 0 to 10 and from 10 to 20; y from 0 to 100 in 100 rows. */
    private static final Places.Window TWO_COLUMNS = new Places.Window(new Range(0, 20), new Range(0, 100), 2, 100);

    private static Places of(double... ys) {
        Places places = new Places();
        for (int i = 0; i < ys.length; i++) {
            places.add(i, ys[i]);
        }
        return places;
    }

    @Test
    void fewAreDrawnAsTheyAre() {
        Places eight = of(5, 1, 9, 2, 8, 3, 7, 4);
        for (Places.Keep keep : Places.Keep.values()) {
            assertThat(eight.drawn(TWO_COLUMNS, keep)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
        }
    }

    /** First column: first 5, highest 9 at 2, lowest 1 at 4, last 6 at 9. Second: first and lowest 3 at 10, highest and last 8 at 11. */
    @Test
    void ofManyInAColumnALineKeepsFirstLowestHighestAndLast() {
        Places twelve = of(5, 5, 9, 5, 1, 5, 5, 5, 5, 6, 3, 8);
        assertThat(twelve.drawn(TWO_COLUMNS, Places.Keep.LINE)).containsExactly(0, 2, 4, 9, 10, 11);
        assertThat(twelve.drawn(TWO_COLUMNS, Places.Keep.EXTREMES)).containsExactly(2, 4, 10, 11);
    }

    /** With y from 0 to 6 in sight: in the first column 1 at 4 and 6 at 9, in the second 3 at 10; the 9 and the 8 are not. */
    @Test
    void aMarkOutOfSightDoesNotStandForOneInSight() {
        Places twelve = of(5, 5, 9, 5, 1, 5, 5, 5, 5, 6, 3, 8);
        Places.Window low = new Places.Window(new Range(0, 20), new Range(0, 6), 2, 100);
        assertThat(twelve.drawn(low, Places.Keep.EXTREMES)).containsExactly(4, 9, 10);
        Places.Window none = new Places.Window(new Range(0, 20), new Range(20, 30), 2, 100);
        assertThat(twelve.drawn(none, Places.Keep.EXTREMES)).isEmpty();
        assertThat(twelve.drawn(low, Places.Keep.LINE))
                .as("a line leads out of sight")
                .contains(2, 11);
    }

    @Test
    void aBreakInALineStaysOne() {
        double none = Double.NaN;
        Places broken = of(5, 6, none, 7, 7, 7, 8, 5, 5, 5, 3, 8);
        assertThat(broken.drawn(TWO_COLUMNS, Places.Keep.LINE)).containsExactly(0, 1, 2, 3, 6, 7, 9, 10, 11);
    }

    /** Marks 5 pixels high: 2 and 3 % lie in one cell, 2 and 50 % do not. */
    @Test
    void aMarkThatCouldBeSeenIsKept() {
        Places marks = of(2, 3, 2, 3, 2, 50, 2, 3, 2, 99);
        assertThat(marks.drawn(TWO_COLUMNS, Places.Keep.EVERY_MARK)).containsExactly(0, 5, 9);
    }

    @Test
    void onlyWhatIsInSightIsDrawnAndOneBeyondEitherEdge() {
        double[] ys = new double[100];
        assertThat(of(ys).drawn(TWO_COLUMNS, Places.Keep.EXTREMES)).containsExactly(0, 10, 20);
        Places.Window inside = new Places.Window(new Range(40.5, 43.5), new Range(0, 1), 10, 10);
        assertThat(of(ys).drawn(inside, Places.Keep.LINE)).containsExactly(40, 41, 42, 43, 44);
        Places.Window beyond = new Places.Window(new Range(400, 500), new Range(0, 1), 10, 10);
        assertThat(of(ys).drawn(beyond, Places.Keep.LINE)).containsExactly(99);
        assertThat(new Places().drawn(beyond, Places.Keep.LINE)).isEmpty();
    }

    /** As many as 4 a column, and within each column the lowest and the highest of all. */
    @Test
    void aHundredThousandBecomeAsFewAsTheColumnsCanShow() {
        SplittableRandom random = new SplittableRandom(7);
        Places many = new Places();
        double[] low = new double[100];
        double[] high = new double[100];
        Arrays.fill(low, 1);
        for (int i = 0; i < 100_000; i++) {
            double y = random.nextDouble();
            many.add(i, y);
            low[i / 1000] = Math.min(low[i / 1000], y);
            high[i / 1000] = Math.max(high[i / 1000], y);
        }
        Places.Window window = new Places.Window(new Range(0, 100_000), new Range(0, 1), 100, 100);
        int[] drawn = many.drawn(window, Places.Keep.EXTREMES);
        assertThat(drawn).hasSize(200).isSorted();
        assertThat(IntStream.of(drawn).mapToDouble(many::y))
                .contains(boxed(low))
                .contains(boxed(high));
        assertThat(many.drawn(window, Places.Keep.LINE))
                .hasSizeBetween(200, 400)
                .isSorted();
    }

    private static Double[] boxed(double[] values) {
        return Arrays.stream(values).boxed().toArray(Double[]::new);
    }

    @Test
    void placesRunFromLeftToRight() {
        Places places = of(1, 1);
        places.add(1, 2);
        assertThat(places.count()).isEqualTo(3);
        assertThatThrownBy(() -> places.add(0.5, 2)).hasMessageContaining("x must be at least 1.0");
    }
}

package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.air.PassWindow;
import porebench.method.profile.Profiles;

class ReadingGridTest {
    private static final ReadingGrid.Room PLACE = new ReadingGrid.Room(260, 100, rows -> 5);

    private static ReadingGrid grid(String target, String tolerance, String division, String top) throws IOException {
        BigDecimal wanted = new BigDecimal(target);
        PassWindow window = PassWindow.of(
                new BigDecimal("0.3"),
                wanted,
                new BigDecimal(tolerance),
                new BigDecimal(division),
                new BigDecimal(top),
                Profiles.standard());
        return ReadingGrid.choose(window, wanted, PLACE, ReadingGrid.IN_THE_HAND);
    }

    @ParameterizedTest
    @CsvSource({
        "6.0, 1.5, 0.1, 10",
        "6.0, 0.5, 0.1, 10",
        "6.0, 1.5, 0.05, 10",
        "6.0, 1.5, 0.01, 10",
        "1.0, 1.5, 0.1, 10",
        "9.5, 1.5, 0.1, 10",
        "20, 1, 0.1, 10",
        "6.0, 1.5, 0.5, 30",
        "50, 50, 0.1, 100",
        "6.0, 1.5, 5, 3"
    })
    void fitsItsPlaceAndRises(String target, String tolerance, String division, String top) throws IOException {
        ReadingGrid grid = grid(target, tolerance, division, top);
        assertThat(grid.rows()).isNotEmpty();
        assertThat(grid.rows().size()).isLessThanOrEqualTo(grid.columns() * grid.lines());
        assertThat(grid.size() * 5 * grid.columns()).isLessThanOrEqualTo(260.001);
        assertThat(grid.size() * ReadingGrid.LINE * grid.lines()).isLessThanOrEqualTo(100.001);
        List<BigDecimal> readings =
                grid.rows().stream().map(PassWindow.Row::reading).toList();
        assertThat(readings).isSorted().doesNotHaveDuplicates();
    }

    // Readings 4.8 to 7.8 pass: 31 of them, with at least two failing on each side.
    @Test
    void holdsAllPassingReadingsWithFailingOnesOnBothSides() throws IOException {
        ReadingGrid grid = grid("6.0", "1.5", "0.1", "10");
        assertThat(grid.every()).isEqualTo(1);
        assertThat(grid.rows().stream().filter(PassWindow.Row::passes)).hasSize(31);
        assertThat(grid.rows().subList(0, 2)).noneMatch(PassWindow.Row::passes);
        assertThat(grid.rows().subList(grid.rows().size() - 2, grid.rows().size()))
                .noneMatch(PassWindow.Row::passes);
    }

    @Test
    void aFineDivisionGoesInStepsThatAreStillReadable() throws IOException {
        ReadingGrid grid = grid("6.0", "1.5", "0.01", "10");
        assertThat(grid.every()).isEqualTo(10);
        assertThat(grid.size()).isGreaterThanOrEqualTo(9);
        assertThat(grid.rows()).anyMatch(PassWindow.Row::passes);
    }

    @Test
    void standsAtTheEndOfTheScaleWhenTheTargetIsBeyondIt() throws IOException {
        ReadingGrid grid = grid("20", "1", "0.1", "10");
        assertThat(grid.rows()).noneMatch(PassWindow.Row::passes);
        assertThat(grid.rows().get(grid.rows().size() - 1).reading()).isEqualByComparingTo("10");
    }
}

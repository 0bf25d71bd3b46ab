package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures on their way into a file, and how they say that they were simulated. */
class DataTableTest {
    @Test
    void figuresForTrainingSayInALastColumnOfEveryRowThatTheyWereSimulated() {
        DataTable table = new DataTable(List.of("trial", "factor"), List.of(List.of("T-1", "0.4"), List.of("T-2", "")));
        assertThat(table.simulated())
                .isEqualTo(new DataTable(
                        List.of("trial", "factor", "simulated"),
                        List.of(List.of("T-1", "0.4", "yes"), List.of("T-2", "", "yes"))));
    }

    /** The column stands first here: where it stands must not matter. */
    @Test
    void aColumnThatSaysSoAlreadyIsFilledAndNotDoubled() {
        DataTable table =
                new DataTable(List.of("simulated", "trial"), List.of(List.of("", "T-1"), List.of("no", "T-2")));
        assertThat(table.simulated())
                .isEqualTo(new DataTable(
                        List.of("simulated", "trial"), List.of(List.of("yes", "T-1"), List.of("yes", "T-2"))));
    }

    @Test
    void aRowWithMoreOrFewerCellsThanTheHeadingIsNoRow() {
        List<String> heading = List.of("trial", "factor");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DataTable(heading, List.of(List.of("T-1", "0.4"), List.of("T-2"))))
                .withMessage("count of cells must be 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DataTable(heading, List.of(List.of("T-1", "0.4", "x"))))
                .withMessage("count of cells must be 2, but is 3");
    }
}

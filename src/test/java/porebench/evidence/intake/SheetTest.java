package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.Place;
import porebench.record.Meter;
import porebench.record.Samples;

class SheetTest {
    private static final Meter ONE = Samples.meter("B-1", MeterType.B);
    private static final Meter OTHER = Samples.meter("B-2", MeterType.B);

    /** A message about a record on its way into the lab book names the line of the file it came from. */
    @Test
    void everyRowComesInWithItsFileItsLineAndWhetherItWasSimulated() {
        Sheet<Meter> sheet =
                new Sheet<>("meters.csv", List.of(new Sheet.Row<>(2, ONE), new Sheet.Row<>(5, OTHER, true)), List.of());
        assertThat(Sheet.incoming(sheet))
                .containsExactly(
                        new Incoming(Place.of("meters.csv", 2), ONE, false),
                        new Incoming(Place.of("meters.csv", 5), OTHER, true));
        assertThat(sheet.values()).containsExactly(ONE, OTHER);
    }
}

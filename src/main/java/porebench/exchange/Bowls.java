package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Reads the columns {@code bowl_volume} and {@code bowl_volume_unit}. */
final class Bowls {
    /** A bowl holds between a cup and a drum, in litres; anything else has the wrong unit. */
    private static final double LEAST_LITRES = 0.1;

    private static final double MOST_LITRES = 200;

    private Bowls() {}

    static Optional<Typed<Volume>> read(Entry entry) {
        Optional<Typed<Volume>> bowl =
                entry.quantity("bowl_volume", Bounds.NOT_NEGATIVE, "bowl_volume_unit", List.of(VolumeUnit.values()));
        return bowl.filter(volume -> {
            double litres = volume.value().in(VolumeUnit.LITRE);
            boolean possible = litres >= LEAST_LITRES && litres <= MOST_LITRES;
            if (!possible) {
                entry.error("bowl_volume", "csv.bowl-impossible", volume.toString(), LEAST_LITRES, MOST_LITRES);
            }
            return possible;
        });
    }
}

package porebench.exchange;

import java.util.List;
import java.util.Optional;
import porebench.method.Limit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Reads the columns {@code bowl_volume} and {@code bowl_volume_unit}. */
final class Bowls {
    private Bowls() {}

    static Optional<Typed<Volume>> read(Entry entry) {
        Optional<Typed<Volume>> bowl =
                entry.quantity("bowl_volume", Bounds.NOT_NEGATIVE, "bowl_volume_unit", List.of(VolumeUnit.values()));
        return bowl.filter(volume -> {
            double litres = volume.value().in(VolumeUnit.LITRE);
            boolean possible = Limit.BOWL.holds(litres);
            if (!possible) {
                entry.error(
                        "bowl_volume",
                        "csv.bowl-impossible",
                        volume.toString(),
                        Limit.BOWL.lowInclusive(),
                        Limit.BOWL.highInclusive());
            }
            return possible;
        });
    }
}

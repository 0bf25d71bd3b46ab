package porebench.method.meter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Everything weighed and measured when the volume of a bowl is found, as typed.
 *
 * @param fills the fills in the order they were made
 * @param buoyancyCorrected whether the buoyancy of the air is to be taken out of the weighings
 * @param airCelsius temperature of the air, in C; needed for the buoyancy
 * @param airKilopascals absolute pressure of the air as a barometer at the place shows it, in kPa; needed for the buoyancy
 * @param diameterMillimetres inner diameter of the bowl, in mm; for the check of its shape
 * @param heightMillimetres inner height of the bowl, in mm; for the check of its shape
 */
public record BowlFills(
        List<BowlFill> fills,
        boolean buoyancyCorrected,
        Optional<BigDecimal> airCelsius,
        Optional<BigDecimal> airKilopascals,
        Optional<BigDecimal> diameterMillimetres,
        Optional<BigDecimal> heightMillimetres) {
    public BowlFills {
        fills = List.copyOf(fills);
    }
}

package porebench.method.meter;

import java.math.BigDecimal;
import porebench.quantity.Mass;
import porebench.quantity.Typed;

/**
 * One weighing of a bowl empty and full of water, as typed.
 *
 * @param empty mass of the empty bowl
 * @param plate mass of the glass plate, 0 when the bowl was filled without one
 * @param full mass of the bowl full of water, plate on
 * @param waterCelsius temperature of the water, in C
 */
public record BowlFill(Typed<Mass> empty, Typed<Mass> plate, Typed<Mass> full, BigDecimal waterCelsius) {}

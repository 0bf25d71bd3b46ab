package porebench.method.meter;

import java.math.BigDecimal;

/**
 * One point of a dial check: what the dial showed with a known amount of air in the bowl.
 *
 * @param amount all the water taken out of the bowl so far, whose room the air takes
 * @param gaugePercent the reading of the dial, in % air
 */
public record CheckPoint(CheckAmount amount, BigDecimal gaugePercent) {}

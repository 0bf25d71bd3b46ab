package porebench.method.simulate;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.Volume;

/**
 * What a simulated operator wrote down of one trial. Nothing here was measured: it is never mixed with real trials.
 *
 * @param number counted from 1
 * @param meterType the type of the meter
 * @param bowl the bowl volume
 * @param fine mass of fine aggregate in the bowl
 * @param coarse mass of coarse aggregate in the bowl
 * @param soakMinutes time the aggregate stood under water, in minutes
 * @param waterCelsius temperature of the water, in C
 * @param withdrawnMillilitres Type B: water withdrawn before the reading, in mL
 * @param gaugePercent Type B: reading of the dial, in % air
 * @param h1Percent Type A: reading under pressure, in % air
 * @param h2Percent Type A: reading after the pressure is released, in % air
 */
public record SimulatedTrial(
        int number,
        MeterType meterType,
        Typed<Volume> bowl,
        Typed<Mass> fine,
        Typed<Mass> coarse,
        BigDecimal soakMinutes,
        BigDecimal waterCelsius,
        Optional<BigDecimal> withdrawnMillilitres,
        Optional<BigDecimal> gaugePercent,
        Optional<BigDecimal> h1Percent,
        Optional<BigDecimal> h2Percent) {}

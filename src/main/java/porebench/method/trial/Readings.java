package porebench.method.trial;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.Volume;

/**
 * Everything read and weighed in one trial, as typed. What was not recorded is empty.
 *
 * @param meterType the type of the meter
 * @param bowl the bowl volume
 * @param fine mass of fine aggregate in the bowl
 * @param coarse mass of coarse aggregate in the bowl
 * @param soakMinutes time the aggregate stood under water, in minutes
 * @param waterCelsius temperature of the water, in C
 * @param withdrawal Type B: water withdrawn before the reading
 * @param gaugePercent Type B: reading of the dial, in % air
 * @param h1Percent Type A: reading under pressure, in % air
 * @param h2Percent Type A: reading after the pressure is released, in % air
 * @param leak whether the meter leaked, which voids the trial
 */
public record Readings(
        MeterType meterType,
        Typed<Volume> bowl,
        Optional<Typed<Mass>> fine,
        Optional<Typed<Mass>> coarse,
        Optional<BigDecimal> soakMinutes,
        Optional<BigDecimal> waterCelsius,
        Optional<Withdrawal> withdrawal,
        Optional<BigDecimal> gaugePercent,
        Optional<BigDecimal> h1Percent,
        Optional<BigDecimal> h2Percent,
        boolean leak) {}

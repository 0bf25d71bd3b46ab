package porebench.method.trial;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Readings of trials as tests write them; what a test does not name was not recorded. */
final class TrialReadings {
    private TrialReadings() {}

    static final Typed<Volume> SEVEN_LITRES = Typed.of("7.00", VolumeUnit.LITRE);

    /** Type B: water withdrawn and the gauge. */
    static Readings typeB(Typed<Volume> bowl, BigDecimal withdrawn, Withdrawal.Unit unit, String gauge) {
        return new Readings(
                MeterType.B,
                bowl,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Withdrawal(withdrawn, unit)),
                Optional.of(new BigDecimal(gauge)),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** Type B in a bowl of 7 L. */
    static Readings typeB(String withdrawn, Withdrawal.Unit unit, String gauge) {
        return typeB(SEVEN_LITRES, new BigDecimal(withdrawn), unit, gauge);
    }

    /** Type A in a bowl of 7 L. */
    static Readings typeA(String h1, String h2) {
        return new Readings(
                MeterType.A,
                SEVEN_LITRES,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new BigDecimal(h1)),
                Optional.of(new BigDecimal(h2)),
                false);
    }

    static Readings withMasses(Readings r, String fineKilograms, String coarseKilograms) {
        return copy(
                r, kilograms(fineKilograms), kilograms(coarseKilograms), r.soakMinutes(), r.waterCelsius(), r.leak());
    }

    static Readings withFine(Readings r, String kilograms) {
        return copy(r, kilograms(kilograms), r.coarse(), r.soakMinutes(), r.waterCelsius(), r.leak());
    }

    static Readings withCoarse(Readings r, String kilograms) {
        return copy(r, r.fine(), kilograms(kilograms), r.soakMinutes(), r.waterCelsius(), r.leak());
    }

    static Readings withSoak(Readings r, String minutes) {
        return copy(r, r.fine(), r.coarse(), Optional.of(new BigDecimal(minutes)), r.waterCelsius(), r.leak());
    }

    static Readings withWater(Readings r, String celsius) {
        return copy(r, r.fine(), r.coarse(), r.soakMinutes(), Optional.of(new BigDecimal(celsius)), r.leak());
    }

    static Readings leaking(Readings r) {
        return copy(r, r.fine(), r.coarse(), r.soakMinutes(), r.waterCelsius(), true);
    }

    static Readings withBowl(Readings r, Typed<Volume> bowl) {
        return new Readings(
                r.meterType(),
                bowl,
                r.fine(),
                r.coarse(),
                r.soakMinutes(),
                r.waterCelsius(),
                r.withdrawal(),
                r.gaugePercent(),
                r.h1Percent(),
                r.h2Percent(),
                r.leak());
    }

    /** The readings of one meter type together with those of another, as a confused sheet has them. */
    static Readings both(Readings one, Readings other) {
        return new Readings(
                one.meterType(),
                one.bowl(),
                one.fine(),
                one.coarse(),
                one.soakMinutes(),
                one.waterCelsius().or(other::waterCelsius),
                one.withdrawal().or(other::withdrawal),
                one.gaugePercent().or(other::gaugePercent),
                one.h1Percent().or(other::h1Percent),
                one.h2Percent().or(other::h2Percent),
                one.leak());
    }

    /** Nothing was read. */
    static Readings blank(MeterType type) {
        return new Readings(
                type,
                SEVEN_LITRES,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static Optional<Typed<Mass>> kilograms(String number) {
        return Optional.of(Typed.of(number, MassUnit.KILOGRAM));
    }

    private static Readings copy(
            Readings r,
            Optional<Typed<Mass>> fine,
            Optional<Typed<Mass>> coarse,
            Optional<BigDecimal> soak,
            Optional<BigDecimal> water,
            boolean leak) {
        return new Readings(
                r.meterType(),
                r.bowl(),
                fine,
                coarse,
                soak,
                water,
                r.withdrawal(),
                r.gaugePercent(),
                r.h1Percent(),
                r.h2Percent(),
                leak);
    }
}

package porebench.desk.sample;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.UnitSystem;
import porebench.method.MeterType;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.id.MeterId;

/**
 * What is chosen and typed on the correction sample page, letter by letter as typed.
 *
 * @param meter the meter chosen from the register; empty when the bowl volume is typed
 * @param bowl the typed bowl volume
 * @param bowlUnit the unit it is typed in
 * @param meterType the type of meter when none is chosen from the register
 * @param trials how many trials are to be made
 * @param spare what is fetched beyond them, in %
 * @param massUnit the unit in which masses are shown
 * @param moistures today's total moisture of each aggregate in %, in the order of the mix; empty text for as designed
 */
record SampleDraft(
        Optional<MeterId> meter,
        String bowl,
        VolumeUnit bowlUnit,
        MeterType meterType,
        String trials,
        String spare,
        MassUnit massUnit,
        List<String> moistures) {
    SampleDraft {
        moistures = List.copyOf(moistures);
    }

    static SampleDraft begin(UnitSystem units, String trials, String spare) {
        return new SampleDraft(
                Optional.empty(), "", units.bowlVolume(), MeterType.B, trials, spare, units.benchMass(), List.of());
    }

    /** Returns this draft for a mix with some aggregates, each in the moisture of its design. */
    SampleDraft forAggregates(int count) {
        return new SampleDraft(
                meter, bowl, bowlUnit, meterType, trials, spare, massUnit, Collections.nCopies(count, ""));
    }

    SampleDraft withMeter(Optional<MeterId> other) {
        return new SampleDraft(other, bowl, bowlUnit, meterType, trials, spare, massUnit, moistures);
    }

    SampleDraft withBowl(String typed) {
        return new SampleDraft(meter, typed, bowlUnit, meterType, trials, spare, massUnit, moistures);
    }

    SampleDraft withBowlUnit(VolumeUnit other) {
        return new SampleDraft(meter, bowl, other, meterType, trials, spare, massUnit, moistures);
    }

    SampleDraft withMeterType(MeterType other) {
        return new SampleDraft(meter, bowl, bowlUnit, other, trials, spare, massUnit, moistures);
    }

    SampleDraft withTrials(String typed) {
        return new SampleDraft(meter, bowl, bowlUnit, meterType, typed, spare, massUnit, moistures);
    }

    SampleDraft withSpare(String typed) {
        return new SampleDraft(meter, bowl, bowlUnit, meterType, trials, typed, massUnit, moistures);
    }

    SampleDraft withMassUnit(MassUnit other) {
        return new SampleDraft(meter, bowl, bowlUnit, meterType, trials, spare, other, moistures);
    }

    SampleDraft withMoisture(int aggregate, String typed) {
        List<String> changed = new ArrayList<>(moistures);
        changed.set(aggregate, typed);
        return new SampleDraft(meter, bowl, bowlUnit, meterType, trials, spare, massUnit, changed);
    }

    /** Returns this draft shown in other units; a bowl volume that is typed keeps its own. */
    SampleDraft in(UnitSystem units) {
        return new SampleDraft(
                meter,
                bowl,
                bowl.isBlank() ? units.bowlVolume() : bowlUnit,
                meterType,
                trials,
                spare,
                units.benchMass(),
                moistures);
    }
}

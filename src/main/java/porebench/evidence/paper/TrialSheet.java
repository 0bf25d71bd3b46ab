package porebench.evidence.paper;

import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.MixDesign;

/**
 * The weigh-out and trial sheet of a mix, filled with its targets, to be written on at the bench: what it says.
 *
 * @param laboratory whose sheet it is; empty when the lab book does not say
 * @param mix the mix design
 * @param sample its correction sample
 * @param weighOut what to weigh and to fetch
 * @param meterType the type of meter the sheet is for
 * @param meter the meter it is for; empty when not chosen yet
 * @param massUnit the unit of the masses on the sheet
 * @param profile whose tolerances hold
 */
public record TrialSheet(
        Optional<Laboratory> laboratory,
        MixDesign mix,
        CorrectionSample sample,
        WeighOut weighOut,
        MeterType meterType,
        Optional<Meter> meter,
        MassUnit massUnit,
        Profile profile)
        implements Printed {}

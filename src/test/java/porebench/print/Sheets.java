package porebench.print;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.TrialSheet;
import porebench.method.MeterType;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Weigh-out and trial sheets for tests, of an invented laboratory. */
public final class Sheets {
    private Sheets() {}

    /** A cubic metre with 700 kg of sand and 1050 kg of stone, a bowl of 7.00 L: 4.9 kg and 7.35 kg. */
    public static TrialSheet usual(int trials) {
        Batch batch = batch(Typed.of("1", VolumeUnit.CUBIC_METRE), MassUnit.KILOGRAM, "700", "1050", false);
        return sheet(
                mix("TW-214", "Bridge deck, 35 MPa, 20 mm stone", batch), MassUnit.GRAM, trials, MeterType.B, true);
    }

    /** A cubic metre with 800 kg of sand and 1120 kg of stone: less than a third of the bowl is left for water. */
    public static TrialSheet packed(int trials) {
        Batch batch = batch(Typed.of("1", VolumeUnit.CUBIC_METRE), MassUnit.KILOGRAM, "800", "1120", false);
        return sheet(mix("TW-215", "Packed", batch), MassUnit.GRAM, trials, MeterType.B, true);
    }

    /** The usual sheet out of a training book. */
    public static TrialSheet training(int trials) {
        TrialSheet sheet = usual(trials);
        return new TrialSheet(
                Optional.of(Calibrations.Laboratories.TRAINING),
                sheet.mix(),
                sheet.sample(),
                sheet.weighOut(),
                sheet.meterType(),
                sheet.meter(),
                sheet.massUnit(),
                sheet.profile());
    }

    public static TrialSheet typeA(int trials) {
        Batch batch = batch(Typed.of("1", VolumeUnit.CUBIC_METRE), MassUnit.KILOGRAM, "700", "1050", true);
        return sheet(mix("TW-214", "Dam facing, sieved", batch), MassUnit.KILOGRAM, trials, MeterType.A, false);
    }

    /** A cubic yard with 1152 lb of sand and 1735 lb of stone, a bowl of 0.250 ft3. */
    public static TrialSheet us(int trials) {
        Batch batch = batch(Typed.of("1", VolumeUnit.CUBIC_YARD), MassUnit.POUND, "1152", "1735", false);
        return sheet(mix("TW-3000", "Paving, 3000 psi", batch), MassUnit.POUND, trials, MeterType.B, true);
    }

    public static TrialSheet everythingLong(int trials) {
        List<Constituent> constituents = new ArrayList<>();
        for (int number = 1; number <= 8; number++) {
            constituents.add(aggregate(
                    "Upper Fellside Quarry, working face " + number + ", washed and screened",
                    number < 4 ? Role.FINE : Role.COARSE,
                    "upper-fellside-working-face-" + number + "-ledge-B-north",
                    Typed.of("215", MassUnit.KILOGRAM)));
        }
        Batch batch = new Batch(
                constituents,
                new BatchVolume.Stated(Typed.of("1", VolumeUnit.CUBIC_METRE)),
                new BigDecimal("6.0"),
                false);
        MixDesign mix = new MixDesign(
                new MixId("TW-214/2026-REV-C/BRIDGE-DECK-SUMMER-PUMPED-TWO-SANDS"),
                Cards.LONG_TITLE,
                batch,
                Optional.empty(),
                Optional.empty(),
                Profiles.DEFAULT_ID,
                "Keep the retarder out of the correction sample; ask the mix designer before the sands are changed.",
                Optional.of("Lower Fellside batching plant, second line"));
        return sheet(mix, MassUnit.GRAM, trials, MeterType.B, true);
    }

    private static TrialSheet sheet(MixDesign mix, MassUnit unit, int trials, MeterType type, boolean withMeter) {
        boolean us = unit == MassUnit.POUND;
        Typed<Volume> bowl = us ? Typed.of("0.250", VolumeUnit.CUBIC_FOOT) : Typed.of("7.00", VolumeUnit.LITRE);
        CorrectionSample sample =
                CorrectionSample.of(mix.batch(), bowl.value()).value().orElseThrow();
        Meter meter =
                new Meter(new MeterId("PM-2"), type, "K-1182", bowl, new BigDecimal("0.1"), BigDecimal.TEN, true, "");
        return new TrialSheet(
                Optional.of(new Laboratory("Tarnwick Materials Laboratory", "4 Kiln Road, Tarnwick")),
                mix,
                sample,
                WeighOut.of(sample, trials, 10, Profiles.standard()),
                type,
                withMeter ? Optional.of(meter) : Optional.empty(),
                unit,
                Profiles.standard());
    }

    private static MixDesign mix(String id, String title, Batch batch) {
        return new MixDesign(
                new MixId(id),
                title,
                batch,
                Optional.of(new BigDecimal("12")),
                Optional.of(new BigDecimal("1.5")),
                Profiles.DEFAULT_ID,
                "",
                Optional.empty());
    }

    private static Batch batch(Typed<Volume> volume, MassUnit unit, String sand, String stone, boolean wetSieved) {
        return new Batch(
                List.of(
                        aggregate("Washed sand", Role.FINE, "orrin", Typed.of(sand, unit)),
                        aggregate("5-20 mm stone", Role.COARSE, "fell", Typed.of(stone, unit))),
                new BatchVolume.Stated(volume),
                new BigDecimal("6.0"),
                wetSieved);
    }

    private static Constituent aggregate(String name, Role role, String source, Typed<porebench.quantity.Mass> mass) {
        return new Constituent(
                name,
                role,
                Optional.of(source),
                mass,
                MoistureState.SSD,
                Optional.of(new BigDecimal("0.8")),
                Optional.empty(),
                Optional.of(new BigDecimal("2.65")),
                BigDecimal.ZERO);
    }
}

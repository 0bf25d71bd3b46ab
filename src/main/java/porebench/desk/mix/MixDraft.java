package porebench.desk.mix;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.method.sample.BatchVolume;
import porebench.quantity.DensityUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;

/**
 * A mix design as it stands on the page, letter by letter as typed.
 *
 * @param texts what is typed in its fields; a field without any is left out
 * @param volumeFrom where the batch volume comes from
 * @param volumeUnit the unit a stated volume is typed in
 * @param densityUnit the unit a measured density is typed in
 * @param wetSieved whether the concrete is wet-sieved before the air test
 * @param profileId the profile it is tested by
 * @param rows the constituents
 */
record MixDraft(
        Map<MixField, String> texts,
        VolumeFrom volumeFrom,
        VolumeUnit volumeUnit,
        DensityUnit densityUnit,
        boolean wetSieved,
        String profileId,
        List<MixRow> rows) {
    MixDraft {
        texts = Map.copyOf(texts);
        rows = List.copyOf(rows);
    }

    /** Returns a draft with nothing typed but some rows to begin with. */
    static MixDraft empty(UnitSystem units, String profileId, List<MixRow> rows) {
        return new MixDraft(
                Map.of(), VolumeFrom.CONSTITUENTS, units.batchVolume(), units.density(), false, profileId, rows);
    }

    /** Returns a saved mix design as it was typed. */
    static MixDraft of(MixDesign mix, Numbers numbers, UnitSystem units) {
        MixDraft draft = new MixDraft(
                        Map.of(),
                        VolumeFrom.CONSTITUENTS,
                        units.batchVolume(),
                        units.density(),
                        mix.batch().wetSieved(),
                        mix.profileId(),
                        mix.batch().constituents().stream()
                                .map(constituent -> MixRow.of(constituent, numbers))
                                .toList())
                .with(MixField.ID, mix.id().text())
                .with(MixField.TITLE, mix.title())
                .with(MixField.TARGET_AIR, numbers.show(mix.batch().targetAirPercent()))
                .with(MixField.AIR_TOLERANCE, shown(mix.airTolerancePercent(), numbers))
                .with(MixField.SOAK_MINUTES, shown(mix.soakMinutes(), numbers))
                .with(MixField.REMARKS, mix.remarks());
        BatchVolume volume = mix.batch().volume();
        if (volume instanceof BatchVolume.Stated stated) {
            VolumeUnit unit = stated.volume().unit() instanceof VolumeUnit typed ? typed : VolumeUnit.CUBIC_METRE;
            return draft.with(
                            MixField.BATCH_VOLUME, numbers.show(stated.volume().number()))
                    .with(VolumeFrom.STATED)
                    .with(unit);
        }
        if (volume instanceof BatchVolume.FromDensity measured) {
            DensityUnit unit = measured.density().unit() instanceof DensityUnit typed
                    ? typed
                    : DensityUnit.KILOGRAM_PER_CUBIC_METRE;
            return draft.with(MixField.DENSITY, numbers.show(measured.density().number()))
                    .with(VolumeFrom.DENSITY)
                    .with(unit);
        }
        return draft;
    }

    private static String shown(Optional<BigDecimal> typed, Numbers numbers) {
        return typed.map(numbers::show).orElse("");
    }

    /** Returns what is typed in a field, empty when nothing is. */
    String text(MixField field) {
        return texts.getOrDefault(field, "");
    }

    MixDraft with(MixField field, String text) {
        Map<MixField, String> changed = new EnumMap<>(MixField.class);
        changed.putAll(texts);
        if (text.isEmpty()) {
            changed.remove(field);
        } else {
            changed.put(field, text);
        }
        return new MixDraft(changed, volumeFrom, volumeUnit, densityUnit, wetSieved, profileId, rows);
    }

    MixDraft with(VolumeFrom other) {
        return new MixDraft(texts, other, volumeUnit, densityUnit, wetSieved, profileId, rows);
    }

    MixDraft with(VolumeUnit other) {
        return new MixDraft(texts, volumeFrom, other, densityUnit, wetSieved, profileId, rows);
    }

    MixDraft with(DensityUnit other) {
        return new MixDraft(texts, volumeFrom, volumeUnit, other, wetSieved, profileId, rows);
    }

    MixDraft withWetSieved(boolean sieved) {
        return new MixDraft(texts, volumeFrom, volumeUnit, densityUnit, sieved, profileId, rows);
    }

    MixDraft withProfile(String otherId) {
        return new MixDraft(texts, volumeFrom, volumeUnit, densityUnit, wetSieved, otherId, rows);
    }

    MixDraft with(List<MixRow> others) {
        return new MixDraft(texts, volumeFrom, volumeUnit, densityUnit, wetSieved, profileId, others);
    }

    /** Returns this draft with one row changed. */
    MixDraft with(int row, MixRow changed) {
        List<MixRow> others = new ArrayList<>(rows);
        others.set(row, changed);
        return with(others);
    }
}

package porebench.desk.mix;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.UnitSystem;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.BatchVolume;
import porebench.record.MixDesign;
import porebench.record.column.CellType;
import porebench.record.column.Column;
import porebench.record.column.MixColumns;

/** The columns of a mix design that its form has, and what stands in them before anybody types. */
final class MixFields {
    /** Where the volume of the batch comes from: which of the two columns of a volume states it, or none. */
    static final Column<MixDesign, VolumeFrom> VOLUME_FROM = Column.needed(
            "volume_from", CellType.choice(VolumeFrom.values(), VolumeFrom::symbol), MixFields::volumeFrom);

    /** All outside the table of constituents, as they stand on the page. */
    static final List<Column<MixDesign, ?>> ALL = List.of(
            MixColumns.ID,
            MixColumns.TITLE,
            MixColumns.PLANT,
            MixColumns.PROFILE,
            VOLUME_FROM,
            MixColumns.VOLUME,
            MixColumns.MEASURED_DENSITY,
            MixColumns.TARGET_AIR,
            MixColumns.TOLERANCE,
            MixColumns.SOAK,
            MixColumns.WET_SIEVED,
            MixColumns.REMARKS);

    /** All in which two versions are compared. */
    static final List<Column<MixDesign, ?>> COMPARED = Stream.concat(
                    ALL.stream(), Stream.<Column<MixDesign, ?>>of(MixColumns.CONSTITUENTS))
            .toList();

    private MixFields() {}

    private static VolumeFrom volumeFrom(MixDesign mix) {
        BatchVolume volume = mix.batch().volume();
        return volume instanceof BatchVolume.Stated
                ? VolumeFrom.STATED
                : volume instanceof BatchVolume.FromDensity ? VolumeFrom.DENSITY : VolumeFrom.CONSTITUENTS;
    }

    private static TypedDraft units(UnitSystem units) {
        return TypedDraft.BLANK
                .withUnit(MixColumns.VOLUME, units.batchVolume().symbol())
                .withUnit(MixColumns.MEASURED_DENSITY, units.density().symbol());
    }

    /** Returns a draft with nothing typed but some rows to begin with. */
    static TypedDraft blank(UnitSystem units, List<TypedDraft> rows) {
        return units(units)
                .with(MixColumns.PROFILE, Profiles.DEFAULT_ID)
                .with(VOLUME_FROM, VolumeFrom.CONSTITUENTS.symbol())
                .with(MixColumns.CONSTITUENTS, rows);
    }

    /** Returns a saved mix design as it was typed. */
    static TypedDraft of(MixDesign mix, Numbers numbers, UnitSystem units) {
        return TypedDraft.of(MixColumns.ALL, mix, numbers)
                .with(VOLUME_FROM, volumeFrom(mix).symbol())
                .orFrom(units(units));
    }

    /** Returns a constituent with a name and nothing else. */
    static TypedDraft row(String name, Role role, UnitSystem units) {
        return TypedDraft.BLANK
                .with(MixColumns.NAME, name)
                .with(MixColumns.ROLE, role.symbol())
                .withUnit(MixColumns.MASS, units.batchMass().symbol())
                .with(MixColumns.STATE, MoistureState.SSD.symbol());
    }

    /** Returns the numbers of the rows with a mass: until then the person is not yet told what else a row lacks. */
    static List<Integer> weighed(TypedDraft draft) {
        List<TypedDraft> rows = draft.rows(MixColumns.CONSTITUENTS);
        return IntStream.range(0, rows.size())
                .filter(row -> !rows.get(row).text(MixColumns.MASS).isBlank())
                .boxed()
                .toList();
    }
}

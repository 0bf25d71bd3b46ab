package porebench.record.column;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.method.Limit;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.quantity.Density;
import porebench.quantity.DensityUnit;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/** The columns of a mix design, and of its constituents. */
public final class MixColumns {
    private static final NumberRange SHARE = NumberRange.of("0", "100");

    public static final Column<Constituent, String> NAME = Column.needed("name", CellType.said(), Constituent::name)
            .headed("constituent")
            .called("name");
    public static final Column<Constituent, Role> ROLE =
            Column.needed("role", CellType.choice(Role.values(), Role::symbol), Constituent::role);
    public static final Column<Constituent, String> SOURCE =
            Column.any("source_id", CellType.word(), Constituent::sourceId).called("source");
    public static final Column<Constituent, Typed<Mass>> MASS =
            Column.needed("mass", CellType.quantity(MassUnit.values(), NumberRange.NOT_NEGATIVE), Constituent::mass);
    public static final Column<Constituent, MoistureState> STATE = Column.needed(
                    "moisture_state",
                    CellType.choice(MoistureState.values(), MoistureState::symbol),
                    Constituent::state)
            .headed("mass_state")
            .blankMeans(MoistureState.SSD)
            .neededWhere(from -> ROLE.read(from).filter(Role::isAggregate).isPresent());
    public static final Column<Constituent, BigDecimal> ABSORPTION = Column.any(
                    "absorption_pct", CellType.number(NumberRange.PERCENT), Constituent::absorptionPercent)
            .called("absorption");
    public static final Column<Constituent, BigDecimal> MOISTURE = Column.any(
                    "moisture_pct", CellType.number(NumberRange.PERCENT), Constituent::moisturePercent)
            .called("moisture");
    public static final Column<Constituent, BigDecimal> DENSITY =
            Column.any("relative_density", CellType.number(SHARE), Constituent::relativeDensity);
    public static final Column<Constituent, BigDecimal> RETAINED = Column.needed(
                    "retained_37_5mm_pct", CellType.number(SHARE), Constituent::retainedPercent)
            .blankMeans(BigDecimal.ZERO)
            .called("retained");

    public static final Columns<Constituent> OF_CONSTITUENT = Columns.of(
            "mix_constituent",
            MixColumns::constituent,
            NAME,
            ROLE,
            SOURCE,
            MASS,
            STATE,
            ABSORPTION,
            MOISTURE,
            DENSITY,
            RETAINED);

    public static final Column<MixDesign, MixId> ID = Column.needed(
                    "mix_id", CellType.word(MixId::new, MixId::text), MixDesign::id)
            .called("id");
    public static final Column<MixDesign, String> TITLE = Column.needed("title", CellType.text(), MixDesign::title)
            .headed("mix_title")
            .called("title");
    public static final Column<MixDesign, Typed<Volume>> VOLUME = Column.any(
            "batch_volume",
            CellType.quantity(VolumeUnit.values(), NumberRange.NOT_NEGATIVE),
            mix -> mix.batch().volume() instanceof BatchVolume.Stated stated
                    ? Optional.of(stated.volume())
                    : Optional.empty());
    public static final Column<MixDesign, BigDecimal> TARGET_AIR = Column.needed(
                    "target_air_pct",
                    CellType.number(SHARE),
                    (MixDesign mix) -> mix.batch().targetAirPercent())
            .called("targetAir");
    public static final Column<MixDesign, List<Constituent>> CONSTITUENTS = Column.needed(
                    "constituent",
                    CellType.several(new Part<>(OF_CONSTITUENT, true)),
                    (MixDesign mix) -> mix.batch().constituents())
            .called("constituents");
    public static final Column<MixDesign, Typed<Density>> MEASURED_DENSITY = Column.any(
                    "batch_density",
                    CellType.quantity(DensityUnit.values(), NumberRange.NOT_NEGATIVE),
                    (MixDesign mix) -> mix.batch().volume() instanceof BatchVolume.FromDensity measured
                            ? Optional.of(measured.density())
                            : Optional.<Typed<Density>>empty())
            .headed("measured_density")
            .called("density")
            .extra();
    public static final Column<MixDesign, Boolean> WET_SIEVED = Column.needed(
                    "wet_sieved",
                    CellType.yesNo(),
                    (MixDesign mix) -> mix.batch().wetSieved())
            .blankMeans(false)
            .extra();
    public static final Column<MixDesign, BigDecimal> SOAK = Column.any(
                    "soak_minutes", CellType.number(Limit.MIX_SOAK), MixDesign::soakMinutes)
            .extra();
    public static final Column<MixDesign, BigDecimal> TOLERANCE = Column.any(
                    "air_tolerance_pct", CellType.number(Limit.AIR_TOLERANCE), MixDesign::airTolerancePercent)
            .called("airTolerance")
            .extra();
    public static final Column<MixDesign, String> PROFILE = Column.needed(
                    "profile_id", CellType.word(), MixDesign::profileId)
            .called("profile")
            .blankMeans(Profiles.DEFAULT_ID)
            .extra();
    public static final Column<MixDesign, String> REMARKS =
            Column.needed("remarks", CellType.text(), MixDesign::remarks).extra();
    public static final Column<MixDesign, String> PLANT =
            Column.any("plant", CellType.word(), MixDesign::plant).since(14).extra();

    public static final Columns<MixDesign> ALL = Columns.of(
            "mix",
            MixColumns::made,
            ID,
            TITLE,
            VOLUME,
            TARGET_AIR,
            CONSTITUENTS,
            MEASURED_DENSITY,
            WET_SIEVED,
            SOAK,
            TOLERANCE,
            PROFILE,
            REMARKS,
            PLANT);

    private MixColumns() {}

    private static Constituent constituent(Cells cells) {
        return new Constituent(
                cells.get(NAME),
                cells.get(ROLE),
                cells.any(SOURCE),
                cells.get(MASS),
                cells.get(STATE),
                cells.any(ABSORPTION),
                cells.any(MOISTURE),
                cells.any(DENSITY),
                cells.get(RETAINED));
    }

    /** Returns where the volume of a batch comes from. */
    public static BatchVolume volume(Optional<Typed<Volume>> stated, Optional<Typed<Density>> measured) {
        return stated.<BatchVolume>map(BatchVolume.Stated::new)
                .or(() -> measured.map(BatchVolume.FromDensity::new))
                .orElseGet(BatchVolume.FromConstituents::new);
    }

    private static MixDesign made(Cells cells) {
        return new MixDesign(
                cells.get(ID),
                cells.get(TITLE),
                new Batch(
                        cells.get(CONSTITUENTS),
                        volume(cells.any(VOLUME), cells.any(MEASURED_DENSITY)),
                        cells.get(TARGET_AIR),
                        cells.get(WET_SIEVED)),
                cells.any(SOAK),
                cells.any(TOLERANCE),
                cells.get(PROFILE),
                cells.get(REMARKS),
                cells.any(PLANT));
    }
}

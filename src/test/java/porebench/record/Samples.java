package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.DensityUnit;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.EquipmentId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** Invented records, each kind with all that can be left out left out, and with everything filled. */
public final class Samples {
    /** Text that a careless store would damage. */
    public static final String AWKWARD = "O'Hara \"north\" -- :kind ? \\ ü µ 中 \uD83E\uDEA8;'';";

    /** The same for a text that may have lines. */
    public static final String AWKWARD_NOTE = AWKWARD + "\n\tsecond line\r\n;'';";

    private Samples() {}

    public static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }

    public static Optional<BigDecimal> some(String digits) {
        return Optional.of(number(digits));
    }

    public static Laboratory laboratory() {
        return new Laboratory("Tarn Beck Laboratory", "");
    }

    public static LaboratoryProfile profile() {
        return profile(AWKWARD);
    }

    private static LaboratoryProfile profile(String line) {
        return new LaboratoryProfile(StandardOfOld.copyAs("Own figures")
                .with(FigureName.FACTOR_STEP, new Figure("0.05", "Own choice " + line, Mark.LABORATORY)));
    }

    public static Source source(String id, Role role, String ledge) {
        return new Source(new SourceId(id), "Pit of " + id, role, "North face", ledge, some("2.650"), some("1.20"), "");
    }

    public static Source bareSource(String id, Role role) {
        return new Source(new SourceId(id), "", role, "", "", Optional.empty(), Optional.empty(), "");
    }

    public static Meter meter(String id, MeterType type) {
        return new Meter(
                new MeterId(id), type, "", Typed.of("7.050", VolumeUnit.LITRE), number("0.10"), number("10"), true, "");
    }

    public static Constituent constituent(String name, Role role, String source, String kilograms) {
        return new Constituent(
                name,
                role,
                source.isEmpty() ? Optional.empty() : Optional.of(source),
                Typed.of(kilograms, MassUnit.KILOGRAM),
                MoistureState.SSD,
                some("1.20"),
                Optional.empty(),
                some("2.650"),
                number("0"));
    }

    /** A mix of one sand and one stone, with everything else that can be left out left out. */
    public static MixDesign mix(String id, String sand, String stone) {
        return mix(id, constituent("Sand", Role.FINE, sand, "700"), constituent("Stone", Role.COARSE, stone, "1050"));
    }

    public static MixDesign mix(String id, Constituent... aggregates) {
        return new MixDesign(
                new MixId(id),
                "Mix " + id,
                new Batch(
                        List.of(aggregates),
                        new BatchVolume.Stated(Typed.of("1.00", VolumeUnit.CUBIC_METRE)),
                        number("6.0"),
                        false),
                Optional.empty(),
                Optional.empty(),
                Profiles.DEFAULT_ID,
                "",
                Optional.empty());
    }

    public static Determination determination(String id, String mix) {
        return new Determination(
                new DeterminationId(id),
                new MixId(mix),
                1,
                Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1),
                LocalDate.of(2026, 3, 2),
                "First factor");
    }

    public static Readings typeB(String gauge) {
        return new Readings(
                MeterType.B,
                Typed.of("7.050", VolumeUnit.LITRE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Withdrawal(number("5.0"), Withdrawal.Unit.PERCENT)),
                some(gauge),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** A Type B trial with 5.0 % of water withdrawn, so that its factor is the gauge less 5.0. */
    public static Trial trial(String id, String mix, String determination, String gauge) {
        return new Trial(
                new TrialId(id),
                new MixId(mix),
                new DeterminationId(determination),
                LocalDateTime.of(2026, 3, 2, 9, 30),
                "R. Vale",
                new MeterId("B-1"),
                typeB(gauge),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    public static FactorIssue issue(String mix, int revision, String determination, LocalDate from) {
        return new FactorIssue(
                new MixId(mix),
                revision,
                FactorIssue.Action.ISSUED,
                number("0.40"),
                new DeterminationId(determination),
                MeterType.B,
                from,
                from.plusMonths(12),
                "R. Vale",
                "",
                "",
                1,
                Map.of(),
                Profiles.DEFAULT_ID,
                "",
                "",
                Grounds.NONE);
    }

    private static Equipment fullEquipment(String line, String note) {
        return new Equipment(
                new EquipmentId("E " + line.strip()),
                EquipmentKind.CYLINDER,
                line,
                number("5.0"),
                Optional.of(new Equipment.Calibration(
                        LocalDate.of(2024, 2, 29), number("1E+0"), LocalDate.of(2025, 2, 28), line)),
                LocalDate.of(2023, 12, 31),
                Optional.of(LocalDate.of(2026, 10, 25)),
                note);
    }

    /** Every kind of record, with all that can be left out left out. */
    public static List<Kept> bare() {
        return List.of(
                laboratory(),
                new LaboratoryProfile(StandardOfOld.copyAs("Own")),
                bareSource("S-1", Role.FINE),
                meter("B-1", MeterType.B),
                mix("M-1"),
                determination("M-1/1", "M-1"),
                trial("T-1", "M-1", "M-1/1", "5.4"),
                issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9)),
                new CardPrint(new MixId("M-1"), 1, 1, "", ""),
                SampleCalibrations.note("C-1", "B-1", LocalDate.of(2026, 3, 1), MeterCalibration.Reason.DOUBT),
                SampleEquipment.uncalibrated("E-1", EquipmentKind.THERMOMETER, "0.5"));
    }

    /** Every kind of record, with everything filled and every text awkward. */
    public static List<Kept> full() {
        List<Kept> all = new ArrayList<>(fullOfStep7());
        all.add(fullEquipment(AWKWARD, AWKWARD_NOTE));
        return List.copyOf(all);
    }

    /** The same, of the kinds that lab books of the seventh step hold. */
    public static List<Kept> fullOfStep7() {
        return full(AWKWARD, AWKWARD_NOTE);
    }

    /** The same as lab books held it when every text could have lines. */
    public static List<Kept> fullAsBefore() {
        String text = "O'Hara \"north\" -- :kind ? \\ ü µ 中 \uD83E\uDEA8\n\tsecond line\r\n;'';";
        return full(text, text);
    }

    private static List<Kept> full(String line, String note) {
        return List.of(
                new Laboratory("Laboratory " + line, note),
                profile(line),
                new Source(
                        new SourceId("S " + line.strip()),
                        line,
                        Role.COARSE,
                        line,
                        line,
                        some("2.6500"),
                        some("0"),
                        note),
                new Meter(
                        new MeterId("A-1"),
                        MeterType.A,
                        line,
                        Typed.of("0.24900", VolumeUnit.CUBIC_FOOT),
                        number("0.050"),
                        number("1E+1"),
                        false,
                        note),
                fullMix(line, note),
                new Determination(
                        new DeterminationId("D " + line),
                        new MixId("M-2"),
                        7,
                        Map.of(new SourceId(line), 3),
                        LocalDate.of(2024, 2, 29),
                        note),
                fullTrial(line, note),
                new FactorIssue(
                        new MixId("M-2"),
                        12,
                        FactorIssue.Action.WITHDRAWN,
                        number("-0.10"),
                        new DeterminationId("D " + line),
                        MeterType.A,
                        LocalDate.of(2026, 1, 1),
                        LocalDate.of(2027, 1, 1),
                        line,
                        line,
                        note,
                        7,
                        Map.of(new SourceId("S-1"), 3, new SourceId("ü'1"), 12),
                        "own",
                        line,
                        note,
                        new Grounds(
                                Map.of(new TrialId("T " + line), 2, new TrialId("T-1"), 1),
                                Map.of(new CalibrationId("C " + line), 3),
                                List.of(
                                        new TakenDoubt(
                                                Optional.of(new TrialId("T-1")), "trial.leak", line, "M. Ash", note),
                                        new TakenDoubt(Optional.empty(), "x.y", "", line, "since")),
                                FactorOrigin.CONFIRMED,
                                false)),
                new CardPrint(new MixId("M-2"), 12, 3, "4x6in", line),
                SampleCalibrations.full(line, note));
    }

    private static MixDesign fullMix(String line, String note) {
        Constituent stone = new Constituent(
                line,
                Role.COARSE,
                Optional.of(line),
                Typed.of("1.8500E+3", MassUnit.POUND),
                MoistureState.OVEN_DRY,
                some("0.90"),
                some("1.100"),
                some("2.70"),
                number("12.50"));
        Constituent water = new Constituent(
                "Water",
                Role.WATER,
                Optional.empty(),
                Typed.of("280", MassUnit.POUND),
                MoistureState.SSD,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                number("0"));
        Constituent sand = new Constituent(
                "Sand",
                Role.FINE,
                Optional.of("S-1"),
                Typed.of("21000.0", MassUnit.OUNCE),
                MoistureState.STOCK,
                some("1.0"),
                some("4.25"),
                some("2.6"),
                number("0.0"));
        return new MixDesign(
                new MixId("M-2"),
                line,
                new Batch(
                        List.of(stone, water, sand, sand),
                        new BatchVolume.FromDensity(Typed.of("145.20", DensityUnit.POUND_PER_CUBIC_FOOT)),
                        number("6.50"),
                        true),
                some("10"),
                some("1.50"),
                "own",
                note,
                Optional.empty());
    }

    private static Trial fullTrial(String line, String note) {
        Readings readings = new Readings(
                MeterType.A,
                Typed.of("7.0500", VolumeUnit.LITRE),
                Optional.of(Typed.of("4.9370", MassUnit.KILOGRAM)),
                Optional.of(Typed.of("16.20", MassUnit.POUND)),
                some("12.0"),
                some("-0.5"),
                Optional.of(new Withdrawal(number("352.10"), Withdrawal.Unit.GRAM)),
                some("5.40"),
                some("0.70"),
                some("0.30"),
                true);
        return new Trial(
                new TrialId("T-" + line),
                new MixId("M-2"),
                new DeterminationId("D " + line),
                LocalDateTime.of(2026, 10, 25, 2, 30, 0, 1),
                line,
                new MeterId("A-1"),
                readings,
                note,
                Optional.of("kept " + note),
                Optional.of(""),
                Optional.empty(),
                false);
    }

    /** Returns a withdrawal whose texts are all the same. */
    public static FactorIssue withdrawal(String text, BigDecimal factor) {
        return new FactorIssue(
                new MixId(text),
                2,
                FactorIssue.Action.WITHDRAWN,
                factor,
                new DeterminationId(text),
                MeterType.A,
                LocalDate.of(2026, 3, 4),
                LocalDate.of(2027, 3, 4),
                text,
                text,
                text,
                1,
                Map.of(new SourceId(text), 1, new SourceId(text + ";x:9"), 2),
                "own-profile",
                "",
                "",
                Grounds.NONE);
    }
}

package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.MoistureState;
import porebench.method.Profile;
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
import porebench.record.Kept;
import porebench.record.LaboratoryProfile;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MixId;

class RoundTripTest {
    @TempDir
    Path folder;

    @Test
    void everyKindComesBackAsItWasKeptWithAllLeftOutOrAllFilled() {
        Path file = folder.resolve("book.porebench");
        List<Kept> kept = new ArrayList<>(Samples.bare());
        kept.addAll(Samples.full().stream().skip(2).toList());
        try (LabBook book = Books.fresh(file)) {
            Books.keep(book, kept);
        }
        try (LabBook book = Books.SHELF.open(file)) {
            Stamp stamp = new Stamp("R. Vale", Books.NOON, "entered");
            for (Kept value : kept) {
                assertThat(book.latest(value.kind().type(), value.recordId()))
                        .map(version -> (Object) version)
                        .contains(new Version<>(value, 1, stamp));
            }
            for (RecordKind kind : RecordKind.values()) {
                assertThat(book.latest(kind.type()))
                        .extracting(version -> (Kept) version.value())
                        .containsExactlyInAnyOrderElementsOf(kept.stream()
                                .filter(value -> value.kind() == kind)
                                .toList());
            }
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void everyUnitStateRoleMarkAndTypeComesBack() {
        List<Kept> kept = new ArrayList<>();
        for (VolumeUnit unit : VolumeUnit.values()) {
            kept.add(mix("volume " + unit, new BatchVolume.Stated(Typed.of("1.50", unit)), List.of()));
        }
        for (DensityUnit unit : DensityUnit.values()) {
            kept.add(mix("density " + unit, new BatchVolume.FromDensity(Typed.of("2300.0", unit)), List.of()));
        }
        kept.add(mix("computed", new BatchVolume.FromConstituents(), everyConstituent()));
        for (Withdrawal.Unit unit : Withdrawal.Unit.values()) {
            kept.add(withdrawn("T " + unit, new Withdrawal(new BigDecimal("350.0"), unit)));
        }
        Profile profile = Profiles.standard().copyAs("own", "Own");
        for (Mark mark : Mark.values()) {
            FigureName name = FigureName.values()[mark.ordinal()];
            profile = profile.with(name, new Figure(profile.figure(name).value(), "Own choice", mark));
        }
        kept.add(new LaboratoryProfile(profile));
        for (MeterType type : MeterType.values()) {
            kept.add(Samples.meter("Meter " + type, type));
        }
        for (MeterCalibration.Reason reason : MeterCalibration.Reason.values()) {
            if (reason.isWorthANote()) {
                kept.add(SampleCalibrations.note("Note " + reason, "Meter B", LocalDate.of(2026, 3, 1), reason));
            }
        }
        kept.add(SampleCalibrations.columnCalibration("Column", "Meter A", LocalDate.of(2026, 3, 1)));
        kept.add(SampleCalibrations.dialCalibration(
                "Dial", "Meter B", LocalDate.of(2026, 3, 1), "0.00", "5.05", "10.10"));
        kept.add(SampleCalibrations.bowlCalibration("Bowl", "Meter B", LocalDate.of(2026, 3, 1), "11.207"));
        Path file = folder.resolve("book.porebench");
        try (LabBook book = Books.fresh(file)) {
            Books.keep(book, kept);
        }
        try (LabBook book = Books.SHELF.open(file)) {
            for (Kept value : kept) {
                assertThat(book.latest(value.kind().type(), value.recordId()))
                        .map(version -> (Kept) version.value())
                        .contains(value);
            }
        }
    }

    private static List<Constituent> everyConstituent() {
        List<Constituent> all = new ArrayList<>();
        for (Role role : Role.values()) {
            for (MoistureState state : MoistureState.values()) {
                for (MassUnit unit : MassUnit.values()) {
                    all.add(new Constituent(
                            role + " " + state,
                            role,
                            Optional.empty(),
                            Typed.of("100.0", unit),
                            state,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            BigDecimal.ZERO));
                }
            }
        }
        return all;
    }

    private static MixDesign mix(String id, BatchVolume volume, List<Constituent> constituents) {
        return new MixDesign(
                new MixId(id),
                "",
                new Batch(constituents, volume, new BigDecimal("6.0"), false),
                Optional.empty(),
                Optional.empty(),
                Profiles.DEFAULT_ID,
                "",
                Optional.empty());
    }

    private static Trial withdrawn(String id, Withdrawal water) {
        Trial trial = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings readings = trial.readings();
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                trial.meterId(),
                new Readings(
                        readings.meterType(),
                        readings.bowl(),
                        readings.fine(),
                        readings.coarse(),
                        readings.soakMinutes(),
                        readings.waterCelsius(),
                        Optional.of(water),
                        readings.gaugePercent(),
                        readings.h1Percent(),
                        readings.h2Percent(),
                        readings.leak()),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                Optional.empty(),
                false);
    }
}

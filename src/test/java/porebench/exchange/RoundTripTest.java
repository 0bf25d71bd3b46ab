package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.ExchangeException;
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
import porebench.port.OutputFolder;
import porebench.port.OutputRefused;
import porebench.quantity.Density;
import porebench.quantity.DensityUnit;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.CardPrint;
import porebench.record.Determination;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.LaboratoryProfile;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.TakenDoubt;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.EquipmentId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** What is written reads back as the same records, digit for digit and letter for letter. */
class RoundTripTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private static LabBook demo() {
        LabBook book = new MemoryLabBook(CLOCK);
        new DemoYear().fill(book);
        return book;
    }

    @Test
    void writesUtf8WithCrlfAndDigitsAsTyped() throws IOException {
        new CsvSheets().export(demo(), OutputFolder.fresh(folder));
        String sources = Files.readString(folder.resolve("sources.csv"), StandardCharsets.UTF_8);
        assertThat(sources)
                .startsWith(
                        "source_id,name,role,place,ledge,relative_density,absorption_pct,remarks,producer,product,size,"
                                + "retained_37_5mm_pct,step,changed_on,reason\r\n")
                .contains("\r\nS-01,Velmar washed sand,fine,Velmar Pit,\"east face, lot 3\",2.62,1.1,,,,,,,,\r\n")
                .endsWith("\r\n");
        assertThat(Files.readString(folder.resolve("mix-design.csv"), StandardCharsets.UTF_8))
                .contains("HG-101,\"Bridge deck 40, 20 mm granite\",1.000,m3,5.5,Velmar sand,fine,S-01,670,kg,ssd,");
    }

    @Test
    void replacesAnEarlierExportWholeAndOnlyWhenTold() throws IOException {
        CsvSheets sheets = new CsvSheets();
        sheets.export(demo(), OutputFolder.fresh(folder));
        String before = Files.readString(folder.resolve("trial-sheet.csv"));
        LabBook empty = new MemoryLabBook(CLOCK);
        assertThatThrownBy(() -> sheets.export(empty, OutputFolder.fresh(folder)))
                .isInstanceOfSatisfying(OutputRefused.class, refused -> {
                    assertThat(refused.isOnlyThere()).isTrue();
                    assertThat(refused.problems()).hasSize(RecordKind.values().length + 1);
                });
        assertThat(folder.resolve("trial-sheet.csv")).hasContent(before);
        sheets.export(empty, OutputFolder.replacing(folder));
        assertThat(folder.resolve("trial-sheet.csv"))
                .hasContent(String.join(",", SheetFormats.TRIALS.columns().all()));
    }

    @Test
    void aFailureLeavesTheEarlierExportAndNothingHalfWritten() throws IOException {
        Files.writeString(folder.resolve("sources.csv"), "earlier");
        MemoryLabBook book = new MemoryLabBook(CLOCK);
        book.holdAsBefore(trial("\uD800 half a letter", MassUnit.GRAM));
        assertThatThrownBy(() -> new CsvSheets().export(book, OutputFolder.replacing(folder)))
                .isInstanceOf(ExchangeException.class)
                .hasMessageContaining("The lab book is as it was")
                .hasCauseInstanceOf(IOException.class);
        assertThat(folder.resolve("sources.csv")).hasContent("earlier");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(folder.resolve("sources.csv"));
        }
    }

    @Test
    void aFolderThatIsAFileIsAFailure() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() -> new CsvSheets().export(demo(), OutputFolder.replacing(file)))
                .isInstanceOf(OutputRefused.class);
        assertThat(file).isEmptyFile();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                " spaces around ",
                "comma, semicolon; tab\t",
                "quote \" and \"\" two",
                "\"",
                "line\nbreak, \r\nbreak and \rreturn",
                "\n",
                "=1+2",
                "+49, -3, @x",
                "'apostrophe",
                "'=apostrophe and sign",
                "''-",
                "-5",
                "'-5",
                "\t=tab",
                "\r=break",
                "\uFF1Dwide",
                "\\ backslash \\\"",
                "percent %3B and %",
                "S:1;S:2",
                "Würfel 砂 \uD83E\uDEA8",
                "\uFEFFmark",
                "{0} '{1}'",
                "NULL"
            })
    void nastyTextSurvives(String text) throws IOException {
        for (Kept record : all(text)) {
            assertThat(written(record)).isEqualTo(record);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.0", "1.50", "007.10", "1E+3", "1.20e-5", "12.3456789123456789", "-0.5"})
    void digitsSurvive(String digits) throws IOException {
        BigDecimal number = new BigDecimal(digits);
        FactorIssue issue = Samples.withdrawal("a", number.signum() < 0 ? number : number.min(BigDecimal.TEN));
        assertThat(written(issue)).isEqualTo(issue);
        if (number.signum() >= 0) {
            Trial trial = trial("a", MassUnit.OUNCE, number);
            assertThat(written(trial)).isEqualTo(trial);
        }
    }

    @ParameterizedTest
    @EnumSource(MassUnit.class)
    void everyMassUnitSurvivesAlsoTwoInOneTrial(MassUnit unit) throws IOException {
        assertThat(written(trial("a", unit))).isEqualTo(trial("a", unit));
        assertThat(written(mix("a", unit, MoistureState.SSD))).isEqualTo(mix("a", unit, MoistureState.SSD));
    }

    @Test
    void everyOtherChoiceSurvives() throws IOException {
        for (VolumeUnit unit : VolumeUnit.values()) {
            Meter meter = meter("a", Typed.of(Double.toString(unit.in(new porebench.quantity.Volume(0.007))), unit));
            assertThat(written(meter)).isEqualTo(meter);
        }
        for (MoistureState state : MoistureState.values()) {
            assertThat(written(mix("a", MassUnit.GRAM, state))).isEqualTo(mix("a", MassUnit.GRAM, state));
        }
        for (DensityUnit unit : DensityUnit.values()) {
            MixDesign mix = mix("a", MassUnit.KILOGRAM, MoistureState.SSD);
            MixDesign measured = new MixDesign(
                    mix.id(),
                    mix.title(),
                    new Batch(
                            mix.batch().constituents(),
                            new BatchVolume.FromDensity(Typed.of(Double.toString(unit.in(new Density(2150))), unit)),
                            BigDecimal.ONE,
                            true),
                    Optional.empty(),
                    Optional.empty(),
                    "en-12350-7",
                    "",
                    Optional.empty());
            assertThat(written(measured)).isEqualTo(measured);
        }
    }

    private static Kept written(Kept record) throws IOException {
        return written(formatOf(record), record);
    }

    static Format<? extends Kept> formatOf(Kept record) {
        return CsvSheets.FORMATS.stream()
                .filter(format -> format.type().isInstance(record))
                .findFirst()
                .orElseThrow();
    }

    static <T extends Kept> Kept written(Format<T> format, Kept record) throws IOException {
        StringWriter text = new StringWriter();
        Export.write(format, List.of(format.type().cast(record)), text);
        Sheet<Kept> sheet = CsvSheets.records("r.csv", text.toString().getBytes(StandardCharsets.UTF_8));
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.rows()).hasSize(1);
        return sheet.values().get(0);
    }

    private static List<Kept> all(String text) {
        String id = text.isBlank() ? "id" : text;
        LocalDate day = LocalDate.of(2026, 3, 4);
        return List.of(
                new Laboratory(id, text),
                new LaboratoryProfile(Profiles.standard()
                        .copyAs(id.strip(), id)
                        .with(FigureName.AIR_TOLERANCE, new Figure("1.0", id, Mark.LABORATORY))),
                new Source(
                        new SourceId(id),
                        text,
                        Role.COARSE,
                        text,
                        text,
                        Optional.of(new BigDecimal("2.700")),
                        Optional.empty(),
                        text),
                equipment(id, text),
                meter(id, Typed.of("7.05", VolumeUnit.LITRE)),
                CalibrationRoundTripTest.calibration(id),
                mix(id, MassUnit.KILOGRAM, MoistureState.STOCK),
                new Determination(new DeterminationId(id), new MixId(id), 3, Map.of(new SourceId(id), 2), day, text),
                trial(id, MassUnit.GRAM),
                Samples.withdrawal(id, new BigDecimal("0.30")),
                new CardPrint(new MixId(id), 2, 3, text, text));
    }

    @Test
    void aNoteAndASimulatedTrialAndAnOverrideReadBack() throws IOException {
        Kept note = SampleCalibrations.note("N-1", "B-1", LocalDate.of(2026, 3, 4), MeterCalibration.Reason.DOUBT);
        Kept simulated = trial("T-1", MassUnit.GRAM).asSimulated();
        Kept overridden = Samples.withdrawal("M-1", new BigDecimal("0.30"))
                .on(new Grounds(
                        Map.of(new TrialId("T;1"), 2, new TrialId("T|2%"), 1),
                        Map.of(new CalibrationId("C-1"), 4),
                        List.of(
                                new TakenDoubt(
                                        Optional.of(new TrialId("T;1")),
                                        "trial.soak-short",
                                        "Soak 5; not 15 | see 50 %",
                                        "M. Ash",
                                        "checked, since"),
                                new TakenDoubt(Optional.empty(), "determination.few-trials", "2 of 3", "Q", "r")),
                        FactorOrigin.CONFIRMED,
                        true));
        Kept training = new Laboratory("Training", "", true);
        for (Kept each : List.of(note, simulated, overridden, training)) {
            assertThat(written(formatOf(each), each)).isEqualTo(each);
        }
    }

    private static Equipment equipment(String id, String text) {
        LocalDate day = LocalDate.of(2026, 3, 4);
        return new Equipment(
                new EquipmentId(id),
                EquipmentKind.BALANCE,
                text,
                new BigDecimal("0.10"),
                Optional.of(new Equipment.Calibration(day, new BigDecimal("0.50"), day.plusDays(1), text)),
                day,
                Optional.of(day),
                text);
    }

    private static Meter meter(String text, Typed<porebench.quantity.Volume> bowl) {
        return new Meter(
                new MeterId(text), MeterType.A, text, bowl, new BigDecimal("0.10"), new BigDecimal("8"), false, text);
    }

    private static MixDesign mix(String text, MassUnit unit, MoistureState state) {
        Constituent stone = new Constituent(
                text,
                Role.COARSE,
                Optional.of(text.strip()),
                Typed.of("1050.0", unit),
                state,
                Optional.of(new BigDecimal("0.60")),
                state == MoistureState.STOCK ? Optional.of(new BigDecimal("3.20")) : Optional.empty(),
                Optional.of(new BigDecimal("2.70")),
                new BigDecimal("12.5"));
        Constituent water = new Constituent(
                "Water",
                Role.WATER,
                Optional.empty(),
                Typed.of("160", MassUnit.KILOGRAM),
                MoistureState.SSD,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ZERO);
        return new MixDesign(
                new MixId(text),
                text,
                new Batch(
                        List.of(stone, water),
                        new BatchVolume.Stated(Typed.of("1.000", VolumeUnit.CUBIC_METRE)),
                        new BigDecimal("5.50"),
                        false),
                Optional.of(new BigDecimal("15")),
                Optional.of(new BigDecimal("1.50")),
                "own-profile",
                text,
                Optional.of(text.strip()).filter(plant -> !plant.isEmpty()));
    }

    private static Trial trial(String text, MassUnit unit) {
        return trial(text, unit, new BigDecimal(unit == MassUnit.GRAM ? "4500.10" : "4.50010"));
    }

    private static Trial trial(String text, MassUnit unit, BigDecimal fine) {
        return new Trial(
                new TrialId(text),
                new MixId(text),
                new DeterminationId(text),
                LocalDateTime.of(2026, 3, 4, 9, 30, 15),
                text,
                new MeterId(text),
                new Readings(
                        MeterType.B,
                        Typed.of("7.050", VolumeUnit.LITRE),
                        Optional.of(new Typed<Mass>(fine, unit)),
                        Optional.of(Typed.of("6.80", MassUnit.KILOGRAM)),
                        Optional.of(new BigDecimal("15")),
                        Optional.of(new BigDecimal("21.0")),
                        Optional.of(new Withdrawal(new BigDecimal("5.00"), Withdrawal.Unit.PERCENT)),
                        Optional.of(new BigDecimal("5.40")),
                        Optional.empty(),
                        Optional.of(new BigDecimal("0.0")),
                        true),
                text,
                Optional.of(text).filter(t -> !t.isBlank()),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    @Test
    void theListOfFormatsFollowsTheListOfKinds() {
        assertThat(CsvSheets.FORMATS.stream().map(Format::type).toList())
                .isEqualTo(
                        Arrays.stream(RecordKind.values()).map(RecordKind::type).toList());
    }
}

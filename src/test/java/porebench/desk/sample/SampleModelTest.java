package porebench.desk.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.MixDesk;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.evidence.paper.TrialSheet;
import porebench.method.MeterType;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Computes correction samples through the model of the page. */
class SampleModelTest {
    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);
    private final SampleModel model = new SampleModel(mixDesk.desk);

    private void open(String mixId) {
        mixDesk.select(mixId);
        model.followDesk();
    }

    private SampleReading reading() {
        return model.reading().orElseThrow();
    }

    private CorrectionSample sample() {
        return reading().sample().orElseThrow();
    }

    private static Constituent poundsOf(String name, Role role, String pounds, String relativeDensity) {
        return new Constituent(
                name,
                role,
                Optional.empty(),
                Typed.of(pounds, MassUnit.POUND),
                MoistureState.SSD,
                role.isAggregate() ? Optional.of(new BigDecimal("1.0")) : Optional.empty(),
                Optional.empty(),
                Optional.of(new BigDecimal(relativeDensity)),
                BigDecimal.ZERO);
    }

    /**
     * The mix of NAVEDTRA 14070/14071, Engineering Aid, chapter 17 (seen), a cubic yard: water 305 lb, cement 610 lb, coarse
     * 1735 lb, fine 1152 lb, air 5 %; in a bowl of 0.250 ft3. Derived: 1152 x 0.250 / 27 = 10.667 lb and
     * 1735 x 0.250 / 27 = 16.065 lb.
     */
    @Test
    void aPublishedMixGivesThePencilsMasses() {
        Batch batch = new Batch(
                List.of(
                        poundsOf("Water", Role.WATER, "305", "1"),
                        poundsOf("Cement", Role.CEMENT, "610", "3.15"),
                        poundsOf("Coarse", Role.COARSE, "1735", "2.60"),
                        poundsOf("Fine", Role.FINE, "1152", "2.65")),
                new BatchVolume.Stated(Typed.of("27", VolumeUnit.CUBIC_FOOT)),
                new BigDecimal("5"),
                false);
        Books.keep(
                mixDesk.book,
                new MixDesign(
                        new MixId("US-1"),
                        "A cubic yard",
                        batch,
                        Optional.empty(),
                        Optional.empty(),
                        Profiles.DEFAULT_ID,
                        "",
                        Optional.empty()));
        mixDesk.desk.show(UnitSystem.US);
        open("US-1");
        model.type(SampleFields.METER, "");
        model.chooseUnit(SampleFields.BOWL, VolumeUnit.CUBIC_FOOT.symbol());
        model.type(SampleFields.BOWL, "0.250");
        assertThat(sample().fine().in(MassUnit.POUND)).isCloseTo(10.667, within(5e-4));
        assertThat(sample().coarse().in(MassUnit.POUND)).isCloseTo(16.065, within(5e-4));
        // 0.250 ft3 x 5 % = 0.0125 ft3 = 354 mL; as Iowa DOT I.M. 318 (seen) prints for the same volume.
        assertThat(sample().withdrawal().in(VolumeUnit.MILLILITRE)).isCloseTo(354, within(0.5));
        MassText text = new MassText(new Numbers(Locale.ENGLISH), model.massUnit());
        assertThat(text.show(sample().fine())).isEqualTo("10.67");
        assertThat(text.show(sample().coarse())).isEqualTo("16.06");
    }

    @Test
    void theLaboratorysOnlyMeterIsChosenAndItsBowlUsed() {
        open("M-1");
        assertThat(reading().meter())
                .hasValueSatisfying(meter -> assertThat(meter.id()).isEqualTo(new MeterId("B-1")));
        // 7.050 L of 1.00 m3: 700 x 0.00705 = 4.935 kg and 1050 x 0.00705 = 7.4025 kg.
        assertThat(sample().fine().kilograms()).isCloseTo(4.935, within(1e-9));
        assertThat(sample().coarse().kilograms()).isCloseTo(7.4025, within(1e-9));
        // Three trials and 10 % spare: 4.935 x 3.3 = 16.2855 kg.
        assertThat(reading().weighOut().orElseThrow().lines().get(0).total().kilograms())
                .isCloseTo(16.2855, within(1e-9));
        assertThat(model.massUnit()).isEqualTo(MassUnit.GRAM);
    }

    @Test
    void todaysMoistureChangesTheMassesAndNotTheMix() {
        open("M-1");
        model.type(model.moistures().get(0), "5.0");
        // Sand oven-dry 4.935 / 1.012 = 4.876482 kg; at 5.0 % 5.120306 kg.
        assertThat(sample().fine().kilograms()).isCloseTo(5.120306, within(5e-7));
        assertThat(model.hasMoistureOfToday()).isTrue();
        TrialSheet sheet = model.sheet().orElseThrow();
        assertThat(sheet.sample()).isEqualTo(sample());
        assertThat(sheet.mix().aggregates().get(0).moisturePercent()).contains(new BigDecimal("5.0"));
        assertThat(mixDesk.book.history(MixDesign.class, "M-1")).hasSize(1);
        model.history().undo();
        assertThat(model.hasMoistureOfToday()).isFalse();
        assertThat(sample().fine().kilograms()).isCloseTo(4.935, within(1e-9));
    }

    @Test
    void whatIsNoNumberIsSaidUnderItsField() {
        open("M-1");
        model.type(SampleFields.TRIALS, "2.5");
        model.type(SampleFields.SPARE, "-1");
        model.type(model.moistures().get(1), "wet");
        assertThat(model.problems())
                .filteredOn(Problem::isError)
                .extracting(Problem::field)
                .containsExactlyInAnyOrder("trials", "spare", "moisture.1");
        assertThat(reading().sample()).isEmpty();
        assertThat(model.sheet()).isEmpty();
        model.type(model.moistures().get(1), "61");
        assertThat(model.problems()).extracting(Problem::code).contains("mix.moisture-out-of-range");
    }

    @Test
    void massesAreShownEvenWhileTheNumberOfTrialsIsWrong() {
        open("M-1");
        model.type(SampleFields.TRIALS, "");
        assertThat(reading().sample()).isPresent();
        assertThat(reading().weighOut()).isEmpty();
    }

    @Test
    void aTypedBowlKeepsItsDigitsAndUnitWhenUnitsAreSwitched() {
        open("M-1");
        model.type(SampleFields.METER, "");
        model.type(SampleFields.BOWL, "7.05");
        Mass before = sample().fine();
        mixDesk.desk.show(UnitSystem.US);
        model.followDesk();
        assertThat(model.draft().text(SampleFields.BOWL)).isEqualTo("7.05");
        assertThat(model.draft().unit(SampleFields.BOWL)).isEqualTo(VolumeUnit.LITRE.symbol());
        assertThat(model.massUnit()).isEqualTo(MassUnit.POUND);
        assertThat(sample().fine()).isEqualTo(before);
        assertThat(model.paper()).isEqualTo(Paper.LETTER);
    }

    @Test
    void aSmallBowlAndAnEmptyFieldAreSaid() {
        open("M-1");
        model.type(SampleFields.METER, "");
        assertThat(model.problems()).extracting(Problem::kind).contains(Problem.Kind.NOT_YET);
        model.type(SampleFields.BOWL, "5");
        assertThat(model.problems()).extracting(Problem::code).contains("trial.bowl-small");
        assertThat(reading().sample()).isPresent();
        model.type(SampleFields.BOWL, "0");
        assertThat(model.problems()).extracting(Problem::code).contains("sample.bowl-not-positive");
        model.type(SampleFields.METER_TYPE, "A");
        assertThat(reading().meterType()).isEqualTo(MeterType.A);
    }

    @Test
    void massesReadAsOnABalanceWithTheirLimitsRoundedInward() {
        MassText grams = new MassText(new Numbers(Locale.ENGLISH), MassUnit.GRAM);
        assertThat(grams.show(new Mass(4.8765))).isEqualTo("4876");
        assertThat(grams.show(new Mass(0.09949))).isEqualTo("99.5");
        assertThat(grams.showLowest(new Mass(4.8761))).isEqualTo("4877");
        assertThat(grams.showHighest(new Mass(4.8769))).isEqualTo("4876");
        MassText kilograms = new MassText(new Numbers(Locale.GERMAN), MassUnit.KILOGRAM);
        assertThat(kilograms.show(new Mass(4.8765))).isEqualTo("4,876");
    }

    @Test
    void theSheetIsWrittenUnderANameThatEveryFileSystemTakes(@TempDir Path folder) throws Exception {
        open("M-1");
        assertThat(model.sheetFileName()).isEqualTo("trial-sheet-M-1-2026-03-02.pdf");
        Path file = folder.resolve(model.sheetFileName());
        mixDesk.desk
                .tools()
                .press()
                .write(model.sheet().orElseThrow(), model.paper(), Locale.ENGLISH, OutputFile.fresh(file));
        assertThat(Files.size(file)).isPositive();
    }

    @Test
    void theBowlOfAChosenMeterIsShownAsTheRegisterHasItAndCannotBeTyped() {
        open("M-1");
        assertThat(model.choices(SampleFields.METER)).containsExactly("", "B-1");
        assertThat(model.choiceWords(SampleFields.METER, "")).startsWith("No meter chosen");
        assertThat(model.choiceWords(SampleFields.METER, "B-1")).isEqualTo("B-1, Type B, 7.050 L");
        assertThat(model.choiceWords(SampleFields.METER_TYPE, "A")).isEqualTo("Type A");
        assertThat(model.choiceWords(SampleFields.MASS_UNIT, "g")).isEqualTo("g");
        assertThat(model.shown(SampleFields.METER)).isEqualTo("B-1");
        assertThat(model.shown(SampleFields.BOWL)).isEqualTo("7.050");
        assertThat(model.shownUnit(SampleFields.BOWL)).isEqualTo("L");
        assertThat(model.isFixed(SampleFields.BOWL)).isTrue();
        assertThat(model.isFixed(SampleFields.TRIALS)).isFalse();
        model.type(SampleFields.METER, "");
        model.type(SampleFields.BOWL, "0.25");
        model.chooseUnit(SampleFields.BOWL, "ft3");
        assertThat(model.shown(SampleFields.METER)).isEmpty();
        assertThat(model.shown(SampleFields.BOWL)).isEqualTo("0.25");
        assertThat(model.shownUnit(SampleFields.BOWL)).isEqualTo("ft3");
        assertThat(model.isFixed(SampleFields.BOWL)).isFalse();
        assertThat(model.history().undoLabel()).contains("Choose the unit of the bowl volume");
    }

    @Test
    void eachAggregateHasAFieldThatSaysItsMoistureByTheDesign() {
        open("M-1");
        assertThat(model.moistures()).extracting(model::label).containsExactly("Sand (S-1)", "Stone (S-2)");
        assertThat(model.moistures()).extracting(model::hint).allMatch(hint -> hint.endsWith("by the design"));
        assertThat(model.hint(SampleFields.BOWL)).isEmpty();
        assertThat(model.label(SampleFields.BOWL)).isEqualTo("Bowl &volume");
        model.type(model.moistures().get(1), "4");
        assertThat(model.history().undoLabel()).contains("Change today's moisture of Stone");
        model.type(model.moistures().get(1), "wet");
        assertThat(model.problems()).extracting(Problem::field).contains("moisture.1");
    }
}

package porebench.print.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.Printed;
import porebench.method.MeterType;
import porebench.port.Paper;
import porebench.print.Calibrations;
import porebench.print.Cards;
import porebench.print.PageText;
import porebench.print.Presses;
import porebench.print.Sheets;
import porebench.record.MeterCalibration;

class CalibrationPagesTest {
    private static String english(Printed what) {
        return Presses.text(what, Paper.A4, Locale.ENGLISH).replace('\n', ' ');
    }

    // By pencil, with water of 997.97 kg/m3 at 21.1 C by the table in ASTM C29 and C138 (recalled): 6992 g fill
    // 7.0062 L, each gram 0.0010 L more, so the mean of three is 7.0072 L and their standard deviation 0.0010 L.
    @Test
    void saysEveryFillWithMeanAndSpread() {
        assertThat(english(Calibrations.typeB()))
                .contains("Meter PM-2, 2026-06-01", "K-1182", "R. Alder", "routine", "Dial cleaned before.")
                .contains("1 3500 g 1200 g 11692 g 21.1 7.0062")
                .contains("2 3500 g 1200 g 11693 g 21.1 7.0072")
                .contains("3 3500 g 1200 g 11694 g 21.1 7.0082")
                .contains("7.0072 L (0.24746 ft\u00b3)", "0.0010 L (0.014 %)", "not corrected");
    }

    // 349.7 g are 100 x 349.7 / 6993 = 5.001 % of the bowl, two vessels 10.001 %; the dial reads 5.05 and 10.05.
    @Test
    void saysEveryCheckPointWithItsErrorAndVerdict() {
        assertThat(english(Calibrations.typeB()))
                .contains(
                        "Read: 0 \u00d7 vessel: 0.0 %; 1 \u00d7 vessel: 5.05 %; 1 \u00d7 vessel: 5.05 %; 2 \u00d7 vessel: 10.05 %.")
                .contains("5.001 5.050 2 +0.049", "10.001 10.050 1 +0.049", "passes")
                .contains("Passed: everything measured lies within its limits.")
                .doesNotContain("FAILS", "SIMULATED");
        assertThat(english(Calibrations.failed()))
                .contains("10.001 10.250 1 +0.249", "FAILS", "FAILED: do not use the meter");
    }

    // The dial check of 1 June holds three months: ASTM C231 as a secondary page quotes it (seen).
    @Test
    void saysWhatTheModelImpliesAndWhenItIsDue() {
        assertThat(english(Calibrations.typeB()))
                .contains("Air chamber the points imply", "Initial pressure implied")
                .contains("Chamber since the dial check before", "within 2.0 %")
                .contains("\u22121.0 %", "0.25 marks", "0.50 marks")
                .contains("Next calibration due by 2026-09-01")
                .contains("The maker\u2019s chamber or initial pressure is not known")
                .contains("C231 annex on calibration", "JIS A 1128", "ASTM C231/C231M");
    }

    // R = 98 x 280 / 7000 = 3.92 %; K = 3.92 + 0.06 = 3.98 %.
    @Test
    void saysTheColumnOfATypeAMeter() {
        assertThat(english(Calibrations.typeA()))
                .contains("Type A", "280.0 g 7000 g 0.06 % 15.0 psi", "3.92 % 3.98 %", "120 m", "more than 183 m")
                .doesNotContain("Dial, by water withdrawn");
    }

    @Test
    void aNoteSaysThatNothingWasMeasured() {
        assertThat(english(Calibrations.note()))
                .contains("Nothing was measured", "Seal of the cover replaced.", "repair")
                .contains("Next calibration: before the meter is used again")
                .doesNotContain("Bowl, by water and plate");
    }

    @Test
    void readingsThatCannotBeUsedAreShownAndSaidToBeUnusable() {
        assertThat(english(Calibrations.unusable()))
                .contains("These readings could not be used", "2 \u00d7 vessel: 4.00 %", "FAILED")
                .contains("Next calibration: before the meter is used again");
    }

    static Stream<Printed> all() {
        return Stream.of(
                Calibrations.typeB(),
                Calibrations.typeA(),
                Calibrations.form(MeterType.A),
                Calibrations.form(MeterType.B));
    }

    @ParameterizedTest
    @MethodSource("all")
    void cautionsStandOnEveryOne(Printed what) {
        assertThat(english(what))
                .containsPattern("Pressure vessel( with a glass tube)?: shield your eyes")
                .contains("The glass plate is heavy", "weighs 20 to 25 kg (45 to 55 lb)")
                .contains("Calibrated by", "Checked by", "responsible (licensed) engineer decide");
    }

    @ParameterizedTest
    @EnumSource(MeterType.class)
    void theFormHasRoomForEverythingTheFileHolds(MeterType type) {
        String text = english(Calibrations.form(type));
        assertThat(text)
                .contains("Calibration form", "Meter PM-2", "routine")
                .contains("Fill Empty, g Plate, g Full, plate on, g Water, \u00b0C Remarks")
                .contains("Air, \u00b0C", "Air pressure, kPa", "Diameter, mm", "Height, mm")
                .contains("meter-calibration.csv");
        assertThat(MeterCalibration.Reason.values())
                .allSatisfy(reason -> assertThat(text).contains(reason.symbol()));
        List<String> dial =
                List.of("Water withdrawn so far", "Hand moved in 90 s, marks", "within 0.1 %", "0.5 of a mark");
        List<String> column = List.of("w, water of the vessel", "P, working pressure", "D at most 0.1 %", "183 m");
        assertThat(text).contains(type == MeterType.B ? dial : column);
        assertThat(text).doesNotContain(type == MeterType.B ? "P, working pressure" : "Water withdrawn so far");
    }

    static Stream<Printed> fromATrainingBook() {
        return Stream.of(
                Cards.training("0.3", false),
                Sheets.training(7),
                Calibrations.training(),
                Calibrations.formForAnyMeter(MeterType.B, Calibrations.Laboratories.TRAINING));
    }

    @ParameterizedTest
    @MethodSource("fromATrainingBook")
    void everyPageFromATrainingBookSaysSimulatedLarge(Printed what) {
        boolean card = what instanceof FactorCard;
        byte[] pdf = Presses.pdf(what, card ? Paper.A6 : Paper.A4, Locale.ENGLISH);
        List<PageText.Run> runs = PageText.runs(pdf);
        int pages = runs.stream().mapToInt(PageText.Run::page).max().orElse(0);
        assertThat(pages).isEqualTo(card ? 1 : 2);
        for (int page = 1; page <= pages; page++) {
            int number = page;
            assertThat(runs).as("page %s", page).anySatisfy(run -> {
                assertThat(run.page()).isEqualTo(number);
                assertThat(run.text()).isEqualTo("SIMULATED");
                assertThat(run.size()).isGreaterThanOrEqualTo(18);
            });
        }
        assertThat(PageText.of(pdf).replace('\n', ' ')).contains("Nothing here was measured");
    }

    @Test
    void recordsAndFormsRefuseCards() {
        assertThatThrownBy(() -> Presses.pdf(Calibrations.typeB(), Paper.A6, Locale.ENGLISH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("paper must be A4 or letter for a sheet, but is A6");
    }

    static Stream<Printed> recordsAndForms() {
        return Stream.of(
                Calibrations.typeA(),
                Calibrations.typeB(),
                Calibrations.failed(),
                Calibrations.note(),
                Calibrations.form(MeterType.A),
                Calibrations.form(MeterType.B));
    }

    /** A page behind the first one holds a part of the work, not only lines to sign on: text reaches below the upper half. */
    @ParameterizedTest
    @MethodSource("recordsAndForms")
    void noSecondPageIsAlmostEmpty(Printed what) {
        for (String language : List.of("en-US", "es-MX", "es-ES", "fr-FR", "de-DE")) {
            for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
                double height = paper == Paper.A4 ? 842 : 792;
                List<PageText.Run> runs = PageText.runs(Presses.pdf(what, paper, Locale.forLanguageTag(language)));
                int pages = runs.stream().mapToInt(PageText.Run::page).max().orElse(0);
                assertThat(pages).as(language).isLessThanOrEqualTo(2);
                if (pages == 2) {
                    // The foot stands below 92 % of the height.
                    assertThat(runs.stream()
                                    .filter(run -> run.page() == 2)
                                    .mapToDouble(PageText.Run::baseline)
                                    .filter(y -> y < 0.92 * height)
                                    .max())
                            .as("%s on %s", language, paper)
                            .matches(y -> y.orElse(0) > 0.5 * height);
                }
            }
        }
    }
}

package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.paper.TrialSheet;
import porebench.port.Paper;

class TrialSheetTest {
    private static String english(TrialSheet sheet) {
        return Presses.text(sheet, Paper.A4, Locale.ENGLISH);
    }

    // By pencil: 7 L of 1000 L is 0.007; 700 kg and 1050 kg give 4900 g and 7350 g; 1 % is 49 g and 73.5 g, so the
    // limits
    // of 7350 g are 7276.5 and 7423.5, inward 7277 and 7423; three trials and 10 % are 3.3 times as much.
    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A4", "LETTER"})
    void saysWhatToWeighWithinWhatLimitsAndWhatToFetch(Paper paper) {
        assertThat(Presses.text(Sheets.usual(3), paper, Locale.ENGLISH))
                .contains("orrin Washed sand fine 4900 4851 4949 16170")
                .contains("fell 5-20 mm stone coarse 7350 7277 7423 24255")
                .contains("Each trial, g", "Material for 3 trials", "with 10 % spare, g")
                .contains("fine 4900 g, coarse 7350 g")
                .contains("TW-214", "PM-2", "K-1182", "7.00 L", "Type B", "6.0 %", "12 min", "ASTM C231/C231M");
    }

    @Test
    void namesThePlantWhereTheMixDoes() {
        assertThat(english(Sheets.everythingLong(3))).contains("Plant: Lower Fellside batching plant, second line");
        assertThat(english(Sheets.usual(3))).doesNotContain("Plant");
    }

    // A third of 7 L is 2.33 L, 6 % of 7000 mL is 420 mL. Sand and stone at SSD with relative density 2.65 take
    // 12.25 / 2.65 = 4.623 L, which leaves 2.377 L for water.
    @Test
    void saysTheWaters() {
        assertThat(english(Sheets.usual(3)))
                .contains("2.33 L 2.38 L 420 mL")
                .contains("Fill the bowl one third with water, 2.33 L.")
                .contains("Withdraw 420 mL of water", "100 \u00d7 water withdrawn / 7000 mL");
    }

    // 1920 kg of relative density 2.65 in 1 m3 are 13.44 kg in 7 L: 5.072 L, which leaves 1.928 L, less than 2.333 L.
    @Test
    void startsWithTheWaterThatFitsWhereAThirdWouldRunOver() {
        assertThat(english(Sheets.packed(3)))
                .contains("To start with, all that fits", "1.93 L 1.93 L 420 mL")
                .contains("Put 1.93 L of water in the bowl: a third of it, 2.33 L, would run over")
                .doesNotContain("Fill the bowl one third");
        assertThat(Presses.text(Sheets.packed(3), Paper.A4, Locale.forLanguageTag("es")))
                .contains("Poner 1,93 L de agua en el recipiente: un tercio, 2,33 L, se derramar\u00eda");
    }

    // source: NAVEDTRA 14070/14071 Engineering Aid, ch. 17 (seen): a cubic yard with 1152 lb fine and 1735 lb coarse.
    // For a bowl
    // of 0.250 ft3, by arithmetic: 10.667 lb and 16.065 lb; 1 % inward 10.56 to 10.77 and 15.91 to 16.22.
    @Test
    void printsPoundsToTwoDecimals() {
        assertThat(english(Sheets.us(4)))
                .contains("fine 10.67 10.56 10.77 46.93")
                .contains("coarse 16.06 15.91 16.22 70.69")
                .contains("0.250 ft\u00b3", "2.36 L (0.083 ft\u00b3)");
    }

    private static void inOrder(String text, String... steps) {
        int last = -1;
        for (String step : steps) {
            assertThat(text.indexOf(step)).as(step).isGreaterThan(last);
            last = text.indexOf(step);
        }
    }

    // source: Illinois Modified AASHTO T 152, checklist of 2009 (seen), order of valves and petcocks; withdrawing and
    // the
    // bleeder valve: recalled. While water goes in and out the petcocks are open; they are closed once the line is set.
    @Test
    void typeBStepsSetTheLineBeforeThePetcocksAreClosed() {
        String text = english(Sheets.usual(3)).replaceAll("\\s+", " ");
        inOrder(
                text,
                "rod the top 25 mm (1 in.) 8 to 12 times",
                "Leave to soak for 12 min, \u00b1 5 min.",
                "Pressure vessel: shield your eyes, turn your face from the petcocks",
                "Close the main air valve and open both petcocks.",
                "Withdraw 420 mL of water",
                "Close the bleeder valve.",
                "Pump a little over the initial pressure line",
                "trim to the line with pump and bleeder valve",
                "Close both petcocks.",
                "Open the main air valve",
                "write down the reading",
                "Close the main air valve before you let the pressure out of the bowl",
                "Then open the petcocks to let the pressure out of the bowl",
                "vent the chamber by the bleeder valve");
        assertThat(text)
                .contains("respirator rated for silica dust", "lift it with a second person", "Wet floors")
                .contains("checklist of 2009 (seen, written for concrete)", "withdrawal and bleeder valve: recalled.")
                .doesNotContain("h1", "standpipe", "Elevation");
    }

    // source: ASTM C231 and AASHTO T 152, Type A meter: recalled.
    @Test
    void typeAStepsSpeakOfWaterColumnVentAndGlass() {
        String text = english(Sheets.typeA(6)).replaceAll("\\s+", " ");
        inOrder(
                text,
                "Pressure vessel with a glass tube",
                "half way up the standpipe",
                "about 30 degrees",
                "bring the water level to zero, and close the vent",
                "Pump a little over the test pressure P of the meter (by about 1.4 kPa, 0.2 psi)",
                "read the water level h1",
                "Let the pressure out by the vent, tap the sides for about a minute, and read the water level h2.",
                "Do both again without refilling.",
                "Open the vent and see that the pressure is gone");
        assertThat(text)
                .contains(
                        "Type A",
                        "G = h1 \u2212 h2, in % air.",
                        "h1, % h2, %",
                        "Elevation,",
                        "nothing withdrawn: read h1, h2")
                .contains("leave out all aggregate over 37.5 mm (1 1/2 in.)", "Type A meter: recalled.")
                .doesNotContainIgnoringCase("withdrawn,", "gauge", "initial pressure line", "main air valve")
                .doesNotContainIgnoringCase("petcock", "chamber", "bleeder");
    }

    @Test
    void hasARowForEveryTrialAndSaysHowManyPagesThereAre() {
        assertThat(rows(english(Sheets.usual(1)))).isEqualTo(1);
        String many = english(Sheets.everythingLong(100));
        assertThat(rows(many)).isEqualTo(100);
        assertThat(many).contains("Page 1 of 6", "Page 6 of 6", "From trial 7 on, tick a copy of this page.");
        assertThat(Pattern.compile("Trial Date and time Operator").matcher(many).results())
                .hasSize(5);
    }

    private static long rows(String text) {
        return Pattern.compile("(?m)^\\d+ yes / no$").matcher(text).results().count();
    }

    @Test
    void columnsFollowTheTrialFile() {
        assertThat(english(Sheets.usual(3)))
                .contains("Trial Date and time Operator Fine, g Coarse, g Soak, Water, Withdrawn, Gauge, Leak Remarks")
                .contains("Tested by Date Checked by Date");
    }

    @Test
    void aMixWithoutASoakTimeSaysHowLongInWords() {
        assertThat(english(Sheets.everythingLong(3)))
                .contains("not stated", "Leave to soak as long as from water entering the mixer to the air test.");
    }

    @Test
    void numbersHaveTheDecimalSignOfTheLocale() {
        assertThat(Presses.text(Sheets.us(4), Paper.A4, Locale.GERMANY)).contains("10,67 10,56 10,77 46,93", "2,36 L");
    }

    @Test
    void saysThatTheLaboratorysStandardDecides() {
        assertThat(english(Sheets.usual(3)))
                .contains("Recalled; confirm against the edition the laboratory works by.")
                .contains("responsible (licensed) engineer decide", "volumetric method");
    }

    @Test
    void refusesCards() {
        assertThatThrownBy(() -> Presses.pdf(Sheets.usual(3), Paper.A6, Locale.ENGLISH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("paper must be A4 or letter for a sheet, but is A6");
    }
}

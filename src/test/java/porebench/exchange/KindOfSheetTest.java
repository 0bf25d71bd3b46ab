package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.TRIAL;
import static porebench.exchange.CsvText.TRIAL_HEADING;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.Trial;

/** Which kind of sheet a heading means, and when none of it is used. */
class KindOfSheetTest {
    /** Two columns of a laboratory, three of a trial: but only the laboratory is all there. */
    @Test
    void aKindThatIsAllThereGoesBeforeOneOfWhichMoreIsThere() {
        Sheet<?> sheet = CsvText.records(
                "l.csv",
                bytes("laboratory_name,laboratory_address,trial_id,tested_at,operator", "Hawmere Gate,,T-1,,R. Vane"));
        assertThat(sheet.values()).singleElement().isInstanceOf(Laboratory.class);
        assertThat(sheet.problems()).extracting(Problem::code).containsOnly("csv.column-unknown");
    }

    /** A print of a card needs five columns, a factor fourteen; both have the mix and the revision. */
    @Test
    void ofTwoKindsOfWhichAsMuchIsThereTheSmallerIsMeant() {
        assertThat(found(CsvText.records("p.csv", bytes("mix_id,revision", "M-1,1"))))
                .containsExactly(
                        "1:0 number csv.column-missing",
                        "1:0 paper csv.column-missing",
                        "1:0 destination csv.column-missing");
    }

    /** A mix design needs fifteen columns. */
    @Test
    void aThirdOfTheColumnsIsEnoughToKnowTheKind() {
        String third = "mix_title,batch_volume,batch_volume_unit,target_air_pct,constituent";
        assertThat(found(CsvText.records("m.csv", bytes(third, "House mix,1,m3,5,Sand"))))
                .hasSize(10)
                .contains("1:0 mix_id csv.column-missing");
        assertThat(found(CsvText.records("m.csv", bytes(third.replace("constituent", "of"), "House mix,1,m3,5,Sand"))))
                .containsExactly("1:0  csv.kind-unknown");
    }

    @Test
    void ofASheetThatIsAskedForOneColumnIsEnough() {
        Sheet<Trial> sheet = CsvSheets.one("t.csv", bytes("trial_id,what", "T-1,x"), SheetFormats.TRIALS);
        assertThat(found(sheet)).contains("1:0 mix_id csv.column-missing").doesNotContain("1:0  csv.heading-unknown");
    }

    /** Which of the two columns is meant nobody knows, so no mix is taken, however good its rows are. */
    @Test
    void noMixIsReadUnderAHeadingWithAColumnTwice() {
        Sheet<MixDesign> sheet = CsvSheets.one(
                "m.csv",
                bytes(
                        CsvText.MIX_HEADING + ",moisture_pct",
                        "M-1,House mix,1.00,m3,5.5,Sand,fine,S-1,720.0,kg,ssd,1.2,4.0,2.64,0,4.5"),
                SheetFormats.MIX_DESIGNS);
        assertThat(found(sheet)).containsExactly("1:16 moisture_pct csv.column-twice");
        assertThat(sheet.rows()).isEmpty();
    }

    /** Spreadsheets leave commas behind where a column was emptied. */
    @Test
    void columnsWithoutANameAreNothing() {
        String calibrations =
                "calibration_id,meter_id,meter_type,calibrated_on,by,reason,row,empty_mass,plate_mass,full_mass,"
                        + "mass_unit,water_temp_c,,";
        assertThat(found(CsvSheets.one(
                        "c.csv",
                        bytes(
                                calibrations,
                                "C-1,B-1,B,2026-03-02,R. Vane,routine,fill,3.450,0.720,11.207,kg,20.0,,",
                                "N-1,B-1,B,2026-04-01,,repair,note,,,,,,,x"),
                        SheetFormats.CALIBRATIONS)))
                .isEmpty();
        assertThat(found(CsvSheets.one("t.csv", bytes(TRIAL_HEADING + ",,", TRIAL + ",,"), SheetFormats.TRIALS)))
                .isEmpty();
    }

    @Test
    void aTableOfValuesSaysWhichSeparatorItHas() {
        for (String[] one : new String[][] {{"\t", "tab"}, {";", ";"}}) {
            Sheet<?> sheet = CsvSheets.table(
                    "t.csv", bytes("subgroup" + one[0] + "value", "a" + one[0] + "1"), List.of("subgroup"));
            assertThat(sheet.problems())
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.values()).containsExactly(one[1]));
        }
    }
}

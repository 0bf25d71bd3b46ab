package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.MIX_HEADING;
import static porebench.exchange.CsvText.TRIAL;
import static porebench.exchange.CsvText.TRIAL_HEADING;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.CsvRows;
import porebench.record.MixDesign;
import porebench.record.Trial;

/** Damaged lines are placed in their column, cost what they may belong to, and nothing else. */
class DamagedBytesTest {
    private static final String SAND = "M-1,House mix,1.00,m3,5.5,Sand,fine,S-1,720.0,kg,ssd,1.2,4.0,2.64,0";
    private static final String STONE = "M-1,,,,,Stone,coarse,S-2,1050,kg,oven-dry,0.6,,2.70,";

    /** Reads a file that an old program wrote in an alphabet of one byte a letter. */
    private static Sheet<Trial> latin(String... lines) {
        byte[] file = String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
        return CsvSheets.one("t.csv", file, SheetFormats.TRIALS);
    }

    @Test
    void aLetterThatCannotBeReadIsPlacedInTheFirstColumnAndInTheLast() {
        assertThat(found(latin(TRIAL_HEADING, TRIAL.replace("T-1", "É-1"))))
                .containsExactly("2:1 trial_id csv.not-utf8");
        assertThat(found(latin(TRIAL_HEADING, TRIAL + "Rückstand"))).containsExactly("2:20 remarks csv.not-utf8");
    }

    @Test
    void aCellThatBeginsWithSuchALetterIsPlacedToo() {
        assertThat(found(latin(TRIAL_HEADING, TRIAL.replace("R. Vane", "Örn"))))
                .containsExactly("2:4 operator csv.not-utf8");
    }

    @Test
    void twoSuchLettersOnTwoLinesOfOneCellAreBothPlacedInIt() {
        assertThat(found(latin(TRIAL_HEADING, TRIAL.replace("R. Vane", "\"R. Väne\nand M. Äsh\""))))
                .containsExactly("2:4 operator csv.not-utf8", "3:4 operator csv.not-utf8");
    }

    /** A row that runs on has too many cells in the end: it is left at its first line, and the lines between are read. */
    @Test
    void aQuoteThatClosesLinesLaterByChanceCostsOnlyItsOwnLine() {
        Sheet<Trial> sheet = CsvSheets.one(
                "t.csv",
                bytes(
                        TRIAL_HEADING,
                        TRIAL + "\"3/4 in stone",
                        TRIAL.replace("T-1", "T-2"),
                        TRIAL.replace("T-1", "T-3\"") + "1 in stone",
                        TRIAL.replace("T-1", "T-4")),
                SheetFormats.TRIALS);
        assertThat(found(sheet)).containsExactly("2:0  csv.quote-runs-on", "4:0  csv.quote-never-closed");
        assertThat(sheet.values()).extracting(trial -> trial.id().text()).containsExactly("T-2", "T-4");
    }

    private static Sheet<MixDesign> mixes(String... lines) {
        return CsvSheets.one("m.csv", bytes(lines), SheetFormats.MIX_DESIGNS);
    }

    /** The line that is lost may have been a constituent of either. */
    @Test
    void theMixesBesideALineThatCannotBeToldApartAreLeftOut() {
        String other = SAND.replace("M-1", "M-2");
        String tooLong = "M-1,".repeat(CsvRows.LONGEST_LINE / 4 + 1);
        String runsOn = STONE + "\"3/4 in";
        assertThat(found(mixes(MIX_HEADING, SAND, tooLong, other)))
                .containsExactly(
                        "2:0 mix_id csv.left-out-beside", "3:0  csv.line-too-long", "4:0 mix_id csv.left-out-beside");
        assertThat(found(mixes(MIX_HEADING, SAND, STONE + "\"x\" \"", other)))
                .contains("2:0 mix_id csv.left-out-beside", "4:0 mix_id csv.left-out-beside");
        Sheet<MixDesign> sheet = mixes(MIX_HEADING, SAND, runsOn, other, "\",x");
        assertThat(found(sheet)).contains("2:0 mix_id csv.left-out-beside", "3:0  csv.quote-runs-on");
        assertThat(sheet.rows()).isEmpty();
    }

    @Test
    void aFileOfOneDamagedLineIsNotCalledEmptyAsWell() {
        assertThat(found(CsvSheets.one("t.csv", bytes("\"trial_id"), SheetFormats.TRIALS)))
                .containsExactly("1:0  csv.quote-never-closed");
    }
}

package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.MIX_HEADING;
import static porebench.exchange.CsvText.TRIAL;
import static porebench.exchange.CsvText.TRIAL_HEADING;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;
import static porebench.exchange.CsvText.said;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.CsvRows;
import porebench.exchange.text.Findings;
import porebench.exchange.text.RawFile;
import porebench.record.Trial;

class BadFileTest {
    @TempDir
    private Path folder;

    private static Sheet<Trial> trials(byte[] bytes) {
        return CsvSheets.one("t.csv", bytes, SheetFormats.TRIALS);
    }

    @Test
    void readsAGoodTrial() {
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING, TRIAL));
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.rows()).hasSize(1);
        assertThat(sheet.rows().get(0).line()).isEqualTo(2);
        assertThat(sheet.values().get(0).determinationId().text()).isEqualTo("M-1");
    }

    @Test
    void passesOverAByteOrderMarkAndBlankLines() {
        byte[] marked = ("\uFEFF" + TRIAL_HEADING + "\r\n\r\n,,,,,,,,,,,,,,,,,,,\r\n" + TRIAL + "\r\n")
                .getBytes(StandardCharsets.UTF_8);
        Sheet<Trial> sheet = trials(marked);
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.rows().get(0).line()).isEqualTo(4);
    }

    @Test
    void readsColumnsInAnyOrderWithWhiteSpaceAroundTheirNames() {
        Sheet<Double> none = CsvSheets.values("v.csv", bytes("value"));
        assertThat(none.rows()).isEmpty();
        String heading = String.join(" , ", reversed(TRIAL_HEADING.split(",", -1)));
        String row = String.join(",", reversed(TRIAL.split(",", -1)));
        Sheet<Trial> sheet = trials(bytes(heading, row));
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.values()).isEqualTo(trials(bytes(TRIAL_HEADING, TRIAL)).values());
    }

    private static String[] reversed(String[] cells) {
        String[] reversed = cells.clone();
        java.util.Collections.reverse(Arrays.asList(reversed));
        return reversed;
    }

    @Test
    void namesEveryMissingColumnAndStillChecksTheRest() {
        String heading = TRIAL_HEADING.replace("bowl_volume_unit,", "").replace(",leak", "");
        String row = TRIAL.replace("7.05,L,", "7,05,").replace(",no,", ",").replace("7,05", "\"7,05\"");
        Sheet<Trial> sheet = trials(bytes(heading, row));
        assertThat(found(sheet))
                .containsExactly(
                        "1:0 bowl_volume_unit csv.column-missing",
                        "1:0 leak csv.column-missing",
                        "2:7 bowl_volume csv.decimal-comma");
        assertThat(sheet.rows()).isEmpty();
    }

    @Test
    void warnsOfAnUnknownColumnAndUsesTheRow() {
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING + ",weather", TRIAL + ",rain"));
        assertThat(found(sheet)).containsExactly("1:21 weather csv.column-unknown");
        assertThat(sheet.problems().get(0).isError()).isFalse();
        assertThat(sheet.rows()).hasSize(1);
    }

    @Test
    void refusesAColumnThatStandsTwice() {
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING + ",leak", TRIAL + ",yes"));
        assertThat(found(sheet)).containsExactly("1:21 leak csv.column-twice");
        assertThat(sheet.rows()).isEmpty();
    }

    @Test
    void namesEveryBadCellAtOnceAndKeepsTheGoodRows() {
        String bad =
                "T-2,,04.03.2026,R. Vane,B-1,C,\"7,05\",liter,\"4,500.5\",-1,stone,15 h,200,352,cups,5.4 bar,-3,,maybe,";
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING, bad, TRIAL));
        assertThat(found(sheet))
                .containsExactly(
                        "2:2 mix_id csv.required",
                        "2:3 tested_at csv.not-a-time",
                        "2:6 meter_type csv.not-a-choice",
                        "2:7 bowl_volume csv.decimal-comma",
                        "2:8 bowl_volume_unit csv.not-a-choice",
                        "2:9 fine_mass csv.thousands",
                        "2:10 coarse_mass csv.negative",
                        "2:11 mass_unit csv.not-a-choice",
                        "2:12 soak_minutes csv.not-its-unit",
                        "2:13 water_temp_c csv.out-of-range",
                        "2:15 withdrawn_unit csv.not-a-choice",
                        "2:16 gauge_pct csv.not-its-unit",
                        "2:17 h1_pct csv.negative",
                        "2:19 leak csv.not-a-choice");
        assertThat(said(sheet))
                .contains(
                        "t.csv, line 2, column 7: bowl_volume is written \"7,05\". Use a point for decimals, and "
                                + "nothing between thousands.",
                        "t.csv, line 2, column 8: bowl_volume_unit must be one of m3, L, mL, ft3, yd3, in3, gal, "
                                + "but is \"liter\". Correct it.",
                        "t.csv, line 2, column 3: \"04.03.2026\" in tested_at is not a date and time. Write it "
                                + "such as 2026-03-04T09:30.",
                        "t.csv, line 2, column 19: leak must be one of yes, no, but is \"maybe\". Correct it.");
        assertThat(sheet.values()).extracting(trial -> trial.id().text()).containsExactly("T-1");
    }

    @Test
    void readsADayAloneAsItsBeginningAndRefusesDaysThatAreNot() {
        assertThat(trials(bytes(TRIAL_HEADING, TRIAL.replace("T09:30", "")))
                        .values()
                        .get(0)
                        .testedAt())
                .hasToString("2026-03-04T00:00");
        assertThat(trials(bytes(TRIAL_HEADING, TRIAL.replace("T09:30", " 09:30:15")))
                        .values()
                        .get(0)
                        .testedAt())
                .hasToString("2026-03-04T09:30:15");
        for (String wrong : new String[] {"2026-02-30T09:30", "2026-03-04T25:00", "2026-03-04T09:30Z", "2026-3-4"}) {
            assertThat(found(trials(bytes(TRIAL_HEADING, TRIAL.replace("2026-03-04T09:30", wrong)))))
                    .containsExactly("2:3 tested_at csv.not-a-time");
        }
        assertThat(found(trials(bytes(TRIAL_HEADING, TRIAL.replace("2026", "0206")))))
                .containsExactly("2:3 tested_at csv.year-impossible");
    }

    @Test
    void keepsTheFirstOfTwoRowsWithOneId() {
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING, TRIAL, TRIAL.replace("5.4", "5.5")));
        assertThat(found(sheet)).containsExactly("3:1 trial_id csv.duplicate");
        assertThat(said(sheet))
                .containsExactly("t.csv, line 3, column 1: T-1 stands here again; it is already in line 2. "
                        + "Remove one of the two.");
        assertThat(sheet.rows()).hasSize(1);
    }

    @Test
    void countsLinesThroughQuotedLineBreaks() {
        String talkative = TRIAL + "\"first\r\nsecond, with \"\"quotes\"\"\nthird\"";
        Sheet<Trial> sheet = trials(
                bytes(TRIAL_HEADING, talkative, TRIAL.replace("T-1", "T-2").replace("5.4", "x")));
        assertThat(found(sheet)).containsExactly("5:16 gauge_pct csv.not-a-number");
        assertThat(sheet.values().get(0).remarks()).isEqualTo("first\r\nsecond, with \"quotes\"\nthird");
    }

    @Test
    void namesAQuoteThatNeverClosesAndReadsOn() {
        Sheet<Trial> sheet = trials(bytes(
                TRIAL_HEADING, TRIAL + "\"an open end", TRIAL.replace("T-1", "T-2"), TRIAL.replace("T-1", "T-3")));
        assertThat(found(sheet)).containsExactly("2:0  csv.quote-never-closed");
        assertThat(sheet.values()).extracting(t -> t.id().text()).containsExactly("T-2", "T-3");
    }

    @Test
    void namesAQuoteThatRunsOnAndReadsTheLinesBetween() {
        Sheet<Trial> sheet = trials(bytes(
                TRIAL_HEADING,
                TRIAL + "3/4\" stone",
                TRIAL.replace("T-1", "T-2"),
                TRIAL.replace("T-1", "T-3") + "1\" stone",
                TRIAL.replace("T-1", "T-4")));
        assertThat(found(sheet)).containsExactly("2:0  csv.quote-runs-on", "4:0  csv.quote-never-closed");
        assertThat(sheet.values()).extracting(t -> t.id().text()).containsExactly("T-2", "T-4");
    }

    @Test
    void namesQuotesThatCannotBeRead() {
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING, TRIAL.replace("R. Vane", "\"R\". Vane"), TRIAL));
        assertThat(found(sheet)).containsExactly("2:0  csv.quote-misplaced");
        assertThat(sheet.rows()).hasSize(1);
    }

    @Test
    void namesRowsWithTooFewAndTooManyFields() {
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING, "T-5,M-1", TRIAL + ",", TRIAL));
        assertThat(found(sheet)).containsExactly("2:0  csv.fields-wrong-number", "3:0  csv.fields-wrong-number");
        assertThat(sheet.rows()).hasSize(1);
    }

    @Test
    void placesBytesThatAreNotUtf8() {
        byte[] latin = (TRIAL_HEADING + "\n" + TRIAL.replace("R. Vane", "R. Väne") + "\n" + TRIAL.replace("T-1", "T-2"))
                .getBytes(StandardCharsets.ISO_8859_1);
        Sheet<Trial> sheet = trials(latin);
        assertThat(found(sheet)).containsExactly("2:4 operator csv.not-utf8");
        assertThat(said(sheet).get(0)).contains("(E4)", "\"ä\"", "Save it as CSV UTF-8");
        assertThat(sheet.values()).extracting(t -> t.id().text()).containsExactly("T-2");
    }

    @Test
    void refusesSixteenBitText() {
        for (Charset charset : new Charset[] {StandardCharsets.UTF_16, StandardCharsets.UTF_16LE}) {
            Sheet<Trial> sheet = trials((TRIAL_HEADING + "\n" + TRIAL).getBytes(charset));
            assertThat(found(sheet)).containsExactly("0:0  csv.utf-16");
        }
    }

    @Test
    void refusesControlCharacters() {
        assertThat(found(trials(bytes(TRIAL_HEADING, TRIAL + "a\u0000b"))))
                .containsExactly("2:20 remarks csv.control-character");
    }

    @Test
    void passesOverALineOfTenMegabytes() {
        String endless = "T-9,".repeat(2_600_000);
        Sheet<Trial> sheet = trials(bytes(TRIAL_HEADING, endless, TRIAL));
        assertThat(found(sheet)).containsExactly("2:0  csv.line-too-long");
        assertThat(sheet.rows()).hasSize(1);
        assertThat(sheet.rows().get(0).line()).isEqualTo(3);
    }

    @Test
    void readsALongTextUpToTheLimit() {
        String most = TRIAL + "\"" + "\"\"".repeat((CsvRows.LONGEST_LINE - TRIAL.length() - 2) / 2) + "\"";
        assertThat(trials(bytes(TRIAL_HEADING, most)).problems()).isEmpty();
    }

    @Test
    void refusesAFileAboveTheLimit() {
        byte[] large = new byte[RawFile.LARGEST + 1];
        Arrays.fill(large, (byte) 'a');
        Sheet<Trial> sheet = trials(large);
        assertThat(said(sheet)).containsExactly("t.csv: The file is larger than 100 MB and was not read. Split it.");
    }

    @Test
    void saysWhichSeparatorAFileHas() {
        for (String separator : new String[] {";", "\t"}) {
            byte[] other = bytes(TRIAL_HEADING.replace(",", separator), TRIAL.replace(",", separator));
            assertThat(found(trials(other))).containsExactly("1:0  csv.separator");
            assertThat(found(CsvText.records("r.csv", other))).containsExactly("1:0  csv.separator");
            assertThat(found(CsvSheets.one(
                            "m.csv", bytes(MIX_HEADING.replace(",", separator)), SheetFormats.MIX_DESIGNS)))
                    .containsExactly("1:0  csv.separator");
        }
    }

    @Test
    void saysThatAFileIsOfAnotherKindOrNone() {
        assertThat(said(CsvSheets.one("m.csv", bytes(TRIAL_HEADING, TRIAL), SheetFormats.MIX_DESIGNS)))
                .containsExactly(
                        "m.csv, line 1: This has the columns of trial-sheet.csv. Give a file of mix-design.csv "
                                + "here.");
        assertThat(found(trials(bytes(TRIAL)))).containsExactly("1:0  csv.heading-unknown");
        assertThat(found(CsvText.records("x.csv", bytes("when,what", "1,2")))).containsExactly("1:0  csv.kind-unknown");
    }

    @Test
    void saysThatAFileIsEmptyMissingOrUnreadable() throws IOException {
        CsvSheets sheets = new CsvSheets();
        Path empty = Files.createFile(folder.resolve("empty.csv"));
        Path marked =
                Files.write(folder.resolve("marked.csv"), new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, '\n'});
        assertThat(found(sheets.trials(empty))).containsExactly("0:0  csv.empty");
        assertThat(found(sheets.mixDesigns(marked))).containsExactly("0:0  csv.empty");
        assertThat(found(sheets.values(empty))).containsExactly("0:0  csv.empty");
        assertThat(found(sheets.records(empty))).containsExactly("0:0  csv.empty");
        assertThat(found(sheets.trials(folder.resolve("absent.csv")))).containsExactly("0:0  csv.file-missing");
        assertThat(found(sheets.records(folder))).containsExactly("0:0  csv.file-unreadable");
    }

    @Test
    void stopsListingProblemsBeforeTheyFillTheMemory() {
        String[] lines = new String[12_001];
        Arrays.fill(lines, "a,b");
        lines[0] = TRIAL_HEADING;
        Sheet<Trial> sheet = trials(bytes(lines));
        assertThat(sheet.problems()).hasSize(Findings.MOST_LISTED + 1);
        assertThat(said(sheet).get(Findings.MOST_LISTED))
                .isEqualTo("t.csv: There are 2000 more problems. Check that this is the right file.");
    }
}

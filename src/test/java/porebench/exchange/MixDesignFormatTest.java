package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.MIX_HEADING;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;
import static porebench.exchange.CsvText.said;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.method.MoistureState;
import porebench.method.sample.BatchVolume;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;

class MixDesignFormatTest {
    private static final String SAND = "M-1,House mix,1.00,m3,5.5,Sand,fine,S-1,720.0,kg,ssd,1.2,4.0,2.64,0";
    private static final String STONE = "M-1,,,,,Stone,coarse,S-2,1050,kg,oven-dry,0.6,,2.70,";
    private static final String CEMENT = "M-1,,,,,Cement,cement,,340,kg,,,,3.15,";

    private static Sheet<MixDesign> mixes(String... lines) {
        return CsvSheets.one("m.csv", bytes(lines), SheetFormats.MIX_DESIGNS);
    }

    @Test
    void readsTheRowsOfAMixAsOne() {
        Sheet<MixDesign> sheet = mixes(MIX_HEADING, SAND, STONE, CEMENT);
        assertThat(sheet.problems()).isEmpty();
        MixDesign mix = sheet.values().get(0);
        assertThat(mix.title()).isEqualTo("House mix");
        assertThat(mix.profileId()).isEqualTo("astm-c231");
        assertThat(mix.batch().wetSieved()).isFalse();
        assertThat(mix.batch().volume()).isEqualTo(new BatchVolume.Stated(Typed.of("1.00", VolumeUnit.CUBIC_METRE)));
        assertThat(mix.batch().constituents()).hasSize(3);
        assertThat(mix.batch().constituents().get(0).mass()).hasToString("720.0 kg");
        assertThat(mix.batch().constituents().get(1).moisturePercent()).isEmpty();
        assertThat(mix.batch().constituents().get(1).retainedPercent()).isEqualTo(BigDecimal.ZERO);
        assertThat(mix.batch().constituents().get(2).state()).isEqualTo(MoistureState.SSD);
    }

    @Test
    void readsTheColumnsThatMayBeAbsent() {
        Sheet<MixDesign> sheet = mixes(
                MIX_HEADING + ",measured_density,measured_density_unit,wet_sieved,soak_minutes,air_tolerance_pct,"
                        + "profile_id,remarks,plant",
                SAND.replace("1.00,m3", ",") + ",145.2,lb/ft3,yes,20,1.0,en-12350-7,\"with, a comma\",Quay plant");
        assertThat(sheet.problems()).isEmpty();
        MixDesign mix = sheet.values().get(0);
        assertThat(mix.batch().volume())
                .isEqualTo(new BatchVolume.FromDensity(Typed.of("145.2", DensityUnit.POUND_PER_CUBIC_FOOT)));
        assertThat(mix.batch().wetSieved()).isTrue();
        assertThat(mix.soakMinutes()).contains(new BigDecimal("20"));
        assertThat(mix.airTolerancePercent()).contains(new BigDecimal("1.0"));
        assertThat(mix.profileId()).isEqualTo("en-12350-7");
        assertThat(mix.remarks()).isEqualTo("with, a comma");
        assertThat(mix.plant()).contains("Quay plant");
    }

    @Test
    void takesTheVolumeFromTheConstituentsWhenNoneIsStated() {
        assertThat(mixes(MIX_HEADING, SAND.replace("1.00,m3", ","))
                        .values()
                        .get(0)
                        .batch()
                        .volume())
                .isEqualTo(new BatchVolume.FromConstituents());
    }

    @Test
    void refusesAVolumeThatIsStatedTwice() {
        Sheet<MixDesign> sheet =
                mixes(MIX_HEADING + ",measured_density,measured_density_unit", SAND + ",2300,kg/m3", STONE + ",,");
        assertThat(found(sheet)).containsExactly("2:0 mix_id csv.left-out", "2:16 measured_density csv.volume-twice");
    }

    @Test
    void leavesAMixOutWholeForOneBadRowAndKeepsTheOthers() {
        Sheet<MixDesign> sheet =
                mixes(MIX_HEADING, SAND, STONE.replace("1050", "-1050"), CEMENT, SAND.replace("M-1", "M-2"));
        assertThat(said(sheet))
                .containsExactly(
                        "m.csv, line 2: M-1 is left out because of problems in 1 of its 3 rows. Correct those "
                                + "rows.",
                        "m.csv, line 3, column 9: Stone: mass -1050 must not be negative. Correct it.");
        assertThat(sheet.values()).extracting(mix -> mix.id().text()).containsExactly("M-2");
    }

    @Test
    void namesSharedColumnsThatDisagree() {
        Sheet<MixDesign> sheet = mixes(
                MIX_HEADING,
                SAND,
                STONE.replace("M-1,,,,", "M-1,House mix,1.0,m3,6.0"),
                CEMENT.replace("M-1,,", "M-1,Other mix,"));
        assertThat(found(sheet))
                .containsExactly(
                        "2:0 mix_id csv.left-out", "3:5 target_air_pct csv.disagrees", "4:2 mix_title csv.disagrees");
    }

    @Test
    void findsASharedValueInALaterRowWithItsOwnPlace() {
        String late = CEMENT.replace("M-1,,,,", "M-1,,one,m3,5.5");
        Sheet<MixDesign> sheet = mixes(MIX_HEADING, STONE, late);
        assertThat(found(sheet)).containsExactly("2:0 mix_id csv.left-out", "3:3 batch_volume csv.not-a-number");
    }

    @Test
    void namesARowThatStandsTwiceAndGathersRowsThatStandApart() {
        Sheet<MixDesign> sheet =
                mixes(MIX_HEADING, SAND, SAND.replace("M-1", "M-2"), STONE, SAND.replace(",4.0,", ",4.0 ,"));
        assertThat(found(sheet)).containsExactly("2:0 mix_id csv.left-out", "5:6 constituent csv.constituent-twice");
        assertThat(mixes(MIX_HEADING, SAND, SAND.replace("M-1", "M-2"), STONE)
                        .values()
                        .get(0)
                        .batch()
                        .constituents())
                .hasSize(2);
    }

    @Test
    void namesTheConstituentOfEveryBadCell() {
        Sheet<MixDesign> sheet = mixes(
                MIX_HEADING,
                "M-1,t,0,m3,\"5,5\",Sand,fines,S-1,,tons,damp,-1,\"1,2\",heavy,150",
                SAND.replace("M-1", ""));
        assertThat(found(sheet))
                .containsExactly(
                        "2:3 batch_volume mix.volume-not-positive",
                        "2:5 target_air_pct csv.decimal-comma",
                        "2:7 role csv.not-a-choice",
                        "2:9 mass csv.required",
                        "2:10 mass_unit csv.not-a-choice",
                        "2:11 mass_state csv.not-a-choice",
                        "2:12 absorption_pct csv.negative",
                        "2:13 moisture_pct csv.decimal-comma",
                        "2:14 relative_density csv.not-a-number",
                        "2:15 retained_37_5mm_pct csv.out-of-range",
                        "3:1 mix_id csv.required");
        assertThat(said(sheet))
                .contains("m.csv, line 2, column 15: Sand: retained_37_5mm_pct 150 must be from 0 to 100. "
                        + "Correct it.");
    }

    @Test
    void asksForTheStateOfAggregateOnly() {
        assertThat(found(mixes(MIX_HEADING, CEMENT.replace(",,,,,", ",,1,m3,5,"), STONE.replace("oven-dry", ""))))
                .containsExactly("2:0 mix_id csv.left-out", "3:11 mass_state csv.required");
    }

    @Test
    void leavesOutTheMixesBesideARowThatCannotBeRead() {
        String[] ids = {"M-1", "M-2", "M-3", "M-4"};
        String[] lines = new String[10];
        lines[0] = MIX_HEADING;
        for (int mix = 0; mix < 4; mix++) {
            lines[1 + 2 * mix] = SAND.replace("M-1", ids[mix]);
            lines[2 + 2 * mix] = STONE.replace("M-1,,,,", ids[mix] + ",House mix,1.00,m3,5.5");
        }
        lines[9] = "";
        for (String bad : new String[] {"M-3,too,short", SAND.replace("M-1", ""), SAND + "\"", "\"x\"y," + SAND}) {
            String[] broken = lines.clone();
            broken[5] = bad;
            Sheet<MixDesign> sheet = mixes(broken);
            assertThat(found(sheet)).contains("4:0 mix_id csv.left-out-beside", "7:0 mix_id csv.left-out-beside");
            assertThat(sheet.values()).extracting(mix -> mix.id().text()).containsExactly("M-1", "M-4");
        }
        lines[9] = "M-4,too,short";
        assertThat(mixes(lines).values()).extracting(mix -> mix.id().text()).containsExactly("M-1", "M-2", "M-3");
    }

    /** Stone from the heap needs its moisture; here it was stated, and could not be read. */
    @Test
    void aCellThatCannotBeReadIsNotCalledMissingAsWell() {
        String heap = STONE.replace("oven-dry,0.6,", "stock,0.6,");
        assertThat(found(mixes(MIX_HEADING, SAND, heap)))
                .containsExactly("2:0 mix_id csv.left-out", "3:13 moisture_pct mix.stock-moisture-missing");
        assertThat(found(mixes(MIX_HEADING, SAND, heap.replace("0.6,,", "0.6,wet,"))))
                .containsExactly("2:0 mix_id csv.left-out", "3:13 moisture_pct csv.not-a-number");
    }
}

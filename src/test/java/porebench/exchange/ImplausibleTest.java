package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.Kept;

/** What can never be right is refused from a file, at its cell, and all of it at once. */
class ImplausibleTest {
    private static final String MIX = "mix_id,mix_title,batch_volume,batch_volume_unit,target_air_pct,constituent,role,"
            + "source_id,mass,mass_unit,mass_state,absorption_pct,moisture_pct,relative_density,retained_37_5mm_pct\n";

    private static final String METER =
            "meter_id,meter_type,serial,bowl_volume,bowl_volume_unit,division_pct," + "scale_top_pct,in_service\n";

    private static final String TRIAL = "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,"
            + "bowl_volume_unit,fine_mass,coarse_mass,mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,"
            + "gauge_pct,h1_pct,h2_pct,leak,remarks\n";

    private static Sheet<Kept> read(String text) {
        return CsvSheets.records("f.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> found(String text) {
        return read(text).problems().stream().map(ImplausibleTest::place).toList();
    }

    private static String place(Problem problem) {
        assertThat(ProblemText.in(Locale.ENGLISH).say(problem)).doesNotContain("{");
        return problem.place().flatMap(Place::line).orElse(0) + ":"
                + problem.place().flatMap(Place::column).orElse(0) + " " + problem.code();
    }

    @Test
    void everyImpossibleConstituentOfAMixIsNamedAtItsCell() {
        assertThat(found(MIX
                        + "M-1,Plain,1,m3,45,cement,cement,,350,kg,ssd,,,31.5,\n"
                        + "M-1,,,,,sand,fine,S-1,700,kg,ssd,400,,2.65,\n"
                        + "M-1,,,,,stone,coarse,S-2,1050,kg,ssd,0.5,70,26.5,\n"
                        + "M-1,,,,,water,water,,x,kg,,,,,\n"))
                .containsExactly(
                        "2:5 mix.target-air-out-of-range",
                        "2:14 mix.relative-density-out-of-range",
                        "3:12 mix.absorption-out-of-range",
                        "4:13 mix.moisture-out-of-range",
                        "4:14 mix.relative-density-out-of-range",
                        "5:9 csv.not-a-number");
    }

    /** 350 + 185 + 700 + stone in 1 m3: with 3265 kg of stone 4500 kg, with 3266 one more. No relative density is known. */
    @ParameterizedTest
    @CsvSource({"60000, mix.concrete-impossible", "3266, mix.concrete-impossible", "3265, ''"})
    void aCubicMetreHoldsNoMoreThanTheHeaviestConcrete(String stone, String code) {
        List<String> found = found(MIX
                + "M-1,Plain,1,m3,5,cement,cement,,350,kg,ssd,,,,\n"
                + "M-1,,,,,water,water,,185,kg,ssd,,,,\n"
                + "M-1,,,,,sand,fine,S-1,700,kg,ssd,1,,,\n"
                + "M-1,,,,,stone,coarse,S-2," + stone + ",kg,ssd,1,,,\n");
        assertThat(found).isEqualTo(code.isEmpty() ? List.of() : List.of("2:0 csv.left-out", "2:3 " + code));
    }

    @ParameterizedTest
    @CsvSource({
        "1e-16, L, csv.bowl-impossible",
        "100000, m3, csv.bowl-impossible",
        "0.499, L, csv.bowl-impossible",
        "50.1, L, csv.bowl-impossible",
        "0.5, L, ''",
        "50, L, ''"
    })
    void aBowlHoldsFromHalfALitreToFifty(String bowl, String unit, String code) {
        List<String> expected = code.isEmpty() ? List.of() : List.of("2:4 " + code);
        assertThat(found(METER + "B-1,B,77," + bowl + "," + unit + ",0.1,10,yes\n"))
                .isEqualTo(expected);
    }

    @Test
    void aScaleIsLongerThanItsDivision() {
        assertThat(found(METER + "B-1,B,77,7,L,5,4,yes\nB-2,B,77,7,L,11,100,yes\nB-3,B,77,7,L,4,4,yes\n"))
                .containsExactly("2:7 meter.division-beyond-top", "3:6 csv.out-of-range");
    }

    /** The heaviest stone is 8 kg a litre: 7 L of it are 56 kg. */
    @Test
    void everyImpossibleReadingOfATrialIsNamedAtItsCell() {
        String before = "T-1,M-1,2026-06-02T10:00,Ada,PM-1,B,7.00,L,";
        assertThat(found(TRIAL + before + "4900,7350,kg,15,22,350,mL,5.4,,,no,\n"))
                .containsExactly("2:10 trial.sample-exceeds-bowl");
        assertThat(found(TRIAL + before + "50,6.1,kg,15,22,350,mL,5.4,,,no,\n"))
                .containsExactly("2:9 trial.sample-exceeds-bowl");
        assertThat(found(TRIAL + before + "50,6.0,kg,15,22,350,mL,5.4,,,no,\n")).isEmpty();
        assertThat(found(TRIAL + before + "4.9,7.35,kg,20000,440,350,mL,120,,,no,\n"))
                .containsExactly("2:12 csv.out-of-range", "2:13 csv.out-of-range", "2:16 csv.out-of-range");
    }
}

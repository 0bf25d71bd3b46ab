package porebench.exchange;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.ProblemText;
import porebench.record.Kept;

/** Short ways to state a file and to say what was found in it. */
final class CsvText {
    static final String MIX_HEADING = "mix_id,mix_title,batch_volume,batch_volume_unit,target_air_pct,constituent,role,"
            + "source_id,mass,mass_unit,mass_state,absorption_pct,moisture_pct,relative_density,retained_37_5mm_pct";

    static final String TRIAL_HEADING = "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,"
            + "bowl_volume_unit,fine_mass,coarse_mass,mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,"
            + "gauge_pct,h1_pct,h2_pct,leak,remarks";

    static final String TRIAL = "T-1,M-1,2026-03-04T09:30,R. Vane,B-1,B,7.05,L,4500,6800,g,15,21.0,352,mL,5.4,,,no,";

    private CsvText() {}

    static byte[] bytes(String... lines) {
        return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Returns the problems as {@code line:column field code}. */
    static List<String> found(Sheet<?> sheet) {
        return sheet.problems().stream()
                .map(problem -> problem.place().flatMap(Place::line).orElse(0) + ":"
                        + problem.place().flatMap(Place::column).orElse(0) + " " + problem.field() + " "
                        + problem.code())
                .toList();
    }

    static List<String> said(Sheet<?> sheet) {
        return sheet.problems().stream()
                .map(ProblemText.in(Locale.UK)::sayWithPlace)
                .toList();
    }

    static Sheet<Kept> records(String name, byte[] bytes) {
        return CsvSheets.records(name, bytes);
    }
}

package porebench.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small CSV files that tests of the command line write. */
final class LabFiles {
    static final String MIX_COLUMNS = "mix_id,mix_title,batch_volume,batch_volume_unit,target_air_pct,constituent,role,"
            + "source_id,mass,mass_unit,mass_state,absorption_pct,moisture_pct,relative_density,retained_37_5mm_pct\n";

    static final String TRIAL_COLUMNS = "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,"
            + "bowl_volume_unit,fine_mass,coarse_mass,mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,"
            + "gauge_pct,h1_pct,h2_pct,leak,remarks";

    /** One cubic metre of concrete with 700 kg of sand, 1050 kg of stone: in 7 L of it 4.9 kg and 7.35 kg. */
    static final String PLAIN_MIX = MIX_COLUMNS
            + "M-1,Plain,1,m3,5,cement,cement,,350,kg,ssd,,,3.15,\n"
            + "M-1,Plain,1,m3,5,water,water,,185,kg,ssd,,,1,\n"
            + "M-1,Plain,1,m3,5,sand,fine,S-1,700,kg,ssd,1.0,,2.65,\n"
            + "M-1,Plain,1,m3,5,stone,coarse,S-2,1050,kg,ssd,0.5,,2.70,\n";

    private LabFiles() {}

    static Path write(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** A Type B trial in a bowl of 7 L with 350 mL, 5 % of the bowl, withdrawn: G is the reading less 5. */
    static String trial(String id, String mix, int day, String reading, String leak) {
        return "\n" + id + "," + mix + ",2026-06-" + String.format(java.util.Locale.ROOT, "%02d", day)
                + "T10:00,Ada Test,PM-1,B,7.00,L,4.9,7.35,kg,,22,350,mL," + reading + ",,," + leak + ",";
    }
}

package porebench.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Small CSV files that tests of the command line write. */
public final class LabFiles {
    public static final String MIX_COLUMNS =
            "mix_id,mix_title,batch_volume,batch_volume_unit,target_air_pct,constituent,role,"
                    + "source_id,mass,mass_unit,mass_state,absorption_pct,moisture_pct,relative_density,retained_37_5mm_pct\n";

    public static final String TRIAL_COLUMNS = "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,"
            + "bowl_volume_unit,fine_mass,coarse_mass,mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,"
            + "gauge_pct,h1_pct,h2_pct,leak,remarks";

    /** One cubic metre of concrete with 700 kg of sand, 1050 kg of stone: in 7 L of it 4.9 kg and 7.35 kg. */
    public static final String PLAIN_MIX = MIX_COLUMNS
            + "M-1,Plain,1,m3,5,cement,cement,,350,kg,ssd,,,3.15,\n"
            + "M-1,Plain,1,m3,5,water,water,,185,kg,ssd,,,1,\n"
            + "M-1,Plain,1,m3,5,sand,fine,S-1,700,kg,ssd,1.0,,2.65,\n"
            + "M-1,Plain,1,m3,5,stone,coarse,S-2,1050,kg,ssd,0.5,,2.70,\n";

    public static final String SOURCES = "source_id,name,role,place,ledge,relative_density,absorption_pct,remarks\n"
            + "S-1,River sand,fine,Low Pit,lot 1,2.65,1.0,\nS-2,Grey stone,coarse,High Quarry,bench 1,2.70,0.5,\n";

    /** The quarry of S-2 opens another bench. */
    public static final String OTHER_BENCH =
            "source_id,name,role,place,ledge,relative_density,absorption_pct,remarks,step,changed_on,reason\n"
                    + "S-2,Grey stone,coarse,High Quarry,bench 2,2.70,0.5,,changed,2026-06-08,bench 1 is worked out\n";

    public static final String METERS =
            "meter_id,meter_type,serial,bowl_volume,bowl_volume_unit,division_pct,scale_top_pct,"
                    + "in_service,remarks\nPM-1,B,77,7.00,L,0.1,10,yes,\n";

    public static final String THREE_TRIALS = TRIAL_COLUMNS
            + trial("T-1", "M-1", 1, "5.3", "no")
            + trial("T-2", "M-1", 2, "5.4", "no")
            + trial("T-3", "M-1", 3, "5.5", "no");

    private static final String ISSUE_COLUMNS = "mix_id,revision,action,factor_pct,determination_id,meter_type,"
            + "in_force_from,recheck_by,issued_by,approved_by,reason,mix_version,source_versions,profile_id,"
            + "trial_versions,doubts_taken_on\n";

    private static final String NEVER_CALIBRATED = "|trial.meter-never-calibrated|Never calibrated|Bo Check|Bought new";

    private LabFiles() {}

    /** A factor of 0.4 % for the plain mix, on the three trials, whose meter was never calibrated. */
    public static String issue(String inForceFrom, String recheckBy) {
        return ISSUE_COLUMNS + "M-1,1,issued,0.4,M-1/1,B," + inForceFrom + "," + recheckBy
                + ",Ada Test,Bo Check,First factor,1,S-1:1;S-2:1,astm-c231,T-1:1;T-2:1;T-3:1,T-1" + NEVER_CALIBRATED
                + ";T-2"
                + NEVER_CALIBRATED + ";T-3" + NEVER_CALIBRATED + "\n";
    }

    /** Writes sources, a meter, the plain mix and three trials, and begins the lab book {@code lab.book} with them. */
    public static void beginBook(Path folder, Terminal terminal) {
        write(folder, "sources.csv", SOURCES);
        write(folder, "meters.csv", METERS);
        write(folder, "mix.csv", PLAIN_MIX);
        write(folder, "trials.csv", THREE_TRIALS);
        Terminal.Said said = terminal.json(
                "import", "--book", "lab.book", "--new", "sources.csv", "meters.csv", "mix.csv", "trials.csv");
        if (said.status() != 0) {
            throw new AssertionError(said);
        }
    }

    public static Path write(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Mixes like the plain one, numbered from 1. */
    public static String manyMixes(int count) {
        StringBuilder rows = new StringBuilder(MIX_COLUMNS);
        for (int i = 1; i <= count; i++) {
            rows.append(PLAIN_MIX.substring(MIX_COLUMNS.length()).replace("M-1,", "M-" + i + ","));
        }
        return rows.toString();
    }

    /** Trials of mixes with ten each, five a determination, that differ by a division now and then. */
    public static String manyTrials(int count) {
        StringBuilder rows = new StringBuilder(TRIAL_COLUMNS).append(",determination_id");
        for (int i = 0; i < count; i++) {
            String mix = "M-" + (i / 10 + 1);
            rows.append(trial("T-" + i, mix, 1 + i % 5, i % 3 == 0 ? "5.4" : "5.5", "no"))
                    .append(',')
                    .append(mix)
                    .append('/')
                    .append(i % 10 / 5 + 1);
        }
        return rows.append('\n').toString();
    }

    /** A Type B trial in a bowl of 7 L with 350 mL, 5 % of the bowl, withdrawn: G is the reading less 5. */
    public static String trial(String id, String mix, int day, String reading, String leak) {
        return "\n" + id + "," + mix + ",2026-06-" + String.format(Locale.ROOT, "%02d", day)
                + "T10:00,Ada Test,PM-1,B,7.00,L,4.9,7.35,kg,,22,350,mL," + reading + ",,," + leak + ",";
    }
}

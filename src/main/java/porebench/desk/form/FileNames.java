package porebench.desk.form;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Names for files that every usual system takes, made of names that people gave. */
public final class FileNames {
    /** Of the longest name a usual file system takes, in bytes: 255. Room is left for what a program adds. */
    private static final int MOST_BYTES = 180;

    private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{M}\\p{N}._-]+");
    private static final Pattern ENDS = Pattern.compile("^[.-]+|[. -]+$");

    /** Names of devices, with or without an ending, that Windows takes for no file. Source: Microsoft's page on naming files; recalled. */
    private static final Pattern DEVICE =
            Pattern.compile("(?i)(con|prn|aux|nul|com[0-9\u00b9\u00b2\u00b3]|lpt[0-9\u00b9\u00b2\u00b3])(\\..*)?");

    private FileNames() {}

    /** Returns a name as part of the name of a file: letters and digits of any script, points, hyphens and low lines stay. */
    public static String part(String name) {
        String plain =
                OTHER.matcher(Normalizer.normalize(name, Normalizer.Form.NFC)).replaceAll("-");
        return ENDS.matcher(plain).replaceAll("");
    }

    /**
     * Returns a whole name, with its ending, as every system takes it: not the name of a device, without a point or a hyphen at its
     * ends, and not too long.
     */
    public static String safe(String name) {
        int dot = name.lastIndexOf('.');
        String ending = dot < 0 ? "" : "." + part(name.substring(dot + 1));
        String stem = part(dot < 0 ? name : name.substring(0, dot));
        while (stem.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            stem = stem.substring(0, stem.offsetByCodePoints(stem.length(), -1));
        }
        stem = ENDS.matcher(stem).replaceAll("");
        String whole = (stem.isEmpty() ? "porebench" : stem) + (ending.equals(".") ? "" : ending);
        return DEVICE.matcher(whole).matches() ? "_" + whole : whole;
    }

    /** Returns a whole name with a day before its ending, unless the day stands in it already. */
    public static String dated(String name, LocalDate day) {
        String words = Days.show(day);
        if (name.contains(words)) {
            return safe(name);
        }
        int dot = name.lastIndexOf('.');
        return safe(dot < 0 ? name + "-" + words : name.substring(0, dot) + "-" + words + name.substring(dot));
    }
}

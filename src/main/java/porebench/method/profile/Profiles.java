package porebench.method.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;

/**
 * The profiles of named standards that come with the program, read from data files beside this class.
 *
 * <p>A figure's line is {@code key = value | mark | clause}.
 */
public final class Profiles {
    /** The profile used where nobody chose one. */
    public static final String DEFAULT_ID = "astm-c231";

    private static final List<String> IDS = List.of(DEFAULT_ID, "aashto-t152", "en-12350-7", "jis-a1128");

    /** Those read so far: most of what is asked for needs one. */
    private static final Map<String, Profile> READ = new ConcurrentHashMap<>();

    private Profiles() {}

    /** Returns the profiles of the named standards, the default one first. */
    public static List<Profile> named() {
        return IDS.stream().map(Profiles::known).toList();
    }

    /** Returns the profile of a named standard, if there is one with this id. */
    public static Optional<Profile> find(String id) {
        return IDS.contains(id) ? Optional.of(known(id)) : Optional.empty();
    }

    /** Returns the default profile. */
    public static Profile standard() {
        return known(DEFAULT_ID);
    }

    private static Profile known(String id) {
        return READ.computeIfAbsent(id, Profiles::read);
    }

    /** Reads the profile that comes with the program under this id. */
    static Profile read(String id) {
        try (InputStream stream = Profiles.class.getResourceAsStream(id + ".properties")) {
            if (stream == null) {
                throw new IllegalArgumentException("id must be a profile that comes with the program, but is " + id);
            }
            return parse(id, new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException("reading the profile " + id, failure);
        }
    }

    /** Reads the lines of a profile; what is missing or wrong in them is an {@link IllegalArgumentException}. */
    static Profile parse(String id, Reader lines) throws IOException {
        Properties data = new Properties();
        data.load(lines);
        Map<FigureName, Figure> figures = new EnumMap<>(FigureName.class);
        for (FigureName name : FigureName.values()) {
            figures.put(name, figure(id, name.symbol(), data.getProperty(name.symbol(), "")));
        }
        return new Profile(
                id, data.getProperty("title", ""), data.getProperty("edition", ""), Optional.empty(), figures);
    }

    private static Figure figure(String id, String key, String line) {
        String[] parts = line.split("\\|", 3);
        if (parts.length != 3) {
            throw new IllegalArgumentException(
                    id + ": " + key + " must be written value | mark | clause, but is \"" + line + "\"");
        }
        String word = parts[1].strip();
        Mark mark = List.of(Mark.values()).stream()
                .filter(m -> m.symbol().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        id + ": the mark of " + key + " must be one of the four, but is \"" + word + "\""));
        return new Figure(parts[0].strip(), parts[2].strip(), mark);
    }
}

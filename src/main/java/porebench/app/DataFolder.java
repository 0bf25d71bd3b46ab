package porebench.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The folder in which this user's programs keep their data.
 *
 * @param folder Porebench's own folder in it
 */
record DataFolder(Path folder) {
    private static final String NAME = "Porebench";

    /**
     * Returns the folder by the custom of the system: {@code %APPDATA%} on Windows, {@code ~/Library/Application Support} on
     * macOS, and elsewhere {@code $XDG_DATA_HOME} or {@code ~/.local/share}.
     *
     * @param environment the environment variables
     * @param system the name of the operating system, as Java's property {@code os.name} gives it
     * @param home the user's home folder
     */
    static DataFolder of(Map<String, String> environment, String system, Path home) {
        String lower = system.toLowerCase(Locale.ROOT);
        if (lower.startsWith("windows")) {
            Path roaming =
                    absolute(environment.get("APPDATA"), home.resolve("AppData").resolve("Roaming"));
            return new DataFolder(roaming.resolve(NAME));
        }
        if (lower.startsWith("mac")) {
            return new DataFolder(
                    home.resolve("Library").resolve("Application Support").resolve(NAME));
        }
        Path data = absolute(
                environment.get("XDG_DATA_HOME"), home.resolve(".local").resolve("share"));
        return new DataFolder(data.resolve(NAME.toLowerCase(Locale.ROOT)));
    }

    /** The XDG base directory specification asks to pass over a relative path. */
    private static Path absolute(@Nullable String given, Path otherwise) {
        return given != null && Path.of(given).isAbsolute() ? Path.of(given) : otherwise;
    }

    /** Returns the demo lab book. */
    Path demoBook() {
        return folder.resolve("demo.porebench");
    }

    /** Returns the folder for cards printed without a window. */
    Path cards() {
        return folder.resolve("cards");
    }
}

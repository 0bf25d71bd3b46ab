package porebench.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The folders in which this user's programs keep their data and their logs.
 *
 * @param folder Porebench's own folder for data
 * @param logs Porebench's own folder for logs
 */
record DataFolder(Path folder, Path logs) {
    private static final String NAME = "Porebench";

    /**
     * Returns the folders by the custom of the system: {@code %APPDATA%} and {@code %LOCALAPPDATA%} on Windows,
     * {@code ~/Library/Application Support} and {@code ~/Library/Logs} on macOS, and elsewhere {@code $XDG_DATA_HOME} or
     * {@code ~/.local/share}, and {@code $XDG_STATE_HOME} or {@code ~/.local/state}.
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
            Path local = absolute(
                    environment.get("LOCALAPPDATA"), home.resolve("AppData").resolve("Local"));
            return new DataFolder(roaming.resolve(NAME), local.resolve(NAME).resolve("logs"));
        }
        if (lower.startsWith("mac")) {
            Path library = home.resolve("Library");
            return new DataFolder(
                    library.resolve("Application Support").resolve(NAME),
                    library.resolve("Logs").resolve(NAME));
        }
        Path data = absolute(
                environment.get("XDG_DATA_HOME"), home.resolve(".local").resolve("share"));
        Path state = absolute(
                environment.get("XDG_STATE_HOME"), home.resolve(".local").resolve("state"));
        String name = NAME.toLowerCase(Locale.ROOT);
        return new DataFolder(data.resolve(name), state.resolve(name));
    }

    /** The XDG base directory specification asks to pass over a relative path. */
    private static Path absolute(@Nullable String given, Path otherwise) {
        return given != null && Path.of(given).isAbsolute() ? Path.of(given) : otherwise;
    }

    /** Returns the demo lab book. */
    Path demoBook() {
        return folder.resolve("demo.porebench");
    }

    /** Returns the folder for what is typed and not saved yet. */
    Path drafts() {
        return folder.resolve("drafts");
    }

    /** Returns the folder for cards printed without a window. */
    Path cards() {
        return folder.resolve("cards");
    }
}

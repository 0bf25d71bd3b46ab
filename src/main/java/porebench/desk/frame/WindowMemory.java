package porebench.desk.frame;

import java.awt.Dimension;
import java.awt.Toolkit;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.Settings;
import porebench.desk.form.Motion;
import porebench.desk.form.UnitSystem;

/** What the window remembers of one person, in words that can be read back; nonsense is read as nothing remembered. */
final class WindowMemory {
    private static final int KEPT_FILES = 8;
    private static final int LEAST_WIDTH = 640;
    private static final int LEAST_HEIGHT = 480;
    private static final int MOST = 20000;

    private final Settings settings;

    WindowMemory(Settings settings) {
        this.settings = settings;
    }

    Settings settings() {
        return settings;
    }

    Theme theme() {
        return Theme.ofSymbol(settings.get("theme", ""));
    }

    void remember(Theme theme) {
        settings.put("theme", theme.symbol());
    }

    TypeSize typeSize() {
        return TypeSize.ofSymbol(settings.get("typeSize", ""));
    }

    void remember(TypeSize size) {
        settings.put("typeSize", size.symbol());
    }

    /** Returns whether things keep still: what the person said, and before they said anything what the system says. */
    boolean isStill() {
        String said = settings.get("still", "");
        return said.isEmpty()
                ? Motion.isUnwanted(Toolkit.getDefaultToolkit().getDesktopProperty(Motion.GNOME))
                : said.equals("yes");
    }

    void rememberStill(boolean still) {
        settings.put("still", still ? "yes" : "no");
    }

    Language language() {
        return Language.ofSymbol(settings.get("language", ""));
    }

    void remember(Language language) {
        settings.put("language", language.symbol());
    }

    UnitSystem units() {
        return Arrays.stream(UnitSystem.values())
                .filter(units -> units.name().equals(settings.get("units", "")))
                .findFirst()
                .orElse(UnitSystem.SI);
    }

    void remember(UnitSystem units) {
        settings.put("units", units.name());
    }

    String person() {
        return settings.get("person", "");
    }

    void rememberPerson(String person) {
        settings.put("person", person);
    }

    String page() {
        return settings.get("page", "");
    }

    void rememberPage(String name) {
        settings.put("page", name);
    }

    String mix() {
        return settings.get("mix", "");
    }

    void rememberMix(String id) {
        settings.put("mix", id);
    }

    /** Returns the size of the window's last day, or another one. */
    Dimension size(Dimension otherwise) {
        int width = number("width", 0);
        int height = number("height", 0);
        return width >= LEAST_WIDTH && height >= LEAST_HEIGHT && width <= MOST && height <= MOST
                ? new Dimension(width, height)
                : otherwise;
    }

    void remember(Dimension size) {
        settings.put("width", Integer.toString(size.width));
        settings.put("height", Integer.toString(size.height));
    }

    private int number(String key, int otherwise) {
        try {
            return Integer.parseInt(settings.get(key, ""));
        } catch (NumberFormatException notANumber) {
            return otherwise;
        }
    }

    /** Returns the lab books opened last, the newest first. */
    List<Path> recentFiles() {
        List<Path> files = new ArrayList<>();
        for (String line : settings.get("recent", "").split("\n", -1)) {
            if (!line.isBlank()) {
                try {
                    files.add(Path.of(line));
                } catch (InvalidPathException nonsense) {
                    // A name of another system: it cannot be opened here, so it is not offered.
                    continue;
                }
            }
        }
        return files;
    }

    /** Returns the lab book used last, whether it is still there or not; empty when none was. */
    Optional<Path> lastFile() {
        return recentFiles().stream().findFirst();
    }

    void rememberFile(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        List<Path> files = new ArrayList<>(recentFiles());
        files.remove(whole);
        files.add(0, whole);
        settings.put(
                "recent", files.stream().limit(KEPT_FILES).map(Path::toString).collect(Collectors.joining("\n")));
    }

    void forgetFile(Path file) {
        List<Path> files = new ArrayList<>(recentFiles());
        files.remove(file.toAbsolutePath().normalize());
        settings.put("recent", files.stream().map(Path::toString).collect(Collectors.joining("\n")));
    }
}

package porebench.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import java.util.logging.Level;
import java.util.logging.Logger;
import porebench.command.DemoRun;
import porebench.command.PorebenchCommands;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.desk.Settings;
import porebench.desk.frame.DrawnPages;
import porebench.desk.frame.Outside;
import porebench.desk.frame.book.InventedBooks;
import porebench.exchange.PracticeLaboratory;
import porebench.port.DraftStore;
import porebench.port.SerialLines;

/**
 * A start that nobody sees, by which the build learns which classes a start needs: some commands on the demo's lab book, and
 * its pages drawn. Needs no display.
 */
final class Rehearsal {
    private static final Instant DAY = Instant.parse("2026-11-25T09:00:00Z");

    private static final String BOOK = "demo.porebench";
    private static final String CLASS = ".class";

    private Rehearsal() {}

    /**
     * Runs it.
     *
     * @param arguments the file that names the classes of the JDK that only a display brings, the folder of the demo's CSV
     *     files, and a folder to work in
     */
    public static void main(String[] arguments) throws IOException {
        load(Files.readAllLines(Path.of(arguments[0]), StandardCharsets.UTF_8));
        load(own());
        Path folder = Files.createDirectories(Path.of(arguments[2]));
        Files.deleteIfExists(folder.resolve(BOOK));
        int refused = run(Path.of(arguments[1]).toAbsolutePath(), folder);
        if (refused != 0) {
            throw new IllegalStateException("the rehearsal must be done in full, but is refused: " + refused);
        }
    }

    /** Loads classes by their names; one that this JDK does not have is not needed by it. Returns how many there are. */
    static int load(List<String> names) {
        int loaded = 0;
        for (String name : names) {
            try {
                Class.forName(name, false, Rehearsal.class.getClassLoader());
                loaded++;
            } catch (ClassNotFoundException | LinkageError elsewhere) {
                Logger.getLogger(Rehearsal.class.getName()).log(Level.FINE, name, elsewhere);
            }
        }
        return loaded;
    }

    /** Returns the names of all classes of the program, which stand in a jar. */
    private static List<String> own() throws IOException {
        URL jar = Rehearsal.class.getProtectionDomain().getCodeSource().getLocation();
        try (JarInputStream entries = new JarInputStream(jar.openStream())) {
            List<String> names = new ArrayList<>();
            for (JarEntry entry = entries.getNextJarEntry(); entry != null; entry = entries.getNextJarEntry()) {
                String name = entry.getName();
                if (name.endsWith(CLASS) && !name.endsWith("-info" + CLASS)) {
                    names.add(name.substring(0, name.length() - CLASS.length()).replace('/', '.'));
                }
            }
            return names;
        }
    }

    /** Runs some commands and draws the window; returns 0 when all was done and drawn. */
    static int run(Path demoData, Path folder) {
        Clock clock = Clock.fixed(DAY, ZoneOffset.UTC);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Machine here = new Machine(
                clock,
                ZoneOffset.UTC,
                Locale.ENGLISH,
                nowhere,
                nowhere,
                folder,
                "Porebench",
                Optional::empty,
                Optional.empty());
        Ports ports = Porebench.ports(clock, ZoneOffset.UTC);
        PorebenchCommands commands = new PorebenchCommands(here, ports);
        String book = folder.resolve(BOOK).toString();
        String trials = demoData.resolve("trial-sheet.csv").toString();
        int status = commands.run("demo", "--book", book)
                + commands.run("air", "--reading", "5.4", "--factor", "0.4")
                + commands.run("air", "--reading", "5.4", "--factor", "0.4", "--json")
                + commands.run("factor", "--trials", trials, "--mix-id", "HG-108")
                + commands.run("register", "--book", book, "--json");
        int drawn = DrawnPages.draw(
                new Outside(
                        ports.shelf().get(),
                        ports.sheets().get(),
                        ports.press().get(),
                        clock,
                        ZoneOffset.UTC,
                        Locale.ENGLISH,
                        Settings.inMemory(),
                        DraftStore.none(),
                        new InventedBooks(
                                Path.of(book),
                                file -> new DemoRun(here, ports).makeBook(file),
                                new PracticeLaboratory()),
                        Optional::empty,
                        SerialLines.none()),
                Path.of(book));
        return drawn > 0 ? status : status + 1;
    }
}

package porebench.store;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.LabBook;
import porebench.record.id.SourceId;
import porebench.store.file.StoreException;

/** Another program on the same machine: what one process alone cannot show is tried with a second one. */
public final class OtherProgram {
    private OtherProgram() {}

    /** Starts a program of its own on the same classes, a small and quick one. */
    public static Process start(Class<?> main, String... arguments) throws IOException {
        return new ProcessBuilder(command(main, arguments))
                .redirectErrorStream(true)
                .start();
    }

    /** Starts it where no file may grow beyond some MiB. */
    static Process startWithSmallFiles(int mebibytes, Class<?> main, String... arguments) throws IOException {
        List<String> shell =
                new ArrayList<>(List.of("sh", "-c", "ulimit -f " + mebibytes * 2048 + " && exec \"$@\"", "sh"));
        shell.addAll(command(main, arguments));
        return new ProcessBuilder(shell).redirectErrorStream(true).start();
    }

    private static List<String> command(Class<?> main, String... arguments) {
        String java = System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
        String classes = System.getProperty("java.class.path");
        return Stream.concat(
                        Stream.of(
                                java,
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-XX:-UsePerfData",
                                "-Xmx256m",
                                "-cp",
                                classes,
                                main.getName()),
                        Arrays.stream(arguments))
                .toList();
    }

    /** Returns what it said, once it has ended by itself. */
    static List<String> said(Process program) throws IOException {
        try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
            return lines.lines().toList();
        }
    }

    /** Opens and closes a lab book as any program does, holds it open, fills it, or is killed while one is begun. */
    public static void main(String[] arguments) throws SQLException, IOException {
        Path file = Path.of(arguments[1]);
        switch (arguments[0]) {
            case "touch" -> touch(file);
            case "hold" -> hold(file);
            case "fill" -> fill(file);
            case "begin" -> begin(file);
            default -> throw new IllegalArgumentException(arguments[0]);
        }
    }

    private static void touch(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            connection
                    .createStatement()
                    .executeQuery("SELECT count(*) FROM entry")
                    .close();
        }
        System.out.println("touched");
    }

    private static void hold(Path file) throws IOException {
        try (LabBook book = Books.SHELF.open(file)) {
            System.out.println("holding " + book.changeNumber());
            System.in.read();
        }
    }

    private static void fill(Path file) {
        try (LabBook book = Books.SHELF.open(file)) {
            for (int batch = 0; batch < 100; batch++) {
                int first = batch * 100;
                List<Kept> sources = IntStream.range(first, first + 100)
                        .mapToObj(number -> (Kept) new Source(
                                new SourceId("F-" + number),
                                "Sand",
                                Role.FINE,
                                "Pit",
                                "Ledge",
                                Optional.empty(),
                                Optional.empty(),
                                "note ".repeat(600)))
                        .collect(Collectors.toList());
                Books.keep(book, sources);
                System.out.println("kept " + (first + 100));
            }
        } catch (StoreException failure) {
            System.out.println(failure.getMessage());
        }
    }

    private static void begin(Path file) {
        Books.SHELF.create(file, book -> {
            Books.keep(book, Samples.full());
            Runtime.getRuntime().halt(9);
            return true;
        });
    }
}

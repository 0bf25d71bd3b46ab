package porebench.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ProgressLine;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoLaboratory;
import porebench.print.PdfPress;
import porebench.store.SqliteShelf;

/** Starts Porebench: a command with its arguments, or the window. */
public final class Porebench {
    private static final String NAME = "Porebench";
    private static final long LOG_BYTES = 512 * 1024;

    private Porebench() {}

    public static void main(String[] arguments) {
        int status = start().run(arguments);
        if (status != 0) {
            System.exit(status);
        }
    }

    private static Start start() {
        Clock clock = Clock.systemUTC();
        ZoneId zone = ZoneId.systemDefault();
        DataFolder data = DataFolder.of(
                System.getenv(), System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", "")));
        LogFile log = new LogFile(data.logs(), LOG_BYTES);
        log.listen();
        Machine here = new Machine(
                clock,
                zone,
                locale(),
                System.out,
                System.err,
                Path.of("").toAbsolutePath(),
                user(),
                log::file,
                terminal());
        // Not method references: those would load the classes of the window for a command that needs none.
        return new Start(
                here,
                ports(clock, zone),
                data,
                () -> Display.isThere(),
                (where, ports, folder, book) -> WorkbenchWindow.open(where, ports, folder, book));
    }

    private static Locale locale() {
        return ReaderLanguage.of(System.getenv(), Locale.getDefault());
    }

    /** Returns the line that says how far a command is; none where answers do not go to a terminal. Problems may go to a file. */
    private static Optional<ProgressLine> terminal() {
        return Optional.ofNullable(System.console())
                .map(console -> new ProgressLine(System.out, locale(), System::nanoTime));
    }

    static Ports ports(Clock clock, ZoneId zone) {
        return new Ports(
                CsvSheets::new,
                () -> {
                    QuietLogs.keep();
                    return new SqliteShelf(clock.withZone(ZoneId.systemDefault()));
                },
                () -> {
                    QuietLogs.keep();
                    return new PdfPress(NAME, clock, zone);
                },
                DemoLaboratory::new);
    }

    private static String user() {
        String name = System.getProperty("user.name", "");
        return name.isBlank() ? NAME : name;
    }
}

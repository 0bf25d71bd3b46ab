package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoLaboratory;
import porebench.exchange.DemoYear;
import porebench.port.DemoBook;
import porebench.port.LabBookShelf;
import porebench.print.PdfPress;
import porebench.store.SqliteShelf;

/** A terminal in a folder, on 1 July 2026 unless another day is given, with the real lab books, sheets and paper behind the commands. */
public final class Terminal {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-07-01T09:30:00Z"), ZoneOffset.UTC);

    private final Path folder;
    private final Clock clock;
    private final Locale locale;
    private final Supplier<? extends DemoBook> demo;

    public Terminal(Path folder) {
        this(folder, CLOCK);
    }

    public Terminal(Path folder, Clock clock) {
        this(folder, clock, Locale.ENGLISH, DemoYear::new);
    }

    private Terminal(Path folder, Clock clock, Locale locale, Supplier<? extends DemoBook> demo) {
        this.folder = folder;
        this.clock = clock;
        this.locale = locale;
        this.demo = demo;
    }

    /** Returns a terminal with the whole demo laboratory of the product, where the others have its first year. */
    public Terminal withTheWholeDemo() {
        return new Terminal(folder, clock, locale, DemoLaboratory::new);
    }

    /** Returns a terminal on a machine of another language. */
    public Terminal in(Locale other) {
        return new Terminal(folder, clock, other, demo);
    }

    /** Returns a terminal on another day. */
    public Terminal on(String day) {
        return new Terminal(
                folder, Clock.fixed(Instant.parse(day + "T09:30:00Z"), ZoneOffset.UTC), Locale.ENGLISH, demo);
    }

    /** What a command said, and its exit status. */
    public record Said(int status, String out, String err) {
        public Map<String, Object> json() {
            return JsonReading.object(out);
        }

        @SuppressWarnings("unchecked")
        public List<Map<String, Object>> list(String name) {
            return (List<Map<String, Object>>) json().get(name);
        }

        public List<Object> codes() {
            return list("problems").stream().map(problem -> problem.get("code")).toList();
        }
    }

    public Said run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new PorebenchCommands(surroundings(out, err), ports()).run(arguments);
        return said(status, out, err, arguments);
    }

    /** Whatever a test runs, an answer in JSON is as its schema says. */
    private static Said said(int status, ByteArrayOutputStream out, ByteArrayOutputStream err, String... arguments) {
        Said said = new Said(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        if (List.of(arguments).contains("--json") && !said.out().isEmpty()) {
            assertThat(AnswerSchemas.faults(arguments[0], said.out()))
                    .as("what " + arguments[0] + ".schema.json does not say: " + said.out())
                    .isEmpty();
        }
        return said;
    }

    /** Runs a command whose answer goes to a stream that may fail. */
    public Said runInto(OutputStream out, String... arguments) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new PorebenchCommands(surroundings(out, err), ports()).run(arguments);
        return new Said(status, "", err.toString(StandardCharsets.UTF_8));
    }

    public Said json(String... arguments) {
        return run(Stream.concat(Arrays.stream(arguments), Stream.of("--json")).toArray(String[]::new));
    }

    /** Runs a command on lab books from another shelf. */
    public Said on(LabBookShelf shelf, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Ports ports = new Ports(ports().sheets(), () -> shelf, ports().press(), ports().demo());
        int status = new PorebenchCommands(surroundings(out, err), ports).run(arguments);
        return said(status, out, err, arguments);
    }

    public Said demoRun(Path book, Path cards) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new DemoRun(surroundings(out, err), ports()).run(book, cards);
        return new Said(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    public CommandLine commandLine() {
        return new PorebenchCommands(surroundings(new ByteArrayOutputStream(), new ByteArrayOutputStream()), ports())
                .commandLine();
    }

    private Machine surroundings(OutputStream out, OutputStream err) {
        return new Machine(
                clock,
                ZoneOffset.UTC,
                locale,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder,
                "Ada Test",
                Optional::empty,
                Optional.empty());
    }

    private Ports ports() {
        return new Ports(
                CsvSheets::new,
                () -> new SqliteShelf(clock),
                () -> new PdfPress("Porebench", clock, ZoneOffset.UTC),
                demo);
    }
}

package porebench.command;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import porebench.command.bench.AirCommand;
import porebench.command.bench.BowlCommand;
import porebench.command.bench.BudgetCommand;
import porebench.command.bench.FactorCommand;
import porebench.command.bench.ForecastCommand;
import porebench.command.bench.MeterCommand;
import porebench.command.bench.RiskCommand;
import porebench.command.bench.SampleCommand;
import porebench.command.bench.SimulateCommand;
import porebench.command.book.BackupCommand;
import porebench.command.book.CardCheckCommand;
import porebench.command.book.CardCommand;
import porebench.command.book.CardsCommand;
import porebench.command.book.DemoCommand;
import porebench.command.book.ExportCommand;
import porebench.command.book.FieldSheetCommand;
import porebench.command.book.GroupCommand;
import porebench.command.book.ImportCommand;
import porebench.command.book.IssueCommand;
import porebench.command.book.PageCommand;
import porebench.command.book.PageReadingsCommand;
import porebench.command.book.PhotoCommand;
import porebench.command.book.PlanCommand;
import porebench.command.book.ReadingsCommand;
import porebench.command.book.RecallCommand;
import porebench.command.book.RegisterCommand;
import porebench.command.book.RestoreCommand;
import porebench.command.book.SchemaCommand;
import porebench.command.book.SourceCommand;
import porebench.command.book.VerifyCommand;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Failures;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.Reply;
import porebench.command.study.ChartCommand;
import porebench.command.study.CompareCommand;
import porebench.command.study.ComponentsCommand;
import porebench.command.study.GaugeStudyCommand;
import porebench.command.study.HoldsCommand;
import porebench.command.study.InterlabCommand;
import porebench.command.study.StatsCommand;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.port.Release;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Spelling;
import porebench.quantity.Temperature;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Unit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.PhotoId;
import porebench.record.id.SourceId;
import porebench.record.id.StudyId;
import porebench.record.id.TrialId;

/**
 * The command line of Porebench.
 *
 * <p>Exit status: 0 done, 1 refused with the problems said, 2 wrong usage with the reason on standard error.
 */
public final class PorebenchCommands {
    /** All commands, in the order in which the help lists them. */
    private static final Map<String, BiFunction<Machine, Ports, OneCommand>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("sample", SampleCommand::new);
        COMMANDS.put("factor", FactorCommand::new);
        COMMANDS.put("air", AirCommand::new);
        COMMANDS.put("bowl", BowlCommand::new);
        COMMANDS.put("meter", MeterCommand::new);
        COMMANDS.put("simulate", SimulateCommand::new);
        COMMANDS.put("stats", StatsCommand::new);
        COMMANDS.put("chart", ChartCommand::new);
        COMMANDS.put("compare", CompareCommand::new);
        COMMANDS.put("risk", RiskCommand::new);
        COMMANDS.put("holds", HoldsCommand::new);
        COMMANDS.put("interlab", InterlabCommand::new);
        COMMANDS.put("budget", BudgetCommand::new);
        COMMANDS.put("gauge-study", GaugeStudyCommand::new);
        COMMANDS.put("components", ComponentsCommand::new);
        COMMANDS.put("forecast", ForecastCommand::new);
        COMMANDS.put("issue", IssueCommand::new);
        COMMANDS.put("card", CardCommand::new);
        COMMANDS.put("cards", CardsCommand::new);
        COMMANDS.put("field-sheet", FieldSheetCommand::new);
        COMMANDS.put("page", PageCommand::new);
        COMMANDS.put("page-readings", PageReadingsCommand::new);
        COMMANDS.put("card-check", CardCheckCommand::new);
        COMMANDS.put("photo", PhotoCommand::new);
        COMMANDS.put("source", SourceCommand::new);
        COMMANDS.put("group", GroupCommand::new);
        COMMANDS.put("register", RegisterCommand::new);
        COMMANDS.put("plan", PlanCommand::new);
        COMMANDS.put("recall", RecallCommand::new);
        COMMANDS.put("readings", ReadingsCommand::new);
        COMMANDS.put("import", ImportCommand::new);
        COMMANDS.put("export", ExportCommand::new);
        COMMANDS.put("schema", (here, ports) -> new SchemaCommand(here, ports, COMMANDS.keySet()));
        COMMANDS.put("restore", RestoreCommand::new);
        COMMANDS.put("verify", VerifyCommand::new);
        COMMANDS.put("backup", BackupCommand::new);
        COMMANDS.put("demo", DemoCommand::new);
        COMMANDS.put("completion", CompletionCommand::new);
    }

    private final Machine here;
    private final Ports ports;
    private final Texts words;

    public PorebenchCommands(Machine here, Ports ports) {
        this.here = here;
        this.ports = ports;
        this.words = here.words();
    }

    @Command(name = "porebench")
    private static final class Root {
        @Option(
                names = {"-h", "--help"},
                usageHelp = true)
        private boolean help;

        @Option(
                names = {"-V", "--version"},
                versionHelp = true)
        private boolean version;
    }

    /** Runs the command that some arguments name and returns the exit status. */
    public int run(String... arguments) {
        boolean isKnown = arguments.length > 0 && COMMANDS.containsKey(arguments[0]);
        // The others would be made in vain, which is most of what a small command takes.
        Set<String> needed = isKnown ? Set.of(arguments[0]) : COMMANDS.keySet();
        return Reply.delivered(here, commandLine(needed).execute(arguments));
    }

    /** Says why the program could not start, and where the details stand; returns the exit status. */
    public int couldNotStart(RuntimeException failure) {
        return new Reply(here)
                .say(
                        CommandOutcome.failed(OneCommand.failed(failure, here.locale()), Failures.log(failure, here)),
                        false);
    }

    /** Says that without a display the window cannot open a lab book; returns the exit status. */
    public int noDisplay(Path book) {
        return new Reply(here)
                .say(CommandOutcome.refused(Problem.error("display", "command.no-display", book.toString())), false);
    }

    CommandLine commandLine() {
        return commandLine(COMMANDS.keySet());
    }

    private CommandLine commandLine(Set<String> commands) {
        CommandLine line = new CommandLine(new Root());
        commands.forEach(name -> line.addSubcommand(
                name, Objects.requireNonNull(COMMANDS.get(name)).apply(here, ports)));
        line.registerConverter(Volume.class, quantity(VolumeUnit.values()));
        line.registerConverter(Mass.class, quantity(MassUnit.values()));
        line.registerConverter(Temperature.class, quantity(TemperatureUnit.values()));
        line.registerConverter(
                BigDecimal.class, text -> Typed.parseNumber(text).orElseThrow(wrong("usage.number", text)));
        line.registerConverter(Path.class, this::path);
        line.registerConverter(LocalDate.class, this::date);
        line.registerConverter(MixId.class, id(MixId::new));
        line.registerConverter(MeterId.class, id(MeterId::new));
        line.registerConverter(SourceId.class, id(SourceId::new));
        line.registerConverter(GroupId.class, id(GroupId::new));
        line.registerConverter(StudyId.class, id(StudyId::new));
        line.registerConverter(TrialId.class, id(TrialId::new));
        line.registerConverter(PhotoId.class, id(PhotoId::new));
        line.registerConverter(ChangeDecisionId.class, id(ChangeDecisionId::new));
        line.registerConverter(DeterminationId.class, id(DeterminationId::new));
        WordChoices.register(line, words);
        line.setResourceBundle(new HelpTexts(here.locale()));
        line.getCommandSpec().version(version());
        line.getCommandSpec().usageMessage().footer("", version()[0]);
        line.setOut(writer(here.out()));
        line.setErr(writer(here.err()));
        line.setParameterExceptionHandler(this::wrongUsage);
        return line;
    }

    /** Returns the version of the program, and what it runs on. */
    private String[] version() {
        return new String[] {
            "Porebench " + Release.version().orElse(words.get("usage.from-sources")),
            "Java " + System.getProperty("java.version", "") + ", " + System.getProperty("java.vendor", ""),
            System.getProperty("os.name", "") + " " + System.getProperty("os.version", "") + ", "
                    + System.getProperty("os.arch", "")
        };
    }

    private int wrongUsage(ParameterException failure, String[] arguments) {
        here.err().println(reason(failure));
        here.err()
                .println(words.get(
                        "usage.see-help",
                        failure.getCommandLine().getCommandSpec().qualifiedName()));
        here.err().flush();
        return Reply.WRONG_USAGE;
    }

    /** Says wrong usage in the person's language; the library of the command line has English only. */
    private String reason(ParameterException failure) {
        String message = String.valueOf(failure.getMessage());
        if (failure instanceof MissingParameterException) {
            // Which of a group of options are missing only the message says.
            String key = message.contains("one of these") ? "usage.missing-one" : "usage.missing";
            return words.get(key, after(after(message, "Error: "), ": "));
        }
        if (failure instanceof UnmatchedArgumentException unknown) {
            return words.get("usage.unknown", String.join(" ", unknown.getUnmatched()));
        }
        String before = "Invalid value for ";
        if (failure.getArgSpec() instanceof OptionSpec option
                && message.startsWith(before)
                && message.contains("': ")) {
            return words.get("usage.invalid", option.longestName(), after(message, "': "));
        }
        return message;
    }

    private static String after(String message, String mark) {
        int found = message.indexOf(mark);
        return found < 0 ? message : message.substring(found + mark.length());
    }

    private <Q> ITypeConverter<Q> quantity(Unit<Q>[] units) {
        List<Unit<Q>> allowed = Arrays.asList(units);
        return text -> Typed.parse(text, allowed).map(Typed::value).orElseThrow(wrongHalf(text, allowed, units));
    }

    /** Says of a refused quantity whether its number or its unit is wrong. */
    private <Q> Supplier<TypeConversionException> wrongHalf(String text, List<Unit<Q>> allowed, Unit<Q>[] units) {
        Spelling.Halves halves = Spelling.halves(text);
        String symbols = Typed.symbols(units);
        if (halves.unit().isEmpty() || halves.number().isEmpty()) {
            return wrong("usage.quantity", text, symbols);
        }
        return Typed.parseUnit(halves.unit(), allowed).isEmpty()
                ? wrong("usage.quantity-unit", text, halves.unit(), symbols)
                : wrong("usage.quantity-number", text, halves.number());
    }

    private Path path(String text) {
        try {
            return here.folder().resolve(text).normalize();
        } catch (InvalidPathException unusable) {
            throw new TypeConversionException(words.get("usage.path", text, unusable.getReason()));
        }
    }

    private LocalDate date(String text) {
        try {
            LocalDate day = LocalDate.parse(text);
            if (Limit.YEAR.holds(day.getYear())) {
                return day;
            }
            throw new TypeConversionException(words.get(
                    "usage.year",
                    text,
                    Limit.YEAR.lowInclusive().toString(),
                    Limit.YEAR.highInclusive().toString()));
        } catch (DateTimeException unusable) {
            throw new TypeConversionException(words.get("usage.date", text));
        }
    }

    private <T> ITypeConverter<T> id(Function<String, T> maker) {
        return text -> Optional.of(text).filter(id -> !id.isBlank()).map(maker).orElseThrow(wrong("usage.blank", text));
    }

    /** Hands picocli's text on to a stream, which knows the machine's charset. */
    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(
                new Writer() {
                    @Override
                    public void write(char[] text, int from, int length) {
                        stream.print(new String(text, from, length));
                    }

                    @Override
                    public void flush() {
                        stream.flush();
                    }

                    @Override
                    public void close() {
                        stream.flush();
                    }
                },
                true);
    }

    private Supplier<TypeConversionException> wrong(String key, String... values) {
        return () -> new TypeConversionException(words.get(key, values));
    }
}

package porebench.command.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.command.reply.WhereTo;
import porebench.port.OutputFile;

/** {@code schema}: what programs are told of the files that are read and written, into a folder. */
@Command(name = "schema")
public final class SchemaCommand extends OneCommand {
    private static final String FOLDER = "/porebench/command/json/";
    private static final String ENDING = ".schema.json";

    @Parameters(arity = "1", paramLabel = "<folder>", descriptionKey = "folder")
    private Path folder;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    private final Set<String> commands;

    /**
     * Makes the command.
     *
     * @param commands all commands, each of which has a schema of what it answers
     */
    public SchemaCommand(Machine here, Ports ports, Set<String> commands) {
        super(here, ports);
        this.commands = commands;
    }

    @Override
    protected CommandOutcome carryOut() {
        Map<String, OutputFile.Content> files = new TreeMap<>();
        ports().sheets().get().schemas().forEach((name, text) -> files.put(name, content(text)));
        commands.forEach(command -> files.put(command + ENDING, file -> file.write(answer(command))));
        try {
            List<Path> written = whereTo.folder(folder).write(files);
            acted();
            return CommandOutcome.done(new SchemaReport(written), List.of());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static byte[] answer(String command) throws IOException {
        String name = FOLDER + command + ENDING;
        try (InputStream stream = Objects.requireNonNull(SchemaCommand.class.getResourceAsStream(name), name)) {
            return stream.readAllBytes();
        }
    }

    private static OutputFile.Content content(String text) {
        return file -> file.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private final class SchemaReport implements Report {
        private final List<Path> files;

        SchemaReport(List<Path> files) {
            this.files = files;
        }

        @Override
        public void json(JsonFields json) {
            json.text("folder", folder.toString());
            json.texts("files", files.stream().map(Path::toString).toList());
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("export.written", folder.toString()));
            files.forEach(file -> page.line(words().get("export.file", String.valueOf(file.getFileName()))));
        }
    }
}

package porebench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The validator of table schemas, which is not ours: a module of Node, asked by {@code src/test/node/tables.js}. */
public final class TableValidator {
    static final Path MODULES = Path.of("target", "node", "node_modules");

    private TableValidator() {}

    /** What it said, and its exit status. */
    public record Said(int status, String text) {}

    /** Asks it about the files of a folder, by the description of some. */
    public static Said ask(Path descriptor, Path folder) throws IOException, InterruptedException {
        Path said = Files.createTempFile(Path.of("target"), "tables", ".txt");
        ProcessBuilder builder = new ProcessBuilder(
                "node",
                Path.of("src", "test", "node", "tables.js").toString(),
                descriptor.toString(),
                folder.toString());
        builder.environment().put("NODE_PATH", MODULES.toAbsolutePath().toString());
        builder.redirectErrorStream(true).redirectOutput(said.toFile());
        int status = builder.start().waitFor();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        Files.delete(said);
        return new Said(status, text);
    }
}

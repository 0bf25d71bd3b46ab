package porebench.command;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/** Whether what a command answers with {@code --json} is as its schema promises; asked of a validator that is not ours. */
final class AnswerSchemas {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    /** What JSON Schema 2020-12 says of a schema. */
    static final Schema DRAFT =
            REGISTRY.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));

    private static final Map<String, Schema> ALL = new ConcurrentHashMap<>();

    private AnswerSchemas() {}

    /** Returns the schema of a command's answer as it is shipped. */
    static String text(String command) {
        String name = command + ".schema.json";
        try (InputStream stream = PorebenchCommands.class.getResourceAsStream("json/" + name)) {
            byte[] bytes = Objects.requireNonNull(
                            stream, "there is no src/main/resources/porebench/command/json/" + name)
                    .readAllBytes();
            return new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Returns what in an answer its schema does not promise; nothing where all is as promised. */
    static List<String> faults(String command, String answer) {
        return faults(ALL.computeIfAbsent(command, name -> REGISTRY.getSchema(text(name))), answer);
    }

    /** Returns what in a schema is against JSON Schema 2020-12 itself. */
    static List<String> faultsOf(Schema draft, String schema) {
        return faults(draft, schema);
    }

    private static List<String> faults(Schema schema, String text) {
        return schema.validate(text, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }
}

package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Problem;

/** Several files that are written together: all that is in the way is said at once, and nothing is written beside it. */
class OutputFolderTest {
    private static final OutputFile.Content NEW = file -> file.write("new".getBytes(StandardCharsets.UTF_8));

    @TempDir
    Path folder;

    private static OutputRefused refused(OutputFolder into, Map<String, OutputFile.Content> files) {
        return catchThrowableOfType(OutputRefused.class, () -> into.write(files));
    }

    @Test
    void aFileThatStandsWhereTheFolderShouldBeIsNoFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("export"), "a letter");
        assertThat(refused(OutputFolder.replacing(file), Map.of("a.csv", NEW)).problems())
                .containsExactly(Problem.error("folder", "output.not-a-folder", file.toString()));
        assertThat(file).hasContent("a letter");
    }

    @Test
    void everyFileThatIsInTheWayIsNamedAtOnce() throws IOException {
        Map<String, OutputFile.Content> files = new LinkedHashMap<>();
        for (String name : new String[] {"a.csv", "b.csv", "c.csv"}) {
            files.put(name, NEW);
        }
        Files.writeString(folder.resolve("a.csv"), "older");
        Files.writeString(folder.resolve("c.csv"), "older");
        assertThat(refused(OutputFolder.fresh(folder), files).problems())
                .containsExactly(
                        Problem.error(
                                        "out",
                                        "output.there",
                                        folder.resolve("a.csv").toString())
                                .of(Problem.Kind.FILE_THERE),
                        Problem.error(
                                        "out",
                                        "output.there",
                                        folder.resolve("c.csv").toString())
                                .of(Problem.Kind.FILE_THERE));
        assertThat(folder.resolve("b.csv")).doesNotExist();
    }

    /** While the second file is put together, somebody else makes one of its name. */
    @Test
    void whatCameMeanwhileKeepsTheWholeSetFromTakingItsPlace() {
        Path second = folder.resolve("b.csv");
        Map<String, OutputFile.Content> files = new LinkedHashMap<>();
        files.put("a.csv", NEW);
        files.put("b.csv", file -> {
            NEW.into(file);
            Files.writeString(second, "somebody else's");
        });
        assertThatThrownBy(() -> OutputFolder.fresh(folder).write(files)).isInstanceOf(OutputRefused.class);
        assertThat(folder.resolve("a.csv")).doesNotExist();
        assertThat(second).hasContent("somebody else's");
    }
}

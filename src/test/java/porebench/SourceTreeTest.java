package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keeps what can be read from the source files only. */
class SourceTreeTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final Path TEST = Path.of("src/test/java");
    private static final int LONGEST_FILE_LINES = 400;

    /** The packages of the map that are written; add one here in the commit that brings it. */
    private static final List<String> WRITTEN = List.of(
            "porebench.app",
            "porebench.method",
            "porebench.method.air",
            "porebench.method.meter",
            "porebench.method.profile",
            "porebench.method.sample",
            "porebench.method.trial",
            "porebench.quantity",
            "porebench.record",
            "porebench.record.port",
            "porebench.statistics");

    @Test
    void everyPackageSaysWhatItIsForAndIsNullMarked() throws IOException {
        assertThat(packageFolders()).isNotEmpty().allSatisfy(folder -> {
            Path info = folder.resolve("package-info.java");
            assertThat(info).exists();
            assertThat(Files.readString(info, StandardCharsets.UTF_8))
                    .startsWith("/**")
                    .containsPattern("(?m)^@NullMarked$")
                    .contains("import org.jspecify.annotations.NullMarked;");
        });
    }

    @Test
    void everyPackageThatIsWrittenIsStillThere() throws IOException {
        List<String> found = packageFolders().stream()
                .map(folder ->
                        MAIN.relativize(folder).toString().replace('/', '.').replace('\\', '.'))
                .toList();
        assertThat(found).containsAll(WRITTEN);
    }

    @Test
    void noSourceFileIsLongerThanAReaderCanHold() throws IOException {
        List<Path> sources = Stream.concat(javaFiles(MAIN).stream(), javaFiles(TEST).stream())
                .toList();
        assertThat(sources)
                .isNotEmpty()
                .allSatisfy(source -> assertThat(Files.readAllLines(source, StandardCharsets.UTF_8)
                                .size())
                        .as("lines of %s", source)
                        .isLessThanOrEqualTo(LONGEST_FILE_LINES));
    }

    private static List<Path> packageFolders() throws IOException {
        return javaFiles(MAIN).stream().map(Path::getParent).distinct().sorted().toList();
    }

    private static List<Path> javaFiles(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}

package porebench;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** R computes the reference files anew, and says so when one of them is wrong. */
@NeedsProgram("Rscript")
class ReferenceScriptTest {
    private static final Path SCRIPTS = Path.of("src", "test", "r");

    @TempDir
    Path folder;

    private record Run(int status, String said) {}

    private static Run run(Path project, String... parts) throws IOException, InterruptedException {
        Path said = Files.createTempFile(project.resolve("target"), "reference", ".txt");
        ProcessBuilder builder = new ProcessBuilder(
                Stream.concat(Stream.of("Rscript", "--vanilla", "src/test/r/reference.R"), Stream.of(parts))
                        .toList());
        builder.directory(project.toFile()).redirectErrorStream(true).redirectOutput(said.toFile());
        int status = builder.start().waitFor();
        return new Run(status, Files.readString(said, UTF_8));
    }

    @Test
    void findsEveryComputedFigureWhereTheFilesHaveIt() throws IOException, InterruptedException {
        Run run = run(Path.of("").toAbsolutePath());
        assertThat(run.said()).doesNotContain("FAILED");
        assertThat(run.status()).as(run.said()).isZero();
    }

    /** The scripts and files of this project, in a folder where they may be spoilt. */
    private Path copy() throws IOException {
        for (Path from : List.of(SCRIPTS, ReferenceFile.FOLDER)) {
            Path to = Files.createDirectories(folder.resolve(from));
            try (Stream<Path> files = Files.list(from)) {
                for (Path file : files.toList()) {
                    Files.copy(file, to.resolve(file.getFileName().toString()));
                }
            }
        }
        Files.createDirectories(folder.resolve("target"));
        return folder;
    }

    private Run spoilt(String name, String right, String wrong) throws IOException, InterruptedException {
        Path file = copy().resolve(ReferenceFile.FOLDER).resolve(name);
        String text = Files.readString(file, UTF_8);
        assertThat(text).contains(right);
        Files.writeString(file, text.replace(right, wrong), UTF_8);
        return run(folder, "points.R");
    }

    /** With 4 degrees of freedom 2.5 % lie above 2.78, and 5 % above 2.13. */
    @Test
    void failsOnAWrongFigure() throws IOException, InterruptedException {
        Run run = spoilt("t-points.csv", "0.025,4,2.7764451051977934", "0.025,4,2.13184678632665");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.said()).contains("FAILED  t-points.csv point: off by");
    }

    @Test
    void failsOnAFigureThatIsNone() throws IOException, InterruptedException {
        Run run = spoilt("t-points.csv", "0.025,1,12.706204736174694", "0.025,1,unknown");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.said()).contains("FAILED  t-points.csv point: 1 figures could not be compared");
    }

    @Test
    void failsOnAColumnAndAFileThatItDoesNotKnow() throws IOException, InterruptedException {
        Path files = copy().resolve(ReferenceFile.FOLDER);
        Path grown = files.resolve("t-points.csv");
        Files.writeString(
                grown,
                Files.readString(grown, UTF_8)
                        .replaceAll("(?m)^([0-9].*)$", "$1,2")
                        .replace("upperTail,degreesOfFreedom,point", "upperTail,degreesOfFreedom,point,more"),
                UTF_8);
        Files.writeString(
                files.resolve("new-points.csv"),
                "# source: a\n# where: b\n# computed: R, 4.2.2, src/test/r/points.R\n# tolerance: d\nx\n1\n",
                UTF_8);
        Run run = run(folder, "points.R");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.said())
                .contains("FAILED  t-points.csv: neither checked nor given nor said to be unchecked: more")
                .contains("FAILED  new-points.csv: neither checked");
    }

    @Test
    void failsWhenAPartCannotRun() throws IOException, InterruptedException {
        Files.writeString(copy().resolve(SCRIPTS).resolve("water.R"), "library(notapackage)\n", UTF_8);
        Run run = run(folder, "water.R");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.said()).contains("FAILED  water.R stopped: ").contains("notapackage");
    }
}

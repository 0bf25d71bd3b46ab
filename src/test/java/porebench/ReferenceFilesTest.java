package porebench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every outside figure says where it comes from and is used by a test. */
class ReferenceFilesTest {
    private static final List<String> GOOD = List.of(
            "# source: a body",
            "# where: a clause",
            "# read: recalled",
            "# tolerance: exact",
            "# a remark",
            "name,value",
            "one,1.5",
            "two,2;3");

    static List<String> names() {
        return ReferenceFile.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void saysItsSourcePlaceMarkAndTolerance(String name) {
        assertThat(ReferenceFile.read(name).rows()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("names")
    void isComputedByAScriptThatIsThereAndNamesIt(String name) throws IOException {
        Optional<ReferenceFile.Computation> computation =
                ReferenceFile.read(name).computation();
        if (computation.isPresent()) {
            Path script = Path.of(computation.get().script());
            assertThat(script).isRegularFile();
            assertThat(Files.readString(script)).contains('"' + name + '"');
        }
    }

    @Test
    void isNamedInATest() throws IOException {
        String sources;
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            List<String> texts = new ArrayList<>();
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                texts.add(Files.readString(file));
            }
            sources = texts.stream().collect(Collectors.joining("\n"));
        }
        assertThat(names()).isNotEmpty();
        assertThat(names().stream().filter(name -> !sources.contains('"' + name + '"')))
                .as("reference files that no test names")
                .isEmpty();
    }

    @Test
    void givesRowsByTheNameOfTheColumn() {
        ReferenceFile file = ReferenceFile.parse("made.csv", GOOD);
        assertThat(file.source()).isEqualTo("a body");
        assertThat(file.where()).isEqualTo("a clause");
        assertThat(file.read()).contains("recalled");
        assertThat(file.computation()).isEmpty();
        assertThat(file.tolerance()).isEqualTo("exact");
        assertThat(file.rows()).hasSize(2);
        assertThat(file.rows().get(0).text("name")).isEqualTo("one");
        assertThat(file.rows().get(0).number("value")).isEqualTo(1.5);
        assertThat(file.rows().get(1).numbers("value")).containsExactly(2, 3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> file.rows().get(0).text("other"))
                .withMessageContaining("no column other");
    }

    @Test
    void givesWhatComputedTheFigures() {
        ReferenceFile all = ReferenceFile.parse("made.csv", changed(2, "# computed: R, 4.2.2, src/test/r/a.R"));
        assertThat(all.read()).isEmpty();
        assertThat(all.computation()).contains(new ReferenceFile.Computation("R", "4.2.2", "src/test/r/a.R"));
        ReferenceFile some = ReferenceFile.parse("made.csv", changed(4, "# computed: R, 4.2.2, src/test/r/a.R"));
        assertThat(some.read()).contains("recalled");
        assertThat(some.computation()).isEqualTo(all.computation());
    }

    @ParameterizedTest
    @ValueSource(strings = {"R 4.2.2", "R, 4.2.2", "R, 4.2.2, a script", "R, 4.2.2, ", ", 4.2.2, a.R", "R, 4, 2, a.R"})
    void refusesAComputationWithoutToolVersionOrScript(String computed) {
        for (int line : List.of(2, 4)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> ReferenceFile.parse("made.csv", changed(line, "# computed: " + computed)))
                    .withMessageContaining("made.csv: computed must be \"tool, version, script\"");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void refusesAFileWithoutOneOfTheFourHeaders(int missing) {
        List<String> without = new ArrayList<>(GOOD);
        without.remove(missing);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReferenceFile.parse("made.csv", without))
                .withMessageContaining("must begin with");
    }

    @Test
    void refusesAnotherMarkABlankHeaderAndAShortRow() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReferenceFile.parse("made.csv", changed(2, "# read: guessed")))
                .withMessage("made.csv: read must be seen or recalled, but is guessed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReferenceFile.parse("made.csv", changed(1, "# where:")))
                .withMessage("made.csv: where must not be blank");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReferenceFile.parse("made.csv", changed(6, "one")))
                .withMessageContaining("a row must have the cells [name, value]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReferenceFile.parse("made.csv", GOOD.subList(0, 6)))
                .withMessageContaining("at least one row");
    }

    private static List<String> changed(int line, String text) {
        List<String> lines = new ArrayList<>(GOOD);
        lines.set(line, text);
        return lines;
    }
}

package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.command.Terminal.Said;

/** The commands that make a study take it from the lab book as they take it from a file. */
class KeptStudyCommandsTest {
    private static final Map<String, String> FILES = Map.of("gauge-study", """
            operator,sample,repeat,value
            Ada,x,1,5.40
            Ada,x,2,5.35
            Ada,y,1,6.10
            Ada,y,2,6.05
            Bo,x,1,5.45
            Bo,x,2,5.40
            Bo,y,1,6.20
            Bo,y,2,6.10
            """, "components", """
            day,meter,value
            d1,B-1,0.40
            d1,B-1,0.45
            d1,B-2,0.50
            d2,B-1,0.30
            d2,B-1,0.40
            """, "interlab", """
            laboratory,level,value
            North,low,0.40
            North,low,0.50
            South,low,0.40
            South,low,0.60
            East,low,0.50
            East,low,0.40
            """);

    private static final String STUDIES = """
            study_id,kind,made_on,by,layers,value,name_1,name_2,name_3
            gauge-study,operators,2026-03-02,R. Vale,operator;sample;repeat,5.40,Ada,x,1
            gauge-study,,,,,5.35,Ada,x,2
            gauge-study,,,,,6.10,Ada,y,1
            gauge-study,,,,,6.05,Ada,y,2
            gauge-study,,,,,5.45,Bo,x,1
            gauge-study,,,,,5.40,Bo,x,2
            gauge-study,,,,,6.20,Bo,y,1
            gauge-study,,,,,6.10,Bo,y,2
            components,layers,2026-03-02,R. Vale,day;meter,0.40,d1,B-1,
            components,,,,,0.45,d1,B-1,
            components,,,,,0.50,d1,B-2,
            components,,,,,0.30,d2,B-1,
            components,,,,,0.40,d2,B-1,
            interlab,laboratories,2026-03-02,R. Vale,laboratory;level,0.40,North,low,
            interlab,,,,,0.50,North,low,
            interlab,,,,,0.40,South,low,
            interlab,,,,,0.60,South,low,
            interlab,,,,,0.50,East,low,
            interlab,,,,,0.40,East,low,
            """;

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void begin() {
        terminal = new Terminal(folder);
        LabFiles.write(folder, "studies.csv", STUDIES);
        Said said = terminal.json("import", "--book", "lab.book", "--new", "studies.csv");
        assertThat(said.codes()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"gauge-study", "components", "interlab"})
    void theAnswerIsTheSameAsFromTheFile(String command) {
        LabFiles.write(folder, "v.csv", FILES.get(command));
        Said ofFile = terminal.json(command, "--values", "v.csv");
        Said ofBook = terminal.json(command, "--book", "lab.book", "--study", command);
        assertThat(ofBook.status()).isZero();
        assertThat(withoutPlaces(ofBook)).isEqualTo(withoutPlaces(ofFile));
        assertThat(ofBook.list("problems"))
                .allSatisfy(problem ->
                        assertThat(problem).containsEntry("file", command).containsEntry("line", null));
        Said coarse = terminal.json(command, "--book", "lab.book", "--study", command, "--division", "1");
        assertThat(withoutPlaces(coarse))
                .isEqualTo(withoutPlaces(terminal.json(command, "--values", "v.csv", "--division", "1")))
                .isNotEqualTo(withoutPlaces(ofBook));
        assertThat(terminal.json(command, "--book", "lab.book", "--study", command, "--division", "0")
                        .codes())
                .containsExactly("command.not-positive");
    }

    @Test
    void layersThatCrossAreTakenFromTheLabBookToo() {
        LabFiles.write(folder, "v.csv", FILES.get("components"));
        Said ofBook = terminal.json("components", "--crossed", "--book", "lab.book", "--study", "components");
        assertThat(ofBook.status()).isZero();
        assertThat(ofBook.json()).containsEntry("crossed", true).containsEntry("count", 5);
        assertThat(withoutPlaces(ofBook))
                .isEqualTo(withoutPlaces(terminal.json("components", "--crossed", "--values", "v.csv")))
                .isNotEqualTo(
                        withoutPlaces(terminal.json("components", "--book", "lab.book", "--study", "components")));
    }

    /** A file has lines; a kept study goes by its name. */
    private static Map<String, Object> withoutPlaces(Said said) {
        Map<String, Object> json = new HashMap<>(said.json());
        json.put("problems", said.codes());
        return json;
    }

    @ParameterizedTest
    @CsvSource({"gauge-study", "components", "interlab"})
    void readingsComeFromAFileOrFromALabBook(String command) {
        for (List<String> wrong : List.of(
                List.of(command),
                List.of(command, "--book", "lab.book"),
                List.of(command, "--study", command),
                List.of(command, "--study", " ", "--book", "lab.book"),
                List.of(command, "--values", "v.csv", "--book", "lab.book"),
                List.of(command, "--values", "v.csv", "--book", "lab.book", "--study", command))) {
            Said said = terminal.run(wrong.toArray(String[]::new));
            assertThat(said.status()).as(wrong.toString()).isEqualTo(2);
            assertThat(said.out()).as(wrong.toString()).isEmpty();
            assertThat(said.err()).as(wrong.toString()).contains("--help");
        }
    }

    private static String message(Said said) {
        return String.valueOf(said.list("problems").get(0).get("message"));
    }

    @Test
    void aStudyThatIsNotThereOrOfAnotherKindIsNamed() {
        Said other = terminal.json("interlab", "--book", "lab.book", "--study", "Interlab");
        assertThat(other.status()).isEqualTo(1);
        assertThat(message(other))
                .startsWith("There is no study Interlab in ")
                .endsWith("lab.book. Name one of components, gauge-study, interlab.");
        Said wrong = terminal.json("interlab", "--book", "lab.book", "--study", "components");
        assertThat(wrong.status()).isEqualTo(1);
        assertThat(message(wrong))
                .isEqualTo("Study components is of the kind \"Sources of scatter\", but this command makes studies "
                        + "of the kind \"Between laboratories\". Choose another study or another command.");
        for (String study : List.of("Interlab", "components")) {
            assertThat(terminal.json("interlab", "--book", "lab.book", "--study", study, "--division", "0")
                            .codes())
                    .as("everything that is wrong at once")
                    .hasSize(2)
                    .startsWith("command.not-positive");
        }
        LabFiles.write(folder, "sources.csv", LabFiles.SOURCES);
        terminal.json("import", "--book", "empty.book", "--new", "sources.csv");
        assertThat(message(terminal.json("components", "--book", "empty.book", "--study", "L")))
                .endsWith("empty.book: no study is saved in it. Save a study in the window first.");
        assertThat(terminal.json("components", "--book", "none.book", "--study", "L")
                        .status())
                .isEqualTo(1);
    }

    /** Out and in again: the newest versions as records, and the whole lab book with its head. */
    @Test
    void studiesGoOutAndComeBackInBothKindsOfExport() {
        assertThat(terminal.json("export", "--book", "lab.book", "out").status())
                .isZero();
        assertThat(terminal.json("import", "--book", "again.book", "--new", "out/studies.csv")
                        .codes())
                .isEmpty();
        assertThat(terminal.json("import", "--book", "lab.book", "out/studies.csv")
                        .codes())
                .as("they are there unchanged")
                .isEmpty();
        assertThat(terminal.json("export", "--whole", "--book", "lab.book", "whole")
                        .status())
                .isZero();
        assertThat(terminal.json("restore", "--from", "whole", "--book", "whole.book")
                        .status())
                .isZero();
        Said first = terminal.json("interlab", "--book", "lab.book", "--study", "interlab");
        for (String book : List.of("again.book", "whole.book")) {
            assertThat(terminal.json("interlab", "--book", book, "--study", "interlab")
                            .json())
                    .isEqualTo(first.json());
        }
        assertThat(terminal.json("verify", "--book", "whole.book").json().get("head"))
                .isEqualTo(terminal.json("verify", "--book", "lab.book").json().get("head"));
    }

    @Test
    void aStudyThatDiffersFromTheOneKeptIsNotTakenFromAFile() {
        LabFiles.write(folder, "studies.csv", STUDIES.replace("0.60,South", "0.70,South"));
        Said said = terminal.json("import", "--book", "lab.book", "studies.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("import.differs");
        assertThat(said.list("problems").get(0)).containsEntry("line", 15);
    }

    @Test
    void aStudyOfATrainingBookSaysSo() {
        LabFiles.write(folder, "laboratory.csv", "laboratory_name,laboratory_address,training\nSchool,,yes\n");
        assertThat(terminal.json("import", "--book", "school.book", "--new", "laboratory.csv", "studies.csv")
                        .status())
                .isZero();
        Said said = terminal.json("interlab", "--book", "school.book", "--study", "interlab");
        assertThat(said.json()).containsEntry("simulated", true);
        assertThat(terminal.run("interlab", "--book", "school.book", "--study", "interlab")
                        .out())
                .contains("SIMULATED");
        assertThat(terminal.json("interlab", "--book", "lab.book", "--study", "interlab")
                        .json())
                .doesNotContainKey("simulated");
    }
}

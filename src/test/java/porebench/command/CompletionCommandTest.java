package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.NeedsProgram;
import porebench.command.Terminal.Said;

/** The scripts are read by the shells themselves, and asked as they are when a person strikes the tabulator. */
class CompletionCommandTest {
    @TempDir
    Path folder;

    private Path script(String shell) throws IOException {
        Said said = new Terminal(folder).run("completion", shell);
        assertThat(said.status()).isZero();
        assertThat(said.err()).isEmpty();
        return Files.writeString(folder.resolve("script." + shell), said.out(), StandardCharsets.UTF_8);
    }

    private List<String> run(String... words) throws Exception {
        Process process = new ProcessBuilder(words)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(out).isZero();
        return out.lines().toList();
    }

    /** Returns what bash offers for the last of some words, by the function that its own list of completions names. */
    private List<String> offered(String... words) throws Exception {
        String typed = Arrays.stream(words).map(word -> "'" + word + "'").collect(Collectors.joining(" "));
        return run(
                "bash",
                "--norc",
                "-c",
                "source " + script("bash") + "; f=$(complete -p porebench); f=${f#*-F }; f=${f%% *};"
                        + " COMP_WORDS=(porebench " + typed + "); COMP_CWORD=" + words.length + "; \"$f\";"
                        + " printf '%s\\n' \"${COMPREPLY[@]}\"");
    }

    @Test
    @NeedsProgram("bash")
    void bashOffersEveryCommand() throws Exception {
        assertThat(offered(""))
                .containsAll(new Terminal(folder).commandLine().getSubcommands().keySet())
                .contains("--help", "--version");
        assertThat(offered("card")).containsExactlyInAnyOrder("card", "cards", "card-check");
    }

    @Test
    @NeedsProgram("bash")
    void bashOffersEveryOptionOfEveryCommand() throws Exception {
        for (String name : List.of("sample", "register", "issue", "gauge-study")) {
            assertThat(offered(name, "-"))
                    .containsExactlyInAnyOrderElementsOf(new Terminal(folder)
                            .commandLine().getSubcommands().get(name).getCommandSpec().options().stream()
                                    .flatMap(option -> Stream.of(option.names()))
                                    .toList());
        }
        assertThat(offered("sample", "--mi")).containsExactlyInAnyOrder("--mix", "--mix-id");
        assertThat(offered("sample", "--colour")).containsExactly("");
    }

    /** The words of a paper are those that the command takes: a card has others than a list. */
    @Test
    @NeedsProgram("bash")
    void bashOffersTheWordsAnOptionMayHave() throws Exception {
        assertThat(offered("card", "--paper", "")).containsExactly("A6", "4x6in", "half-letter", "wallet");
        assertThat(offered("register", "--paper", "")).containsExactly("A4", "letter");
        assertThat(offered("register", "--paper", "=", "A")).containsExactly("A4");
        assertThat(offered("register", "--paper", "=")).containsExactly("A4", "letter");
        assertThat(offered("air", "--profile", "en")).containsExactly("en-12350-7");
        assertThat(offered("completion", "")).containsExactly("bash", "zsh");
        assertThat(offered("simulate", "--fault", "l")).containsExactlyInAnyOrder("leak", "line");
    }

    /** What only a lab book knows is not invented, and the words before are no options for it. */
    @Test
    @NeedsProgram("bash")
    void bashOffersNothingForTheNameOfAMix() throws Exception {
        assertThat(offered("card", "--mix-id", "")).containsExactly("");
        assertThat(offered("card", "--mix-id", "-")).containsExactly("");
    }

    @Test
    @NeedsProgram("bash")
    void bashOffersFilesWhereAFileIsAskedForAlsoThoseWithSpaces() throws Exception {
        Files.createFile(folder.resolve("my trials.csv"));
        Files.createFile(folder.resolve("mix.csv"));
        assertThat(offered("factor", "--trials", "m")).containsExactlyInAnyOrder("my trials.csv", "mix.csv");
        assertThat(offered("import", "mi")).containsExactly("mix.csv");
        assertThat(offered("./mi")).containsExactly("./mix.csv");
    }

    @Test
    @NeedsProgram("zsh")
    void zshReadsItsScriptAndOffersTheSame() throws Exception {
        Path script = script("zsh");
        run("zsh", "-f", "-n", script.toString());
        // Outside of a completion zsh has no compgen of its own words; bashcompinit brings it, as in a person's shell.
        assertThat(run(
                        "zsh",
                        "-f",
                        "-c",
                        "autoload -U compinit && compinit -D -u; source " + script
                                + "; print -r -- \"${_comps[porebench]}\"; emulate -L ksh;"
                                + " COMP_WORDS=(porebench register --paper \"\"); COMP_CWORD=3; _porebench_complete;"
                                + " print -rl -- \"${COMPREPLY[@]}\""))
                .containsExactly("_bash_complete -F _porebench_complete", "A4", "letter");
    }

    @Test
    void theAnswerForProgramsHasTheSameScript() {
        Terminal terminal = new Terminal(folder);
        assertThat(terminal.json("completion", "zsh").json())
                .containsEntry("shell", "zsh")
                .containsEntry("script", terminal.run("completion", "zsh").out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"fish", ""})
    void anotherShellIsWrongUsage(String shell) {
        Said said = new Terminal(folder).run("completion", shell);
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err()).contains("must be one of bash, zsh");
        assertThat(new Terminal(folder).run("completion").status()).isEqualTo(2);
    }

    @Test
    void theWordsOfACommandAreReadWhateverTheirCase() {
        assertThat(new Terminal(folder).run("completion", "BASH").out().toLowerCase(Locale.ROOT))
                .startsWith("# completion of porebench");
    }
}

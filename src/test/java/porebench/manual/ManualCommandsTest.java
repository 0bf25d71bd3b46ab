package porebench.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

/**
 * Every command that a page of the manual shows is run, in the order of the page, in a folder of its own that holds the demo data, the
 * blank forms and the files that the page shows. It ends with 0, or as a line {@code (exit status 1)} says; what the page shows as
 * its answer is its answer, where a line of dots stands for any lines and dots at the end of a line for its rest.
 */
class ManualCommandsTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-29T12:00:00Z"), ZoneOffset.UTC);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
    private static final Pattern STATUS = Pattern.compile("\\(exit status (\\d)\\)");
    private static final String REST = "...";

    @TempDir
    Path folder;

    static List<Page> pages() {
        return Page.all().stream()
                .filter(page -> page.blocks().stream()
                        .flatMap(block -> block.lines().stream())
                        .anyMatch(Page::isCommand))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyCommandDoesWhatThePageSays(Page page) {
        for (String data : List.of("demo-data", "lab-sheets")) {
            copy(Path.of(data), folder.resolve(data));
        }
        for (Page.Block block : page.blocks()) {
            if (block.info().matches("(csv|text) \\S+")) {
                write(block.info().split(" ")[1], block.lines());
            } else {
                follow(page, block);
            }
        }
    }

    private void follow(Page page, Page.Block block) {
        List<String> lines = block.lines();
        for (int at = 0; at < lines.size(); ) {
            if (!Page.isCommand(lines.get(at))) {
                at++;
                continue;
            }
            StringBuilder command = new StringBuilder(lines.get(at++));
            while (command.toString().endsWith("\\")) {
                command.setLength(command.length() - 1);
                command.append(lines.get(at++).strip());
            }
            List<String> shown = new ArrayList<>();
            while (at < lines.size() && !Page.isCommand(lines.get(at))) {
                shown.add(lines.get(at++));
            }
            run(page + ", line " + block.line() + ": " + command, arguments(command.toString()), shown, block.info());
        }
    }

    private void run(String where, List<String> arguments, List<String> shown, String info) {
        Said said = new Terminal(folder, DAY).withTheWholeDemo().run(arguments.toArray(String[]::new));
        List<String> expected = new ArrayList<>(shown);
        int status = 0;
        Matcher stated = expected.isEmpty() ? STATUS.matcher("") : STATUS.matcher(expected.get(0));
        if (stated.matches()) {
            status = Integer.parseInt(stated.group(1));
            expected.remove(0);
        }
        assertThat(said.status())
                .as("%s%n%s%n%s", where, said.out(), said.err())
                .isEqualTo(status);
        if (info.equals("console") && !expected.isEmpty()) {
            String place = folder.toString() + folder.getFileSystem().getSeparator();
            List<String> answer = Stream.of(said.out(), said.err())
                    .flatMap(String::lines)
                    .map(line -> line.replace(place, "").stripTrailing())
                    .toList();
            assertThat(isShown(expected, answer))
                    .as("%s%nshown:%n%s%nsaid:%n%s", where, String.join("\n", expected), String.join("\n", answer))
                    .isTrue();
        }
    }

    /** Returns whether the lines shown are the lines said; dots alone on a line stand for any lines. */
    static boolean isShown(List<String> shown, List<String> said) {
        if (shown.isEmpty()) {
            return said.stream().allMatch(String::isBlank);
        }
        String first = shown.get(0).stripTrailing();
        List<String> rest = shown.subList(1, shown.size());
        if (first.equals(REST)) {
            for (int skipped = 0; skipped <= said.size(); skipped++) {
                if (isShown(rest, said.subList(skipped, said.size()))) {
                    return true;
                }
            }
            return false;
        }
        if (said.isEmpty()) {
            return first.isEmpty() && isShown(rest, said);
        }
        boolean isLine = first.endsWith(REST)
                ? said.get(0).startsWith(first.substring(0, first.length() - REST.length()))
                : said.get(0).equals(first);
        return isLine && isShown(rest, said.subList(1, said.size()));
    }

    private static List<String> arguments(String command) {
        String words = command.replaceFirst("^(porebench|java -jar target/porebench\\.jar) ", "");
        List<String> arguments = new ArrayList<>();
        Matcher found = WORD.matcher(words);
        while (found.find()) {
            arguments.add(Stream.of(found.group(1), found.group(2), found.group(3))
                    .filter(each -> each != null)
                    .findFirst()
                    .orElseThrow());
        }
        return arguments;
    }

    private void write(String name, List<String> lines) {
        try {
            Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path place = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(place);
                } else {
                    Files.copy(file, place);
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void anAnswerThatIsShownOtherwiseIsSeen() {
        List<String> said = List.of("Bowl  7.05 L", "Mean  0.379", "Factor  0.4");
        assertThat(isShown(List.of("Bowl  7.05 L", "...", "Factor  0.4"), said)).isTrue();
        assertThat(isShown(List.of("...", "Mean..."), said)).isFalse();
        assertThat(isShown(List.of("...", "Mean...", "..."), said)).isTrue();
        assertThat(isShown(List.of("Bowl  7.05 L", "Factor  0.4"), said)).isFalse();
        assertThat(isShown(List.of("Bowl  7.04 L", "..."), said)).isFalse();
    }
}

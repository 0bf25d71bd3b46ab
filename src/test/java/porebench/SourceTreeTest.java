package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Keeps what can be read from the source files only. */
class SourceTreeTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final Path TEST = Path.of("src/test/java");
    private static final int LONGEST_FILE_LINES = 400;
    private static final Pattern WRITES_DATES = Pattern.compile(
            "DateTimeFormatter\\.of|DateTimeFormatter\\.ISO|SimpleDateFormat\\(|DateFormat\\.get|FormatStyle");

    /** The packages of the map that are written; add one here in the commit that brings it. */
    private static final List<String> WRITTEN = List.of(
            "porebench.app",
            "porebench.chart",
            "porebench.chart.change",
            "porebench.chart.control",
            "porebench.chart.factor",
            "porebench.chart.hold",
            "porebench.chart.look",
            "porebench.chart.meter",
            "porebench.chart.study",
            "porebench.command",
            "porebench.desk",
            "porebench.desk.budget",
            "porebench.desk.change",
            "porebench.desk.factor",
            "porebench.desk.form",
            "porebench.desk.frame",
            "porebench.desk.frame.book",
            "porebench.desk.frame.dialog",
            "porebench.desk.frame.rail",
            "porebench.desk.hold",
            "porebench.desk.meter",
            "porebench.desk.mix",
            "porebench.desk.overtime",
            "porebench.desk.plan",
            "porebench.desk.register",
            "porebench.desk.sample",
            "porebench.desk.study",
            "porebench.desk.table",
            "porebench.desk.trial",
            "porebench.desk.variability",
            "porebench.evidence",
            "porebench.evidence.budget",
            "porebench.evidence.hold",
            "porebench.evidence.intake",
            "porebench.evidence.issue",
            "porebench.evidence.paper",
            "porebench.evidence.practice",
            "porebench.evidence.study",
            "porebench.exchange",
            "porebench.exchange.calibration",
            "porebench.exchange.photo",
            "porebench.exchange.sheet",
            "porebench.exchange.text",
            "porebench.exchange.whole",
            "porebench.method",
            "porebench.method.air",
            "porebench.method.budget",
            "porebench.method.meter",
            "porebench.method.profile",
            "porebench.method.sample",
            "porebench.method.trial",
            "porebench.port",
            "porebench.print",
            "porebench.quantity",
            "porebench.record",
            "porebench.record.chain",
            "porebench.record.column",
            "porebench.record.id",
            "porebench.record.source",
            "porebench.statistics",
            "porebench.store",
            "porebench.store.chain",
            "porebench.store.check",
            "porebench.store.file",
            "porebench.store.records",
            "porebench.store.rows");

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

    /** Patterns of dates stand in the one class; a file's name and a file's cells have their own. */
    @Test
    void whatAPersonReadsOfADateIsWrittenByOneClass() throws IOException {
        List<String> writers = new ArrayList<>();
        for (Path source : javaFiles(MAIN)) {
            String text = Files.readString(source, StandardCharsets.UTF_8);
            if (WRITES_DATES.matcher(text).find()) {
                writers.add(source.getFileName().toString());
            }
        }
        assertThat(writers).containsExactlyInAnyOrder("Dates.java", "DateMarks.java", "HeadedRow.java", "Backups.java");
    }

    @Test
    void everyLibraryOfThePomHasItsLineWithItsVersion() throws Exception {
        List<String> lines = Files.readAllLines(Path.of("DEVELOPERS.md"), StandardCharsets.UTF_8);
        Document pom = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of("pom.xml").toFile());
        List<Element> pinned = Stream.of("dependency", "path", "plugin")
                .flatMap(tag -> elements(pom.getElementsByTagName(tag)))
                .toList();
        assertThat(pinned).hasSizeGreaterThan(20).allSatisfy(library -> {
            String artifact = text(library, "artifactId");
            String version = text(library, "version");
            if (version.startsWith("${")) {
                version = text(pom.getDocumentElement(), version.substring(2, version.length() - 1));
            }
            String written = version;
            assertThat(lines)
                    .as("a line of DEVELOPERS.md on %s %s", artifact, version)
                    .anyMatch(line -> line.startsWith("|")
                            && (line.contains(":" + artifact + "`") || line.contains("`" + artifact + "`"))
                            && line.contains(" " + written + " "));
        });
    }

    private static Stream<Element> elements(NodeList nodes) {
        return IntStream.range(0, nodes.getLength()).mapToObj(each -> (Element) nodes.item(each));
    }

    private static String text(Element parent, String tag) {
        return parent.getElementsByTagName(tag).item(0).getTextContent().strip();
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

package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class CompareCommandTest {
    private static final String EIGHT = "0.3;0.4;0.4;0.5;0.3;0.4;0.6;0.4";
    private static final String SEVEN = "0.4;0.5;0.4;0.4;0.6;0.5;0.5";

    @TempDir
    Path folder;

    private static String column(String values) {
        return "value\n" + values.replace(';', '\n') + "\n";
    }

    private Said compare(String before, String after, String... options) {
        LabFiles.write(folder, "before.csv", before);
        LabFiles.write(folder, "after.csv", after);
        return new Terminal(folder).json(all(options));
    }

    private static String[] all(String... options) {
        return Stream.concat(Stream.of("compare", "--before", "before.csv", "--after", "after.csv"), Stream.of(options))
                .toArray(String[]::new);
    }

    private static double number(Object value) {
        return new BigDecimal(value.toString()).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Said said, String name) {
        return (Map<String, Object>) said.json().get(name);
    }

    /** Source: R 4.2.2, t.test, and the two one-sided tests by it (src/test/resources/reference/before-and-after.csv, two-groups). */
    @Test
    @SuppressWarnings("unchecked")
    void answersWithTheFieldsOfTheContract() {
        Said said = compare(column(EIGHT), column(SEVEN), "--margin", "0.2");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys(
                        "difference",
                        "confidence95",
                        "welch",
                        "equivalence",
                        "power",
                        "powerTarget",
                        "trialsNeeded",
                        "trialsNeededAfter",
                        "verdict",
                        "standardError",
                        "unit",
                        "before",
                        "after",
                        "division",
                        "roundingCounts",
                        "problems")
                .containsEntry("verdict", "keep")
                .containsEntry("trialsNeeded", 0)
                .containsEntry("unit", "readings");
        assertThat(number(said.json().get("difference"))).isCloseTo(0.0589285714285714, within(1e-12));
        assertThat(number(group(said, "confidence95").get("low"))).isCloseTo(-0.0388977551111882, within(1e-9));
        assertThat(number(group(said, "confidence95").get("high"))).isCloseTo(0.156754897968331, within(1e-9));
        assertThat(group(said, "welch")).containsOnlyKeys("t", "degreesOfFreedom", "p");
        assertThat(number(group(said, "welch").get("t"))).isCloseTo(1.30342163413005, within(1e-9));
        assertThat(number(group(said, "welch").get("degreesOfFreedom"))).isCloseTo(12.8009616483026, within(1e-7));
        assertThat(number(group(said, "welch").get("p"))).isCloseTo(0.215386830932662, within(1e-9));
        Map<String, Object> equivalence = group(said, "equivalence");
        assertThat(equivalence)
                .containsOnlyKeys("margin", "confidence90", "pLow", "pHigh", "equivalent")
                .containsEntry("equivalent", true);
        assertThat(number(equivalence.get("margin"))).isEqualTo(0.2);
        assertThat(number(((Map<String, Object>) equivalence.get("confidence90")).get("low")))
                .isCloseTo(-0.0212318299527612, within(1e-9));
        assertThat(number(equivalence.get("pLow"))).isCloseTo(3.69946044231941e-05, within(1e-12));
        assertThat(number(equivalence.get("pHigh"))).isCloseTo(0.00412816369335894, within(1e-10));
        assertThat(said.codes()).containsExactly("change.determinations-unseen");
    }

    @Test
    void theMarginIsHalfTheReportingStepIfNotGiven() {
        Said said = compare(column(EIGHT), column(SEVEN));
        assertThat(number(group(said, "equivalence").get("margin"))).isEqualTo(0.05);
        assertThat(said.json()).containsEntry("verdict", "test-more");
        assertThat((Integer) said.json().get("trialsNeeded")).isPositive();
        assertThat(said.codes()).containsExactly("change.margin-below-division", "change.determinations-unseen");
    }

    @Test
    void determinationsCountByTheirMeans() {
        Said said = compare(
                "determination,value\nD-1,0.40\nD-1,0.44\nD-2,0.47\nD-2,0.43\nD-3,0.41\nD-3,0.39\n",
                "determination,value\nE-1,0.71\nE-1,0.75\nE-2,0.68\nE-2,0.72\nE-3,0.76\nE-3,0.74\n");
        assertThat(said.json()).containsEntry("unit", "determinations").containsEntry("verdict", "replace");
        assertThat(group(said, "before")).containsEntry("count", 6).containsEntry("determinations", 3);
        assertThat(said.codes()).isEmpty();
    }

    @Test
    void aDeterminationAloneBesideSeveralIsToldOf() {
        Said said = compare(
                "determination,value\nD-1,0.40\nD-1,0.44\nD-2,0.47\nD-2,0.43\n",
                column("0.41;0.43"),
                "--margin",
                "0.5");
        assertThat(said.json()).containsEntry("unit", "determinations-of-one-side");
        assertThat(said.codes()).containsExactly("change.determinations-borrowed");
    }

    @Test
    void aListWithoutHeadingIsRead() {
        Said said = compare("0.41\n0.43\n0.40\n", "0.42\n0.43\n0.41\n");
        assertThat(said.status()).isZero();
        assertThat(group(said, "before")).containsEntry("count", 3);
    }

    @Test
    void readingsThatStandStillAreNotTakenForPerfect() {
        Said said = compare(column("0.4;0.4;0.4"), column("0.4;0.4;0.4"));
        assertThat(said.json())
                .containsEntry("verdict", "test-more")
                .containsEntry("roundingCounts", true)
                .containsEntry("trialsNeeded", null)
                .containsEntry("trialsNeededAfter", null);
        assertThat(said.codes()).contains("change.readings-still");
        assertThat(number(said.json().get("standardError"))).isCloseTo(0.04714045, within(1e-8));
    }

    @Test
    void theDivisionCanBeStated() {
        Said said = compare(column("0.412;0.431;0.405"), column("0.418;0.402;0.427"), "--division", "0.1");
        assertThat(said.json()).containsEntry("roundingCounts", true);
        assertThat(number(said.json().get("division"))).isEqualTo(0.1);
    }

    @Test
    void eachFaultHasItsOwnWords() {
        assertThat(compare(column("0.4"), column(SEVEN)).codes()).containsExactly("change.single-reading");
        assertThat(compare("", column(SEVEN)).codes()).containsExactly("csv.empty");
        assertThat(compare("value\n", column(SEVEN)).codes()).containsExactly("command.no-number");
        assertThat(compare("trial_id,reading\nT-1,0.4\n", column(SEVEN)).codes())
                .contains("csv.column-missing");
        assertThat(compare("determination,value\n,0.4\nD-1,0.5\n", column(SEVEN))
                        .codes())
                .contains("csv.required");
        assertThat(compare(column(EIGHT), column(SEVEN), "--margin", "0").codes())
                .containsExactly("command.not-positive");
        assertThat(compare(column(EIGHT), column(SEVEN), "--division", "-0.1").codes())
                .containsExactly("command.not-positive");
        assertThat(compare("determination;value\nD-1;0.4\nD-1;0.5\n", column(SEVEN))
                        .codes())
                .containsExactly("csv.separator");
        assertThat(compare("determination\tvalue\nD-1\t0.4\nD-1\t0.5\n", column(SEVEN))
                        .codes())
                .containsExactly("csv.separator");
        assertThat(compare("determination_id,value\nT-1,0.4\nT-2,0.5\nT-3,\n,0.45\n", column(SEVEN))
                        .codes())
                .containsExactly("csv.column-unknown", "csv.required");
        Said word = compare(column("0.4;wet;0.5"), column(SEVEN));
        assertThat(word.status()).isEqualTo(1);
        assertThat(word.list("problems"))
                .singleElement()
                .satisfies(problem -> assertThat(problem)
                        .containsEntry("code", "csv.not-a-number")
                        .containsEntry("file", "before.csv")
                        .containsEntry("line", 3)
                        .containsEntry("column", 1));
        LabFiles.write(folder, "before.csv", column("0.4"));
        Said single = new Terminal(folder).run(all());
        assertThat(single.status()).isEqualTo(1);
        assertThat(single.err()).contains("has a single reading, which shows no scatter. Make at least one more.");
        assertThat(new Terminal(folder).run("compare", "--before", "before.csv").status())
                .isEqualTo(2);
    }

    @Test
    void theSentenceComesFirstInBothLanguages() {
        compare(column(EIGHT), column(SEVEN));
        Terminal terminal = new Terminal(folder);
        assertThat(terminal.run(all("--margin", "0.2")).out())
                .startsWith("Keep the factor: it is shown to have moved by less than 0.200 %.")
                .contains("After less before: 0.059 %; 95 % interval from -0.039 to 0.157 %.");
        assertThat(terminal.in(Locale.forLanguageTag("es"))
                        .run(all("--margin", "0.2"))
                        .out())
                .startsWith("Conservar el factor: está demostrado que se movió menos de 0,200 %.");
    }

    private static String trials(int first, String... gauges) {
        return LabFiles.TRIAL_COLUMNS
                + Stream.iterate(0, i -> i + 1)
                        .limit(gauges.length)
                        .map(i -> LabFiles.trial("T-" + (first + i), "M-1", (first + i), gauges[i], "no"))
                        .collect(Collectors.joining());
    }

    /** The demo's own way: three trials, the quarry opens another bench, three trials of that. */
    @Test
    void aMixOfALabBookIsComparedAboutTheChangeOfItsSource() {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        Said none = terminal.json("compare", "--book", "lab.book", "--mix-id", "M-1");
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.codes()).containsExactly("change.no-change");
        LabFiles.write(folder, "sources.csv", LabFiles.OTHER_BENCH);
        assertThat(terminal.run("import", "--book", "lab.book", "sources.csv").status())
                .isZero();
        Said nothing = terminal.json("compare", "--book", "lab.book", "--mix-id", "M-1");
        assertThat(nothing.codes()).containsExactly("change.nothing-after");
        LabFiles.write(folder, "more.csv", trials(11, "5.8", "5.9", "5.9"));
        assertThat(terminal.run(
                        "import", "--book", "lab.book", "--kept-because", "volumetric test asked for", "more.csv"))
                .satisfies(said -> assertThat(said.status()).as(said.err()).isZero());
        Said said = terminal.json("compare", "--book", "lab.book", "--mix-id", "M-1");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsEntry("verdict", "replace")
                .containsEntry("sources", List.of("S-2"))
                .containsEntry("beforeDeterminations", List.of("M-1/1"))
                .containsEntry("afterDeterminations", List.of("M-1/2"));
        assertThat(number(said.json().get("difference"))).isCloseTo(0.466667, within(1e-5));
        assertThat(terminal.run("compare", "--book", "lab.book", "--mix-id", "M-1")
                        .out())
                .startsWith("Replace the factor")
                .contains("M-1/2");
        assertThat(terminal.json("compare", "--book", "lab.book", "--mix-id", "M-9")
                        .codes())
                .containsExactly("book.not-there");
        assertThat(number(group(
                                terminal.json("compare", "--book", "lab.book", "--mix-id", "M-1", "--margin", "0.2"),
                                "equivalence")
                        .get("margin")))
                .isEqualTo(0.2);
    }

    /** What a person decides is kept, told again, and lets the factor from before be issued on the new trials. */
    @Test
    @SuppressWarnings("unchecked")
    void aDecisionIsKeptToldAndKeepsTheFactor() {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        String[] issue = {
            "issue",
            "--book",
            "lab.book",
            "--mix-id",
            "M-1",
            "--reason",
            "first",
            "--override-by",
            "M. Ash",
            "--override-reason",
            "looked at"
        };
        assertThat(terminal.json(issue).json().get("expandedUncertaintyPercent"))
                .isNotNull();
        LabFiles.write(folder, "sources.csv", LabFiles.OTHER_BENCH);
        terminal.run("import", "--book", "lab.book", "sources.csv");
        LabFiles.write(folder, "more.csv", trials(11, "5.4", "5.5", "5.4"));
        terminal.run("import", "--book", "lab.book", "--kept-because", "volumetric test asked for", "more.csv");
        String[] compare = {"compare", "--book", "lab.book", "--mix-id", "M-1", "--margin", "0.9"};
        assertThat(terminal.json(compare).json())
                .containsEntry("verdict", "keep")
                .containsEntry("decisions", List.of());
        Said against = terminal.json(with(compare, "--decide", "replace"));
        assertThat(against.status()).isEqualTo(1);
        assertThat(against.codes()).contains("decision.against-verdict", "decision.reason-wanting");
        assertThat(terminal.run(with(compare, "--decide", "perhaps")).status()).isEqualTo(2);
        assertThat(terminal.run("compare", "--before", "a.csv", "--after", "b.csv", "--decide", "keep")
                        .status())
                .isEqualTo(2);
        Said more = terminal.json(
                with(compare, "--decide", "test-more", "--more", "2", "--by", "R. Vale", "--reason", "for the plant"));
        assertThat(more.json()).containsEntry("decisionId", "M-1/c1");
        Said kept = terminal.json(with(compare, "--decide", "keep", "--by", "R. Vale"));
        assertThat(kept.status()).as(kept.err()).isZero();
        assertThat(kept.json()).containsEntry("decisionId", "M-1/c2");
        assertThat((List<Map<String, Object>>) kept.json().get("decisions"))
                .extracting(one -> one.get("decision"))
                .containsExactly("keep", "test-more");
        assertThat(((List<Map<String, Object>>) kept.json().get("decisions")).get(1))
                .containsOnlyKeys(
                        "decisionId",
                        "decision",
                        "moreTrials",
                        "verdict",
                        "againstVerdict",
                        "decidedOn",
                        "decidedBy",
                        "reason",
                        "revision",
                        "difference",
                        "origin",
                        "changedSince")
                .containsEntry("moreTrials", 2)
                .containsEntry("againstVerdict", true)
                .containsEntry("decidedBy", "R. Vale")
                .containsEntry("revision", 1)
                .containsEntry("origin", "here")
                .containsEntry("changedSince", List.of());
        assertThat(terminal.run(compare).out()).contains("test 2 more").contains("for the plant");
        assertThat(terminal.run("register", "--book", "lab.book").out()).contains("M-1/c2", "R. Vale keeps the factor");
        Said refused = terminal.json(with(issue, "--determination", "M-1/2", "--as-decided", "M-1/c1"));
        assertThat(refused.codes()).contains("keep.not-shown", "keep.decided-again");
        Said again = terminal.json(with(issue, "--determination", "M-1/2", "--as-decided", "M-1/c2"));
        assertThat(again.status()).as(again.err()).isZero();
        assertThat(again.json()).containsEntry("revision", 2).containsEntry("keptBy", "M-1/c2");
        assertThat(terminal.run("register", "--book", "lab.book").out()).contains("keeps the factor from before");
    }

    private static String[] with(String[] first, String... more) {
        return Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new);
    }
}

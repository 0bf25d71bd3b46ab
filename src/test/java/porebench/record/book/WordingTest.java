package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.Bench;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.method.MeterType;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.record.CardPrint;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/**
 * Names are one line of what can be seen, at most 60 characters (100 where they begin with another name); texts hold nothing
 * that turns or hides writing. The codes are those of the Unicode Character Database, from memory.
 */
class WordingTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private List<Problem> kept(Kept... records) {
        List<Draft> drafts = new ArrayList<>();
        for (Kept record : records) {
            drafts.add(Draft.of(record));
        }
        return bench.book.keep(drafts, "R. Vale", "new");
    }

    private List<Problem> imported(Kept... records) {
        List<Incoming> incoming = new ArrayList<>();
        for (Kept record : records) {
            incoming.add(new Incoming(Place.of("file.csv", incoming.size() + 2), record));
        }
        return Intake.check(bench.book, incoming, SampleCalibrations.TODAY).problems();
    }

    private static Kept source(String id) {
        return new Source(new SourceId(id), "Sand", Role.FINE, "Pit", "Ledge", Optional.empty(), Optional.empty(), "");
    }

    private static Object word(Problem problem) {
        return ((Problem.Word) problem.values().get(3)).id();
    }

    @ParameterizedTest
    @CsvSource({
        "000A, line-break",
        "000D, line-break",
        "2028, line-break",
        "0009, control-character",
        "0007, control-character",
        "200E, direction-mark",
        "202E, direction-mark",
        "2066, direction-mark",
        "2069, direction-mark",
        "061C, direction-mark",
        "200B, invisible-character",
        "00AD, invisible-character",
        "200D, invisible-character",
        "3164, invisible-character",
        "FE0F, invisible-character",
        "00A0, odd-space",
        "3000, odd-space",
        "E000, no-character",
        "0378, no-character",
    })
    void aNameHoldsOnlyWhatCanBeSeenWhereverItComesIn(String code, String word) {
        Kept bad = source("S" + Character.toString(Integer.parseInt(code, 16)) + "9");
        List<Problem> said = Wording.check(bad);
        assertThat(said).hasSize(1);
        assertThat(said.get(0).code()).isEqualTo("text.unseen");
        assertThat(word(said.get(0))).isEqualTo(word);
        assertThat(said.get(0).values().get(4)).isEqualTo("U+" + code);
        assertThat(said.get(0).values().get(5)).isEqualTo(2);
        assertThat(kept(bad)).isEqualTo(said);
        assertThat(imported(bad)).containsExactly(said.get(0).at(Place.of("file.csv", 2)));
        assertThat(bench.book.latest(Source.class, bad.recordId())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"S 9", "S/9-1.2_#(b)", "Würfel 砂", "=S9", "S\uD83E\uDEA89"})
    void whatCanBeSeenMayStandInAName(String id) {
        assertThat(kept(source(id))).isEmpty();
    }

    @Test
    void aNameHas60CharactersAndOneThatBeginsWithAnother100() {
        assertThat(Wording.check(source("s".repeat(60)))).isEmpty();
        assertThat(Books.codes(Wording.check(source("s".repeat(61))))).containsExactly("text.too-long");
        assertThat(Books.codes(kept(source("s".repeat(3000))))).containsExactly("text.too-long");
        Kept determination = Samples.determination("d".repeat(100), "M-1");
        assertThat(Wording.check(determination)).isEmpty();
        assertThat(Books.codes(Wording.check(Samples.determination("d".repeat(101), "M-1"))))
                .containsExactly("text.too-long");
    }

    @Test
    void everyTextOfEveryKindIsLookedAt() {
        // Every text of these records ends on a letter: with a mark that turns the writing behind it, each is named
        // once.
        assertThat(Wording.check(new Laboratory("L\u202E", "A\u202E")))
                .extracting(Problem::field)
                .containsExactly("name", "address");
        assertThat(Wording.check(new Source(
                        new SourceId("S\u202E"),
                        "N\u202E",
                        Role.FINE,
                        "P\u202E",
                        "L\u202E",
                        Optional.empty(),
                        Optional.empty(),
                        "R\u202E")))
                .extracting(Problem::field)
                .containsExactly("id", "name", "place", "ledge", "remarks");
        assertThat(Wording.check(new CardPrint(new MixId("M-1"), 1, 1, "A6\u202E", "d\u202E")))
                .extracting(Problem::field)
                .containsExactly("paper", "destination");
        Trial trial = Samples.trial("T\u202E", "M-1", "M-1/1", "5.4");
        assertThat(Wording.check(trial)).extracting(Problem::field).contains("trialId");
        assertThat(Wording.check(Samples.mix("M\u202E", "S\u202E", "S-1")))
                .extracting(Problem::field)
                .contains("id", "constituents.0.source");
        assertThat(Wording.check(Samples.meter("B\u202E", MeterType.B)))
                .extracting(Problem::field)
                .containsExactly("id");
        assertThat(Wording.check(Samples.determination("D\u202E", "M-1")))
                .extracting(Problem::field)
                .containsExactly("id");
    }

    @Test
    void aNoteMayHaveLinesAndATitleMayNot() {
        assertThat(Wording.check(new Laboratory("Name", "Street 1\nTown\r\n\tthere")))
                .isEmpty();
        assertThat(Books.codes(Wording.check(new Laboratory("Name\nTwo", "")))).containsExactly("text.unseen");
    }

    @Test
    void thePersonAndTheReasonAreLookedAtToo() {
        List<Draft> drafts = List.of(Draft.of(source("S-9")));
        assertThat(bench.book.keep(drafts, "R. Vale\u202E", "new"))
                .extracting(Problem::field)
                .containsExactly("who");
        assertThat(bench.book.keep(drafts, "R. Vale", "new\u0007"))
                .extracting(Problem::field)
                .containsExactly("why");
        assertThat(Books.codes(bench.book.keep(drafts, "R".repeat(201), "new"))).containsExactly("stamp.too-long");
        assertThat(bench.book.latest(Source.class, "S-9")).isEmpty();
        assertThat(bench.book.keep(drafts, "R".repeat(200), "two\nlines")).isEmpty();
        assertThat(ProblemText.in(Locale.ENGLISH)
                        .say(Wording.checkStamp("R. Vale\u202E", "").get(0)))
                .isEqualTo(
                        "The name of the person holds a mark that turns the direction of writing (U+202E) at place 8."
                                + " Type it again without it.");
    }

    /** A path may have 4096 characters on Linux (PATH_MAX, from memory), and words stand before it. */
    @Test
    void aCardMayBeSavedDeepInItsFolders() {
        String path = "/" + "deep/".repeat(819);
        assertThat(path).hasSize(4096);
        CardPrint print = new CardPrint(new MixId("M-1"), 1, 1, "A6", CardPrint.toFile(Path.of(path), true));
        assertThat(Wording.check(print)).isEmpty();
        assertThat(Wording.check(print.notReleased())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"K\u00F6ln, Ko\u0308ln", "S 9, S  9", "S9, \uFF339"})
    void aNameThatLooksTheSameIsRefusedAndNamed(String first, String second) {
        assertThat(kept(source(first))).isEmpty();
        List<Problem> said = kept(source(second));
        assertThat(said).hasSize(1);
        assertThat(said.get(0).code()).isEqualTo("id.looks-the-same");
        assertThat(said.get(0).values()).containsExactly(RecordKind.SOURCE.word(), second, first);
        assertThat(Books.codes(imported(source(second)))).containsExactly("id.looks-the-same");
        assertThat(bench.book.latest(Source.class))
                .noneMatch(version -> version.value().recordId().equals(second));
    }

    @Test
    void twoNamesOfOneFileAreHeldAgainstEachOther() {
        assertThat(imported(source("S-9"), source("s-9")))
                .containsExactly(Problem.warning("id", "id.differs-in-case", RecordKind.SOURCE.word(), "s-9", "S-9")
                        .at(Place.of("file.csv", 3)));
    }

    @Test
    void anotherCaseIsADoubtAndAnotherKindIsNothing() {
        assertThat(kept(source("S-9"), source("s-9"), Samples.meter("S-9", MeterType.B)))
                .isEmpty();
        assertThat(new Namesakes(bench.book).look(source("S-9"))).isEmpty();
        assertThat(new Namesakes(bench.book).look(Samples.meter("s-9", MeterType.B)))
                .map(Problem::isError)
                .contains(false);
    }

    @Test
    void whatAnOldBookHoldsCanStillBeCorrected() {
        MemoryLabBook old = new MemoryLabBook(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
        Source before = Samples.source("S\n1", Role.FINE, "Ledge\u202E");
        old.holdAsBefore(before);
        Source after = new Source(
                before.id(),
                "A better name",
                before.role(),
                before.place(),
                before.ledge(),
                before.relativeDensity(),
                before.absorptionPercent(),
                before.remarks());
        assertThat(old.keep(List.of(new Draft(after, 1)), "R. Vale", "named")).isEmpty();
        Source worse = new Source(
                after.id(),
                after.name(),
                after.role(),
                after.place(),
                "Le\u202Edge",
                after.relativeDensity(),
                after.absorptionPercent(),
                after.remarks());
        assertThat(old.keep(List.of(new Draft(worse, 2)), "R. Vale", "named"))
                .extracting(Problem::field)
                .containsExactly("ledge");
    }
}

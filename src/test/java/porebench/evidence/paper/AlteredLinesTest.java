package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.CardState;
import porebench.evidence.Evidence;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Texts of real cards, altered: which line it was is said where that can be known, and nothing where it cannot. */
class AlteredLinesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
    private static final LocalDateTime NOON = DAY.atTime(12, 0);
    private static final String MIX = "M-1";

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix(MIX, "S-1", "S-2"),
                Samples.determination("M-1/1", MIX),
                Samples.trial("T-1", MIX, "M-1/1", "5.4"),
                Samples.issue(MIX, 1, "M-1/1", DAY));
    }

    @AfterEach
    void end() {
        book.close();
    }

    private FactorIssue issue() {
        return book.latest(FactorIssue.class, MIX + "/r1").orElseThrow().value();
    }

    private String text(PaperLanguage language, LocalDateTime moment) {
        FactorCard card = FactorCard.of(
                        Evidence.of(book, new MixId(MIX)).orElseThrow(),
                        issue(),
                        book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                        book.head(),
                        moment)
                .sealedBy(CardSeal.of(book, issue()));
        return CardText.of(card, CardWords.in(language));
    }

    private List<Problem> lines(String text, LocalDateTime moment) {
        CardCheck check = CardCheck.of(book, text, moment);
        assertThat(check.verdict()).isEqualTo(CardCheck.Verdict.ALTERED);
        return check.problems().stream()
                .filter(problem -> problem.code().startsWith("cardcheck.line")
                        || problem.code().equals("cardcheck.code-only"))
                .toList();
    }

    private static List<String> said(List<Problem> problems) {
        return problems.stream()
                .map(problem -> problem.code().replace("cardcheck.", "") + ": "
                        + (problem.values().isEmpty() ? "" : problem.values().get(0)))
                .toList();
    }

    private static String line(String text, String begin) {
        return text.lines().filter(one -> one.startsWith(begin)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(PaperLanguage.class)
    void aLineThatWasChangedIsNamedAsItWasAndAsItIs(PaperLanguage language) {
        String text = text(language, NOON);
        String said = line(text, CardWords.in(language).say("card.subtract"));
        String changed = said.replaceFirst("\\d[.,]\\d", "9.9");
        assertThat(said(lines(text.replace(said, changed), NOON)))
                .containsExactly("line-gone: " + said, "line-added: " + changed);
        // A phone that breaks no lines: the line of the card is known, that of the text has no end.
        assertThat(said(lines(text.replace(said, changed).replace("\n", " "), NOON)))
                .containsExactly("line-gone: " + said);
    }

    @Test
    void aLineLeftOutAndOneAddedAreNamed() {
        String text = text(PaperLanguage.ENGLISH, NOON);
        String passes = line(text, "Load passes");
        assertThat(said(lines(text.replace(passes + "\n", ""), NOON))).containsExactly("line-gone: " + passes);
        assertThat(said(lines("Subtract nothing on Sundays\n" + text, NOON)))
                .containsExactly("line-added: Subtract nothing on Sundays");
    }

    @Test
    void aFigureThatOnlyBeginsLikeTheRightOneIsNotTakenForIt() {
        String text = text(PaperLanguage.ENGLISH, NOON);
        String recheck = line(text, "Recheck by");
        assertThat(said(lines(text.replace(recheck, recheck + "0"), NOON)))
                .containsExactly("line-gone: " + recheck, "line-added: " + recheck + "0");
    }

    @Test
    void linesInAnotherOrderAreSaidToBeThat() {
        String text = text(PaperLanguage.ENGLISH, NOON);
        String first = text.lines().findFirst().orElseThrow();
        String second = text.lines().skip(1).findFirst().orElseThrow();
        assertThat(said(lines(text.replace(first + "\n" + second, second + "\n" + first), NOON)))
                .containsExactly("line-order: ");
    }

    @Test
    void anAlteredCodeUnderTheRightLinesIsSaidToBeThat() {
        String text = text(PaperLanguage.FRENCH, NOON);
        String other = text.substring(0, text.length() - 1) + (text.endsWith("A") ? "B" : "A");
        assertThat(said(lines(other, NOON))).containsExactly("code-only: ");
    }

    @Test
    void whereTextAndCodeWereAlteredNoLineIsNamed() {
        String text = text(PaperLanguage.ENGLISH, NOON);
        String other = text.substring(0, text.length() - 1) + (text.endsWith("A") ? "B" : "A");
        assertThat(said(lines(other.replace("Recheck by", "Recheck after"), NOON)))
                .containsExactly("line-unknown: M-1/r1");
    }

    /** The card was handed out when the revision was in force; it is looked at when another one has taken its place. */
    @Test
    void aCardFromBeforeTheNextRevisionIsComparedAsItWasHandedOut() {
        String text = text(PaperLanguage.ENGLISH, NOON);
        Books.keep(book, Samples.issue(MIX, 2, "M-1/1", DAY.plusDays(10)));
        LocalDateTime later = NOON.plusDays(11);
        assertThat(CardCheck.of(book, text, later).state()).contains(CardState.REPLACED);
        String recheck = line(text, "Recheck by");
        assertThat(text(PaperLanguage.ENGLISH, later)).doesNotContain(recheck).startsWith("REPLACED");
        assertThat(said(lines(text.replace(recheck, "Recheck by 2030-01-01"), later)))
                .containsExactly("line-gone: " + recheck, "line-added: Recheck by 2030-01-01");
        // Between: the next one is known, and the card says so.
        String between = text(PaperLanguage.ENGLISH, NOON.plusDays(1));
        String until = line(between, "Recheck by");
        assertThat(until).isNotEqualTo(recheck);
        assertThat(said(lines(between.replace(until, recheck), later)))
                .containsExactly("line-gone: " + until, "line-added: " + recheck);
        // And the copy for the file as it is marked now.
        String marked = text(PaperLanguage.ENGLISH, later);
        String mark = marked.lines().findFirst().orElseThrow();
        assertThat(said(lines(marked.replace(mark + "\n", ""), later))).containsExactly("line-gone: " + mark);
    }

    @Test
    void aTextThatIsNoneOrFarTooLongIsRefusedBeforeItIsLookedAt() {
        assertThat(CardCheck.unusable(" \n").map(Problem::code)).contains("cardcheck.blank");
        // Two bytes each in UTF-8.
        assertThat(CardCheck.unusable("\u00e9".repeat(50_000))).isEqualTo(Optional.empty());
        assertThat(CardCheck.unusable("\u00e9".repeat(50_001)).map(Problem::code))
                .contains("cardcheck.too-long");
    }
}

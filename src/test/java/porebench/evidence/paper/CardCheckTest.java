package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardCheck.Verdict;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.Laboratory;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** The texts of cards held against a real lab book. */
class CardCheckTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
    private static final LocalDateTime NOON = DAY.atTime(12, 0);
    private static final String MIX = "M [1]";
    private static final String BODY =
            "Mix M [1], revision 1. Subtract G 0.4 % air.\nPasses at readings from 4.9 to 7.9.";

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void begin() {
        book = bookAt("book.porebench");
    }

    private LabBook bookAt(String name) {
        LabBook made = Books.fresh(folder.resolve(name));
        keep(made);
        return made;
    }

    private static void keep(LabBook made) {
        Books.keep(
                made,
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

    private CardSeal seal() {
        return CardSeal.of(book, MIX + "/r1").orElseThrow();
    }

    private CardCheck check(String text) {
        return CardCheck.of(book, text, NOON);
    }

    private static List<String> codes(CardCheck check) {
        return check.problems().stream().map(Problem::code).toList();
    }

    private static CardPrint print(int number, String where) {
        return new CardPrint(new MixId(MIX), 1, number, "A6", where);
    }

    @Test
    void aTextAsItWasSealedIsUnalteredAlsoByAnotherPhone() {
        Books.keep(
                book,
                print(1, CardPrint.PRINTER),
                print(2, "/tmp/a.pdf"),
                print(3, "x").notReleased());
        String sealed = seal().sealed(BODY);
        assertThat(sealed).startsWith(BODY + "\n[M [1]/r1] ");
        for (String text : List.of(sealed, sealed.replace("\n", "\r\n") + "\n\n", sealed.replace("\n", "  "))) {
            CardCheck check = check(text);
            assertThat(check.verdict()).isEqualTo(Verdict.UNALTERED);
            assertThat(check.problems()).isEmpty();
            assertThat(check.state()).contains(CardState.IN_FORCE);
            assertThat(check.issue().map(FactorIssue::revision)).contains(1);
            assertThat(check.copies()).isEqualTo(2);
        }
        assertThat(CardCheck.isSealed(sealed)).isTrue();
        assertThat(CardCheck.isSealed(BODY)).isFalse();
    }

    @Test
    void aCodeTypedFromPaperInSmallLettersWithoutItsGroupsIsTheSame() {
        String sealed = seal().sealed(BODY);
        String code = sealed.substring(sealed.length() - 9);
        String typed = sealed.replace(code, code.replace("-", "").toLowerCase(Locale.ROOT));
        assertThat(check(typed).verdict()).isEqualTo(Verdict.UNALTERED);
    }

    @Test
    void anotherFactorAnotherDashOrAnotherCodeIsAltered() {
        String sealed = seal().sealed(BODY);
        char last = sealed.charAt(sealed.length() - 1);
        for (String text : List.of(
                sealed.replace("0.4", "0.3"),
                sealed.replace("4.9", "4.8"),
                "More. " + sealed,
                sealed.substring(0, sealed.length() - 1) + (last == 'A' ? 'B' : 'A'),
                sealed.substring(0, sealed.length() - 1) + "0")) {
            CardCheck check = check(text);
            assertThat(check.verdict()).as(text).isEqualTo(Verdict.ALTERED);
            assertThat(codes(check)).contains("cardcheck.altered");
            assertThat(check.issue()).isPresent();
        }
    }

    @Test
    void theTextOfARevisionThatTheBookDoesNotHoldIsUnknown() {
        String sealed = seal().sealed(BODY);
        for (String text : List.of(sealed.replace("/r1]", "/r2]"), sealed.replace("[M [1]/r1]", "[M-2/r1]"))) {
            assertThat(check(text).verdict()).as(text).isEqualTo(Verdict.UNKNOWN);
            assertThat(check(text).issue()).isEqualTo(Optional.empty());
        }
        assertThat(codes(check(sealed.replace("[M [1]/r1]", "[M-2/r1]")))).containsExactly("cardcheck.unknown");
    }

    @Test
    void anotherLabBookWithTheSameRecordsSealsOtherwise() {
        String sealed = seal().sealed(BODY);
        try (LabBook other = Books.fresh(folder.resolve("other.porebench"))) {
            Books.keep(other, Samples.source("S-9", Role.FINE, "1"));
            keep(other);
            assertThat(CardCheck.of(other, sealed, NOON).verdict()).isEqualTo(Verdict.ALTERED);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Subtract G 0.4", "[M [1]/r1]", "M-1/r1 ABCD-EFGH", "[M-1/r0] ABCD-EFGH"})
    void aTextWithoutACodeIsSaidToHaveNone(String text) {
        CardCheck check = check(text);
        assertThat(check.verdict()).isEqualTo(Verdict.NO_CODE);
        assertThat(codes(check)).containsExactly("cardcheck.no-code");
        assertThat(Problem.anyError(check.problems())).isTrue();
    }

    @Test
    void whatNeverLeftAndWhatNoLongerHoldsIsSaidWithIt() {
        String sealed = seal().sealed(BODY);
        assertThat(codes(check(sealed))).containsExactly("cardcheck.none-left");
        Books.keep(book, Samples.issue(MIX, 2, "M-1/1", DAY.plusDays(1)), print(1, CardPrint.PRINTER));
        CardCheck later = CardCheck.of(book, sealed, NOON.plusDays(1));
        assertThat(later.verdict()).isEqualTo(Verdict.UNALTERED);
        assertThat(codes(later)).containsExactly("issue.not-usable");
        assertThat(later.state()).contains(CardState.REPLACED);
        assertThat(Problem.anyError(later.problems())).isFalse();
    }

    @Test
    void aCorrectionOfTheRevisionsRecordLeavesItsCardsAsTheyAre() {
        String sealed = seal().sealed(BODY);
        Version<FactorIssue> kept = book.latest(FactorIssue.class, MIX + "/r1").orElseThrow();
        assertThat(book.keep(
                        List.of(Draft.correcting(
                                kept, kept.value().under(kept.value().terms()))),
                        "A",
                        "B"))
                .isEmpty();
        assertThat(book.history(FactorIssue.class, MIX + "/r1")).hasSize(2);
        assertThat(check(sealed).verdict()).isEqualTo(Verdict.UNALTERED);
    }

    @Test
    void aCardOfATrainingBookIsNoCardToWorkBy() {
        FactorIssue issue = Samples.issue(MIX, 1, "M-1/1", DAY);
        FactorIssue simulated = issue.on(new Grounds(Map.of(), Map.of(), List.of(), FactorOrigin.HERE, true));
        MemoryLabBook practice = new MemoryLabBook(Books.CLOCK);
        practice.holdAsBefore(new Laboratory("Practice", "", true));
        practice.holdAsBefore(issue);
        MemoryLabBook elsewhere = new MemoryLabBook(Books.CLOCK);
        elsewhere.holdAsBefore(simulated);
        for (MemoryLabBook training : List.of(practice, elsewhere)) {
            String sealed = CardSeal.of(training, issue).orElseThrow().sealed(BODY);
            CardCheck check = CardCheck.of(training, sealed, NOON);
            assertThat(check.verdict()).isEqualTo(Verdict.TRAINING);
            assertThat(codes(check)).contains("cardcheck.training");
            assertThat(check.state()).isEqualTo(Optional.empty());
            assertThat(CardCheck.of(training, sealed.replace("0.4", "0.3"), NOON)
                            .verdict())
                    .isEqualTo(Verdict.ALTERED);
        }
    }

    @Test
    void theKeyIsNowhereShown() {
        assertThat(seal().key()).matches("[0-9a-f]{64}");
        assertThat(seal().toString()).isEqualTo("CardSeal[M [1]/r1]");
        assertThat(CardSeal.of(book, "M-9/r1")).isEmpty();
        assertThat(seal().sealed(BODY)).doesNotContain(seal().key());
        assertThat(seal().sealed(BODY)).endsWith(seal().code(BODY).printed());
    }
}

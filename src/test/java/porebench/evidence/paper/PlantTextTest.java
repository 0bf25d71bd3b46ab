package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.paper.CardCheck.Verdict;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.print.Cards;
import porebench.print.Plants;
import porebench.record.FactorIssue;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

/** The plain text of a plant's card, and its names at the end. */
class PlantTextTest {
    @TempDir
    Path folder;

    @Test
    void saysOfEachMixItsNumberAndWhatItHoldsFor() {
        String text = PlantText.of(Plants.usual(2), CardWords.in(PaperLanguage.GERMAN));
        assertThat(text)
                .startsWith("Werk: North\nTarnwick Materials Laboratory\nGedruckt" + " 2026-11-25\n")
                .contains("\nTW-201, Bridge deck, 35 MPa, 20 mm stone\nABZIEHEN 0,1 % Luft. Revision 3, Typ B, ASTM"
                        + " C231/C231M. Nachpr\u00fcfen bis 2027-11-24.\n")
                .containsPattern("\n\\[TW-201/r3 \\+ TW-202/r3] [2-9A-Z]{4}-[2-9A-Z]{4}$")
                .doesNotContain("Karte 1 von");
        assertThat(PlantText.of(Plants.training(), CardWords.in(PaperLanguage.ENGLISH)))
                .startsWith("SIMULATED. ");
        assertThat(PlantText.of(Plants.usual(7).on(2).get(1), CardWords.in(PaperLanguage.ENGLISH)))
                .contains("\nCard 2 of 2\n", "TW-204", "TW-207", "look on the other cards")
                .doesNotContain("TW-203");
    }

    @Test
    void aRowWithoutAFactorOrTitleSaysSoAndARevisionOfNoBookLeavesNoCode() {
        PlantCard.Row without = PlantCard.Row.without(new MixId("TW-9"), "");
        PlantCard card = Plants.of(List.of(Plants.row(1), without));
        assertThat(PlantText.of(card, CardWords.in(PaperLanguage.ENGLISH)))
                .contains("\nTW-9\nNO FACTOR. Take no number of another row: ask the laboratory.\n[TW-201/r3] ");
        FactorCard unkept = Cards.usual().sealedBy(Optional.empty());
        PlantCard none = Plants.of(List.of(Plants.row(1), PlantCard.Row.of(unkept)));
        assertThat(none.seal()).isEmpty();
        assertThat(PlantText.of(none, CardWords.in(PaperLanguage.ENGLISH))).endsWith("Recheck by 2027-11-24.");
        assertThat(Plants.ofNobody().isTraining()).isFalse();
        assertThat(CardSeal.together(List.of())).isEmpty();
    }

    /** Names of mixes may hold brackets, plus signs and even the name of a revision. */
    @Test
    void namesThatLookLikeSeveralRevisionsAreReadAsWhatTheyAre() {
        try (LabBook book = Books.fresh(folder.resolve("book.porebench"))) {
            Books.keep(
                    book,
                    Samples.source("S-1", Role.FINE, "1"),
                    Samples.source("S-2", Role.COARSE, "1"),
                    Samples.meter("B-1", MeterType.B));
            List<String> mixes = List.of("A", "B [2]", "A/r1 + B [2]");
            for (String mix : mixes) {
                Books.keep(
                        book,
                        Samples.mix(mix, "S-1", "S-2"),
                        Samples.determination(mix + "/1", mix),
                        Samples.trial("T-" + mix, mix, mix + "/1", "5.4"),
                        Samples.issue(mix, 1, mix + "/1", LocalDate.of(2026, 3, 9)));
            }
            List<CardSeal> seals = mixes.stream()
                    .map(mix -> CardSeal.of(book, mix + "/r1").orElseThrow())
                    .toList();
            String two = CardSeal.together(seals.subList(0, 2)).orElseThrow().sealed("two rows");
            assertThat(two).startsWith("two rows\n[A/r1 + B [2]/r1] ");
            assertThat(names(book, two)).containsExactly("A/r1", "B [2]/r1");
            String one = seals.get(2).sealed("a card of its own");
            assertThat(one).contains("[A/r1 + B [2]/r1] ");
            assertThat(names(book, one)).containsExactly("A/r1 + B [2]/r1");
            CardCheck altered = CardCheck.of(
                    book, two.replace("two", "six"), LocalDate.of(2026, 3, 10).atStartOfDay());
            assertThat(altered.verdict()).isEqualTo(Verdict.ALTERED);
        }
    }

    /** The key of every row counts, so that no row can be put in by somebody who has the key of another one. */
    @Test
    void theCodeHangsOnTheKeysOfAllRows() {
        CardSeal first = new CardSeal("A/r1", "k1");
        String both = CardSeal.together(List.of(first, new CardSeal("B/r1", "k2")))
                .orElseThrow()
                .sealed("text");
        String other = CardSeal.together(List.of(first, new CardSeal("B/r1", "k3")))
                .orElseThrow()
                .sealed("text");
        String swapped = CardSeal.together(List.of(new CardSeal("A/r1", "k4"), new CardSeal("B/r1", "k2")))
                .orElseThrow()
                .sealed("text");
        assertThat(List.of(both, other, swapped))
                .doesNotHaveDuplicates()
                .allMatch(text -> text.startsWith("text\n[A/r1 + B/r1] "));
    }

    private static List<String> names(LabBook book, String text) {
        CardCheck check = CardCheck.of(book, text, LocalDate.of(2026, 3, 10).atStartOfDay());
        assertThat(check.verdict()).isEqualTo(Verdict.UNALTERED);
        return Stream.concat(check.issue().stream(), check.others().stream())
                .map(FactorIssue::recordId)
                .toList();
    }
}

package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.CardState;
import porebench.evidence.custody.CardActs;
import porebench.evidence.custody.CardChoice;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.paper.CardCheck;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.print.PageText;
import porebench.print.PdfPress;
import porebench.record.CardHolder;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardStep.Act;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** A plant's mixes on one card: recorded for each mix, handed out and called back as the one paper that it is. */
class PlantBatchTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
    private static final LocalDateTime NOON = DAY.plusDays(4).atTime(12, 0);
    private static final CardLook A6 = CardLook.of(CardSize.A6, PaperLanguage.ENGLISH);
    private static final CardHolder TRUCK = new CardHolder(CardHolder.Kind.TRUCK, "12");

    @TempDir
    Path folder;

    private LabBook book;
    private final Press press = new PdfPress("Porebench test", Books.CLOCK, ZoneOffset.UTC);

    /** M-1 to M-7 of plant North have a factor and need two cards of A6; N-1 of plant South has one. */
    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B));
        for (int mix = 1; mix <= 7; mix++) {
            issued("M-" + mix, "North");
        }
        issued("N-1", "South");
    }

    @AfterEach
    void end() {
        book.close();
    }

    private void issued(String mix, String plant) {
        Books.keep(
                book,
                mix(mix, plant),
                Samples.determination(mix + "/1", mix),
                Samples.trial("T-" + mix, mix, mix + "/1", "5.4"),
                Samples.issue(mix, 1, mix + "/1", DAY));
    }

    private static MixDesign mix(String id, String plant) {
        MixDesign bare = Samples.mix(id, "S-1", "S-2");
        return new MixDesign(
                bare.id(),
                bare.title(),
                bare.batch(),
                bare.soakMinutes(),
                bare.airTolerancePercent(),
                bare.profileId(),
                bare.remarks(),
                Optional.of(plant));
    }

    /** However it is written: the card names it as the mix designs do. */
    private static CardChoice north() {
        return new CardChoice(List.of(), Optional.of("north"), false);
    }

    private Answer<List<CardHandout.Handed>> save(
            CardChoice choice, boolean leaveOut, CardSize size, Progress progress) {
        CardLook look = CardLook.of(size, PaperLanguage.ENGLISH);
        CardBatch.Wish wish = new CardBatch.Wish(choice, leaveOut, true, look, NOON, "R. Vale", "for truck 12");
        return new CardBatch(book, press, Locale.ENGLISH)
                .toFile(wish, OutputFile.replacing(folder.resolve("plant.pdf")), progress);
    }

    private List<CardPrint> save() {
        return save(north(), false, CardSize.A6, Progress.UNHEARD).value().orElseThrow().stream()
                .map(CardHandout.Handed::print)
                .toList();
    }

    private static List<String> codes(Answer<?> answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    private void nothingLeft() {
        assertThat(book.latest(CardPrint.class)).isEmpty();
        assertThat(folder.resolve("plant.pdf")).doesNotExist();
    }

    private Custody custody(LocalDateTime at) {
        return Custody.ofLaboratory(
                book, LaboratoryStanding.of(book, Progress.UNHEARD).rows(at), at);
    }

    /** Keeps that something happened; returns the steps. */
    private List<CardStep> happens(Act act, String remark, LocalDateTime at, String... cards) {
        Optional<CardHolder> holder = act == Act.HANDED_OUT ? Optional.of(TRUCK) : Optional.empty();
        List<CardStep> steps = new CardActs(act, holder, at, "R. Vale", remark)
                .steps(custody(at), List.of(cards))
                .value()
                .orElseThrow();
        assertThat(book.keep(steps.stream().map(Draft::of).toList(), "R. Vale", "told"))
                .isEmpty();
        return steps;
    }

    @Test
    void eachMixIsRecordedWithThePaperItStandsOn() throws IOException {
        long entries = book.head().entries();
        List<CardPrint> prints = save();
        assertThat(prints).extracting(CardPrint::recordId).hasSize(7).contains("M-1/r1/1", "M-7/r1/1");
        // Seven rows go evenly on two pages: three and four.
        assertThat(prints.stream().limit(3))
                .allMatch(print -> print.paper().equals("A6, card " + entries + " page 1 of plant North"));
        assertThat(prints.stream().skip(3))
                .allMatch(print -> print.paper().equals("A6, card " + entries + " page 2 of plant North"));
        assertThat(PageText.of(Files.readAllBytes(folder.resolve("plant.pdf"))))
                .contains("M-1", "M-7", "Card 2 of 2")
                .doesNotContain("N-1");
        assertThat(save())
                .allMatch(print -> print.number() == 2 && print.paper().contains("card " + (entries + 7)));
    }

    @Test
    void everyCodeOnItsPagesIsUnalteredUntilADigitIsChanged() throws IOException {
        save();
        for (String text : codesOfPages()) {
            CardCheck check = CardCheck.of(book, text, NOON);
            assertThat(check.verdict()).isEqualTo(CardCheck.Verdict.UNALTERED);
            assertThat(check.problems()).isEmpty();
            assertThat(check.copies()).isEqualTo(1);
            assertThat(check.others()).hasSizeBetween(2, 3);
            assertThat(CardCheck.isSealed(text)).isTrue();
            String altered = text.replaceFirst("SUBTRACT 0\\.4", "SUBTRACT 0.3");
            assertThat(altered).isNotEqualTo(text);
            CardCheck found = CardCheck.of(book, altered, NOON);
            assertThat(found.verdict()).isEqualTo(CardCheck.Verdict.ALTERED);
            assertThat(found.problems()).extracting(Problem::code).contains("cardcheck.altered");
            assertThat(CardCheck.of(book, text.replace("/r1 + ", "/r9 + "), NOON)
                            .verdict())
                    .isEqualTo(CardCheck.Verdict.UNKNOWN);
        }
        Books.keep(book, Samples.issue("M-2", 2, "M-2/1", DAY.plusDays(3)));
        CardCheck late = CardCheck.of(book, codesOfPages().get(0), NOON);
        assertThat(late.verdict()).isEqualTo(CardCheck.Verdict.UNALTERED);
        assertThat(late.issue().map(FactorIssue::recordId)).contains("M-2/r1");
        assertThat(late.state()).contains(CardState.REPLACED);
        assertThat(late.others()).extracting(FactorIssue::recordId).containsExactly("M-1/r1", "M-3/r1");
        assertThat(late.problems()).hasSize(1).noneMatch(Problem::isError);
    }

    private List<String> codesOfPages() throws IOException {
        List<String> all = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(folder.resolve("plant.pdf").toFile())) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                Path file = folder.resolve("page.png");
                ImageIO.write(new PDFRenderer(document).renderImageWithDPI(page, 400), "png", file.toFile());
                all.addAll(press.codes(file).value().orElseThrow());
            }
        }
        return all;
    }

    @Test
    void aMixWithoutAFactorStopsTheCardOrStandsOnItAsThat() throws IOException {
        Books.keep(book, mix("M-9", "North"));
        Answer<?> refused = save(north(), false, CardSize.A6, Progress.UNHEARD);
        assertThat(refused.value()).isEmpty();
        assertThat(codes(refused)).containsExactly("issue.none-in-force");
        nothingLeft();
        Answer<List<CardHandout.Handed>> made = save(north(), true, CardSize.A6, Progress.UNHEARD);
        assertThat(made.value().orElseThrow()).hasSize(7);
        assertThat(made.problems()).singleElement().matches(problem -> !problem.isError());
        assertThat(PageText.of(Files.readAllBytes(folder.resolve("plant.pdf")))).contains("M-9", "NO FACTOR");
    }

    @Test
    void aPlantWithoutAnyFactorHasNoCard() {
        Books.keep(book, mix("O-1", "East"));
        Answer<?> refused =
                save(new CardChoice(List.of(), Optional.of("East"), false), true, CardSize.A6, Progress.UNHEARD);
        assertThat(codes(refused)).containsExactly("issue.none-in-force");
        nothingLeft();
    }

    @Test
    void onlyAPlantHasOneCard() {
        for (CardChoice choice : List.of(
                CardChoice.IN_FORCE,
                CardChoice.of(List.of(new MixId("M-1"))),
                new CardChoice(List.of(new MixId("N-1")), Optional.of("North"), false),
                new CardChoice(List.of(), Optional.of("North"), true))) {
            assertThat(codes(save(choice, true, CardSize.A6, Progress.UNHEARD))).containsExactly("cards.on-one-plant");
        }
        assertThat(codes(save(
                        new CardChoice(List.of(), Optional.of("West"), false), true, CardSize.A6, Progress.UNHEARD)))
                .containsExactly("cards.no-plant");
        nothingLeft();
    }

    @Test
    void whatDoesNotFitOrIsEndedLeavesNothing() {
        assertThatThrownBy(() -> save(north(), false, CardSize.WALLET, Progress.UNHEARD))
                .isInstanceOf(OutputRefused.class);
        assertThatThrownBy(() -> save(north(), false, CardSize.A6, (stage, done, all) -> {
                    if (stage == Progress.Stage.PRINTING) {
                        throw new CancellationException();
                    }
                }))
                .isInstanceOf(CancellationException.class);
        nothingLeft();
    }

    /** Handed out by the name of one mix, all seven are with the truck; the revision of any of them calls it back. */
    @Test
    void aTruckWithThePlantsCardIsOnTheRecallListOfEachOfItsMixes() {
        save();
        List<CardStep> steps = happens(Act.HANDED_OUT, "", NOON, "M-5/r1/1");
        assertThat(steps).hasSize(7).allMatch(step -> step.holder().equals(Optional.of(TRUCK)));
        assertThat(steps.get(0).cardId()).isEqualTo("M-5/r1/1");
        assertThat(steps.get(0).remark()).matches("card \\d+ page 2 of plant North");
        assertThat(custody(NOON).heldBy(TRUCK)).hasSize(7);
        assertThat(custody(NOON).toComeBack()).isEmpty();
        Books.keep(book, Samples.issue("M-2", 2, "M-2/1", DAY.plusDays(5)));
        LocalDateTime later = DAY.plusDays(5).atTime(12, 0);
        assertThat(custody(later).toComeBack())
                .singleElement()
                .matches(card -> card.print().recordId().equals("M-2/r1/1")
                        && card.place().holder().equals(Optional.of(TRUCK)));
        happens(Act.RETURNED, "torn", later, "M-2/r1/1");
        assertThat(custody(later).toComeBack()).isEmpty();
        // The first page came back with its three mixes, the second is still in the truck.
        assertThat(custody(later).heldBy(TRUCK))
                .extracting(card -> card.print().mixId().text())
                .containsExactly("M-4", "M-5", "M-6", "M-7");
        assertThat(book.latest(CardStep.class, "M-1/r1/1/s2")
                        .map(Version::value)
                        .map(CardStep::remark))
                .hasValueSatisfying(remark -> assertThat(remark).matches("torn \\(card \\d+ page 1 of plant North\\)"));
    }

    /** The name of the plant's card is no reason: a card with one factor that is gone needs one, and one handed on. */
    @Test
    void aCardWithOneFactorThatIsGoneGoesToNobodyWithoutAReason() {
        save();
        Books.keep(book, Samples.issue("M-2", 2, "M-2/1", DAY.plusDays(5)));
        LocalDateTime later = DAY.plusDays(5).atTime(12, 0);
        CardActs act = new CardActs(Act.HANDED_OUT, Optional.of(TRUCK), later, "R. Vale", "");
        Answer<List<CardStep>> refused = act.steps(custody(later), List.of("M-1/r1/1"));
        assertThat(refused.value()).isEmpty();
        assertThat(refused.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("custody.factor-gone-without-remark");
            assertThat(problem.values()).containsExactly("M-2/r1/1");
        });
        happens(Act.HANDED_OUT, "no other mix today", later, "M-1/r1/1", "M-2/r1/1");
        assertThat(custody(later).toComeBack()).extracting(HeldCard::title).hasSize(1);
    }

    @Test
    void cardsOfTheirOwnAndOfOtherPrintsStayWhereTheyAre() {
        save();
        save();
        CardBatch.Wish own = new CardBatch.Wish(north(), false, A6, NOON, "R. Vale", "one each");
        new CardBatch(book, press, Locale.ENGLISH)
                .toFile(own, OutputFile.replacing(folder.resolve("own.pdf")), Progress.UNHEARD);
        assertThat(happens(Act.HANDED_OUT, "", NOON, "M-1/r1/1")).hasSize(7).allMatch(step -> step.print() == 1);
        List<CardStep> single = happens(Act.HANDED_OUT, "", NOON, "M-1/r1/3");
        assertThat(single).hasSize(1).allMatch(step -> step.remark().isEmpty());
        assertThat(custody(NOON).heldBy(TRUCK)).hasSize(8);
    }
}

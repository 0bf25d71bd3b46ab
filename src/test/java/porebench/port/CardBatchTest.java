package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.custody.CardChoice;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.MixDesign;
import porebench.record.SampleCards;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Cards of many mixes leave together: all recorded and all in one file, or none. */
class CardBatchTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
    private static final CardLook A6 = CardLook.of(CardSize.A6, PaperLanguage.ENGLISH);

    @TempDir
    Path folder;

    private LabBook book;
    private final Press press = new PdfPress("Porebench test", Books.CLOCK, ZoneOffset.UTC);

    /** M-1 and M-2 of plant North have a factor, M-3 of plant South has none, a card of M-2 is out on a replaced factor. */
    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                mix("M-1", "North"),
                mix("M-2", "North"),
                mix("M-3", "South"));
        for (String mix : List.of("M-1", "M-2")) {
            Books.keep(
                    book,
                    Samples.determination(mix + "/1", mix),
                    Samples.trial("T-" + mix, mix, mix + "/1", "5.4"),
                    Samples.issue(mix, 1, mix + "/1", DAY));
        }
        Books.keep(
                book,
                Samples.issue("M-2", 2, "M-2/1", DAY.plusDays(3)),
                SampleCards.printed("M-2", 1),
                SampleCards.handedOut("M-2", 1, "12"));
    }

    @AfterEach
    void end() {
        book.close();
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

    private static CardChoice named(String... mixes) {
        return CardChoice.of(Stream.of(mixes).map(MixId::new).toList());
    }

    private static CardBatch.Wish wish(CardChoice choice, boolean leaveOut, CardLook look) {
        LocalDateTime moment = DAY.plusDays(4).atTime(12, 0);
        return new CardBatch.Wish(choice, leaveOut, look, moment, "R. Vale", "new cards");
    }

    private Answer<List<CardHandout.Handed>> save(LabBook from, Press by, CardBatch.Wish wish, Progress progress) {
        return new CardBatch(from, by, Locale.ENGLISH)
                .toFile(wish, OutputFile.fresh(folder.resolve("cards.pdf")), progress);
    }

    private Answer<List<CardHandout.Handed>> save(CardChoice choice, boolean leaveOut) {
        return save(book, press, wish(choice, leaveOut, A6), Progress.UNHEARD);
    }

    private static List<String> codes(Answer<?> answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    private static List<String> names(Answer<List<CardHandout.Handed>> answer) {
        return answer.value().orElseThrow().stream()
                .map(handed -> handed.print().recordId())
                .toList();
    }

    private List<CardPrint> saved() {
        return book.latest(CardPrint.class).stream()
                .map(Version::value)
                .filter(print -> !print.destination().equals(CardPrint.PRINTER))
                .toList();
    }

    private void nothingLeft() throws IOException {
        assertThat(saved()).isEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .allMatch(name -> name.startsWith("book.porebench"));
        }
    }

    private int pages() throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void withoutAChoiceEveryMixWhoseFactorMayBeUsedGetsACard() throws IOException {
        Answer<List<CardHandout.Handed>> answer = save(CardChoice.IN_FORCE, false);
        assertThat(answer.problems()).isEmpty();
        assertThat(names(answer)).containsExactly("M-1/r1/1", "M-2/r2/1");
        assertThat(pages()).isEqualTo(2);
        assertThat(saved()).extracting(CardPrint::recordId).containsExactly("M-1/r1/1", "M-2/r2/1");
        assertThat(saved()).allSatisfy(print -> {
            assertThat(print.destination())
                    .isEqualTo(folder.resolve("cards.pdf").toAbsolutePath().toString());
            assertThat(print.paper()).isEqualTo("A6");
            assertThat(print.printedAt()).contains(DAY.plusDays(4).atTime(12, 0));
        });
    }

    @Test
    void cardsStandInTheOrderAskedForAndOnceEach() {
        assertThat(names(save(named("M-2", "M-1", "M-2"), false))).containsExactly("M-2/r2/1", "M-1/r1/1");
    }

    @Test
    void aPlantHasTheCardsOfItsMixesWhateverItsLetterCase() {
        assertThat(names(save(new CardChoice(List.of(), Optional.of(" north"), false), false)))
                .containsExactly("M-1/r1/1", "M-2/r2/1");
    }

    @Test
    void aRecallHasTheCardsOfItsMixesAlone() {
        // The card of M-1 is out on the revision in force: it is not called back.
        Books.keep(book, SampleCards.printed("M-1", 1), SampleCards.handedOut("M-1", 1, "4"));
        assertThat(names(save(new CardChoice(List.of(), Optional.empty(), true), false)))
                .containsExactly("M-2/r2/1");
    }

    @Test
    void choicesAreTakenTogether() {
        assertThat(names(save(new CardChoice(List.of(new MixId("M-1")), Optional.empty(), true), false)))
                .containsExactly("M-1/r1/1", "M-2/r2/1");
    }

    @Test
    void everyMixThatMayNotHaveACardIsNamedAndNothingIsWritten() throws IOException {
        Answer<List<CardHandout.Handed>> answer = save(named("M-1", "M-3", "M-9"), false);
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).containsExactly("issue.none-in-force", "book.not-there");
        assertThat(answer.problems()).allMatch(Problem::isError);
        assertThat(answer.problems().get(0).values()).contains("M-3");
        assertThat(answer.problems().get(1).values()).contains("M-9");
        nothingLeft();
    }

    @Test
    void theyAreLeftOutAndNamedWhereThatIsAskedFor() throws IOException {
        Answer<List<CardHandout.Handed>> answer = save(named("M-1", "M-3", "M-9"), true);
        assertThat(names(answer)).containsExactly("M-1/r1/1");
        assertThat(codes(answer)).containsExactly("issue.none-in-force", "book.not-there");
        assertThat(answer.problems()).noneMatch(Problem::isError);
        assertThat(pages()).isEqualTo(1);
    }

    @Test
    void whereNoneIsLeftNothingIsWritten() throws IOException {
        assertThat(save(named("M-3"), true).value()).isEmpty();
        nothingLeft();
    }

    @Test
    void aPlantWithoutMixesARecallWithoutCardsAndABookWithoutFactorsAreRefused() throws IOException {
        CardChoice both = new CardChoice(List.of(), Optional.of("West"), true);
        Books.keep(book, SampleCards.step("M-2", 1, 2, CardStep.Act.RETURNED, "", 2, ""));
        assertThat(codes(save(both, true))).containsExactly("cards.no-plant", "cards.none-recalled");
        CardBatch.Wish early = new CardBatch.Wish(
                CardChoice.IN_FORCE, true, A6, DAY.minusDays(1).atTime(9, 0), "R. Vale", "why");
        assertThat(codes(save(book, press, early, Progress.UNHEARD))).containsExactly("cards.none-in-force");
        nothingLeft();
    }

    @Test
    void cardsAreNumberedOnAfterThoseThatLeft() {
        save(CardChoice.IN_FORCE, false);
        Answer<List<CardHandout.Handed>> again = new CardBatch(book, press, Locale.ENGLISH)
                .toFile(
                        wish(CardChoice.IN_FORCE, false, A6),
                        OutputFile.fresh(folder.resolve("again.pdf")),
                        Progress.UNHEARD);
        assertThat(names(again)).containsExactly("M-1/r1/2", "M-2/r2/2");
        Answer<List<CardHandout.Handed>> third = new CardBatch(book, press, Locale.ENGLISH)
                .toFile(
                        wish(CardChoice.IN_FORCE, false, A6),
                        OutputFile.fresh(folder.resolve("third.pdf")),
                        Progress.UNHEARD);
        assertThat(names(third)).containsExactly("M-1/r1/3", "M-2/r2/3");
    }

    @Test
    void whatIsRecordedSaysLanguagesAndSheet() throws IOException {
        CardLook look = new CardLook(
                CardSize.WALLET,
                List.of(PaperLanguage.GERMAN, PaperLanguage.SPANISH_AMERICAS),
                Optional.of(CardLook.Sheet.LETTER),
                CardLook.ALL);
        assertThat(save(book, press, wish(CardChoice.IN_FORCE, false, look), Progress.UNHEARD)
                        .problems())
                .isEmpty();
        assertThat(saved()).extracting(CardPrint::paper).containsOnly("wallet de+es-419 on letter");
        assertThat(pages()).isEqualTo(1);
    }

    /** Ended at any of its stages it leaves neither a file nor a record. */
    @Test
    void whoeverEndsItFindsNothingLeft() throws IOException {
        for (Progress.Stage stage :
                List.of(Progress.Stage.WORKING_OUT, Progress.Stage.PRINTING, Progress.Stage.KEEPING)) {
            boolean[] reached = {false};
            assertThatThrownBy(() -> save(book, press, wish(named("M-1", "M-2"), false, A6), (now, done, of) -> {
                        if (now == stage) {
                            reached[0] = true;
                            throw new CancellationException("ended");
                        }
                    }))
                    .isInstanceOf(CancellationException.class);
            assertThat(reached[0]).as("%s", stage).isTrue();
            nothingLeft();
        }
    }

    @Test
    void aFileThatIsThereIsRefusedBeforeAnythingIsRead() throws IOException {
        Files.writeString(folder.resolve("cards.pdf"), "mine");
        assertThatThrownBy(() -> save(refusingReads(), press, wish(CardChoice.IN_FORCE, false, A6), Progress.UNHEARD))
                .isInstanceOf(OutputRefused.class);
        assertThat(folder.resolve("cards.pdf")).hasContent("mine");
        assertThat(saved()).isEmpty();
    }

    private LabBook refusingReads() {
        return answering("latest", () -> {
            throw new IllegalStateException("read");
        });
    }

    private LabBook answering(String method, Supplier<Object> answer) {
        return (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, called, arguments) -> {
                    if (called.getName().equals(method)) {
                        return answer.get();
                    }
                    try {
                        return called.invoke(book, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
    }

    /** Somebody else may take a number meanwhile; after five tries it is no chance any more. */
    @Test
    void whatCannotBeRecordedIsNotWritten() throws IOException {
        int[] tries = {0};
        LabBook busy = answering("keep", () -> {
            tries[0]++;
            return List.of(Problem.error("record", "book.already-there", "M-1/r1/1"));
        });
        Answer<List<CardHandout.Handed>> answer =
                save(busy, press, wish(CardChoice.IN_FORCE, false, A6), Progress.UNHEARD);
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).containsExactly("book.already-there", "cards.not-recorded");
        assertThat(tries[0]).isEqualTo(5);
        nothingLeft();
    }

    /** A press whose file cannot take its place in the end. */
    private Press jamming() {
        return (Press) Proxy.newProxyInstance(
                Press.class.getClassLoader(), new Class<?>[] {Press.class}, (proxy, called, arguments) -> {
                    Waiting waiting = (Waiting) called.invoke(press, arguments);
                    return new Waiting() {
                        @Override
                        public void release() {
                            throw new IllegalStateException("the disk is full");
                        }

                        @Override
                        public void close() {
                            waiting.close();
                        }
                    };
                });
    }

    @Test
    void whatWasRecordedAndCouldNotLeaveIsRecordedAsThat() throws IOException {
        Answer<List<CardHandout.Handed>> answer =
                save(book, jamming(), wish(CardChoice.IN_FORCE, false, A6), Progress.UNHEARD);
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).containsExactly("cards.not-released");
        assertThat(answer.problems().get(0).values()).contains(2, "the disk is full");
        assertThat(saved()).hasSize(2).allMatch(print -> print.way() == CardPrint.Way.NOT_RELEASED);
        assertThat(folder.resolve("cards.pdf")).doesNotExist();
    }

    @Test
    void whereThatCannotBeRecordedEitherItIsSaid() {
        int[] kept = {0};
        LabBook second = answering("keep", () -> {
            kept[0]++;
            if (kept[0] > 1) {
                throw new IllegalStateException("gone");
            }
            return List.of();
        });
        assertThat(codes(save(second, jamming(), wish(CardChoice.IN_FORCE, false, A6), Progress.UNHEARD)))
                .containsExactly("cards.not-released-but-recorded", "cards.not-corrected");
    }
}

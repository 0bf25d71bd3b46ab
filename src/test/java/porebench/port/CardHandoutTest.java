package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.Printed;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.CardPrint;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** A card is recorded before it leaves; what cannot be recorded stays, what cannot leave is recorded as that. */
class CardHandoutTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
    private static final MixId MIX = new MixId("M-1");

    @TempDir
    Path folder;

    private LabBook book;
    private final Press press = new PdfPress("Porebench test", Books.CLOCK, java.time.ZoneOffset.UTC);

    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                Samples.issue("M-1", 1, "M-1/1", DAY));
    }

    @AfterEach
    void end() {
        book.close();
    }

    private static CardHandout.Wish wish(LocalDate day, boolean marked) {
        return new CardHandout.Wish(
                MIX, Optional.empty(), Paper.A6, marked, day.atTime(12, 0), "R. Vale", "factor card");
    }

    private Answer<CardHandout.Handed> save(Press by, LocalDate day, boolean marked) {
        return new CardHandout(book, by, Locale.ENGLISH)
                .toFile(wish(day, marked), OutputFile.fresh(folder.resolve("card.pdf")));
    }

    private List<Version<CardPrint>> prints() {
        return book.latest(CardPrint.class);
    }

    private static List<String> codes(Answer<?> answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("book."))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aSavedCardIsRecordedAsAFileNamedInFull() throws IOException {
        Answer<CardHandout.Handed> answer = save(press, DAY, false);
        assertThat(answer.problems()).isEmpty();
        assertThat(files()).containsExactly("card.pdf");
        CardPrint print = prints().get(0).value();
        assertThat(print.destination())
                .isEqualTo(folder.resolve("card.pdf").toAbsolutePath().toString());
        assertThat(print.way()).isEqualTo(CardPrint.Way.SAVED);
        assertThat(print.number()).isEqualTo(1);
        assertThat(answer.value().orElseThrow().card().head().entries()).isPositive();
    }

    @Test
    void beforeItsFirstDayItLeavesOnlyAsAMarkedCopyAndThatIsRecorded() throws IOException {
        assertThat(codes(save(press, DAY.minusDays(1), false))).containsExactly("issue.none-in-force");
        assertThat(prints()).isEmpty();
        assertThat(files()).isEmpty();
        Answer<CardHandout.Handed> copy = save(press, DAY.minusDays(1), true);
        assertThat(codes(copy)).containsExactly("issue.not-usable");
        assertThat(copy.problems()).noneMatch(Problem::isError);
        assertThat(copy.value().orElseThrow().card().isMarked()).isTrue();
        assertThat(prints().get(0).value().way()).isEqualTo(CardPrint.Way.MARKED_COPY);
    }

    @Test
    void askingForAMarkedCopyDoesNotMarkACardThatMayLeave() {
        assertThat(save(press, DAY, true).value().orElseThrow().card().isMarked())
                .isFalse();
        assertThat(prints().get(0).value().way()).isEqualTo(CardPrint.Way.SAVED);
    }

    @Test
    void anUnknownMixOrRevisionIsRefused() {
        CardHandout handout = new CardHandout(book, press, Locale.ENGLISH);
        OutputFile file = OutputFile.fresh(folder.resolve("card.pdf"));
        assertThat(codes(handout.toFile(
                        new CardHandout.Wish(
                                new MixId("M-9"),
                                Optional.empty(),
                                Paper.A6,
                                true,
                                DAY.atTime(12, 0),
                                "R. Vale",
                                "card"),
                        file)))
                .containsExactly("book.not-there");
        assertThat(codes(handout.toFile(
                        new CardHandout.Wish(MIX, Optional.of(7), Paper.A6, true, DAY.atTime(12, 0), "R. Vale", "card"),
                        file)))
                .containsExactly("issue.none-in-force");
    }

    @Test
    void whatCannotBeRecordedIsNotWritten() throws IOException {
        LabBook refusing = (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("keep")) {
                        return List.of(Problem.error("record", "book.changed-meanwhile", "M-1/r1/1"));
                    }
                    return method.invoke(book, arguments);
                });
        Answer<CardHandout.Handed> answer = new CardHandout(refusing, press, Locale.ENGLISH)
                .toFile(wish(DAY, false), OutputFile.fresh(folder.resolve("card.pdf")));
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).containsExactly("book.changed-meanwhile", "card.not-recorded");
        assertThat(files()).isEmpty();
        assertThat(prints()).isEmpty();
    }

    @Test
    void whenRecordingBreaksDownNothingIsLeftLyingAbout() throws IOException {
        List<Boolean> wasThere = new ArrayList<>();
        LabBook broken = (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("keep")) {
                        wasThere.add(Files.exists(folder.resolve("card.pdf")));
                        throw new IllegalStateException("the disk is full");
                    }
                    return method.invoke(book, arguments);
                });
        CardHandout handout = new CardHandout(broken, press, Locale.ENGLISH);
        OutputFile file = OutputFile.fresh(folder.resolve("card.pdf"));
        assertThatThrownBy(() -> handout.toFile(wish(DAY, false), file)).hasMessage("the disk is full");
        assertThat(wasThere).as("recorded before it stands in its place").containsExactly(false);
        assertThat(files()).isEmpty();
        assertThat(prints()).isEmpty();
    }

    @Test
    void whatWasRecordedAndCouldNotLeaveIsRecordedAsThat() throws IOException {
        Press jams = new Jamming(press);
        Answer<CardHandout.Handed> answer = save(jams, DAY, false);
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).containsExactly("card.not-released");
        assertThat(files()).isEmpty();
        Version<CardPrint> print = prints().get(0);
        assertThat(print.number()).as("a correction of the first record").isEqualTo(2);
        assertThat(print.value().way()).isEqualTo(CardPrint.Way.NOT_RELEASED);
        assertThat(print.stamp().why()).contains("the paper jammed");
        assertThat(book.history(CardPrint.class, print.value().recordId())
                        .get(0)
                        .value()
                        .way())
                .isEqualTo(CardPrint.Way.SAVED);
        assertThat(save(press, DAY, false).value().orElseThrow().print().number())
                .isEqualTo(2);
    }

    @Test
    void aPrintedCardIsHandedOutAndOneThoughtBetterOfLeavesNoTrace() {
        CardHandout.Wish wish = wish(DAY, false);
        assertThat(new CardHandout(book, new OnPaper(press, false), Locale.ENGLISH).toPrinter(wish))
                .isEmpty();
        assertThat(prints()).isEmpty();
        Answer<CardHandout.Handed> answer = new CardHandout(book, new OnPaper(press, true), Locale.ENGLISH)
                .toPrinter(wish)
                .orElseThrow();
        assertThat(answer.problems()).isEmpty();
        assertThat(prints().get(0).value().way()).isEqualTo(CardPrint.Way.HANDED_OUT);
        assertThat(prints().get(0).value().destination()).isEqualTo("printer");
    }

    @Test
    void theRecordIsThereBeforeThePaper() {
        int[] recorded = {-1};
        Press watching = new OnPaper(press, true) {
            @Override
            void printed() {
                recorded[0] = prints().size();
            }
        };
        new CardHandout(book, watching, Locale.ENGLISH).toPrinter(wish(DAY, false));
        assertThat(recorded[0]).isEqualTo(1);
    }

    @Test
    void whatIsRefusedIsNotOfferedToAPrinterEither() {
        Answer<CardHandout.Handed> answer = new CardHandout(book, new OnPaper(press, true), Locale.ENGLISH)
                .toPrinter(new CardHandout.Wish(
                        new MixId("M-9"), Optional.empty(), Paper.A6, true, DAY.atTime(12, 0), "R. Vale", "card"))
                .orElseThrow();
        assertThat(answer.value()).isEmpty();
        assertThat(codes(answer)).containsExactly("book.not-there");
        assertThat(prints()).isEmpty();
    }

    /** Somebody else may take the number meanwhile; after five numbers it is no chance any more. */
    @Test
    void aNumberThatIsTakenMeanwhileIsTriedFiveTimes() {
        int[] tries = {0};
        LabBook busy = (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("keep")) {
                        tries[0]++;
                        return List.of(Problem.error("record", "book.already-there", "M-1/r1/1"));
                    }
                    return method.invoke(book, arguments);
                });
        new CardHandout(busy, press, Locale.ENGLISH)
                .toFile(wish(DAY, false), OutputFile.fresh(folder.resolve("card.pdf")));
        assertThat(tries[0]).isEqualTo(5);
    }

    @Test
    void cardsAreNumberedRevisionByRevision() {
        Books.keep(book, Samples.issue("M-1", 2, "M-1/1", DAY.plusDays(1)), new CardPrint(MIX, 2, 7, "A6", "printer"));
        assertThat(save(press, DAY, false).value().orElseThrow().print().number())
                .isEqualTo(1);
    }

    @Test
    void whatASpeakingFailureSaysStandsInTheRecordInTheReadersLanguage() {
        Press speaking = new Jamming(press, new SpeakingFailure());
        new CardHandout(book, speaking, Locale.forLanguageTag("es"))
                .toFile(wish(DAY, false), OutputFile.fresh(folder.resolve("card.pdf")));
        assertThat(prints().get(0).stamp().why()).isEqualTo("dicho en es");
        new CardHandout(book, new Jamming(press, new IllegalStateException()), Locale.ENGLISH)
                .toFile(wish(DAY, false), OutputFile.fresh(folder.resolve("card.pdf")));
        assertThat(prints()).extracting(print -> print.stamp().why()).contains("IllegalStateException");
    }

    private static final class SpeakingFailure extends RuntimeException implements Spoken {
        private static final long serialVersionUID = 1;

        @Override
        public String say(Locale locale) {
            return "dicho en " + locale.getLanguage();
        }
    }

    /** Lays out and writes as the real one does, and fails at the last step. */
    private record Jamming(Press real, RuntimeException failure) implements Press {
        Jamming(Press real) {
            this(real, new IllegalStateException("the paper jammed"));
        }

        @Override
        public Waiting ready(Printed what, Paper paper, Locale locale, OutputFile file) {
            Waiting waiting = real.ready(what, paper, locale, file);
            return new Waiting() {
                @Override
                public void release() {
                    throw failure;
                }

                @Override
                public void close() {
                    waiting.close();
                }
            };
        }

        @Override
        public Optional<Waiting> readyForPrinter(Printed what, Paper paper, Locale locale) {
            return Optional.empty();
        }

        @Override
        public List<BufferedImage> preview(Printed what, Paper paper, Locale locale, int dotsPerInch) {
            return real.preview(what, paper, locale, dotsPerInch);
        }

        @Override
        public void draw(Picture picture, Locale locale, OutputFile file) {
            real.draw(picture, locale, file);
        }
    }

    /** A printer that a person chooses or does not. */
    private static class OnPaper implements Press {
        private final Press real;
        private final boolean chosen;

        OnPaper(Press real, boolean chosen) {
            this.real = real;
            this.chosen = chosen;
        }

        void printed() {}

        @Override
        public Waiting ready(Printed what, Paper paper, Locale locale, OutputFile file) {
            return real.ready(what, paper, locale, file);
        }

        @Override
        public Optional<Waiting> readyForPrinter(Printed what, Paper paper, Locale locale) {
            assertThat(what).isInstanceOf(FactorCard.class);
            return chosen
                    ? Optional.of(new Waiting() {
                        @Override
                        public void release() {
                            printed();
                        }

                        @Override
                        public void close() {}
                    })
                    : Optional.empty();
        }

        @Override
        public List<BufferedImage> preview(Printed what, Paper paper, Locale locale, int dotsPerInch) {
            return real.preview(what, paper, locale, dotsPerInch);
        }

        @Override
        public void draw(Picture picture, Locale locale, OutputFile file) {
            real.draw(picture, locale, file);
        }
    }
}

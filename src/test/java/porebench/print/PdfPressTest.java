package porebench.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.PrinterException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.paper.FactorCard;
import porebench.port.NoPrinter;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.record.book.Progress;

class PdfPressTest {
    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    // 22:30 UTC on 25 November is 23:30 in Madrid on the same day, 09:30 of 26 November in Sydney, 16:30 in Mexico
    // City.
    @ParameterizedTest
    @CsvSource({"Europe/Madrid,2026-11-25", "Australia/Sydney,2026-11-26", "America/Mexico_City,2026-11-25"})
    void theDayOfPrintingIsTheLaboratorys(String zone, String day) throws IOException {
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T22:30:00Z"), ZoneOffset.UTC);
        Path file = folder.resolve("card.pdf");
        new PdfPress("Porebench", clock, ZoneId.of(zone))
                .write(Cards.usual(), Paper.A6, Locale.ENGLISH, OutputFile.fresh(file));
        assertThat(PageText.of(Files.readAllBytes(file))).contains("Printed " + day);
    }

    @Test
    void writesAFileAndReplacesAnOlderOne() throws IOException {
        Path file = folder.resolve("card.pdf");
        Files.writeString(file, "older");
        Presses.PRESS.write(Cards.usual(), Paper.A6, Locale.ENGLISH, OutputFile.replacing(file));
        assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(names()).containsExactly("card.pdf");
    }

    @Test
    void aFolderThatIsNotThereIsNamedAndNothingIsLeft() throws IOException {
        OutputFile file = OutputFile.fresh(folder.resolve("missing").resolve("card.pdf"));
        assertThatThrownBy(() -> Presses.PRESS.write(Cards.usual(), Paper.A6, Locale.ENGLISH, file))
                .isInstanceOfSatisfying(
                        OutputRefused.class,
                        refused -> assertThat(refused.say(Locale.ENGLISH))
                                .isEqualTo(
                                        "There is no folder " + folder.resolve("missing")
                                                + ", so card.pdf was not written. Make the folder first, or choose another one."));
        assertThat(names()).isEmpty();
    }

    @Test
    void aFailureOfTheFolderIsSaidWithWhatIsSafe() {
        // No directory can be made, listed or written into below this one of the system's.
        OutputFile file = OutputFile.fresh(Path.of("/proc/self/card.pdf"));
        assertThatThrownBy(() -> Presses.PRESS.write(Cards.usual(), Paper.A6, Locale.ENGLISH, file))
                .isInstanceOf(PrintException.class)
                .hasCauseInstanceOf(IOException.class)
                .hasMessage("Writing the factor card of mix TW-214 to /proc/self/card.pdf"
                        + " failed. A file that was there before is as it was.");
    }

    @Test
    void aFolderOfTheNameIsNotReplaced() throws IOException {
        Path taken = Files.createDirectory(folder.resolve("card.pdf"));
        assertThatThrownBy(
                        () -> Presses.PRESS.write(Cards.usual(), Paper.A6, Locale.ENGLISH, OutputFile.replacing(taken)))
                .isInstanceOf(OutputRefused.class);
        assertThat(names()).containsExactly("card.pdf");
        assertThat(taken).isEmptyDirectory();
    }

    @Test
    void theSameContentAndDayGiveTheSameBytes() {
        assertThat(Presses.pdf(Cards.usual(), Paper.A6, Locale.ENGLISH))
                .isEqualTo(Presses.pdf(Cards.usual(), Paper.A6, Locale.ENGLISH));
    }

    @Test
    void theDocumentSaysWhatItIs() throws IOException {
        try (PDDocument document = Loader.loadPDF(Presses.pdf(Sheets.usual(3), Paper.A4, Locale.UK))) {
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("the weigh-out and trial sheet of mix TW-214");
            assertThat(document.getDocumentInformation().getCreator()).isEqualTo("Porebench 0.1.0");
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(Presses.NOON.instant());
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
        }
    }

    // 105 x 148 mm at 100 dots an inch: 413.4 x 582.7.
    @Test
    void previewShowsEveryPageInTheFinenessAskedFor() {
        List<BufferedImage> card = Presses.PRESS.preview(Cards.usual(), Paper.A6, Locale.ENGLISH, 100);
        assertThat(card).hasSize(1);
        assertThat(card.get(0).getWidth()).isEqualTo(413);
        assertThat(card.get(0).getHeight()).isEqualTo(582);
        assertThat(dark(card.get(0))).isBetween(0.05, 0.5);
        assertThat(Presses.PRESS.preview(Sheets.usual(3), Paper.LETTER, Locale.ENGLISH, 20))
                .hasSize(2);
    }

    private static double dark(BufferedImage image) {
        long dark = IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(dot -> (image.getRGB(dot % image.getWidth(), dot / image.getWidth()) & 0xff) < 128)
                .count();
        return (double) dark / (image.getWidth() * image.getHeight());
    }

    @ParameterizedTest
    @ValueSource(ints = {19, 601})
    void refusesAFinenessThatMakesNoPicture(int dotsPerInch) {
        assertThatThrownBy(() -> Presses.PRESS.preview(Cards.usual(), Paper.A6, Locale.ENGLISH, dotsPerInch))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("dotsPerInch must be from 20.0 to 600.0, but is ");
    }

    @Test
    void severalThreadsGetTheSamePages() throws Exception {
        byte[] expected = Presses.pdf(Cards.usual(), Paper.A6, Locale.ENGLISH);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            Callable<byte[]> task = () -> Presses.pdf(Cards.usual(), Paper.A6, Locale.ENGLISH);
            for (var pdf : threads.invokeAll(java.util.Collections.nCopies(12, task))) {
                assertThat(pdf.get()).isEqualTo(expected);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void printsThePagesOnceThePersonAgrees() {
        DeskPrinter printer = new DeskPrinter(true);
        assertThat(press(printer).print(Cards.usual(), Paper.A6, Locale.ENGLISH, Progress.UNHEARD))
                .isTrue();
        assertThat(printer.printed()).isEqualTo(1);
        assertThat(printer.getJobName()).isEqualTo("the factor card of mix TW-214");
        assertThat(printer.pages.getNumberOfPages()).isEqualTo(1);
        PageFormat format = printer.format;
        assertThat(format.getPaper().getWidth()).isBetween(297.63, 297.65);
        assertThat(format.getPaper().getHeight()).isBetween(419.52, 419.54);
    }

    @Test
    void printsNothingWhenThePersonThinksBetterOfIt() {
        DeskPrinter printer = new DeskPrinter(false);
        assertThat(press(printer).print(Sheets.usual(3), Paper.A4, Locale.ENGLISH, Progress.UNHEARD))
                .isFalse();
        assertThat(printer.printed()).isZero();
    }

    @Test
    void tellsOfEveryPageAndTakesTheJobBackWhenSomebodyEndsIt() {
        List<Long> told = new ArrayList<>();
        DeskPrinter printer = new DeskPrinter(true);
        assertThat(press(printer).print(Sheets.usual(3), Paper.A4, Locale.ENGLISH, (stage, done, of) -> {
                    assertThat(stage).isEqualTo(Progress.Stage.PRINTING);
                    assertThat(of).isEqualTo(2);
                    told.add(done);
                }))
                .isTrue();
        assertThat(told).containsExactly(0L, 1L);
        assertThat(printer.printed()).isEqualTo(2);
        assertThat(printer.isCancelled()).isFalse();

        DeskPrinter ended = new DeskPrinter(true);
        assertThat(press(ended).print(Sheets.usual(3), Paper.A4, Locale.ENGLISH, (stage, done, of) -> {
                    if (done == 1) {
                        throw new CancellationException("ended by the person");
                    }
                }))
                .isFalse();
        assertThat(ended.printed()).isEqualTo(1);
        assertThat(ended.isCancelled()).isTrue();
    }

    @Test
    void whereNoPrinterIsKnownNothingIsAskedAndItIsSaid() {
        DeskPrinter printer = new DeskPrinter(true);
        PdfPress press = new PdfPress("Porebench test", Clock.systemUTC(), () -> printer, () -> false);
        assertThatThrownBy(() -> press.print(Cards.usual(), Paper.A6, Locale.ENGLISH, Progress.UNHEARD))
                .isInstanceOf(NoPrinter.class)
                .hasMessage("No printer is known to this machine. Nothing was printed.");
        assertThat(printer.printed()).isZero();
    }

    @Test
    void aFailingPrinterIsToldWithWhatIsSafe() {
        DeskPrinter printer = new DeskPrinter(true);
        printer.broken = true;
        FactorCard card = Cards.usual();
        assertThatThrownBy(() -> press(printer).print(card, Paper.A6, Locale.ENGLISH, Progress.UNHEARD))
                .isInstanceOf(PrintException.class)
                .hasCauseInstanceOf(PrinterException.class)
                .hasMessage("Printing the factor card of mix TW-214 failed. Some pages may be on paper already.");
    }

    private static PdfPress press(DeskPrinter printer) {
        return new PdfPress("Porebench 0.1.0", Presses.NOON, () -> printer);
    }
}

package porebench.bench.cards;

import com.sun.management.OperatingSystemMXBean;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSeal;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.MeterType;
import porebench.method.air.PassWindow;
import porebench.method.profile.Profiles;
import porebench.port.OutputFile;
import porebench.port.Waiting;
import porebench.print.PdfPress;
import porebench.record.FactorIssue;
import porebench.record.Grounds;
import porebench.record.Laboratory;
import porebench.record.book.Progress;
import porebench.record.chain.Head;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * Many factor cards into one PDF, beside bare pages of the library with the same texts at the same places, in the same run:
 * {@code CardPages FOLDER [COUNT [ROUNDS]]}. The cards are made twice, once with nine different tables among them and once with a table of
 * its own for each, which nothing can have in common. The bare pages have no code of squares, no frames and no greys. Times are those that
 * the working thread was busy, and beside them those of all threads with compiling and collecting.
 */
final class CardPages {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-29T12:00:00Z"), ZoneOffset.UTC);
    private static final String FONTS = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    private static final int FEW_TABLES = 9;
    private static final CardLook A6 = CardLook.of(CardSize.A6, PaperLanguage.ENGLISH);

    private final Path folder;

    private CardPages(Path folder) {
        this.folder = folder;
    }

    /** Returns the time this thread has worked; what others do on the machine does not count. */
    private static double seconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    private static double secondsOfAll() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    /** What making a file took. */
    private record Made(double seconds, double secondsOfAll, double bytes) {
        static Made since(double begun, double begunOfAll, Path file) {
            return new Made(
                    CardPages.seconds() - begun,
                    CardPages.secondsOfAll() - begunOfAll,
                    file.toFile().length());
        }

        void say(String what, int count, Made floor) {
            System.out.printf(
                    Locale.ROOT,
                    "  %-28s %6.0f/s  %5.0f bytes each; over bare pages: time %.2f, time of all threads %.2f, bytes"
                            + " %.2f%n",
                    what,
                    count / seconds,
                    bytes / count,
                    seconds / floor.seconds,
                    secondsOfAll / floor.secondsOfAll,
                    bytes / floor.bytes);
        }
    }

    /** A run of text as it stands on a card. */
    private record Run(String text, boolean bold, float size, float x, float y) {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        int count = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 10_000;
        int rounds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 3;
        CardPages bench = new CardPages(folder);
        List<Run> runs = bench.runs();
        int warmUp = Math.min(count, 2_000);
        bench.ours(warmUp, FEW_TABLES);
        bench.bare(runs, warmUp);
        bench.ours(warmUp, warmUp);
        System.out.printf(Locale.ROOT, "%d cards, %d runs of text each%n", count, runs.size());
        for (int round = 1; round <= rounds; round++) {
            Made alike = bench.ours(count, FEW_TABLES);
            Made different = bench.ours(count, count);
            Made bare = bench.bare(runs, count);
            System.out.printf(Locale.ROOT, "round %d%n", round);
            alike.say("cards, nine tables", count, bare);
            different.say("cards, each its own table", count, bare);
            bare.say("bare pages", count, bare);
        }
        System.out.printf(
                Locale.ROOT, "heap at most %d MiB%n", Runtime.getRuntime().maxMemory() >> 20);
    }

    /** Returns a card with one of so many different tables. */
    private static FactorCard card(int number, int tables) {
        int table = number % tables;
        String mix = String.format(Locale.ROOT, "MX-%05d", number);
        BigDecimal factor = BigDecimal.valueOf(1 + table % 9, 1);
        // 9 factors, 1,200 targets.
        BigDecimal target = new BigDecimal("6.0").add(BigDecimal.valueOf(table / 9, 3));
        FactorIssue issue = new FactorIssue(
                new MixId(mix),
                1 + number % 5,
                FactorIssue.Action.ISSUED,
                factor,
                new DeterminationId("D-" + number),
                MeterType.B,
                LocalDate.of(2026, 1, 5).plusDays(number % 300),
                LocalDate.of(2027, 1, 4).plusDays(number % 300),
                "R. Alder",
                "M. Thorne",
                "",
                1,
                Map.of(new SourceId("S-" + number % 50), 1),
                Profiles.DEFAULT_ID,
                "",
                "",
                Grounds.NONE);
        return new FactorCard(
                        Optional.of(new Laboratory("Tarnwick Materials Laboratory", "4 Kiln Road, Tarnwick")),
                        new MixId(mix),
                        "Bridge deck " + number + ", 35 MPa, 20 mm stone",
                        List.of("Orrin Pit sand " + number % 50, "Fell Quarry 5-20 mm"),
                        issue,
                        CardState.IN_FORCE,
                        issue.recheckBy(),
                        false,
                        target,
                        new BigDecimal("1.5"),
                        new BigDecimal("0.1"),
                        PassWindow.of(
                                factor,
                                target,
                                new BigDecimal("1.5"),
                                new BigDecimal("0.1"),
                                new BigDecimal("10"),
                                Profiles.standard()),
                        Profiles.standard().title(),
                        Head.of("3f2a91c077de0b1c55aa", 214))
                .sealedBy(Optional.of(new CardSeal(mix + "/r3", "3f2a91c077de0b1c".repeat(4))));
    }

    /** Makes our cards; the cards themselves are there before. */
    private Made ours(int count, int tables) {
        List<FactorCard> cards = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            cards.add(card(number, tables));
        }
        PdfPress press = new PdfPress("Porebench", CLOCK, ZoneOffset.UTC);
        Path file = folder.resolve("cards.pdf");
        double begun = seconds();
        double begunOfAll = secondsOfAll();
        try (Waiting waiting = press.ready(cards, A6, OutputFile.replacing(file), Progress.UNHEARD)) {
            waiting.release();
        }
        return Made.since(begun, begunOfAll, file);
    }

    /** Returns the texts of the first of our cards, where they stand. */
    private List<Run> runs() throws IOException {
        ours(1, FEW_TABLES);
        List<Run> runs = new ArrayList<>();
        PDFTextStripper reading = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> places) {
                TextPosition first = places.get(0);
                runs.add(new Run(
                        text.replaceAll("[\u2212\u2026]", "-"),
                        first.getFont().getName().contains("Bold"),
                        first.getFontSizeInPt(),
                        first.getXDirAdj(),
                        first.getPageHeight() - first.getYDirAdj()));
            }
        };
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            reading.getText(document);
        }
        return runs;
    }

    /** Makes bare pages. */
    private Made bare(List<Run> runs, int count) throws IOException {
        Path file = folder.resolve("bare.pdf");
        PDRectangle page = new PDRectangle((float) (105 * 72 / 25.4), (float) (148 * 72 / 25.4));
        double begun = seconds();
        double begunOfAll = secondsOfAll();
        try (PDDocument document = new PDDocument()) {
            PDFont regular = font(document, "Regular");
            PDFont bold = font(document, "Bold");
            for (int number = 0; number < count; number++) {
                PDPage one = new PDPage(page);
                document.addPage(one);
                try (PDPageContentStream stream = new PDPageContentStream(document, one)) {
                    String mix = String.format(Locale.ROOT, "MX-%05d", number);
                    for (Run run : runs) {
                        stream.beginText();
                        stream.setFont(run.bold() ? bold : regular, run.size());
                        stream.newLineAtOffset(run.x(), run.y());
                        stream.showText(run.text().replace("MX-00000", mix));
                        stream.endText();
                    }
                }
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            document.save(pdf);
            Files.write(file, pdf.toByteArray());
        }
        return Made.since(begun, begunOfAll, file);
    }

    private static PDFont font(PDDocument document, String weight) throws IOException {
        try (InputStream stream = CardPages.class.getResourceAsStream(FONTS + weight + ".ttf")) {
            TrueTypeFont font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(stream));
            // As on our cards: looking for ligatures would take most of the time.
            font.setEnableGsub(false);
            return PDType0Font.load(document, font, true);
        }
    }
}

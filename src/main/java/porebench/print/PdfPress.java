package porebench.print;

import java.awt.HeadlessException;
import java.awt.image.BufferedImage;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.print.DocFlavor;
import javax.print.PrintServiceLookup;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import porebench.evidence.paper.CalibrationForm;
import porebench.evidence.paper.CalibrationRecord;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.FieldList;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.PhonePage;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.paper.Printed;
import porebench.evidence.paper.RecallList;
import porebench.evidence.paper.RegisterList;
import porebench.evidence.paper.SampleLabels;
import porebench.evidence.paper.TrialSheet;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.NoPrinter;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.port.Paper;
import porebench.port.Picture;
import porebench.port.Press;
import porebench.port.Waiting;
import porebench.print.calibration.CalibrationFormPages;
import porebench.print.calibration.CalibrationPages;
import porebench.print.card.CardSheets;
import porebench.print.card.PlantPages;
import porebench.print.code.CodePicture;
import porebench.print.page.Faces;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.Typefaces;
import porebench.print.page.Words;
import porebench.print.phone.PhoneFile;
import porebench.print.picture.PictureFile;
import porebench.print.sheet.FieldListPages;
import porebench.print.sheet.FieldSheetPages;
import porebench.print.sheet.LabelPages;
import porebench.print.sheet.PlanPages;
import porebench.print.sheet.RecallPages;
import porebench.print.sheet.RegisterPages;
import porebench.print.sheet.SheetPages;
import porebench.quantity.Require;
import porebench.record.book.Progress;

/**
 * Puts cards and sheets into PDF files, on the screen and on paper; all three come from the same PDF.
 *
 * <p>The same content, clock and program give the same bytes. May be used from several threads; pages are laid out one at a
 * time, because all documents share the typeface read once.
 */
public final class PdfPress implements Press {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private final String program;
    private final Clock clock;
    private final Supplier<PrinterJob> printer;
    private final BooleanSupplier hasPrinter;
    private Optional<Typefaces> typefaces = Optional.empty();

    /**
     * Sets up a press.
     *
     * @param program name and version of the program, printed small on every page
     * @param clock gives the moment of printing
     * @param zone the laboratory's zone, in which that moment's day is printed
     */
    public PdfPress(String program, Clock clock, ZoneId zone) {
        this(program, clock.withZone(zone), PrinterJob::getPrinterJob, PdfPress::hasPrinter);
    }

    PdfPress(String program, Clock clock, Supplier<PrinterJob> printer) {
        this(program, clock, printer, () -> true);
    }

    PdfPress(String program, Clock clock, Supplier<PrinterJob> printer, BooleanSupplier hasPrinter) {
        this.program = Require.notBlank("program", program);
        this.clock = clock;
        this.printer = printer;
        this.hasPrinter = hasPrinter;
    }

    private static boolean hasPrinter() {
        return PrintServiceLookup.lookupPrintServices(DocFlavor.SERVICE_FORMATTED.PAGEABLE, null).length > 0;
    }

    @Override
    public Waiting ready(Printed what, Paper paper, Locale locale, OutputFile file) {
        byte[] pdf = compose(what, paper, locale);
        return WaitingFile.of(file, pdf, failure -> {
            Words words = Words.in(locale);
            return new PrintException(
                    words.say(
                            "failed.write",
                            PrintedName.of(what, words),
                            file.path().toString()),
                    failure);
        });
    }

    @Override
    public Waiting ready(List<FactorCard> cards, CardLook look, OutputFile file, Progress progress) {
        return waiting(compose(cards, look, progress), cards.get(0), look, file);
    }

    @Override
    public Waiting readyPlant(List<PlantCard> pages, CardLook look, OutputFile file, Progress progress) {
        return waiting(composePlant(pages, look, progress), pages.get(0), look, file);
    }

    private static Waiting waiting(byte[] pdf, Printed first, CardLook look, OutputFile file) {
        return WaitingFile.of(file, pdf, failure -> {
            Words words = Words.in(look.languages().get(0).locale());
            return new PrintException(
                    words.say(
                            "failed.write",
                            PrintedName.of(first, words),
                            file.path().toString()),
                    failure);
        });
    }

    @Override
    public synchronized List<PlantCard> pages(PlantCard whole, CardLook look) {
        whole.cards().forEach(PdfPress::requireIssue);
        try (PDDocument document = new PDDocument()) {
            return PlantPages.of(whole, typefaces().in(document), look, program);
        } catch (IOException failure) {
            throw failed("failed.compose", whole, look.languages().get(0).locale(), failure);
        }
    }

    private byte[] compose(List<FactorCard> cards, CardLook look, Progress progress) {
        cards.forEach(PdfPress::requireIssue);
        return compose(cards, look, progress, CardSheets::add);
    }

    private byte[] composePlant(List<PlantCard> pages, CardLook look, Progress progress) {
        return compose(pages, look, progress, CardSheets::add);
    }

    private interface Adding<T> {
        List<Problem> to(CardSheets sheets, T card) throws IOException;
    }

    private synchronized <T extends Printed> byte[] compose(
            List<T> cards, CardLook look, Progress progress, Adding<T> adding) {
        Locale locale = look.languages().get(0).locale();
        try (PDDocument document = new PDDocument();
                Faces faces = typefaces().in(document)) {
            describe(document, PrintedName.of(cards.get(0), Words.in(locale)), locale);
            try (CardSheets sheets =
                    new CardSheets(document, faces, look, new Imprint(program, LocalDate.now(clock)))) {
                int done = 0;
                List<Problem> refused = new ArrayList<>();
                for (T card : cards) {
                    progress.at(Progress.Stage.PRINTING, done++, cards.size());
                    refused.addAll(adding.to(sheets, card));
                }
                OutputRefused.unlessNone(refused);
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            document.save(pdf);
            return pdf.toByteArray();
        } catch (IOException failure) {
            throw failed("failed.compose", cards.get(0), locale, failure);
        }
    }

    @Override
    public List<BufferedImage> preview(Printed what, Paper paper, Locale locale, int dotsPerInch) {
        Require.within("dotsPerInch", dotsPerInch, 20, 600);
        return drawn(compose(what, paper, locale), what, locale, dotsPerInch);
    }

    @Override
    public List<BufferedImage> preview(FactorCard card, CardLook look, int dotsPerInch) {
        Require.within("dotsPerInch", dotsPerInch, 20, 600);
        byte[] pdf = compose(List.of(card), look, Progress.UNHEARD);
        return drawn(pdf, card, look.languages().get(0).locale(), dotsPerInch);
    }

    private static List<BufferedImage> drawn(byte[] pdf, Printed what, Locale locale, int dotsPerInch) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                pages.add(renderer.renderImageWithDPI(page, dotsPerInch, ImageType.RGB));
            }
            return pages;
        } catch (IOException failure) {
            throw failed("failed.preview", what, locale, failure);
        }
    }

    @Override
    public Optional<Waiting> readyForPrinter(Printed what, Paper paper, Locale locale) {
        return onPrinter(compose(what, paper, locale), what, locale);
    }

    @Override
    public Optional<Waiting> readyForPrinter(FactorCard card, CardLook look) {
        byte[] pdf = compose(List.of(card), look, Progress.UNHEARD);
        return onPrinter(pdf, card, look.languages().get(0).locale());
    }

    private Optional<Waiting> onPrinter(byte[] pdf, Printed what, Locale locale) {
        if (!hasPrinter.getAsBoolean()) {
            throw new NoPrinter(Words.in(locale).say("failed.no-printer"));
        }
        try {
            PrinterJob job = printer.get();
            job.setJobName(PrintedName.of(what, Words.in(locale)));
            return WaitingPrint.of(pdf, job, failure -> failed("failed.print", what, locale, failure));
        } catch (IOException | HeadlessException failure) {
            throw failed("failed.print", what, locale, failure);
        }
    }

    @Override
    public synchronized void draw(Picture picture, Locale locale, OutputFile file) {
        String name = String.valueOf(file.path().getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        try {
            byte[] drawn = switch (ending) {
                case "png" -> PictureFile.png(picture);
                case "svg" -> PictureFile.svg(picture);
                case "pdf" -> PictureFile.pdf(picture, typefaces(), program, locale);
                default ->
                    throw new IllegalArgumentException(
                            "name of the file must end with .png, .svg or .pdf, but is " + name);
            };
            file.write(stream -> stream.write(drawn));
        } catch (IOException failure) {
            throw new PrintException(
                    Words.in(locale)
                            .say(
                                    "failed.write",
                                    Words.in(locale).say("what.picture"),
                                    file.path().toString()),
                    failure);
        }
    }

    @Override
    public Waiting readyPhone(PhonePage page, Locale locale, OutputFile file) {
        return WaitingFile.of(file, PhoneFile.of(page, locale), failure -> {
            Words words = Words.in(locale);
            return new PrintException(
                    words.say(
                            "failed.write",
                            PrintedName.of(page.card(), words),
                            file.path().toString()),
                    failure);
        });
    }

    @Override
    public Answer<List<String>> codes(Path picture) {
        return CodePicture.read(picture);
    }

    private synchronized byte[] compose(Printed what, Paper paper, Locale locale) {
        requireFits(what, paper);
        if (what instanceof FactorCard card) {
            CardLook look = CardLook.of(paper.card().orElseThrow(), PaperLanguage.of(locale));
            return compose(List.of(card), look, Progress.UNHEARD);
        }
        if (what instanceof PlantCard plant) {
            CardLook look = CardLook.of(paper.card().orElseThrow(), PaperLanguage.of(locale));
            return composePlant(pages(plant, look), look, Progress.UNHEARD);
        }
        Words words = Words.in(locale);
        try (PDDocument document = new PDDocument();
                Faces faces = typefaces().in(document)) {
            PDRectangle page = new PDRectangle((float) (paper.widthMillimetres() * POINTS_PER_MILLIMETRE), (float)
                    (paper.heightMillimetres() * POINTS_PER_MILLIMETRE));
            describe(document, PrintedName.of(what, words), locale);
            try (OpenPages leaves = new OpenPages(document, turned(what, page), faces)) {
                draw(what, leaves, words);
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            document.save(pdf);
            return pdf.toByteArray();
        } catch (IOException failure) {
            throw failed("failed.compose", what, locale, failure);
        }
    }

    private void draw(Printed what, OpenPages leaves, Words words) throws IOException {
        Imprint imprint = new Imprint(program, LocalDate.now(clock));
        if (what instanceof TrialSheet sheet) {
            new SheetPages(sheet, leaves, words, imprint).draw();
        } else if (what instanceof CalibrationRecord record) {
            new CalibrationPages(record, leaves, words, imprint).draw();
        } else if (what instanceof CalibrationForm form) {
            new CalibrationFormPages(form, leaves, words, imprint).draw();
        } else if (what instanceof RegisterList list) {
            new RegisterPages(list, leaves, words, imprint).draw();
        } else if (what instanceof FieldList list) {
            new FieldListPages(list, leaves, words, imprint).draw();
        } else if (what instanceof FieldSheet field) {
            new FieldSheetPages(field, leaves, words, imprint).draw();
        } else if (what instanceof SampleLabels labels) {
            new LabelPages(labels, leaves, words).draw();
        } else if (what instanceof RecallList recall) {
            new RecallPages(recall, leaves, words, imprint).draw();
        } else if (what instanceof PlanSheet plan) {
            new PlanPages(plan, leaves, words, imprint).draw();
        }
    }

    /** Returns the page as it lies: a list with many columns lies on its long side. */
    private static PDRectangle turned(Printed what, PDRectangle page) {
        return what instanceof RegisterList || what instanceof FieldList
                ? new PDRectangle(page.getHeight(), page.getWidth())
                : page;
    }

    private Typefaces typefaces() throws IOException {
        Typefaces read = typefaces.isPresent() ? typefaces.get() : Typefaces.read();
        typefaces = Optional.of(read);
        return read;
    }

    private void describe(PDDocument document, String title, Locale locale) throws IOException {
        LastingPdf.describe(document, title, program, locale, clock.instant().atZone(clock.getZone()));
    }

    private static void requireFits(Printed what, Paper paper) {
        boolean card = what instanceof FactorCard || what instanceof PlantCard;
        if (card != paper.card().isPresent()) {
            String rule = card ? "be A6, 4x6in, half-letter or wallet for a card" : "be A4 or letter for a sheet";
            throw new IllegalArgumentException("paper must " + rule + ", but is " + paper.symbol());
        }
        if (what instanceof FactorCard withdrawn) {
            requireIssue(withdrawn);
        }
    }

    private static void requireIssue(FactorCard card) {
        if (!card.issue().isIssue()) {
            throw new IllegalArgumentException("issue must hand out a factor, but is "
                    + card.issue().recordId() + " " + card.issue().action().symbol());
        }
    }

    private static PrintException failed(String key, Printed what, Locale locale, Throwable cause) {
        Words words = Words.in(locale);
        return new PrintException(words.say(key, PrintedName.of(what, words)), cause);
    }
}

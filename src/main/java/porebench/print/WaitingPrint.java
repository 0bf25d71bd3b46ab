package porebench.print;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import javax.print.attribute.Attribute;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Copies;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import porebench.port.Waiting;
import porebench.record.book.Progress;

/** A PDF whose printer is chosen. */
final class WaitingPrint implements Waiting {
    private final PDDocument document;
    private final PrinterJob job;
    private final PrintRequestAttributeSet chosen;
    private final Function<Exception, PrintException> failing;

    private WaitingPrint(
            PDDocument document,
            PrinterJob job,
            PrintRequestAttributeSet chosen,
            Function<Exception, PrintException> failing) {
        this.document = document;
        this.job = job;
        this.chosen = chosen;
        this.failing = failing;
    }

    /** Asks for a printer, its tray and how many copies; empty when the person thought better of it. */
    static Optional<Waiting> of(byte[] pdf, PrinterJob job, Function<Exception, PrintException> failing)
            throws IOException {
        PDDocument document = Loader.loadPDF(pdf);
        PrintRequestAttributeSet chosen = new HashPrintRequestAttributeSet();
        boolean isChosen = false;
        try {
            job.setPageable(new PDFPageable(document));
            isChosen = job.printDialog(chosen);
        } finally {
            if (!isChosen) {
                document.close();
            }
        }
        return isChosen ? Optional.of(new WaitingPrint(document, job, chosen, failing)) : Optional.empty();
    }

    @Override
    public void release() {
        release(Progress.UNHEARD);
    }

    /** What was ended takes its job back from the printer before the last page reached it. */
    @Override
    public void release(Progress progress) {
        ToldPages pages = new ToldPages(new PDFPageable(document), progress, job::cancel);
        job.setPageable(pages);
        try {
            job.print(chosen);
        } catch (PrinterException failure) {
            throw pages.ended().<RuntimeException>map(ended -> ended).orElseGet(() -> failing.apply(failure));
        }
        pages.ended().ifPresent(ended -> {
            throw ended;
        });
    }

    @Override
    public int copies() {
        Attribute copies = chosen.get(Copies.class);
        return copies instanceof Copies known ? known.getValue() : job.getCopies();
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException failure) {
            throw failing.apply(failure);
        }
    }
}

package porebench.print;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import porebench.port.Waiting;
import porebench.record.book.Progress;

/** A PDF whose printer is chosen. */
final class WaitingPrint implements Waiting {
    private final PDDocument document;
    private final PrinterJob job;
    private final Function<Exception, PrintException> failing;

    private WaitingPrint(PDDocument document, PrinterJob job, Function<Exception, PrintException> failing) {
        this.document = document;
        this.job = job;
        this.failing = failing;
    }

    /** Asks for a printer; empty when the person thought better of it. */
    static Optional<Waiting> of(byte[] pdf, PrinterJob job, Function<Exception, PrintException> failing)
            throws IOException {
        PDDocument document = Loader.loadPDF(pdf);
        boolean isChosen = false;
        try {
            job.setPageable(new PDFPageable(document));
            isChosen = job.printDialog();
        } finally {
            if (!isChosen) {
                document.close();
            }
        }
        return isChosen ? Optional.of(new WaitingPrint(document, job, failing)) : Optional.empty();
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
            job.print();
        } catch (PrinterException failure) {
            throw pages.ended().<RuntimeException>map(ended -> ended).orElseGet(() -> failing.apply(failure));
        }
        pages.ended().ifPresent(ended -> {
            throw ended;
        });
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

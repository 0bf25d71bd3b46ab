package porebench.print;

import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import porebench.record.book.Progress;

/** The pages of a print job, of which each is told when the printer asks for it; once somebody ended it there are no more. */
final class ToldPages implements Pageable {
    private final Pageable pages;
    private final Progress progress;
    private final Runnable cancel;
    private Optional<CancellationException> ended = Optional.empty();

    /**
     * Makes the pages of a job.
     *
     * @param cancel takes the job back from the printer
     */
    ToldPages(Pageable pages, Progress progress, Runnable cancel) {
        this.pages = pages;
        this.progress = progress;
        this.cancel = cancel;
    }

    /** Returns that somebody ended it. */
    Optional<CancellationException> ended() {
        return ended;
    }

    @Override
    public int getNumberOfPages() {
        return pages.getNumberOfPages();
    }

    @Override
    public PageFormat getPageFormat(int page) {
        return pages.getPageFormat(page);
    }

    @Override
    public Printable getPrintable(int page) {
        Printable printable = pages.getPrintable(page);
        return (graphics, format, index) -> {
            tell(page);
            return ended.isPresent() ? Printable.NO_SUCH_PAGE : printable.print(graphics, format, index);
        };
    }

    private void tell(int page) {
        if (ended.isEmpty()) {
            try {
                progress.at(Progress.Stage.PRINTING, page, getNumberOfPages());
            } catch (CancellationException told) {
                ended = Optional.of(told);
                cancel.run();
            }
        }
    }
}

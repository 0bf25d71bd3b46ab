package porebench.print;

import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.Optional;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Copies;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaTray;
import porebench.port.Press;

/** A printer that takes the pages and keeps them, its dialog answered beforehand. */
public final class DeskPrinter extends PrinterJob {
    private final boolean agrees;
    boolean broken;
    private volatile boolean isTakenBack;
    private volatile Runnable slow = () -> {};
    private volatile int printed;
    private final PrintRequestAttributeSet wanted = new HashPrintRequestAttributeSet();
    private final PrintRequestAttributeSet given = new HashPrintRequestAttributeSet();
    private volatile String jobName = "";
    Pageable pages;
    PageFormat format;

    public DeskPrinter(boolean agrees) {
        this.agrees = agrees;
    }

    /** Returns a press whose only printer is this one. */
    public Press press() {
        return new PdfPress("Porebench 0.1.0", Presses.NOON, () -> this);
    }

    /** Returns a press on a machine that knows no printer. */
    public static Press pressWithout() {
        DeskPrinter none = new DeskPrinter(true);
        return new PdfPress("Porebench 0.1.0", Presses.NOON, () -> none, () -> false);
    }

    /** Lets whatever is printed fail. */
    public void breaks() {
        broken = true;
    }

    /** Lets each page wait for something before it is taken. */
    public void slowBy(Runnable wait) {
        slow = wait;
    }

    /** Returns how many pages it took. */
    public int printed() {
        return printed;
    }

    @Override
    public void setPageable(Pageable document) {
        pages = document;
        format = document.getPageFormat(0);
    }

    /** Chooses copies and the tray from which they are fed, in the dialog. */
    public void choose(int copies, MediaTray tray) {
        wanted.add(new Copies(copies));
        wanted.add(tray);
    }

    /** Returns from which tray the pages were fed; none where nothing was printed or no tray was chosen. */
    public Optional<MediaTray> fedFrom() {
        return Optional.ofNullable((MediaTray) given.get(Media.class));
    }

    @Override
    public boolean printDialog(PrintRequestAttributeSet attributes) {
        attributes.addAll(wanted);
        return agrees;
    }

    @Override
    public void print(PrintRequestAttributeSet attributes) throws PrinterException {
        given.addAll(attributes);
        print();
    }

    @Override
    public boolean printDialog() {
        return agrees;
    }

    @Override
    public void print() throws PrinterException {
        if (broken) {
            throw new PrinterException("out of paper");
        }
        for (int page = 0; page < pages.getNumberOfPages(); page++) {
            slow.run();
            BufferedImage image = new BufferedImage(300, 420, BufferedImage.TYPE_INT_RGB);
            var graphics = image.createGraphics();
            if (pages.getPrintable(page).print(graphics, pages.getPageFormat(page), page) == Printable.PAGE_EXISTS) {
                printed++;
            }
            graphics.dispose();
        }
    }

    @Override
    public void setPrintable(Printable painter) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void setPrintable(Printable painter, PageFormat pageFormat) {
        throw new UnsupportedOperationException();
    }

    @Override
    public PageFormat pageDialog(PageFormat page) {
        throw new UnsupportedOperationException();
    }

    @Override
    public PageFormat defaultPage(PageFormat page) {
        return page;
    }

    @Override
    public PageFormat validatePage(PageFormat page) {
        return page;
    }

    @Override
    public void setCopies(int number) {
        throw new UnsupportedOperationException();
    }

    @Override
    public int getCopies() {
        return 1;
    }

    @Override
    public String getUserName() {
        return "";
    }

    @Override
    public void setJobName(String name) {
        jobName = name;
    }

    @Override
    public String getJobName() {
        return jobName;
    }

    @Override
    public void cancel() {
        isTakenBack = true;
    }

    @Override
    public boolean isCancelled() {
        return isTakenBack;
    }
}

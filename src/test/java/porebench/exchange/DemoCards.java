package porebench.exchange;

import porebench.port.DemoBook;
import porebench.record.book.LabBook;

/** The first year of the demo laboratory with its cards: one with truck 7 is out on a factor that was replaced. */
public final class DemoCards implements DemoBook {
    @Override
    public void fill(LabBook book) {
        DemoLaboratory.fillFirstYear(book);
        DemoLaboratory.handOut(book);
    }
}

package porebench.exchange;

import porebench.port.DemoBook;
import porebench.record.book.LabBook;

/** The first year of the demo laboratory: eight mixes, of which the figures are known to the tests. */
public final class DemoYear implements DemoBook {
    @Override
    public void fill(LabBook book) {
        DemoLaboratory.fillFirstYear(book);
    }
}

package porebench.port;

import porebench.record.book.LabBook;

/** The records of the demo laboratory, which is invented. */
@FunctionalInterface
public interface DemoBook {
    /**
     * Fills an empty lab book with the demo laboratory, all of it or nothing.
     *
     * @throws IllegalStateException if the lab book does not take the records, with the reasons
     */
    void fill(LabBook book);
}

package porebench.port;

import java.time.LocalDate;
import porebench.record.book.LabBook;

/** What a new training book begins with: an invented laboratory with mixes and calibrated meters, and no trial yet. */
@FunctionalInterface
public interface PracticeBook {
    /**
     * Fills an empty lab book, all of it or nothing, and makes it a training book.
     *
     * @param day the day on which the practice begins; the calibrations of the meters hold on it
     * @throws IllegalStateException if the lab book does not take the records, with the reasons
     */
    void fill(LabBook book, LocalDate day);
}

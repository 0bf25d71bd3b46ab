package porebench.desk;

import java.util.List;
import java.util.Optional;
import porebench.desk.form.Tasks;
import porebench.method.Problem;
import porebench.record.book.Progress;

/**
 * What became of the keeping of records.
 *
 * @param refused why nothing was kept; empty when it was
 * @param look what the lab book says then; empty when it could not be read
 */
record Keeping(List<Problem> refused, Optional<Look> look) {
    /** Looks after keeping. What was kept stays kept when it cannot be read anew at once: the next look tells of that. */
    static Keeping of(List<Problem> refused, Tasks.Told<Look> looking, Progress progress) {
        try {
            return new Keeping(refused, Optional.of(looking.call(progress)));
        } catch (Exception unread) {
            return new Keeping(refused, Optional.empty());
        }
    }
}

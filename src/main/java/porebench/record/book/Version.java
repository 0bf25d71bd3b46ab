package porebench.record.book;

import porebench.quantity.Require;
import porebench.record.Kept;

/**
 * One version of a record, as it stands in the lab book.
 *
 * @param value the record
 * @param number the version, counted from 1
 * @param stamp who kept it, when and why
 * @param <T> the kind of record
 */
public record Version<T extends Kept>(T value, int number, Stamp stamp) {
    public Version {
        Require.atLeast("number", number, 1);
    }
}

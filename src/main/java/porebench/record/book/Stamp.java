package porebench.record.book;

import java.time.Instant;
import porebench.quantity.Require;

/**
 * Who kept a version of a record, when and why.
 *
 * @param who the person's name
 * @param at the moment, to the millisecond
 * @param why the reason; for a first version what was done, for a correction why
 */
public record Stamp(String who, Instant at, String why) {
    public Stamp {
        Require.notBlank("who", who);
        Require.notBlank("why", why);
    }
}

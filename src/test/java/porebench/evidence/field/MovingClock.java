package porebench.evidence.field;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test turns on. */
final class MovingClock extends Clock {
    private Instant now;

    MovingClock(String day) {
        now = at(day);
    }

    private static Instant at(String day) {
        return Instant.parse(day + "T12:00:00Z");
    }

    /** Turns it to the noon of a day. */
    void turnTo(String day) {
        now = at(day);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return now;
    }
}

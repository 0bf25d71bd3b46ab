package porebench.desk.bench;

import java.util.Optional;

/** Tells a line that a device types, as a balance that is a keyboard does, from what a hand types: by its speed. */
final class DeviceLine {
    /** No hand strikes another key so soon (common practice, no source). */
    static final int HAND_MILLISECONDS = 80;

    private final StringBuilder line = new StringBuilder();
    private long last = -HAND_MILLISECONDS;

    /**
     * Takes a sign.
     *
     * @param when its time in milliseconds, on the clock of the events
     * @return whether it came in a line with the one before
     */
    boolean add(char sign, long when) {
        boolean isQuick = isQuick(when);
        if (!isQuick) {
            line.setLength(0);
        }
        line.append(sign);
        last = when;
        return isQuick;
    }

    /** Ends the line by Enter; empty where a hand struck it, or the line is a number alone, which was typed like any other. */
    Optional<String> end(long when) {
        String whole = isQuick(when) ? line.toString() : "";
        line.setLength(0);
        boolean isMore = whole.chars().anyMatch(Character::isDigit)
                && whole.chars().anyMatch(sign -> !Character.isDigit(sign) && sign != '.' && sign != ',');
        return isMore ? Optional.of(whole) : Optional.empty();
    }

    private boolean isQuick(long when) {
        return when - last < HAND_MILLISECONDS;
    }
}

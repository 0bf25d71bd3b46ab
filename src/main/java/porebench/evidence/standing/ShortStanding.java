package porebench.evidence.standing;

import porebench.evidence.MixScatter;

/**
 * What every reading of a laboratory asks of a mix: its line in the register, and how its trials scatter.
 *
 * @param register its line in the register
 * @param scatter how its trials scatter
 */
record ShortStanding(RegisterLine register, MixScatter scatter) {
    /** Ends the scatter, in which it does not occur. */
    private static final char BETWEEN = '\n';

    /** Returns it as a text. */
    String text() {
        return WrittenScatter.of(scatter) + BETWEEN + register.text();
    }

    /**
     * Returns what a text says.
     *
     * @throws RuntimeException if that is no such text
     */
    static ShortStanding read(String text) {
        int end = text.indexOf(BETWEEN);
        return new ShortStanding(
                RegisterLine.read(text.substring(end + 1)), WrittenScatter.read(text.substring(0, end)));
    }
}

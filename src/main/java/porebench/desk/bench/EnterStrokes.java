package porebench.desk.bench;

/**
 * Tells a stroke of Enter from a key that is held down and from one that bounces under a wet hand.
 *
 * <p>A key that stays down is one stroke, however often the machine repeats it. What is asked about is only taken by a stroke some time
 * after the one that asked: nobody reads a question sooner.
 */
final class EnterStrokes {
    /** The least time in which a person sees that something is asked and answers it (common practice, no source). */
    static final long TO_READ_MILLISECONDS = 500;

    private boolean isDown;
    private long last = -TO_READ_MILLISECONDS;

    /**
     * Returns whether Enter going down counts.
     *
     * @param when its time in milliseconds, on the clock of the events
     * @param isAnswer whether it would take what the stroke before asked about
     */
    boolean goesDown(long when, boolean isAnswer) {
        boolean counts = !isDown && taps(when, isAnswer);
        isDown = true;
        return counts;
    }

    /** Returns whether a tap on the button Enter counts; times as above. */
    boolean taps(long when, boolean isAnswer) {
        boolean isTooSoon = isAnswer && when - last < TO_READ_MILLISECONDS;
        if (!isTooSoon) {
            last = when;
        }
        return !isTooSoon;
    }

    /** Notes that Enter was let go, or that the keyboard went elsewhere, where letting go is not seen. */
    void comesUp() {
        isDown = false;
    }
}

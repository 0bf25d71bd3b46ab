package porebench.balance;

import java.util.function.Consumer;

/** Makes lines of what comes in pieces. A line that never ends is dropped, so that no noise fills the memory. */
final class LineCollector {
    private static final int LONGEST = 200;

    private final Consumer<String> taker;
    private final StringBuilder line = new StringBuilder();
    private boolean isTooLong;

    LineCollector(Consumer<String> taker) {
        this.taker = taker;
    }

    /** Takes a piece, and hands on every line that ends in it and has something in it. */
    void take(String piece) {
        for (int i = 0; i < piece.length(); i++) {
            char sign = piece.charAt(i);
            if (sign == '\r' || sign == '\n') {
                end();
            } else if (line.length() < LONGEST) {
                line.append(sign);
            } else {
                isTooLong = true;
            }
        }
    }

    private void end() {
        String whole = line.toString().strip();
        boolean isWhole = !isTooLong && !whole.isEmpty();
        line.setLength(0);
        isTooLong = false;
        if (isWhole) {
            taker.accept(whole);
        }
    }
}

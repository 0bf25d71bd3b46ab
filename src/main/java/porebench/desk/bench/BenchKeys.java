package porebench.desk.bench;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.Timer;
import porebench.evidence.paper.SheetCode;

/**
 * The keys of the bench, struck by a hand, a reader of codes or a balance that is a keyboard. All of them work on the bench itself:
 * there is no field that could lose them.
 */
final class BenchKeys extends KeyAdapter {
    /** The letters of a reader of codes come faster than those of any hand. */
    private static final int BETWEEN_LETTERS_MILLISECONDS = 200;

    private final BowlsModel model;
    private final BenchBalance balance;
    private final EnterStrokes enters;
    private final Supplier<BalancePattern> pattern;
    private final Runnable leave;
    private final DeviceLine device = new DeviceLine();
    private final StringBuilder scanned = new StringBuilder();
    private final Timer afterSign = new Timer(DeviceLine.HAND_MILLISECONDS, event -> actOnSign());
    private Optional<Character> sign = Optional.empty();
    private long lastLetter;

    /**
     * Makes them.
     *
     * @param pattern how the balance writes a mass
     * @param leave leaves the bench
     */
    BenchKeys(
            BowlsModel model,
            BenchBalance balance,
            EnterStrokes enters,
            Supplier<BalancePattern> pattern,
            Runnable leave) {
        this.model = model;
        this.balance = balance;
        this.enters = enters;
        this.pattern = pattern;
        this.leave = leave;
        afterSign.setRepeats(false);
    }

    @Override
    public void keyTyped(KeyEvent event) {
        char typed = event.getKeyChar();
        if (typed < ' ' || typed == KeyEvent.VK_DELETE || event.isControlDown() || event.isAltDown()) {
            return;
        }
        // It is the bench's, whatever becomes of it: what went nowhere in the window behind is told there.
        event.consume();
        boolean isInLine = device.add(typed, event.getWhen());
        if (isInLine && (Character.isDigit(typed) || typed == ' ')) {
            // The sign before it is of the number that a balance writes.
            sign = Optional.empty();
        }
        actOnSign();
        boolean isReader = !scanned.isEmpty() && event.getWhen() - lastLetter < BETWEEN_LETTERS_MILLISECONDS;
        lastLetter = event.getWhen();
        if (isReader || Character.isLetter(typed)) {
            if (!isReader) {
                scanned.setLength(0);
                model.unknownKey();
            }
            scanned.append(typed);
            return;
        }
        scanned.setLength(0);
        act(typed);
    }

    private void act(char typed) {
        switch (typed) {
            case '+', '-' -> {
                sign = Optional.of(typed);
                if (model.step().role().isPresent()) {
                    afterSign.restart();
                } else {
                    actOnSign();
                }
            }
            case '*' -> model.begin();
            default -> {
                if (Character.isDigit(typed) || typed == '.' || typed == ',') {
                    model.type(typed);
                } else {
                    model.unknownKey();
                }
            }
        }
    }

    /** Does what + and - do, which waits while masses are weighed: a balance may write them before a number. */
    private void actOnSign() {
        afterSign.stop();
        Optional<Character> waited = sign;
        sign = Optional.empty();
        waited.ifPresent(struck -> {
            if (struck == '+') {
                model.turnToNext();
            } else {
                model.back();
            }
        });
    }

    @Override
    public void keyPressed(KeyEvent event) {
        switch (event.getKeyCode()) {
            case KeyEvent.VK_ENTER -> enter(event);
            case KeyEvent.VK_BACK_SPACE -> {
                actOnSign();
                model.erase();
            }
            case KeyEvent.VK_ESCAPE -> {
                actOnSign();
                leave.run();
            }
            default -> NumberPad.sign(event).ifPresent(model::type);
        }
    }

    private void enter(KeyEvent event) {
        actOnSign();
        boolean isReader = !scanned.isEmpty() && event.getWhen() - lastLetter < BETWEEN_LETTERS_MILLISECONDS;
        String code = isReader ? scanned.toString() : "";
        scanned.setLength(0);
        Optional<BalanceReading> reading = device.end(event.getWhen())
                .filter(line ->
                        model.step().role().isPresent() && SheetCode.mix(code).isEmpty())
                .map(pattern.get()::read)
                .filter(read -> read.kind() != BalanceReading.Kind.NO_MASS);
        if (reading.isPresent()) {
            balance.typed(reading.get());
        } else if (isReader) {
            model.scan(code);
        } else if (enters.goesDown(event.getWhen(), model.isAskedTwice())) {
            model.enter();
        }
    }

    @Override
    public void keyReleased(KeyEvent event) {
        if (event.getKeyCode() == KeyEvent.VK_ENTER) {
            enters.comesUp();
        }
    }
}

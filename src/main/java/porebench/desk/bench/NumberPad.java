package porebench.desk.bench;

import java.awt.event.KeyEvent;
import java.util.Map;
import java.util.Optional;

/** The keypad while Num Lock is off: its keys are the digits that stand on them all the same. */
final class NumberPad {
    private static final Map<Integer, Character> ON_THE_KEY = Map.ofEntries(
            Map.entry(KeyEvent.VK_INSERT, '0'),
            Map.entry(KeyEvent.VK_END, '1'),
            Map.entry(KeyEvent.VK_DOWN, '2'),
            Map.entry(KeyEvent.VK_KP_DOWN, '2'),
            Map.entry(KeyEvent.VK_PAGE_DOWN, '3'),
            Map.entry(KeyEvent.VK_LEFT, '4'),
            Map.entry(KeyEvent.VK_KP_LEFT, '4'),
            Map.entry(KeyEvent.VK_CLEAR, '5'),
            Map.entry(KeyEvent.VK_BEGIN, '5'),
            Map.entry(KeyEvent.VK_RIGHT, '6'),
            Map.entry(KeyEvent.VK_KP_RIGHT, '6'),
            Map.entry(KeyEvent.VK_HOME, '7'),
            Map.entry(KeyEvent.VK_UP, '8'),
            Map.entry(KeyEvent.VK_KP_UP, '8'),
            Map.entry(KeyEvent.VK_PAGE_UP, '9'),
            Map.entry(KeyEvent.VK_DELETE, '.'));

    private NumberPad() {}

    /** Returns the digit or decimal sign on a key of the keypad that came as a way to move; empty for any other. */
    static Optional<Character> sign(KeyEvent event) {
        return event.getKeyLocation() == KeyEvent.KEY_LOCATION_NUMPAD
                ? Optional.ofNullable(ON_THE_KEY.get(event.getKeyCode()))
                : Optional.empty();
    }
}

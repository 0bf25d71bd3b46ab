package porebench.desk.bench;

import java.util.List;
import porebench.desk.Settings;

/**
 * The balance of the bench, as it was set on this machine.
 *
 * @param place the name of its serial line; empty where it has none
 * @param baud signs a second
 * @param pattern how it writes a mass, as a regular expression
 */
public record BalanceSetting(String place, int baud, String pattern) {
    /** What serial lines run at, in signs a second. */
    public static final List<Integer> BAUDS = List.of(1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200);

    private static final int USUAL_BAUD = 9600;

    /** Returns what is set. */
    public static BalanceSetting of(Settings settings) {
        String baud = settings.get("balance.baud", "");
        return new BalanceSetting(
                settings.get("balance.place", ""),
                BAUDS.stream()
                        .filter(known -> known.toString().equals(baud))
                        .findFirst()
                        .orElse(USUAL_BAUD),
                settings.get("balance.pattern", BalancePattern.USUAL));
    }

    /** Sets it. */
    public void keep(Settings settings) {
        settings.put("balance.place", place);
        settings.put("balance.baud", Integer.toString(baud));
        settings.put("balance.pattern", pattern);
    }
}

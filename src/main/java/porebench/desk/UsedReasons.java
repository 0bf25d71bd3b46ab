package porebench.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The reasons that a person gave for an act, the newest first, so that they need not be typed again. */
public final class UsedReasons {
    /** More are not looked through. */
    private static final int MOST = 12;

    /** What is remembered under one key may have 8000 letters. */
    private static final int LONGEST = 600;

    private static final String BETWEEN = "\u001e";

    private final Settings settings;

    public UsedReasons(Settings settings) {
        this.settings = settings;
    }

    /**
     * Returns the reasons of an act, the newest first, each once.
     *
     * @param act the act, in the words by which it is asked about
     */
    public List<String> of(String act) {
        return Stream.of(settings.get(key(act), "").split(BETWEEN))
                .filter(reason -> !reason.isBlank())
                .toList();
    }

    /** Remembers a reason as the newest one of an act; one that is too long to choose from a list is not. */
    public void use(String act, String reason) {
        String plain = reason.strip();
        if (plain.isEmpty() || plain.length() > LONGEST || plain.contains(BETWEEN)) {
            return;
        }
        List<String> all = new ArrayList<>(of(act));
        all.remove(plain);
        all.add(0, plain);
        settings.put(key(act), String.join(BETWEEN, all.subList(0, Math.min(MOST, all.size()))));
    }

    /** A key of the system's preferences has at most 80 letters. */
    private static String key(String act) {
        return "reasons." + Integer.toHexString(act.hashCode());
    }
}

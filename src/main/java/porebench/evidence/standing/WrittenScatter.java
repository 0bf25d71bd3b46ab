package porebench.evidence.standing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.MixScatter;
import porebench.method.MeterType;
import porebench.statistics.summary.PooledDeviation;

/** How the trials of a mix scatter, as a text and back: for each type of meter its name, sets, degrees of freedom and deviation. */
final class WrittenScatter {
    private static final String GAP = " ";
    private static final int WORDS = 4;

    private WrittenScatter() {}

    /** Returns it as a text. */
    static String of(MixScatter scatter) {
        List<String> words = new ArrayList<>();
        Arrays.stream(MeterType.values())
                .forEach(type -> scatter.on(type)
                        .ifPresent(pooled -> words.addAll(List.of(
                                type.name(),
                                Integer.toString(pooled.sets()),
                                Integer.toString(pooled.degreesOfFreedom()),
                                Double.toString(pooled.standardDeviation())))));
        return String.join(GAP, words);
    }

    /**
     * Returns what a text says.
     *
     * @throws RuntimeException if that is no such text
     */
    static MixScatter read(String text) {
        Map<MeterType, PooledDeviation> byType = new EnumMap<>(MeterType.class);
        String[] words = text.isEmpty() ? new String[0] : text.split(GAP, -1);
        for (int i = 0; i < words.length; i += WORDS) {
            byType.put(
                    MeterType.valueOf(words[i]),
                    new PooledDeviation(
                            Integer.parseInt(words[i + 1]),
                            Integer.parseInt(words[i + 2]),
                            Double.parseDouble(words[i + 3])));
        }
        return new MixScatter(byType);
    }
}

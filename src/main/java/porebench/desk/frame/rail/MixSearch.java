package porebench.desk.frame.rail;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.record.id.MixId;

/**
 * Finds mixes by words: a mix is found when each word stands somewhere in its name, its title, its state as the person reads it, or
 * what else is known of it. Neither the order of the words counts, nor capitals, nor accents.
 */
final class MixSearch {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0]+");

    private final Function<FactorState, String> stateWords;
    private List<RegisterRow> rows = List.of();
    private Map<MixId, String> more = Map.of();
    private List<String> texts = List.of();

    /**
     * Begins with no mix.
     *
     * @param stateWords says a state in the person's language
     */
    MixSearch(Function<FactorState, String> stateWords) {
        this.stateWords = stateWords;
    }

    /**
     * Looks among some mixes from now on; the same ones again cost nothing.
     *
     * @param others the mixes
     * @param words what else they are found by
     */
    void among(List<RegisterRow> others, Map<MixId, String> words) {
        if (others == rows && words == more) {
            return;
        }
        rows = others;
        more = words;
        texts = rows.stream().map(this::text).toList();
    }

    private String text(RegisterRow row) {
        return folded(String.join(
                "\n",
                List.of(
                        row.mixId().text(),
                        row.title(),
                        stateWords.apply(row.state()),
                        more.getOrDefault(row.mixId(), ""))));
    }

    /** Returns the mixes that have all words of a text, in their order; all of them when it is blank. */
    List<RegisterRow> find(String sought) {
        List<String> words = words(sought);
        if (words.isEmpty()) {
            return rows;
        }
        List<RegisterRow> found = new ArrayList<>();
        IntStream.range(0, rows.size())
                .filter(index -> words.stream().allMatch(texts.get(index)::contains))
                .forEach(index -> found.add(rows.get(index)));
        return found;
    }

    /** Returns whether a text asks for anything. */
    static boolean asks(String sought) {
        return !words(sought).isEmpty();
    }

    private static List<String> words(String sought) {
        return Stream.of(SPACES.split(folded(sought)))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static String folded(String text) {
        String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
        return ACCENTS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT);
    }
}

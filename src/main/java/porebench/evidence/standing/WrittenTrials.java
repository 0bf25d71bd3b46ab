package porebench.evidence.standing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import porebench.evidence.CountedTrials;
import porebench.evidence.InTheBowl;
import porebench.method.MeterType;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** The trials of a mix that count, as a text and back. */
final class WrittenTrials {
    private static final String GAP = " ";

    private WrittenTrials() {}

    /** Returns the trials of a mix's determinations as a text. */
    static String of(List<CountedTrials> determinations) {
        return Joined.of(determinations.stream().map(WrittenTrials::one).toList());
    }

    private static String one(CountedTrials counted) {
        Map<String, String> sources = new TreeMap<>();
        counted.sourceVersions().forEach((source, version) -> sources.put(source.text(), version.toString()));
        List<String> named = new ArrayList<>();
        sources.forEach((source, version) -> named.addAll(List.of(source, version)));
        List<String> occasions = List.copyOf(new LinkedHashSet<>(counted.occasions()));
        Map<String, Integer> places = new HashMap<>();
        occasions.forEach(occasion -> places.put(occasion, places.size()));
        return Joined.of(List.of(
                counted.id().text(),
                counted.mixId().text(),
                Integer.toString(counted.mixVersion()),
                Joined.of(named),
                counted.types().stream().map(MeterType::name).collect(Collectors.joining()),
                Joined.of(occasions),
                counted.occasions().stream()
                        .map(occasion -> String.valueOf(places.get(occasion)))
                        .collect(Collectors.joining(GAP)),
                Arrays.stream(counted.factors()).mapToObj(Double::toString).collect(Collectors.joining(GAP)),
                bowl(counted.bowl())));
    }

    private static String bowl(InTheBowl bowl) {
        List<String> words = new ArrayList<>(List.of(Double.toString(bowl.divisionPercent())));
        new TreeMap<>(bowl.kilograms())
                .forEach((source, kilograms) -> words.addAll(List.of(source, Double.toString(kilograms))));
        return Joined.of(words);
    }

    private static InTheBowl readBowl(String text) {
        List<String> words = Joined.parts(text);
        Map<String, Double> kilograms = new HashMap<>();
        for (int i = 1; i < words.size(); i += 2) {
            kilograms.put(words.get(i), Double.valueOf(words.get(i + 1)));
        }
        return new InTheBowl(Double.parseDouble(words.get(0)), kilograms);
    }

    /**
     * Returns the trials of a text.
     *
     * @throws RuntimeException if that is no such text
     */
    static List<CountedTrials> read(String text) {
        return Joined.parts(text).stream().map(WrittenTrials::readOne).toList();
    }

    private static CountedTrials readOne(String text) {
        List<String> parts = Joined.parts(text);
        List<String> named = Joined.parts(parts.get(3));
        Map<SourceId, Integer> sources = new HashMap<>();
        for (int i = 0; i < named.size(); i += 2) {
            sources.put(new SourceId(named.get(i)), Integer.valueOf(named.get(i + 1)));
        }
        List<String> occasions = Joined.parts(parts.get(5));
        return new CountedTrials(
                new DeterminationId(parts.get(0)),
                new MixId(parts.get(1)),
                Integer.parseInt(parts.get(2)),
                sources,
                parts.get(4)
                        .chars()
                        .mapToObj(letter -> MeterType.valueOf(Character.toString(letter)))
                        .toList(),
                words(parts.get(6)).stream()
                        .map(place -> occasions.get(Integer.parseInt(place)))
                        .toList(),
                words(parts.get(7)).stream().mapToDouble(Double::parseDouble).toArray(),
                readBowl(parts.get(8)));
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(GAP));
    }
}

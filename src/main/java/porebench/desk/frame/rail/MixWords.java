package porebench.desk.frame.rail;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * Asks by which words beside its name and title a mix is found: its plant, its remarks, and of each of its sources the id, the name, pit and
 * ledge, and the remarks. All mixes are read at once, when somebody first looks for one.
 */
record MixWords() implements Question<Map<MixId, String>> {
    @Override
    public Map<MixId, String> answer(Reading seen) {
        Map<SourceId, String> sources = new HashMap<>();
        seen.book().latest(Source.class).stream()
                .map(Version::value)
                .forEach(source -> sources.put(source.id(), words(source)));
        return seen.book().latest(MixDesign.class).stream()
                .map(Version::value)
                .collect(Collectors.toUnmodifiableMap(MixDesign::id, mix -> words(mix, sources)));
    }

    private static String words(Source source) {
        return String.join("\n", List.of(source.name(), source.place(), source.ledge(), source.remarks()));
    }

    private static String words(MixDesign mix, Map<SourceId, String> sources) {
        return Stream.concat(
                        Stream.of(mix.plant().orElse(""), mix.remarks()),
                        mix.sources().stream()
                                .flatMap(id -> Stream.concat(
                                        Stream.of(id.text()), Optional.ofNullable(sources.get(id)).stream())))
                .collect(Collectors.joining("\n"));
    }
}

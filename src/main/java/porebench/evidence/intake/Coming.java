package porebench.evidence.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * What a lab book holds together with what is on its way there.
 *
 * @param good the good records that come in, by kind and name
 * @param soon the versions they will have
 * @param touched what the lab book holds
 */
record Coming(
        Map<RecordKind, Map<String, Incoming>> good, Map<RecordKind, Map<String, Integer>> soon, Touched touched) {
    /** Returns a record that is there or comes in. */
    Optional<Kept> known(RecordKind kind, String recordId) {
        Optional<Kept> incoming = Optional.ofNullable(good.get(kind))
                .map(all -> all.get(recordId))
                .map(Incoming::value);
        if (incoming.isPresent()) {
            return incoming;
        }
        return touched.latest(kind, recordId).map(Version::value);
    }

    /** Returns the version a record will have once these are kept; 0 when it is not known. */
    int versionOf(RecordKind kind, String recordId) {
        Integer drafted = soon.getOrDefault(kind, Map.of()).get(recordId);
        return drafted != null
                ? drafted
                : touched.latest(kind, recordId).map(Version::number).orElse(0);
    }

    /** Returns the versions the sources of a mix will have once these are kept; one not in the register is left out. */
    Map<SourceId, Integer> sourcesToday(MixId mixId) {
        Map<SourceId, Integer> versions = new LinkedHashMap<>();
        known(RecordKind.MIX, mixId.text())
                .map(mix -> ((MixDesign) mix).sources())
                .orElseThrow()
                .forEach(source -> {
                    int number = versionOf(RecordKind.SOURCE, source.text());
                    if (number > 0) {
                        versions.put(source, number);
                    }
                });
        return versions;
    }
}

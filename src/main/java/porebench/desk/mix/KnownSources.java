package porebench.desk.mix;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import porebench.method.Role;
import porebench.record.Source;
import porebench.record.book.Version;

/** The register of sources as it stood when it was last read: asked after every letter typed, read after every change. */
final class KnownSources {
    private final Map<String, Source> byId = new TreeMap<>();

    void know(List<Version<Source>> newest) {
        byId.clear();
        newest.stream()
                .map(Version::value)
                .forEach(source -> byId.put(source.id().text(), source));
    }

    Optional<Source> find(String id) {
        return Optional.ofNullable(byId.get(id.strip()));
    }

    /** Returns the sources of one role, in the order of their ids. */
    List<Source> fitting(Role role) {
        return byId.values().stream().filter(source -> source.role() == role).toList();
    }
}

package porebench.record.book;

import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.method.Glyphs;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;

/** Finds names that a person would take for one another: a new record's name against those that are there. */
public final class Namesakes {
    private final Records records;
    private final Map<RecordKind, Map<String, Optional<String>>> byLook = new EnumMap<>(RecordKind.class);
    private final Set<RecordKind> read = EnumSet.noneOf(RecordKind.class);

    /**
     * Begins; a name is looked up when it is asked for, and once.
     *
     * @param records where the names stand
     */
    public Namesakes(Records records) {
        this.records = records;
    }

    /** Reads all names of a kind now, so that none need be looked up when it is asked for; returns itself. */
    public Namesakes knowing(RecordKind kind) {
        if (read.add(kind)) {
            records.ids(kind).forEach(id -> remember(kind, id));
        }
        return this;
    }

    /** Looks the names of some records up at once, so that they need not be looked up one by one; returns itself. */
    public Namesakes knowing(Collection<? extends Kept> some) {
        some.stream()
                .collect(Collectors.groupingBy(Kept::kind, Collectors.mapping(Kept::recordId, Collectors.toList())))
                .forEach(this::lookUp);
        return this;
    }

    private void lookUp(RecordKind kind, List<String> names) {
        if (isNamed(kind) && !read.contains(kind)) {
            Map<String, String> found = records.alike(kind, names);
            names.stream()
                    .map(Glyphs::lookWithoutCase)
                    .forEach(look -> known(kind).putIfAbsent(look, Optional.ofNullable(found.get(look))));
        }
    }

    /**
     * Holds the name of a new record against the others of its kind, and remembers it for those that follow.
     *
     * @return an error when it looks the same as another; a warning when only capital and small letters differ; empty when
     *     neither, or when it is the very same name, which is told elsewhere
     */
    public Optional<Problem> meet(Kept record) {
        Optional<Problem> met = look(record);
        if (isNamed(record.kind())) {
            remember(record.kind(), record.recordId());
        }
        return met;
    }

    /** Holds the name of a record against the others of its kind, as {@link #meet} does, and forgets it again. */
    public Optional<Problem> look(Kept record) {
        if (!isNamed(record.kind())) {
            return Optional.empty();
        }
        String id = record.recordId();
        Optional<String> met = alike(record.kind(), id).filter(name -> !name.equals(id));
        if (met.isEmpty()) {
            return Optional.empty();
        }
        String other = met.get();
        String field = record.kind() == RecordKind.TRIAL ? "trialId" : "id";
        return Optional.of(
                Glyphs.look(other).equals(Glyphs.look(id))
                        ? Problem.error(
                                field, "id.looks-the-same", record.kind().word(), id, other)
                        : Problem.warning(
                                field, "id.differs-in-case", record.kind().word(), id, other));
    }

    /** Returns whether people give the records of a kind their names; the others follow from these. */
    public static boolean isNamed(RecordKind kind) {
        return kind != RecordKind.LABORATORY
                && kind != RecordKind.FACTOR_ISSUE
                && kind != RecordKind.CARD_PRINT
                && kind != RecordKind.CARD_STEP
                && kind != RecordKind.SHEET_PHOTO
                && kind != RecordKind.CHANGE_DECISION;
    }

    private Map<String, Optional<String>> known(RecordKind kind) {
        return byLook.computeIfAbsent(kind, any -> new HashMap<>());
    }

    private void remember(RecordKind kind, String name) {
        known(kind)
                .merge(
                        Glyphs.lookWithoutCase(name),
                        Optional.of(name),
                        (there, met) -> there.isPresent() ? there : met);
    }

    private Optional<String> alike(RecordKind kind, String name) {
        String look = Glyphs.lookWithoutCase(name);
        if (!known(kind).containsKey(look)) {
            lookUp(kind, List.of(name));
        }
        return known(kind).getOrDefault(look, Optional.empty());
    }
}

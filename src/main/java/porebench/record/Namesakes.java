package porebench.record;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import porebench.method.Glyphs;
import porebench.method.Problem;

/** Finds names that a person would take for one another: a new record's name against those that are there. */
public final class Namesakes {
    private final Records records;
    private final Map<RecordKind, Map<String, String>> byLook = new EnumMap<>(RecordKind.class);

    /**
     * Begins; the names of a kind are read once, when the first of that kind is asked for.
     *
     * @param records where the names stand
     */
    public Namesakes(Records records) {
        this.records = records;
    }

    /** Reads the names of a kind now, so that they need not be read when they are asked for; returns itself. */
    public Namesakes knowing(RecordKind kind) {
        known(kind);
        return this;
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
            known(record.kind()).putIfAbsent(Glyphs.lookWithoutCase(record.recordId()), record.recordId());
        }
        return met;
    }

    /** Holds the name of a record against the others of its kind, as {@link #meet} does, and forgets it again. */
    public Optional<Problem> look(Kept record) {
        if (!isNamed(record.kind())) {
            return Optional.empty();
        }
        String id = record.recordId();
        String other = known(record.kind()).get(Glyphs.lookWithoutCase(id));
        if (other == null || other.equals(id)) {
            return Optional.empty();
        }
        String field = record.kind() == RecordKind.TRIAL ? "trialId" : "id";
        return Optional.of(
                Glyphs.look(other).equals(Glyphs.look(id))
                        ? Problem.error(
                                field, "id.looks-the-same", record.kind().word(), id, other)
                        : Problem.warning(
                                field, "id.differs-in-case", record.kind().word(), id, other));
    }

    /** Returns whether people give the records of a kind their names; the others follow from these. */
    private static boolean isNamed(RecordKind kind) {
        return kind != RecordKind.LABORATORY && kind != RecordKind.FACTOR_ISSUE && kind != RecordKind.CARD_PRINT;
    }

    private Map<String, String> known(RecordKind kind) {
        return byLook.computeIfAbsent(kind, this::read);
    }

    private Map<String, String> read(RecordKind kind) {
        Map<String, String> names = new HashMap<>();
        records.ids(kind).forEach(id -> names.putIfAbsent(Glyphs.lookWithoutCase(id), id));
        return names;
    }
}

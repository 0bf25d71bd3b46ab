package porebench.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.record.Equipment;
import porebench.record.FactorGroup;
import porebench.record.Kept;
import porebench.record.LaboratoryProfile;
import porebench.record.Meter;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.book.Version;
import porebench.record.chain.Head;

/**
 * What a page wants to know of the lab book. It is asked of the desk, which answers it beside the event thread and knows the
 * answer until the lab book changes; two questions that are equal are one.
 *
 * @param <A> the answer
 */
public interface Question<A> {
    /** Looks the answer up; beside the event thread. */
    A answer(Reading seen);

    /**
     * Asks for the newest version of every record of a kind, in the order of their ids.
     *
     * @param kind a kind of which a laboratory has few
     */
    record Newest<T extends Kept>(Class<T> kind) implements Question<List<Version<T>>> {
        private static final Set<Class<? extends Kept>> FEW =
                Set.of(Source.class, Meter.class, Equipment.class, LaboratoryProfile.class, FactorGroup.class);

        public Newest {
            if (!FEW.contains(kind)) {
                throw new IllegalArgumentException(
                        "kind must be one of which a laboratory has few, but is " + kind.getName());
            }
        }

        @Override
        public List<Version<T>> answer(Reading seen) {
            return seen.book().latest(kind);
        }
    }

    /**
     * Asks for one record, if it is there.
     *
     * @param kind its kind
     * @param id its id
     */
    record One<T extends Kept>(Class<T> kind, String id) implements Question<Optional<Version<T>>> {
        @Override
        public Optional<Version<T>> answer(Reading seen) {
            return seen.book().latest(kind, id);
        }
    }

    /**
     * Asks for all versions of a record, the oldest first.
     *
     * @param kind its kind
     * @param id its id
     */
    record Versions<T extends Kept>(Class<T> kind, String id) implements Question<List<Version<T>>> {
        @Override
        public List<Version<T>> answer(Reading seen) {
            return seen.book().history(kind, id);
        }
    }

    /**
     * Asks which names look like some names.
     *
     * @param kind the kind of the records
     * @param names the names
     */
    record Alike(RecordKind kind, List<String> names) implements Question<Map<String, String>> {

        @Override
        public Map<String, String> answer(Reading seen) {
            return seen.book().alike(kind, names);
        }
    }

    /** Asks how far the lab book reaches. */
    record HeadOfBook() implements Question<Head> {
        @Override
        public Head answer(Reading seen) {
            return seen.book().head();
        }
    }
}

package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import porebench.method.Problem;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;
import porebench.record.id.StudyId;

/**
 * The readings of a study of who and what varies, as they were read from a file. What they come to is worked out anew each
 * time.
 *
 * @param id the laboratory's name for it
 * @param layout how the readings are laid out
 * @param title name for people, may be empty
 * @param madeOn the day of the readings
 * @param by who made the study
 * @param fileName the name of the file they were read from, without its folder; may be empty
 * @param layers the names of the columns that say what a reading belongs to, from left to right
 * @param readings the readings in the order of the file
 * @param remarks anything else, may be empty
 */
public record KeptStudy(
        StudyId id,
        Layout layout,
        String title,
        LocalDate madeOn,
        String by,
        String fileName,
        List<String> layers,
        List<Reading> readings,
        String remarks)
        implements Kept {
    /** More layers than this are no longer told apart by anybody's data. */
    public static final int MOST_LAYERS = 6;

    /** How the readings of a study are laid out. */
    public enum Layout implements Symbolic {
        /** Operators read the same samples, each as often. */
        OPERATORS("layout-operators", List.of("operator", "sample", "repeat")),
        /** Groups within groups, the outermost on the left. */
        LAYERS("layout-layers", List.of()),
        /** Laboratories tested the same material. */
        LABORATORIES("layout-laboratories", List.of("laboratory", "level"));

        private final String word;
        private final List<String> columns;

        Layout(String word, List<String> columns) {
            this.word = word;
            this.columns = columns;
        }

        /** Returns the kind of study that is laid out so, as a word inside a problem's message: what the window calls it. */
        public Problem.Word word() {
            return new Problem.Word(word);
        }

        /** Returns the columns that say what a reading belongs to; none where each study has its own. */
        public List<String> columns() {
            return columns;
        }

        /** Returns whether columns of these names, from left to right, make such a study. */
        public boolean takes(List<String> layers) {
            return columns.isEmpty() || columns.equals(layers);
        }
    }

    /**
     * One reading.
     *
     * @param names what it belongs to, a name for each layer, none blank
     * @param value the reading, its digits as typed
     */
    public record Reading(List<String> names, BigDecimal value) {
        public Reading {
            names = names.stream()
                    .map(name -> Require.notBlank("name", name).strip())
                    .toList();
        }
    }

    /**
     * Makes a study.
     *
     * @throws IllegalArgumentException if nobody is named who made it, if there is no reading, if the layers are not those of
     *     the layout, none or more than {@value #MOST_LAYERS}, or one stands twice, or if a reading has more or fewer names
     */
    public KeptStudy {
        by = Require.notBlank("by", by).strip();
        layers = layers.stream()
                .map(layer -> Require.notBlank("layer", layer).strip())
                .toList();
        readings = List.copyOf(readings);
        require(!layers.isEmpty() && layers.size() <= MOST_LAYERS, "layers must be from 1 to " + MOST_LAYERS, layers);
        require(new HashSet<>(layers).size() == layers.size(), "layers must stand once each", layers);
        require(layout.takes(layers), "layers must be those of " + layout, layers);
        require(!readings.isEmpty(), "readings must be there", readings);
        for (Reading reading : readings) {
            require(reading.names().size() == layers.size(), "names must be one a layer", reading.names());
        }
    }

    private static void require(boolean rule, String what, Object is) {
        if (!rule) {
            throw new IllegalArgumentException(what + ", but is " + is);
        }
    }

    @Override
    public RecordKind kind() {
        return RecordKind.STUDY;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

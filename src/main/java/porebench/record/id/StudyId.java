package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a study; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record StudyId(String text) implements Name<StudyId> {
    public StudyId {
        text = Require.notBlank("StudyId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}

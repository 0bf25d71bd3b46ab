package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name by which the laboratory knows a trial; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record TrialId(String text) implements Name<TrialId> {
    public TrialId {
        text = Require.notBlank("TrialId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}

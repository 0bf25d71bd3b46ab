package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name of a decision on a changed source, which begins with that of its mix; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record ChangeDecisionId(String text) implements Name<ChangeDecisionId> {
    public ChangeDecisionId {
        text = Require.notBlank("ChangeDecisionId", text).strip();
    }

    /** Returns the name of the decision of a number of a mix, counted from 1. */
    public static ChangeDecisionId of(MixId mix, int number) {
        return new ChangeDecisionId(mix.text() + "/c" + number);
    }

    @Override
    public String toString() {
        return text;
    }
}

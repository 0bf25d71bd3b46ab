package porebench.record.id;

import porebench.quantity.Require;

/**
 * The name of a group of mixes; letter case counts.
 *
 * @param text the name, not blank and without white space around it
 */
public record GroupId(String text) implements Name<GroupId> {
    public GroupId {
        text = Require.notBlank("GroupId", text).strip();
    }

    @Override
    public String toString() {
        return text;
    }
}

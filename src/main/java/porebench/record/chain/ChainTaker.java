package porebench.record.chain;

/** Takes a whole lab book, entry by entry. */
public interface ChainTaker {
    /** Takes what the lab book says of itself; called once, before any entry. */
    void begins(ChainOutline outline);

    /** Takes the next entry, the oldest first. */
    void takes(ChainEntry entry);
}

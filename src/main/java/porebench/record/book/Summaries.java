package porebench.record.book;

import java.util.List;
import java.util.Map;
import porebench.record.id.MixId;

/**
 * What a lab book keeps of every mix beside its entries, so that nobody need work it out of them each time. It is no part of the
 * history: the entries say everything, and it can be worked out anew at any time.
 */
public interface Summaries {
    /** None are kept, and none can be. */
    Summaries NONE = new Summaries() {
        @Override
        public long upTo(int edition) {
            return 0;
        }

        @Override
        public Map<MixId, String> registerLines() {
            return Map.of();
        }

        @Override
        public Map<MixId, String> trials() {
            return Map.of();
        }

        @Override
        public void forget() {
            // There is nothing to forget.
        }

        @Override
        public boolean renew(int edition, long before, long upTo, List<MixSummary> renewed) {
            return false;
        }
    };

    /**
     * Returns the number of the entry up to which they hold; 0 where there are none.
     *
     * @param edition the way of working them out; those of another count as none
     */
    long upTo(int edition);

    /** Returns the line of every mix in the register. */
    Map<MixId, String> registerLines();

    /** Returns the trials of every mix that count. */
    Map<MixId, String> trials();

    /** Forgets all that is kept beside the entries, so that it is worked out of them anew; nothing where the lab book cannot be written. */
    void forget();

    /**
     * Puts some in the place of those before.
     *
     * @param edition the way in which they were worked out
     * @param before the number up to which those before held when the work began
     * @param upTo the number of the entry up to which they all hold now
     * @param renewed those that changed; all where none held before
     * @return false, and nothing kept, where somebody else renewed them meanwhile or the lab book cannot be written
     */
    boolean renew(int edition, long before, long upTo, List<MixSummary> renewed);
}

package porebench.desk.bench;

import java.util.Optional;
import porebench.record.id.MixId;

/** The code on the sheet of a mix, as a reader types it. */
final class SheetCode {
    private static final String LEAD = "PBMIX:";

    private SheetCode() {}

    /** Returns the mix that a code names; empty where it is of something else. */
    static Optional<MixId> mix(String code) {
        String read = code.strip();
        return read.startsWith(LEAD) && read.length() > LEAD.length()
                ? Optional.of(new MixId(read.substring(LEAD.length())))
                : Optional.empty();
    }
}

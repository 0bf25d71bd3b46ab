package porebench.evidence.paper;

import java.util.Optional;
import porebench.record.id.MixId;

/** The code on the trial sheet of a mix, which a reader of codes types at the bench. */
public final class SheetCode {
    private static final String LEAD = "PBMIX:";

    private SheetCode() {}

    /** Returns the code of a mix. */
    public static String of(MixId mix) {
        return LEAD + mix.text();
    }

    /** Returns the mix that a code names; empty where it is of something else. */
    public static Optional<MixId> mix(String code) {
        String read = code.strip();
        return read.startsWith(LEAD) && read.length() > LEAD.length()
                ? Optional.of(new MixId(read.substring(LEAD.length())))
                : Optional.empty();
    }
}

package porebench.record;

import java.util.Optional;
import porebench.quantity.Require;
import porebench.record.id.TrialId;

/**
 * A doubt that a named person took on when a factor was issued.
 *
 * @param trial the trial it is about; empty when it is about the determination as a whole
 * @param code the code of the doubt
 * @param words the doubt as the person read it, in the language of that day
 * @param by who took it on
 * @param reason why
 */
public record TakenDoubt(Optional<TrialId> trial, String code, String words, String by, String reason) {
    public TakenDoubt {
        Require.notBlank("code", code);
        Require.notBlank("by", by);
        Require.notBlank("reason", reason);
    }
}

package porebench.desk.trial;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import porebench.method.trial.Readings;
import porebench.record.Determination;
import porebench.record.Stamp;
import porebench.record.Trial;
import porebench.record.Version;
import porebench.record.id.MeterId;
import porebench.record.id.TrialId;

/** Puts a trial together out of a draft. */
final class Assembly {
    /** Stands where nothing was typed yet, in a trial that is only judged and never kept. */
    private static final String UNKNOWN = "?";

    private final TrialDraft draft;
    private final Determination determination;
    private final Optional<Trial> before;
    private final boolean training;

    /**
     * Begins a trial.
     *
     * @param draft what was typed
     * @param determination the determination it belongs to
     * @param before the trial it corrects; empty for a new one
     * @param training whether the lab book is for training, where no trial is a real one
     */
    Assembly(TrialDraft draft, Determination determination, Optional<Trial> before, boolean training) {
        this.draft = draft;
        this.determination = determination;
        this.before = before;
        this.training = training;
    }

    /** Makes the trial; one with missing fields can be judged but not kept. */
    Trial trial(Readings readings, Optional<LocalDateTime> testedAt, Optional<BigDecimal> elevationMetres) {
        return new Trial(
                new TrialId(orUnknown(draft.text(TrialField.ID))),
                determination.mixId(),
                determination.id(),
                testedAt.orElseGet(() -> determination.openedOn().atStartOfDay()),
                draft.text(TrialField.OPERATOR).strip(),
                new MeterId(orUnknown(draft.text(TrialField.METER))),
                readings,
                draft.text(TrialField.REMARKS).strip(),
                before.flatMap(Trial::keptBecause),
                before.flatMap(Trial::struckBecause),
                elevationMetres,
                training);
    }

    private static String orUnknown(String text) {
        return text.isBlank() ? UNKNOWN : text.strip();
    }

    /** Returns a trial as a version to be judged, which is not in the lab book. */
    static Version<Trial> unkept(Trial trial) {
        return new Version<>(trial, 1, new Stamp(UNKNOWN, Instant.EPOCH, UNKNOWN));
    }
}

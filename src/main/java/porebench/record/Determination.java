package porebench.record;

import java.time.LocalDate;
import java.util.Map;
import porebench.quantity.Require;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * A set of repeat trials of one mix that leads to one factor.
 *
 * <p>It is open until a factor is issued from it; new trials of the mix then start another.
 *
 * @param id its name
 * @param mixId the mix
 * @param mixVersion the version of the mix design its trials are made for
 * @param sourceVersions the versions of the sources its trials are made with
 * @param openedOn the day it was begun
 * @param purpose why it is made, such as a first factor or a new source; may be empty
 * @param simulated whether its trials are made by the simulated bench, for training
 */
public record Determination(
        DeterminationId id,
        MixId mixId,
        int mixVersion,
        Map<SourceId, Integer> sourceVersions,
        LocalDate openedOn,
        String purpose,
        boolean simulated)
        implements Kept {
    public Determination {
        Require.atLeast("mixVersion", mixVersion, 1);
        sourceVersions = Map.copyOf(sourceVersions);
    }

    /** Makes a determination of real trials. */
    public Determination(
            DeterminationId id,
            MixId mixId,
            int mixVersion,
            Map<SourceId, Integer> sourceVersions,
            LocalDate openedOn,
            String purpose) {
        this(id, mixId, mixVersion, sourceVersions, openedOn, purpose, false);
    }

    /** Returns this determination made with other versions of the sources. */
    public Determination madeWith(Map<SourceId, Integer> otherSourceVersions) {
        return new Determination(id, mixId, mixVersion, otherSourceVersions, openedOn, purpose, simulated);
    }

    /** Returns this determination of real or of simulated trials. */
    public Determination simulated(boolean isSimulated) {
        return new Determination(id, mixId, mixVersion, sourceVersions, openedOn, purpose, isSimulated);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.DETERMINATION;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

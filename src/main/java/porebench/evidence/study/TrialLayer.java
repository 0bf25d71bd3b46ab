package porebench.evidence.study;

import java.util.stream.Collectors;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedTrial;
import porebench.record.Trial;

/** What trials of a lab book can be grouped by. */
public enum TrialLayer {
    /** The mix. */
    MIX((evidence, trial) -> evidence.mix().value().id().text()),
    /** The sources of the mix's aggregates together: mixes of the same stone are one group. */
    SOURCES((evidence, trial) -> evidence.sources().stream()
            .map(source -> source.value().id().text())
            .sorted()
            .collect(Collectors.joining(" + "))),
    /** The determination. */
    DETERMINATION((evidence, trial) -> trial.determinationId().text()),
    /** The day on which the trial was made. */
    DAY((evidence, trial) -> trial.testedAt().toLocalDate().toString()),
    /** The meter. */
    METER((evidence, trial) -> trial.meterId().text()),
    /** Who made the trial. */
    OPERATOR((evidence, trial) -> trial.operator());

    private final Name name;

    private interface Name {
        String of(Evidence evidence, Trial trial);
    }

    TrialLayer(Name name) {
        this.name = name;
    }

    /** Returns the name of the group that a trial is in. */
    String group(Evidence evidence, JudgedTrial trial) {
        return name.of(evidence, trial.trial().value());
    }
}

package porebench.evidence.hold;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.FactorThen;
import porebench.method.air.AirContent;
import porebench.record.FieldReading;

/** Corrects a field reading with the factor that was in force when it was read. */
@FunctionalInterface
public interface Correcting {
    /** Nothing depends on the division of a scale before air is rounded. */
    BigDecimal ANY_DIVISION = new BigDecimal("0.1");

    /** Returns the reading corrected; empty where no factor might be used at its time. */
    Optional<Corrected> of(FieldReading reading);

    /**
     * A corrected reading.
     *
     * @param revision the revision in force at its time
     * @param factorPercent its factor, in % air
     * @param airPercent the air, in % air, before it is rounded
     */
    record Corrected(int revision, BigDecimal factorPercent, double airPercent) {}

    /**
     * Returns one that corrects readings of a mix with the factor that could rightly be subtracted at their time, as field readings are
     * everywhere. How readings scatter and are judged has no part in it.
     */
    static Correcting by(Evidence evidence) {
        FactorThen then = new FactorThen(evidence);
        return reading -> then.usableAt(reading.readAt())
                .flatMap(issue -> AirContent.of(
                                reading.gaugePercent(), issue.factorPercent(), ANY_DIVISION, evidence.profile())
                        .value()
                        .map(air -> new Corrected(
                                issue.revision(),
                                issue.factorPercent(),
                                air.percent().doubleValue())));
    }
}

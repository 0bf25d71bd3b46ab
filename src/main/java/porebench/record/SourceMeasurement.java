package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;

/**
 * What somebody measured of a source on a day. It is evidence beside the figures in use and alters none of them.
 *
 * @param id its name
 * @param sourceId the source
 * @param testedOn the day
 * @param testedBy who measured, a person or a laboratory
 * @param lot the ledge, bench or lot the sample was of; blank where nobody said, then the day says which stone it was
 * @param relativeDensity relative density at SSD, over water at 1000 kg/m3
 * @param absorptionPercent absorption, in % of the oven-dry mass
 * @param retainedPercent the share retained on the sieve of 37.5 mm, in % of its mass
 * @param remarks anything else, may be empty
 */
public record SourceMeasurement(
        MeasurementId id,
        SourceId sourceId,
        LocalDate testedOn,
        String testedBy,
        String lot,
        Optional<BigDecimal> relativeDensity,
        Optional<BigDecimal> absorptionPercent,
        Optional<BigDecimal> retainedPercent,
        String remarks)
        implements Kept {
    /**
     * Returns what is wrong with it, under the fields of its form: it measures nothing, or on a day that is still to come.
     *
     * @param today the day on which it is to be kept
     */
    public List<Problem> check(LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        if (relativeDensity.isEmpty() && absorptionPercent.isEmpty() && retainedPercent.isEmpty()) {
            problems.add(Problem.error("relativeDensity", "measurement.no-figure", id.text())
                    .of(Problem.Kind.NOT_YET));
        }
        if (testedOn.isAfter(today)) {
            problems.add(Problem.error("testedOn", "measurement.to-come", testedOn.toString(), today.toString()));
        }
        return problems;
    }

    @Override
    public RecordKind kind() {
        return RecordKind.SOURCE_MEASUREMENT;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

package porebench.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.method.Problem;
import porebench.method.sample.AggregateShares;
import porebench.method.sample.Batch;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Slack;
import porebench.quantity.Volume;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * A mix design: a batch of concrete and how its air is tested.
 *
 * @param id the laboratory's name for it
 * @param title name for people
 * @param batch the constituents, the batch volume and the target air
 * @param soakMinutes time from water entering the mixer to the air test, which the aggregate is soaked for, in minutes
 * @param airTolerancePercent tolerance on the target air of a load, in % air; empty means the profile's
 * @param profileId the profile it is tested by: a named standard's or the laboratory's own
 * @param remarks anything else, may be empty
 * @param plant the plant that makes it; empty when nobody said so
 */
public record MixDesign(
        MixId id,
        String title,
        Batch batch,
        Optional<BigDecimal> soakMinutes,
        Optional<BigDecimal> airTolerancePercent,
        String profileId,
        String remarks,
        Optional<String> plant)
        implements Kept {
    /** The volume of concrete does not depend on the bowl. */
    private static final Volume ANY_BOWL = new Volume(0.007);

    /** Returns the aggregates of the mix, in its order. */
    public List<Constituent> aggregates() {
        return batch.constituents().stream().filter(c -> c.role().isAggregate()).toList();
    }

    /** Returns the sources its aggregates come from. */
    public Set<SourceId> sources() {
        return aggregates().stream()
                .flatMap(aggregate -> aggregate.sourceId().stream())
                .map(SourceId::new)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Returns whether the bowl would hold the same aggregates as for another version of the mix: same sources, masses and
     * states, same volume of concrete and wet sieving. A volume that follows from the constituents changes with each of
     * them. Moisture on the bench changes from day to day and does not count.
     */
    public boolean hasSameAggregatesAs(MixDesign other) {
        return batch.wetSieved() == other.batch.wetSieved()
                && hasSameVolumeAs(other)
                && stones().equals(other.stones());
    }

    /**
     * Returns what share of its aggregate each source has, and how much aggregate stands in a cubic metre of concrete; empty where
     * the design does not give it.
     */
    public Optional<AggregateShares> aggregateShares() {
        return AggregateShares.of(batch);
    }

    /**
     * Returns whether the bowl would hold the same aggregates as for another version of the mix, but for a drift of their proportions
     * that a laboratory tolerates; wet sieving, sources and moisture states count whatever it tolerates.
     *
     * @param points how far the share of each aggregate in the mass of all may drift, in percentage points, and the mass of all in a
     *     cubic metre of concrete in per cent of itself; 0 tolerates nothing
     */
    public boolean hasSameAggregatesAs(MixDesign other, double points) {
        return hasSameAggregatesAs(other)
                || points > 0
                        && batch.wetSieved() == other.batch.wetSieved()
                        && Proportions.of(this).isWithin(Proportions.of(other), points);
    }

    /** Returns what cannot be right about its batch, as errors, and what is doubtful. */
    public List<Problem> check() {
        return CorrectionSample.of(batch, ANY_BOWL).problems();
    }

    private boolean hasSameVolumeAs(MixDesign other) {
        OptionalDouble one = concreteCubicMetres();
        OptionalDouble two = other.concreteCubicMetres();
        if (one.isEmpty() || two.isEmpty()) {
            return one.isEmpty() && two.isEmpty() && batch.volume().equals(other.batch.volume());
        }
        return Slack.isSame(one.getAsDouble(), two.getAsDouble());
    }

    /** Returns the concrete that the batch masses stand for, in m3; empty when the design does not give it. */
    private OptionalDouble concreteCubicMetres() {
        return CorrectionSample.of(batch, ANY_BOWL).value().stream()
                .mapToDouble(sample -> sample.batchVolume().cubicMetres())
                .findFirst();
    }

    private List<List<Object>> stones() {
        return aggregates().stream()
                .map(c -> List.<Object>of(
                        c.sourceOrName(),
                        c.role(),
                        c.mass().value(),
                        c.state(),
                        c.retainedPercent().doubleValue()))
                .toList();
    }

    @Override
    public RecordKind kind() {
        return RecordKind.MIX;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

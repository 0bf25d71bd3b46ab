package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import porebench.method.Role;
import porebench.record.id.SourceId;

/**
 * A source of aggregate: one material from one place.
 *
 * @param id the laboratory's name for it
 * @param name name for people
 * @param role fine or coarse
 * @param place pit or quarry
 * @param ledge ledge, bench or lot worked at present; a new one makes another stone of it
 * @param relativeDensity relative density at SSD, over water at 1000 kg/m3
 * @param absorptionPercent absorption, in % of the oven-dry mass
 * @param remarks anything else, may be empty
 * @param producer who quarries or dredges it
 * @param product what the producer calls it
 * @param size its size, such as {@code 5 to 20 mm}
 * @param retainedPercent the share retained on the sieve of 37.5 mm, in % of its mass
 * @param step what this version is; empty in a first version, where nothing the stone is known by is another, and in lab books
 *     from before versions said so
 * @param changedOn the first day of the stone: needed of a change; in a correction the day that should have stood there
 * @param reason why, of a step
 */
public record Source(
        SourceId id,
        String name,
        Role role,
        String place,
        String ledge,
        Optional<BigDecimal> relativeDensity,
        Optional<BigDecimal> absorptionPercent,
        String remarks,
        Optional<String> producer,
        Optional<String> product,
        Optional<String> size,
        Optional<BigDecimal> retainedPercent,
        Optional<SourceStep> step,
        Optional<LocalDate> changedOn,
        Optional<String> reason)
        implements Kept {
    public Source {
        if (!role.isAggregate()) {
            throw new IllegalArgumentException("role must be fine or coarse, but is " + role);
        }
    }

    /** Makes a source of which no more is known, in a version that is no step. */
    public Source(
            SourceId id,
            String name,
            Role role,
            String place,
            String ledge,
            Optional<BigDecimal> relativeDensity,
            Optional<BigDecimal> absorptionPercent,
            String remarks) {
        this(
                id,
                name,
                role,
                place,
                ledge,
                relativeDensity,
                absorptionPercent,
                remarks,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Returns this source worked at another ledge, bench or lot. */
    public Source worked(String otherLedge) {
        return new Source(
                id,
                name,
                role,
                place,
                otherLedge,
                relativeDensity,
                absorptionPercent,
                remarks,
                producer,
                product,
                size,
                retainedPercent,
                step,
                changedOn,
                reason);
    }

    /** Returns this source as another step. */
    public Source as(Optional<SourceStep> otherStep, Optional<LocalDate> otherDay, Optional<String> otherReason) {
        return new Source(
                id,
                name,
                role,
                place,
                ledge,
                relativeDensity,
                absorptionPercent,
                remarks,
                producer,
                product,
                size,
                retainedPercent,
                otherStep,
                otherDay,
                otherReason);
    }

    /** Returns whether this version is a step. */
    public boolean is(SourceStep one) {
        return step.filter(one::equals).isPresent();
    }

    /**
     * Returns whether this reads as the same stone as another version of the source: the same role, place and ledge, relative
     * density and absorption. Where versions say what they are, that counts, and not how they read.
     */
    public boolean isSameStoneAs(Source other) {
        return role == other.role
                && place.equals(other.place)
                && ledge.equals(other.ledge)
                && sameNumber(relativeDensity, other.relativeDensity)
                && sameNumber(absorptionPercent, other.absorptionPercent);
    }

    private static boolean sameNumber(Optional<BigDecimal> one, Optional<BigDecimal> two) {
        return one.isPresent() == two.isPresent() && (one.isEmpty() || one.get().compareTo(two.orElseThrow()) == 0);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.SOURCE;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

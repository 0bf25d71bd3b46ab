package porebench.record;

import java.math.BigDecimal;
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
 */
public record Source(
        SourceId id,
        String name,
        Role role,
        String place,
        String ledge,
        Optional<BigDecimal> relativeDensity,
        Optional<BigDecimal> absorptionPercent,
        String remarks)
        implements Kept {
    public Source {
        if (!role.isAggregate()) {
            throw new IllegalArgumentException("role must be fine or coarse, but is " + role);
        }
    }

    /**
     * Returns whether this is the same stone as another version of the source: the same role, place and ledge, relative
     * density and absorption. A new name or remark does not make a factor untrue; another stone does.
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

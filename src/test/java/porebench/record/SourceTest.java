package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.Role;
import porebench.record.id.SourceId;

/** When a source is another stone, so that a factor made with it is no longer true. */
class SourceTest {
    private static final Source STONE = source(Role.COARSE, "North face", "2", "2.65", "1.2");

    private static Source source(Role role, String place, String ledge, String density, String absorption) {
        return new Source(
                new SourceId("S-1"), "Pit", role, place, ledge, number(density), number(absorption), "washed");
    }

    private static Optional<BigDecimal> number(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(text));
    }

    @Test
    void anotherRolePlaceLedgeDensityOrAbsorptionIsAnotherStone() {
        for (Source other : List.of(
                source(Role.FINE, "North face", "2", "2.65", "1.2"),
                source(Role.COARSE, "South face", "2", "2.65", "1.2"),
                source(Role.COARSE, "North face", "3", "2.65", "1.2"),
                source(Role.COARSE, "North face", "2", "2.66", "1.2"),
                source(Role.COARSE, "North face", "2", "", "1.2"),
                source(Role.COARSE, "North face", "2", "2.65", "1.3"),
                source(Role.COARSE, "North face", "2", "2.65", ""))) {
            assertThat(STONE.isSameStoneAs(other)).as("%s", other).isFalse();
            assertThat(other.isSameStoneAs(STONE)).as("%s", other).isFalse();
        }
    }

    @Test
    void anotherNameRemarkOrTrailingZeroIsTheSameStone() {
        Source same = new Source(
                new SourceId("S-1"), "Upper pit", Role.COARSE, "North face", "2", number("2.650"), number("1.20"), "");
        assertThat(STONE.isSameStoneAs(same)).isTrue();
        Source bare = source(Role.COARSE, "North face", "2", "", "");
        assertThat(bare.isSameStoneAs(source(Role.COARSE, "North face", "2", "", "")))
                .isTrue();
    }

    @Test
    void isAggregate() {
        for (Role role : List.of(Role.CEMENT, Role.SCM, Role.WATER, Role.ADMIXTURE)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> source(role, "", "", "", ""))
                    .withMessage("role must be fine or coarse, but is " + role);
        }
    }
}

package porebench.method.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** By pencil. */
class CapabilityTest {
    /** 1.5 / 0.12 = 12.5; 0.12 / 0.1 = 1.2. */
    @Test
    void isToleranceOverUncertainty() {
        Capability capability = new Capability(0.12, 0.1, 1.5);
        assertThat(capability.index()).isCloseTo(12.5, within(1e-12));
        assertThat(capability.steps()).isCloseTo(1.2, within(1e-12));
        assertThat(capability.standing()).isEqualTo(Capability.Standing.AMPLE);
    }

    @Test
    void fourTimesIsAmpleAndOnceLeavesNothing() {
        assertThat(new Capability(0.375, 0.1, 1.5).standing()).isEqualTo(Capability.Standing.AMPLE);
        assertThat(new Capability(0.376, 0.1, 1.5).standing()).isEqualTo(Capability.Standing.TAKES_PART);
        assertThat(new Capability(1.499, 0.1, 1.5).standing()).isEqualTo(Capability.Standing.TAKES_PART);
        assertThat(new Capability(1.5, 0.1, 1.5).standing()).isEqualTo(Capability.Standing.TOO_WIDE);
    }
}

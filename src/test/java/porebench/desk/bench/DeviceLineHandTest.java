package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a balance types and what a hand does, told apart by their speed. */
class DeviceLineHandTest {
    private final DeviceLine device = new DeviceLine();

    private long type(String line, long from, int apart) {
        long when = from;
        for (char sign : line.toCharArray()) {
            device.add(sign, when);
            when += apart;
        }
        return when;
    }

    @Test
    void aMassWithItsSignAndUnitIsALine() {
        long end = type("+  4902.5 g", 1000, 10);
        assertThat(device.end(end)).contains("+  4902.5 g");
        assertThat(device.end(end + 10)).isEmpty();
    }

    @Test
    void aNumberAloneIsNone() {
        assertThat(device.end(type("4902.5", 1000, 10))).isEmpty();
        assertThat(device.end(type("4902,5", 2000, 10))).isEmpty();
        assertThat(device.end(type("PBMIX:K", 3000, 10))).isEmpty();
    }

    @Test
    void whatAHandStrikesIsNone() {
        assertThat(device.end(type("-4902 g", 1000, 80))).isEmpty();
        assertThat(device.end(type("-4902 g", 3000, 79))).contains("-4902 g");
        assertThat(device.end(type("-4902 g", 5000, 10) + 80)).isEmpty();
    }

    @Test
    void aLineBeginsAnewAfterAPause() {
        type("+1", 1000, 10);
        assertThat(device.end(type("4902 g", 2000, 10))).contains("4902 g");
    }

    @Test
    void aSignSaysWhetherItCameInALine() {
        assertThat(device.add('+', 0)).isFalse();
        assertThat(device.add('4', 79)).isTrue();
        assertThat(device.add('9', 159)).isFalse();
    }
}

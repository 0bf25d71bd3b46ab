package porebench.exchange.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Which files are refused before a line of them is read. */
class RawFileTest {
    /** 00 FF and FF FF are no mark of 16 bits; what begins with FE FF or FF FE is. */
    @Test
    void sixteenBitsAreKnownByTheirMarkOrByEveryThirdByteThatIsZero() {
        assertThat(RawFile.refusal(new byte[] {(byte) 0xFF, (byte) 0xFE})).contains("csv.utf-16");
        assertThat(RawFile.refusal(new byte[] {(byte) 0xFE, (byte) 0xFF})).contains("csv.utf-16");
        assertThat(RawFile.refusal(new byte[] {(byte) 0xFF, (byte) 0xFF})).isEmpty();
        assertThat(RawFile.refusal(new byte[] {'a', 0, 'b'})).isEmpty();
        assertThat(RawFile.refusal(new byte[] {'a', 0, 'b', 0})).contains("csv.utf-16");
        assertThat(RawFile.refusal(new byte[] {'a', 'b', 0, 'c', 'd', 0})).contains("csv.utf-16");
        assertThat(RawFile.refusal(new byte[] {'a', 'b', 'c', 0, 'd', 'e'})).isEmpty();
        assertThat(RawFile.refusal(new byte[0])).isEmpty();
    }

    @Test
    void aFileOfTheLargestSizeIsRead() {
        byte[] most = new byte[RawFile.LARGEST];
        Arrays.fill(most, (byte) 'a');
        assertThat(RawFile.refusal(most)).isEmpty();
    }
}

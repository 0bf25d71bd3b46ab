package porebench.record.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class HeadTest {
    private static final String FULL = "3f2a91c077de0b1c" + "f".repeat(48);

    @Test
    void isTheFirstSixteenDigitsOfTheNewestHash() {
        assertThat(Head.of(FULL, 12)).isEqualTo(new Head("3f2a91c077de0b1c", 12));
        assertThat(Head.EMPTY).isEqualTo(new Head("0000000000000000", 0));
    }

    @Test
    void isPrintedInGroupsAndReadBackHoweverItIsCopied() {
        assertThat(Head.of(FULL, 12).printed()).isEqualTo("3f2a-91c0-77de-0b1c");
        for (String copied : new String[] {"3f2a-91c0-77de-0b1c", " 3F2A 91C0 77DE 0B1C ", "3f2a91c077de0b1c"}) {
            assertThat(Head.parseHash(copied)).contains("3f2a91c077de0b1c");
        }
        for (String wrong : new String[] {"", "3f2a-91c0-77de-0b1", "3f2a-91c0-77de-0b1g", FULL}) {
            assertThat(Head.parseHash(wrong)).isEmpty();
        }
    }

    @Test
    void refusesWhatIsNoHead() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Head("3F2A91C077DE0B1C", 1))
                .withMessageContaining("16 hexadecimal digits");
        assertThatIllegalArgumentException().isThrownBy(() -> Head.of("abc", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Head("3f2a91c077de0b1c", -1));
    }
}

package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.record.id.MixId;

class PlantMarkTest {
    private static CardPrint on(String paper) {
        return new CardPrint(new MixId("M-1"), 1, 1, paper, CardPrint.PRINTER);
    }

    @Test
    void isReadBackFromThePaperOfAPrint() {
        for (String plant : List.of("North", "Lower, card 7 page 2 of plant South", "one\ntwo")) {
            PlantMark mark = new PlantMark(plant, 412, 2);
            CardPrint print = on(mark.onto("A6 en+de on letter"));
            assertThat(print.paper()).startsWith("A6 en+de on letter, card 412 page 2 of plant ");
            assertThat(PlantMark.of(print)).contains(mark);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"A6", "A6, card 0 page 1 of plant North", "A6, card 4 page 1 of plant  "})
    void otherPaperIsACardOfItsOwn(String paper) {
        assertThat(PlantMark.of(on(paper))).isEmpty();
    }

    @Test
    void pagesOfACardBelongTogether() {
        PlantMark mark = new PlantMark(" North ", 412, 1);
        assertThat(mark.isWith(new PlantMark("North", 412, 2))).isTrue();
        assertThat(mark.isWith(new PlantMark("North", 413, 1))).isFalse();
        assertThat(mark.isWith(new PlantMark("South", 412, 1))).isFalse();
        assertThatThrownBy(() -> new PlantMark(" ", 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PlantMark("North", 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}

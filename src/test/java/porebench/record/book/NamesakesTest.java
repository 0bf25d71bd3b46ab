package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.TimeBook;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.RecordKind;
import porebench.record.Samples;
import porebench.record.id.MixId;

/** Names that people give are held against each other; those that follow from other names are not. */
class NamesakesTest {
    private final TimeBook time = new TimeBook();

    @Test
    void aNameThatDiffersInCaseIsDoubtfulForAMixAndNotAgainForItsFactor() {
        time.keep(Samples.issue("M-1", 1, "M-1/1", TimeBook.START));
        Namesakes names = new Namesakes(time.book);
        assertThat(names.look(Samples.mix("m-1", "S-1", "S-2")))
                .contains(Problem.warning("id", "id.differs-in-case", RecordKind.MIX.word(), "m-1", "M-1"));
        assertThat(names.look(Samples.issue("m-1", 1, "m-1/1", TimeBook.START))).isEmpty();
        assertThat(names.meet(Samples.issue("m-1", 1, "m-1/1", TimeBook.START))).isEmpty();
    }

    @Test
    void theLaboratoryAndTheCardsHaveNoNamesOfTheirOwn() {
        time.keep(
                Samples.issue("M-1", 1, "M-1/1", TimeBook.START),
                new CardPrint(new MixId("M-1"), 1, 1, "A6", "R. Vale"));
        Namesakes names = new Namesakes(time.book);
        assertThat(names.look(new CardPrint(new MixId("m-1"), 1, 1, "A6", "R. Vale")))
                .isEmpty();
        assertThat(names.look(Samples.laboratory())).isEqualTo(Optional.empty());
    }
}

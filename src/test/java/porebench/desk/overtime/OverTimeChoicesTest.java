package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import porebench.record.id.MixId;

/** What is looked at first, what is typed and remembered, and what a picture is called. */
class OverTimeChoicesTest {
    private final OverTimeDesk made = new OverTimeDesk();

    /** Three trials of M-1 on B-1, and four of M-2 by M. Ash on B-2. */
    private OverTimeModel model() {
        LocalDate next = made.one(3);
        made.lab.begin("M-2/1", "M-2");
        for (int i = 0; i < 4; i++) {
            made.lab.keep(made.lab.trial("M-2/1", "M-2", next.plusDays(i), "M. Ash", "B-2", 0.4));
        }
        return made.model();
    }

    @Test
    void theOneWithTheMostTrialsIsLookedAtFirst() {
        OverTimeModel model = model();
        assertThat(model.wishes().id()).isEqualTo("M-2");
        OverTimeDesk.choose(model, GroupedBy.METER);
        assertThat(model.ids()).containsExactly("B-1", "B-2");
        assertThat(model.wishes().id()).isEqualTo("B-2");
        OverTimeDesk.choose(model, GroupedBy.OPERATOR);
        assertThat(model.wishes().id()).isEqualTo("M. Ash");
        // Both sources of M-1 and of M-2 have the sand S-1, which has all seven.
        OverTimeDesk.choose(model, GroupedBy.SOURCE);
        assertThat(model.wishes().id()).isEqualTo("S-1");
    }

    @Test
    void ofTwoWithAsManyTrialsTheFirstIsLookedAt() {
        LocalDate next = made.one(3);
        made.lab.begin("M-2/1", "M-2");
        for (int i = 0; i < 3; i++) {
            made.lab.keep(made.lab.trial("M-2/1", "M-2", next.plusDays(i), "M. Ash", "B-2", 0.4));
        }
        assertThat(made.model().wishes().id()).isEqualTo("M-1");
    }

    @Test
    void theSelectedMixGoesBeforeTheOneWithTheMostTrials() {
        made.desk.select(new MixId("M-1"));
        OverTimeModel model = model();
        assertThat(model.wishes().id()).isEqualTo("M-1");
        OverTimeDesk.choose(model, GroupedBy.METER);
        assertThat(model.wishes().id()).isEqualTo("B-2");
    }

    @Test
    void choosingTheSameKindAgainKeepsWhatIsLookedAt() {
        OverTimeModel model = model();
        OverTimeDesk.choose(model, GroupedBy.METER);
        OverTimeDesk.choose(model, "B-1");
        OverTimeDesk.choose(model, GroupedBy.METER);
        assertThat(model.wishes().id()).isEqualTo("B-1");
        OverTimeDesk.choose(model, GroupedBy.MIX);
        assertThat(model.wishes().id()).isEqualTo("M-2");
    }

    @Test
    void aChangeIsToldAndWhatIsTypedIsRememberedAlsoWhereItCannotBeRead() {
        OverTimeModel model = model();
        int[] changes = {0};
        model.onChange(() -> changes[0]++);
        OverTimeDesk.choose(model, GroupedBy.METER);
        assertThat(changes[0]).isEqualTo(1);
        assertThat(model.draft().text(ChartFields.BASE).equals("days")).isFalse();
        OverTimeDesk.typeBase(model, true, "twelve", "2026-01-0x", "2026-02-01");
        assertThat(changes[0]).isEqualTo(2);
        assertThat(model.draft().text(ChartFields.BASE).equals("days")).isTrue();
        assertThat(model.draft().text(ChartFields.COUNT)).isEqualTo("twelve");
        assertThat(model.draft().text(ChartFields.FROM)).isEqualTo("2026-01-0x");
        assertThat(model.draft().text(ChartFields.TO)).isEqualTo("2026-02-01");
    }

    @Test
    void aPictureSaysWhatItIsOfAndItsNameHoldsOnlyWhatFilesMayBeCalled() {
        OverTimeModel model = model();
        assertThat(model.plotTitle()).isEqualTo("Control chart of determinations");
        assertThat(model.subject()).isEqualTo("Mix M-2");
        assertThat(model.pictureName()).isEqualTo("M-2-over-time.png");
        OverTimeDesk.choose(model, GroupedBy.OPERATOR);
        assertThat(model.subject()).isEqualTo("Operator M. Ash");
        assertThat(model.pictureName()).isEqualTo("M.-Ash-over-time.png");
    }
}

package porebench.desk.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.column.DecisionColumns;
import porebench.record.id.MixId;

class DecisionModelTest {
    private final ChangeDesk made = new ChangeDesk(Locale.ENGLISH);
    private final DecisionModel model = new DecisionModel(new ChangeModel(made.desk));
    private final List<Problem> refused = new ArrayList<>();

    @BeforeEach
    void name() {
        made.desk.setPerson("R. Vale");
        model.follow();
    }

    private void keep() {
        refused.clear();
        model.keep(refused::addAll);
        model.follow();
    }

    private List<String> codes() {
        return model.problems().stream().map(Problem::code).toList();
    }

    private void moved() {
        made.changeLedge();
        made.testNew(0.8, 0.9, 0.8);
        model.follow();
    }

    @Test
    void withoutAComparisonThereIsNothingToDecide() {
        assertThat(model.isOpen()).isFalse();
        assertThat(model.problems()).isEmpty();
        keep();
        assertThat(refused).extracting(Problem::code).containsExactly("form.required");
        assertThat(model.made()).isEmpty();
        assertThat(model.next()).isEmpty();
    }

    @Test
    void beginsWithWhatTheComparisonSays() {
        moved();
        assertThat(model.isOpen()).isTrue();
        assertThat(model.draft().text(DecisionColumns.CHOICE)).isEqualTo("replace");
        assertThat(model.asksForMore()).isFalse();
        keep();
        assertThat(refused).isEmpty();
        ChangeDecision decision = model.made().get(0).decision();
        assertThat(decision.decidedBy()).isEqualTo("R. Vale");
        assertThat(decision.decidedOn()).isEqualTo(made.desk.tools().today());
        assertThat(model.choiceWords(decision)).isEqualTo("replace it");
        assertThat(model.next()).startsWith("Decided to replace the factor.");
        keep();
        assertThat(refused).extracting(Problem::code).containsExactly("decision.already-made");
    }

    @Test
    void againstTheComparisonItSaysSoAtOnceAndAsksWhyOnceItIsTried() {
        moved();
        model.type(DecisionColumns.CHOICE, "keep");
        assertThat(codes()).containsExactly("decision.against-verdict");
        keep();
        assertThat(codes()).containsExactly("decision.against-verdict", "decision.reason-wanting");
        model.type(DecisionColumns.REASON, "the plant asks");
        keep();
        assertThat(refused).isEmpty();
        assertThat(model.made().get(0).decision().reason()).isEqualTo("the plant asks");
        assertThat(model.next()).startsWith("Decided to keep the factor, but the comparison does not support it");
        assertThat(model.draft().text(DecisionColumns.REASON)).isEmpty();
    }

    @Test
    void toTestMoreAsksHowMany() {
        moved();
        model.type(DecisionColumns.CHOICE, "test-more");
        assertThat(model.asksForMore()).isTrue();
        model.type(DecisionColumns.REASON, "to be sure");
        keep();
        assertThat(refused).extracting(Problem::code).contains("decision.more-wanting");
        model.type(DecisionColumns.MORE, "some");
        assertThat(codes()).containsExactly("form.not-a-number");
        model.type(DecisionColumns.MORE, "4");
        keep();
        assertThat(model.made().get(0).decision().more()).contains(4);
        assertThat(model.next())
                .isEqualTo("Decided to test more. Make 4 trials of the new material on page 3, then compare again.");
        assertThat(model.choiceWords(model.made().get(0).decision())).isEqualTo("test 4 more");
    }

    @Test
    void whatItRestsOnIsFollowedAndAnotherMixHasItsOwn() {
        moved();
        keep();
        assertThat(model.made().get(0).since()).isEmpty();
        made.laboratory.trials("M-1/2", "M-1", made.desk.tools().today().minusDays(1), 0.7);
        made.desk.refresh();
        model.follow();
        assertThat(model.made().get(0).since()).extracting(Problem::code).containsExactly("decision.trial-added");
        assertThat(model.next()).isEmpty();
        model.type(DecisionColumns.REASON, "begun");
        made.desk.select(new MixId("M-2"));
        model.follow();
        assertThat(model.made()).isEmpty();
        assertThat(model.draft().text(DecisionColumns.REASON)).isEmpty();
    }
}

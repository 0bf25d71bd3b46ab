package porebench.desk.frame.rail;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import porebench.desk.form.Numbers;
import porebench.desk.frame.Theme;
import porebench.desk.frame.dialog.FrameTexts;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.ShownUncertainty;
import porebench.evidence.TrialsBehind;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.FactorTerms;
import porebench.record.id.MixId;

class MixCellTest {
    private static final RegisterRow DECK = row("HG-101");
    private static final RegisterRow KERB = row("HG-102");

    private final JList<RegisterRow> list = new JList<>();
    private final MixCell cell;

    MixCellTest() {
        Theme.LIGHT.apply();
        cell = new MixCell(FrameTexts.in(Locale.ENGLISH), new Numbers(Locale.ENGLISH), ProblemText.in(Locale.ENGLISH));
    }

    private static RegisterRow row(String id) {
        return row(id, FactorState.IN_FORCE);
    }

    private static RegisterRow row(String id, FactorState state) {
        return new RegisterRow(
                new MixId(id),
                "Deck",
                "",
                state,
                Optional.of(new BigDecimal("0.3")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of());
    }

    private List<String> said(RegisterRow row) {
        List<String> words = new ArrayList<>();
        collect((Container) cell.getListCellRendererComponent(list, row, 0, false, false), words);
        return words;
    }

    private static void collect(Container in, List<String> words) {
        for (Component part : in.getComponents()) {
            if (part instanceof JLabel label && label.isVisible() && label.getText() != null) {
                words.add(label.getText());
            } else if (part instanceof Container inside) {
                collect(inside, words);
            }
        }
    }

    private JLabel factor(FactorState state) {
        Container shown = (Container) cell.getListCellRendererComponent(list, row("HG-101", state), 0, false, false);
        List<JLabel> labels = new ArrayList<>();
        gather(shown, labels);
        return labels.stream()
                .filter(label -> "0.3 %".equals(label.getText()))
                .findFirst()
                .orElseThrow();
    }

    private static void gather(Container in, List<JLabel> labels) {
        for (Component part : in.getComponents()) {
            if (part instanceof JLabel label) {
                labels.add(label);
            } else if (part instanceof Container inside) {
                gather(inside, labels);
            }
        }
    }

    @Test
    void aFactorThatMayNotBeSubtractedStandsOutLessThanOneThatHolds() {
        Font holding = factor(FactorState.IN_FORCE).getFont();
        assertThat(factor(FactorState.RECHECK_DUE).getFont()).isEqualTo(holding);
        for (FactorState state : List.of(FactorState.LAPSED, FactorState.WITHDRAWN)) {
            JLabel shown = factor(state);
            assertThat(shown.getFont().getSize()).isLessThan(holding.getSize());
            assertThat(shown.getFont().isBold()).isFalse();
            assertThat(shown.getForeground()).isEqualTo(UIManager.getColor("Porebench.quiet"));
        }
        assertThat(factor(FactorState.IN_FORCE).getFont()).isEqualTo(holding);
    }

    @Test
    void whyAMixIsToBeCheckedAgainStandsBesideItsStateAfterWhatElseIsSaid() {
        RegisterRow due = new RegisterRow(
                new MixId("HG-102"),
                "Kerb",
                "",
                FactorState.RECHECK_DUE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of(),
                FactorTerms.NONE,
                Optional.empty(),
                ShownUncertainty.NONE,
                List.of(
                        Problem.warning("recheckBy", "register.recheck-overdue", "2026-09-02"),
                        Problem.warning("recheckBy", "register.recheck-overdue", "2026-10-02")));
        String words = ProblemText.in(Locale.ENGLISH).say(due.due().get(0));
        assertThat(said(due)).contains("recheck due", "· " + words).noneMatch(each -> each.contains("2026-10-02"));
        assertThat(cell.getToolTipText()).contains(words);
        assertThat(cell.getAccessibleContext().getAccessibleName()).contains(words);
        cell.add(mix -> Optional.of("soaking"));
        assertThat(said(due)).contains("· soaking · " + words);
    }

    @Test
    void aNoteStandsBesideTheStateOfItsMixAndTakesNoRoom() {
        assertThat(said(DECK)).contains("HG-101  Deck", "in force", "0.3 %");
        int height = cell.getPreferredSize().height;
        cell.add(mix ->
                Optional.of("soaking, 8 min left").filter(any -> mix.text().equals("HG-101")));
        assertThat(said(DECK)).contains("in force", "· soaking, 8 min left");
        assertThat(cell.getPreferredSize().height).isEqualTo(height);
        assertThat(cell.getAccessibleContext().getAccessibleName()).contains("soaking, 8 min left");
        assertThat(said(KERB)).noneMatch(words -> words.contains("soaking"));
    }
}

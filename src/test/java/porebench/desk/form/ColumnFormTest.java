package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.column.CellType;
import porebench.record.column.Column;

/** Fields of columns that stand outside the rows of a form, and the boxes of choices. */
class ColumnFormTest {
    private static final Column<String, String> WORDS = Column.any("words", CellType.text(), Optional::of);
    private static final Column<String, String> CHOICE =
            Column.any("choice", CellType.choice(List.of("one", "two"), Function.identity()), Optional::of);
    private static final Column<String, Boolean> MARK = Column.mark("mark", String::isEmpty);

    /** A form that says every key as it is, and notes what a person did. */
    private static final class Noting extends DraftModel {
        private final List<String> steps = new ArrayList<>();
        private boolean isFixed;

        Noting() {
            super(Texts.of("porebench.desk.form.form", Locale.ENGLISH), "form.", TypedDraft.BLANK);
        }

        @Override
        public void update(String label, TypedDraft changed) {
            steps.add(label);
            super.update(label, changed);
        }

        @Override
        public String words(Column<?, ?> column) {
            return column.field();
        }

        @Override
        public String tickWords(Column<?, ?> column) {
            return "&Tick";
        }

        @Override
        public String choiceWords(Column<?, ?> column, String symbol) {
            return "&" + symbol;
        }

        @Override
        public String hint(Column<?, ?> column) {
            return "as designed";
        }

        @Override
        public boolean isFixed(Column<?, ?> column) {
            return isFixed;
        }
    }

    private final Noting model = new Noting();
    private final ColumnForm form = new ColumnForm(model, ProblemText.in(Locale.ENGLISH));

    @Test
    void fieldsOutsideTheRowsTakeAndShowTheDraftAsThoseInThem() {
        JTextField words = form.alone(WORDS);
        JCheckBox mark = form.alone(MARK);
        form.pull();
        words.setText("wet");
        mark.doClick(0);
        assertThat(model.draft().text(WORDS)).isEqualTo("wet");
        assertThat(model.draft().isYes(MARK)).isTrue();
        assertThat(model.steps).containsOnly("words", "mark");
        model.history().undo();
        form.pull();
        assertThat(mark.isSelected()).isFalse();
        assertThat(words.getText()).isEqualTo("wet");
        assertThat(words.getName()).isEqualTo("words");
        assertThat(mark.getText()).isEqualTo("Tick");
        assertThat(words.getClientProperty("JTextField.placeholderText")).isEqualTo("as designed");
        assertThat(form.field("mark")).isSameAs(mark);
    }

    @Test
    void whatIsFixedIsShownAndTakesNothing() {
        JTextField words = form.alone(WORDS);
        JComboBox<String> choice = form.alone(CHOICE);
        form.pull();
        assertThat(words.isEditable()).isTrue();
        assertThat(choice.isEnabled()).isTrue();
        model.isFixed = true;
        form.pull();
        assertThat(words.isEditable()).isFalse();
        assertThat(choice.isEnabled()).isFalse();
    }

    @Test
    void ofSeveralButtonsTheChosenOneIsPressed() {
        List<JRadioButton> buttons = form.radios(CHOICE);
        form.pull();
        assertThat(buttons).extracting(JRadioButton::isSelected).containsExactly(false, false);
        buttons.get(1).doClick(0);
        assertThat(model.draft().text(CHOICE)).isEqualTo("two");
        model.type(CHOICE, "one");
        form.pull();
        assertThat(buttons).extracting(JRadioButton::isSelected).containsExactly(true, false);
        assertThat(buttons).extracting(JRadioButton::getText).containsExactly("one", "two");
        assertThat(buttons).extracting(JRadioButton::getName).containsExactly("choice.one", "choice.two");
    }

    @Test
    void aBoxTellsOfWhatAPersonChoseAndNotOfWhatItShows() {
        List<String> chosen = new ArrayList<>();
        JComboBox<String> box = Choices.of("box", List.of("a", "b"), Function.identity(), chosen::add);
        Choices.show(box, List.of("b", "c"), Optional.of("c"));
        assertThat(box.getSelectedItem()).isEqualTo("c");
        Choices.show(box, List.of("b", "c"), Optional.of("elsewhere"));
        assertThat(box.getSelectedIndex()).isEqualTo(-1);
        Choices.show(box, List.of(), Optional.empty());
        assertThat(box.getItemCount()).isZero();
        assertThat(chosen).isEmpty();
        Choices.show(box, List.of("b", "c"), Optional.empty());
        box.setSelectedIndex(0);
        assertThat(chosen).containsExactly("b");
    }

    @Test
    void aDraftForgetsTheFieldsThatAWordLeads() {
        TypedDraft draft = TypedDraft.BLANK
                .with(WORDS.called("moisture.0"), "5")
                .with(WORDS.called("moisture.1"), "6")
                .with(WORDS, "kept");
        assertThat(draft.without("moisture.")).isEqualTo(TypedDraft.BLANK.with(WORDS, "kept"));
        assertThat(draft.without("other.")).isEqualTo(draft);
    }
}

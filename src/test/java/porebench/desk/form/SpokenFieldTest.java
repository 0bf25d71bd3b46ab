package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.column.CellType;
import porebench.record.column.Column;
import porebench.record.column.SourceColumns;
import porebench.record.column.TrialColumns;

/** A field says unit, bounds, what it shows when empty and what is wrong, to those who hear the window read. */
class SpokenFieldTest {
    private static final Column<String, String> WORDS = Column.any("words", CellType.text(), Optional::of);

    private static String said(JTextField field) {
        return field.getAccessibleContext().getAccessibleDescription();
    }

    @Test
    void theProblemUnderAFieldIsSaidWithItsUnitAndGoesWhenItIsGone() {
        ProblemText problemText = ProblemText.in(Locale.ENGLISH);
        Form form = new Form(problemText);
        JTextField field = new JTextField();
        form.add("gauge", "&Gauge", field, "% air");
        assertThat(said(field)).isEqualTo("% air");
        Problem problem = Problem.error("gauge", "trial.water-temperature-missing");
        form.show(List.of(problem));
        assertThat(said(field)).isEqualTo("% air; " + problemText.say(problem).replace("\n", " "));
        form.show(List.of());
        assertThat(said(field)).isEqualTo("% air");
    }

    @Test
    void boundsAreSaidWhereTheUnitIsNotChosenBesideTheNumber() {
        assertThat(SpokenField.range(TrialColumns.GAUGE, Locale.ENGLISH)).isEqualTo("from 0 to 100");
        assertThat(SpokenField.range(SourceColumns.RETAINED, Locale.GERMANY)).isEqualTo("von 0 bis 100");
        assertThat(SpokenField.range(TrialColumns.FINE, Locale.ENGLISH))
                .as("a mass in grams or pounds")
                .isEmpty();
        assertThat(SpokenField.range(WORDS, Locale.ENGLISH)).isEmpty();
    }

    @Test
    void aFormOfColumnsSaysWhatAnEmptyFieldShowsAndWhatMayBeTyped() {
        DraftModel model =
                new DraftModel(Texts.of("porebench.desk.form.form", Locale.ENGLISH), "form.", TypedDraft.BLANK) {
                    @Override
                    public String words(Column<?, ?> column) {
                        return column.field();
                    }

                    @Override
                    public String label(Column<?, ?> column) {
                        return column.field();
                    }

                    @Override
                    public String beside(Column<?, ?> column, TypedDraft draft) {
                        return "%";
                    }

                    @Override
                    public String hint(Column<?, ?> column) {
                        return "as designed";
                    }
                };
        ColumnForm form = new ColumnForm(model, ProblemText.in(Locale.ENGLISH));
        form.add(SourceColumns.RETAINED);
        form.pull();
        assertThat(said((JTextField) form.field("retained"))).isEqualTo("%; from 0 to 100; as designed");
    }

    @Test
    void whatAMonthSaidOfAFieldMeanwhileGivesWayToItsOwnWords() {
        JTextField field = new JTextField();
        SpokenField.of(field).ofUnit("yyyy-mm-dd");
        field.getAccessibleContext().setAccessibleDescription("29 November");
        SpokenField.of(field).again();
        assertThat(said(field)).isEqualTo("yyyy-mm-dd");
        SpokenField.of(field).ofUnit("");
        assertThat(said(field)).isNull();
    }
}

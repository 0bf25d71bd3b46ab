package porebench.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** The line that filters a table of many rows. */
class FilterLineTest {
    private final RowTable<String> table =
            new RowTable<>("trials", "Trials", List.of(new ShownColumn<String>("Trial", 80, row -> row)));
    private final JComponent line = FilterLine.overMany(table, Locale.ENGLISH);

    private void rows(int many) {
        table.show(IntStream.rangeClosed(1, many).mapToObj(one -> "T-" + one).toList());
    }

    @Test
    void itIsThereOnlyOverMoreThanTenRows() {
        assertThat(line.isVisible()).isFalse();
        rows(10);
        assertThat(line.isVisible()).isFalse();
        rows(11);
        assertThat(line.isVisible()).isTrue();
    }

    @Test
    void itStaysWhileItFiltersHoweverFewRowsAreLeft() {
        rows(12);
        JTextField field = (JTextField) line.getComponent(0);
        field.setText("T-12");
        assertThat(table.getRowCount()).isEqualTo(1);
        assertThat(line.isVisible()).isTrue();
        rows(3);
        assertThat(line.isVisible()).isTrue();
        field.setText("");
        assertThat(table.getRowCount()).isEqualTo(3);
    }
}

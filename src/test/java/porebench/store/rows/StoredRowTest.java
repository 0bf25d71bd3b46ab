package porebench.store.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A row against a sorted map, whatever the order in which its cells come. */
class StoredRowTest {
    @Test
    void cellsStandInTheOrderOfTheirColumnsHoweverTheyCome() {
        List<String> columns = new ArrayList<>(
                IntStream.range(0, 40).mapToObj(number -> "c" + number).toList());
        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(columns, new Random(seed));
            StoredRow row = new StoredRow("trial");
            TreeMap<String, Object> wanted = new TreeMap<>();
            for (String column : columns) {
                row.cell(column, column + " of " + seed);
                wanted.put(column, column + " of " + seed);
                assertThat(row.size()).isEqualTo(wanted.size());
            }
            assertThat(row.columns()).containsExactlyElementsOf(wanted.keySet());
            List<Object> told = new ArrayList<>();
            row.each((column, content) -> told.add(column + "=" + content));
            assertThat(told)
                    .containsExactlyElementsOf(wanted.entrySet().stream()
                            .map(one -> one.getKey() + "=" + one.getValue())
                            .toList());
            assertThat(IntStream.range(0, 40).mapToObj(row::content)).containsExactlyElementsOf(wanted.values());
            assertThat(row.chained().cells()).isEqualTo(wanted);
        }
    }

    @Test
    void aCellThatComesAgainTakesThePlaceOfTheFirst() {
        StoredRow row =
                new StoredRow("mix").cell("b", "1").cell("a", "2").cell("b", 3).cell("a", "4");
        assertThat(row.columns()).containsExactly("a", "b");
        assertThat(row.text("b")).isEqualTo("3");
        assertThat(row.text("a")).isEqualTo("4");
    }

    @Test
    void whatIsNotThereIsNamed() {
        StoredRow row = new StoredRow("mix").cell("a", "1");
        assertThat(row.has("a")).isTrue();
        assertThat(row.has("b")).isFalse();
        assertThatThrownBy(() -> row.text("b"))
                .isInstanceOf(NoSuchElementException.class)
                .hasMessage("mix.b is empty");
    }
}

package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueRow;

class ValueTableTest {
    private static Sheet<ValueRow> table(List<String> factors, String... lines) {
        return CsvSheets.table("t.csv", bytes(lines), factors);
    }

    private static Sheet<ValueRow> groups(String... lines) {
        return table(List.of("subgroup"), lines);
    }

    @Test
    void readsColumnsByTheirNamesInAnyOrder() {
        Sheet<ValueRow> sheet = groups("value,subgroup", "1.5,a", "", "-2e-3,\"b, c\"");
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.values()).extracting(ValueRow::value).containsExactly(1.5, -0.002);
        assertThat(sheet.values().get(1).factors()).containsExactly(entry("subgroup", "b, c"));
        assertThat(sheet.rows().get(1).line()).isEqualTo(4);
    }

    @Test
    void takesAllOtherColumnsFromLeftToRightWhenNoneIsNamed() {
        Sheet<ValueRow> sheet = table(List.of(), "day,operator,value", "1,Ada,0.4");
        assertThat(sheet.values().get(0).factors()).containsExactly(entry("day", "1"), entry("operator", "Ada"));
    }

    @Test
    void namesEveryCellThatIsWrong() {
        assertThat(found(groups(
                        "subgroup,value,note",
                        "a,1,",
                        "a,two,",
                        ",3,",
                        "b,\"1,5\",",
                        "b,1",
                        "b,,x",
                        "c,1e16,",
                        "c,-1,")))
                .containsExactly(
                        "1:3 note csv.column-unknown",
                        "3:2 value csv.not-a-number",
                        "4:1 subgroup csv.required",
                        "5:2 value csv.decimal-comma",
                        "6:0  csv.fields-wrong-number",
                        "7:2 value csv.required",
                        "8:2 value csv.out-of-range");
        assertThat(groups("subgroup,value", "a,1", "a,two", "c,-1").values())
                .extracting(ValueRow::value)
                .containsExactly(1.0, -1.0);
    }

    @Test
    void missesColumns() {
        assertThat(found(groups("group,value", "a,1")))
                .containsExactly("1:0 subgroup csv.column-missing", "1:1 group csv.column-unknown");
        assertThat(groups("group,value", "a,1").values()).isEmpty();
        assertThat(found(groups("subgroup,value,value", "a,1,2"))).containsExactly("1:3 value csv.column-twice");
        assertThat(found(table(List.of(), "day,number", "a,1"))).containsExactly("1:0 value csv.column-missing");
        assertThat(found(groups("subgroup;value", "a;1"))).containsExactly("1:0  csv.separator");
        assertThat(found(groups("subgroup\tvalue", "a\t1"))).containsExactly("1:0  csv.separator");
        assertThat(found(groups())).containsExactly("0:0  csv.empty");
        assertThat(found(CsvSheets.table("t.csv", new byte[] {(byte) 0xFF, (byte) 0xFE, 'a', 0}, List.of())))
                .containsExactly("0:0  csv.utf-16");
    }
}

package porebench.exchange.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.Headings;
import porebench.exchange.text.Table;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.Laboratory;
import porebench.record.column.CellType;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;

/** The words of a schema come from the page that people read, its types from the columns, and both are written as JSON. */
class SchemaWordsTest {
    @Test
    void jsonIsIndentedAndQuoted() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("a\"b\\c", "line\none\u0001");
        all.put("empty", List.of());
        all.put("none", Map.of());
        all.put("list", List.of(new BigDecimal("1E+3"), 7, true, "é"));
        assertThat(JsonText.of(all))
                .isEqualTo("{\n  \"a\\\"b\\\\c\": \"line\\u000aone\\u0001\",\n  \"empty\": [],\n  \"none\": {},\n"
                        + "  \"list\": [\n    1000,\n    7,\n    true,\n    \"é\"\n  ]\n}\n");
    }

    @Test
    void whatJsonDoesNotKnowIsAProgrammersMistake() {
        assertThatThrownBy(() -> JsonText.of(Map.of("a", 'x')))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("value must be of a kind that JSON knows");
    }

    private static final String PAGE = "# Title\n\n## `a.csv`\n\nOne row a `thing`,\nsee [there](b.md).\n\nMore.\n\n"
            + "| column | meaning | unit | cell |\n|---|---|---|---|\n"
            + "| `kept` | whether it is [kept](c.md) | `yes`, `no` | needed |\n"
            + "| `how` | how much |  |  |\n\n## Other `words`\n\nText\n\n## Nothing\n";

    @Test
    void thePageGivesItsFirstWordsAndARowForEachColumn() {
        FormatsPage.Section section = FormatsPage.of(PAGE).section("a.csv");
        assertThat(section.about()).isEqualTo("One row a thing, see there.");
        assertThat(section.columns().keySet()).containsExactly("kept", "how");
        assertThat(section.column("kept")).isEqualTo(new FormatsPage.Row("whether it is kept", "yes, no", "needed"));
    }

    @Test
    void whatIsNotDescribedIsNamed() {
        FormatsPage page = FormatsPage.of(PAGE);
        assertThatThrownBy(() -> page.section("b.csv"))
                .hasMessage("file must be described in formats.md, but is not: b.csv");
        FormatsPage.Section section = page.section("a.csv");
        assertThatThrownBy(() -> section.column("why"))
                .hasMessage("column must be described in formats.md, but is not: why");
    }

    /** A format of a few columns, whose records nobody reads. */
    private record Few(Stated stated, Headings columns, List<String> key) implements Format<Laboratory> {
        @Override
        public Class<Laboratory> type() {
            return Laboratory.class;
        }

        @Override
        public String fileName() {
            return "a.csv";
        }

        @Override
        public List<Sheet.Row<Laboratory>> read(Table table) {
            return List.of();
        }

        @Override
        public List<List<String>> write(Laboratory value) {
            return List.of();
        }
    }

    private static Map<String, Object> schema(List<String> headings, Column<?, ?>... columns) {
        Few few = new Few(
                new Format.Stated(List.of(columns), List.of(), false), new Headings(headings, List.of()), List.of());
        return new SheetSchema(few, FormatsPage.of(PAGE).section("a.csv")).of(few.columns());
    }

    /** Two columns under one heading hold what either holds, and are needed where both are. */
    @Test
    void columnsOfOneHeadingShareItsField() {
        Column<String, BigDecimal> low =
                Column.needed("how", CellType.number(NumberRange.of("-1", "2")), text -> BigDecimal.ONE);
        Column<String, BigDecimal> high =
                Column.any("how", CellType.number(NumberRange.of("0", "5")), text -> Optional.of(BigDecimal.ONE));
        assertThat(schema(List.of("how"), low, high).toString())
                .contains("minimum=-1, maximum=5")
                .contains("description=how much,")
                .doesNotContain("Stands there")
                .doesNotContain("Cell:");
    }

    @Test
    void bothWordsStandInTheDescription() {
        Column<String, Boolean> kept = Column.needed("kept", CellType.yesNo(), text -> true);
        assertThat(schema(List.of("kept"), kept).toString())
                .contains("description=whether it is kept. Stands there: yes, no. Cell: needed")
                .contains("required=true");
    }

    /** The unit that columns share is needed beside a number that is; the number's own unit column may be empty. */
    @Test
    void ofTwoUnitsTheLastIsNeeded() {
        Column<String, Typed<Mass>> mass = Column.<String, Typed<Mass>>needed(
                        "how", CellType.quantity(MassUnit.values(), NumberRange.NOT_NEGATIVE), text -> {
                            throw new AssertionError(text);
                        })
                .unitIn("kept", "shared");
        String page = PAGE.replace("| `how`", "| `shared` | its unit |  |  |\n| `how`");
        Few few = new Few(
                new Format.Stated(List.of(mass), List.of(), false),
                new Headings(List.of("how", "kept", "shared"), List.of()),
                List.of());
        String schema = new SheetSchema(few, FormatsPage.of(page).section("a.csv"))
                .of(few.columns())
                .toString();
        assertThat(schema)
                .contains("name=shared, type=string, description=its unit, constraints={required=true, enum=")
                .contains("Cell: needed, constraints={enum=");
    }

    @Test
    void aHeadingWithoutAColumnIsAProgrammersMistake() {
        assertThatThrownBy(() -> schema(List.of("why")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("heading must be that of a column, but is why");
    }
}

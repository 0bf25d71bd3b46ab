package porebench.exchange.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import porebench.record.column.CellShape;
import porebench.record.column.StatedColumn;

/**
 * A data package of files that hold no records as they are imported.
 *
 * <p>Source of the form: as {@link DataPackage}. Differences from the source: {@code otherFields}, how many columns of other names a
 * file may have, is a property of its own.
 */
public final class ListPackage {
    private ListPackage() {}

    /** Returns the description of some files. */
    public static String of(String name, String title, String about, List<ListedFile> files) {
        FormatsPage page = FormatsPage.read();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("profile", "tabular-data-package");
        all.put("name", name);
        all.put("title", title);
        all.put("description", about);
        all.put(
                "resources",
                files.stream()
                        .map(file ->
                                DataPackage.resource(file.path(), page.section(file.section()), schema(file, page)))
                        .toList());
        return JsonText.of(all);
    }

    private static Map<String, Object> schema(ListedFile file, FormatsPage page) {
        Map<String, Object> schema = new LinkedHashMap<>();
        List<Object> fields = file.columns().stream()
                .<Object>map(column -> field(file, column, page))
                .collect(Collectors.toList());
        if (file.shape() instanceof ListedFile.Written) {
            fields.add(SheetSchema.simulated());
        }
        schema.put("fields", fields);
        schema.put("missingValues", List.of(""));
        if (!file.key().isEmpty()) {
            schema.put("primaryKey", file.key());
        }
        if (file.othersAtMost() > 0) {
            schema.put("otherFields", Map.of("atMost", file.othersAtMost()));
        }
        return schema;
    }

    private static Map<String, Object> field(ListedFile file, StatedColumn column, FormatsPage page) {
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", column.name());
        field.put("type", SheetSchema.TYPES.getOrDefault(column.kind(), "string"));
        field.put("description", words(file, column, page));
        if (column.kind() == CellShape.Kind.MOMENT) {
            field.put("format", "any");
        }
        if (column.kind() == CellShape.Kind.YES_NO) {
            field.put("trueValues", List.of("1"));
            field.put("falseValues", List.of("0"));
        }
        if (!column.unit().isEmpty()) {
            field.put("unit", SheetSchema.symbol(column.unit()));
        }
        if (!column.unitField().isEmpty()) {
            field.put("unitField", column.unitField());
        }
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (column.isFilled()) {
            constraints.put("required", true);
        }
        if (List.of(column.name()).equals(file.key())) {
            constraints.put("unique", true);
        }
        if (!column.words().isEmpty()) {
            constraints.put("enum", column.words());
        }
        return SheetSchema.constrained(field, constraints);
    }

    /** What a column of a whole export means is said where the file of the same records is described, if it stands there. */
    private static String words(ListedFile file, StatedColumn column, FormatsPage page) {
        if (file.shape() instanceof ListedFile.Stored stored && !stored.file().isEmpty()) {
            Map<String, FormatsPage.Row> there = page.section(stored.file()).columns();
            String heading = stored.headings().getOrDefault(column.name(), column.name());
            if (there.containsKey(heading)) {
                return "As " + heading + " in " + stored.file() + ": "
                        + there.get(heading).meaning();
            }
        }
        return page.section(file.section()).column(column.name()).words();
    }
}

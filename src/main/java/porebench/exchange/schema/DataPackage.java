package porebench.exchange.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.Headings;
import porebench.record.Kept;
import porebench.record.Laboratory;

/**
 * {@code datapackage.json}: what a folder of CSV files holds, the schema of each file within.
 *
 * <p>Source of the form: Frictionless Data Package, version 1, of tables (recalled; checked by a validator in a test).
 */
public final class DataPackage {
    /** The name that the form gives the file. */
    public static final String FILE = "datapackage.json";

    private static final String CSV = ".csv";

    private DataPackage() {}

    /**
     * Returns the description of the files of an export.
     *
     * @param formats the formats of the files
     * @param isTraining whether the files come from a training book, and say so in every row
     */
    public static String of(List<Format<? extends Kept>> formats, boolean isTraining) {
        FormatsPage page = FormatsPage.read();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("profile", "tabular-data-package");
        all.put("name", "porebench-records");
        all.put("title", "Records of an air meter laboratory: aggregate correction factors and what they rest on");
        all.put(
                "description",
                "One file a kind of record, as export writes them. Import also reads columns in another order, without those"
                        + " that may be absent, and other spellings of units. What hangs on several columns stands in the"
                        + " descriptions. A text that a spreadsheet could take for a formula has an apostrophe before it.");
        all.put(
                "resources",
                formats.stream()
                        .map(format -> resource(format, columns(format, isTraining), page))
                        .toList());
        return JsonText.of(all);
    }

    private static Headings columns(Format<?> format, boolean isTraining) {
        boolean isMarked = isTraining && format.type() != Laboratory.class;
        return isMarked ? format.columns().marked() : format.columns();
    }

    private static Map<String, Object> resource(Format<?> format, Headings columns, FormatsPage page) {
        FormatsPage.Section section = page.section(format.fileName());
        return resource(format.fileName(), section, new SheetSchema(format, section).of(columns));
    }

    /** Returns the description of one file. */
    static Map<String, Object> resource(String file, FormatsPage.Section section, Map<String, Object> schema) {
        Map<String, Object> resource = new LinkedHashMap<>();
        resource.put("profile", "tabular-data-resource");
        resource.put("name", file.replace(CSV, ""));
        resource.put("path", file);
        resource.put("description", section.about());
        resource.put("format", "csv");
        resource.put("mediatype", "text/csv");
        resource.put("encoding", "utf-8");
        resource.put("dialect", dialect());
        resource.put("schema", schema);
        return resource;
    }

    private static Map<String, Object> dialect() {
        Map<String, Object> dialect = new LinkedHashMap<>();
        dialect.put("delimiter", ",");
        dialect.put("lineTerminator", "\r\n");
        dialect.put("quoteChar", "\"");
        dialect.put("doubleQuote", true);
        dialect.put("header", true);
        return dialect;
    }
}

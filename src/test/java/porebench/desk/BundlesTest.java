package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.EquipmentColumns;
import porebench.record.column.FieldReadingColumns;
import porebench.record.column.GroupColumns;
import porebench.record.column.MeasurementColumns;
import porebench.record.column.MeterColumns;
import porebench.record.column.MixColumns;
import porebench.record.column.ProductionColumns;
import porebench.record.column.SourceColumns;
import porebench.record.column.TrialColumns;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/** Every text that a screen asks for is in its bundle, and every text in a bundle is asked for. */
class BundlesTest {
    /** The forms of each room whose fields follow from columns, by the word that leads their keys. */
    private static final Map<String, Map<String, Columns<?>>> FORMS = Map.of(
            "register",
            Map.of(
                    "source",
                    SourceColumns.ALL,
                    "meter",
                    MeterColumns.ALL,
                    "equipment",
                    EquipmentColumns.ALL,
                    "group",
                    GroupColumns.ALL,
                    "measured",
                    MeasurementColumns.ALL,
                    "production",
                    ProductionColumns.ALL),
            "trial",
            Map.of("trial", TrialColumns.ALL),
            "field",
            Map.of("reading", FieldReadingColumns.ALL),
            "meter",
            Map.of(
                    "calibration",
                    CalibrationColumns.ALL,
                    "fill",
                    CalibrationColumns.OF_FILL.columns(),
                    "point",
                    CalibrationColumns.OF_POINT.columns()),
            "mix",
            Map.of("mix", MixColumns.ALL, "constituent", MixColumns.OF_CONSTITUENT));

    /** What else is asked for by a key put together: titles of pages, and the forms with fields of their own. */
    private static final Map<String, List<String>> FIELDS = Map.of(
            "mix",
            List.of("page.title"),
            "custody",
            List.of("page.title"),
            "meter",
            List.of("page.title"),
            "overtime",
            Stream.of(
                            Stream.of("by.mix", "by.source", "by.meter", "by.operator"),
                            Stream.of("base.first", "base.days", "limits.kept", "limits.anew"),
                            Stream.of("split.source", "split.calibration", "split.method"),
                            Arrays.stream(PhasedChart.Kind.values())
                                    .map(kind -> "kind."
                                            + kind.name()
                                                    .toLowerCase(Locale.ROOT)
                                                    .replace('_', '-')),
                            Arrays.stream(RunRule.values()).map(rule -> "rule." + rule.symbol()))
                    .flatMap(keys -> keys)
                    .toList(),
            "frame",
            List.of("profile.form.id", "profile.form.title", "laboratory.name", "laboratory.address"),
            "study",
            Stream.concat(
                            Stream.of("keep.id", "keep.title", "keep.madeOn", "keep.by", "keep.remarks"),
                            Stream.of("kind.OPERATORS", "kind.LAYERS", "kind.LABORATORIES", "data.book", "data.file"))
                    .toList(),
            "sample",
            List.of(
                    "form.meter",
                    "form.bowl",
                    "form.bowlUnit",
                    "form.meterType",
                    "form.trials",
                    "form.spare",
                    "form.massUnit",
                    "form.moisture"),
            "factor",
            List.of(
                    "form.determination",
                    "form.inForceFrom",
                    "form.recheckBy",
                    "form.inForceAt",
                    "form.conditions",
                    "form.approvedBy",
                    "form.reason",
                    "form.overrideBy",
                    "form.overrideReason"),
            "change",
            List.of("decision.choice", "decision.more", "decision.reason"));

    /** What a field may have besides its label. */
    private static final Set<String> BESIDES = Set.of(".plain", ".step", ".unit");

    /** What a form does not ask for because the page knows it. */
    private static final Set<Column<?, ?>> NOT_TYPED = Set.of(
            FieldReadingColumns.ID,
            FieldReadingColumns.KEPT_BECAUSE,
            FieldReadingColumns.STRUCK_BECAUSE,
            MeasurementColumns.ID,
            MeasurementColumns.SOURCE,
            CalibrationColumns.METER,
            CalibrationColumns.METER_TYPE,
            CalibrationColumns.DIAL_CHECKED,
            CalibrationColumns.FILLS,
            CalibrationColumns.POINTS,
            MixColumns.CONSTITUENTS,
            TrialColumns.MIX,
            TrialColumns.METER_TYPE,
            TrialColumns.BOWL,
            TrialColumns.DETERMINATION,
            TrialColumns.KEPT_BECAUSE,
            TrialColumns.STRUCK_BECAUSE,
            TrialColumns.SIMULATED);

    private static final Path SOURCES = Path.of("src/main/java/porebench/desk");
    private static final Path BUNDLES = Path.of("src/main/resources/porebench/desk");

    private static final String LITERAL = "\"((?:[^\"\\\\]++|\\\\.)*+)\"";
    private static final Pattern ANY = Pattern.compile(LITERAL);
    private static final Pattern ASKED = Pattern.compile("\\btexts(?:\\(\\))?\\s*\\.get\\(\\s*" + LITERAL + "\\s*[,)]");
    private static final Pattern ASKED_EITHER = Pattern.compile(
            "\\btexts(?:\\(\\))?\\s*\\.get\\(\\s*[^\"?;]*\\?\\s*" + LITERAL + "\\s*:\\s*" + LITERAL + "\\s*[,)]");
    /** The beginning of a key that is put together, and the end of one. */
    private static final Pattern BEGINNING = Pattern.compile(LITERAL + "\\s*\\+");

    private static final Pattern END = Pattern.compile("\\+\\s*" + LITERAL);

    static Stream<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(BUNDLES)) {
            return files
                    .filter(file -> file.toString().endsWith(".properties"))
                    .filter(file -> !file.getParent().endsWith("theme"))
                    // What Spain says otherwise is a part of a bundle; TranslationsTest holds its keys to the others.
                    .filter(file -> !file.toString().endsWith("_es_ES.properties"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @Test
    void everyScreenHasItsBundle() throws IOException {
        assertThat(bundles().map(file -> file.getParent().getFileName().toString()))
                .contains("frame", "register", "mix", "sample", "trial", "variability", "factor", "meter", "study");
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextAskedForIsThere(Path bundle) {
        Set<String> keys = keys(bundle);
        List<String> asked = new ArrayList<>();
        asked.addAll(found(ASKED, sources(bundle)));
        asked.addAll(found(ASKED_EITHER, sources(bundle)));
        assertThat(asked).as("texts asked for in the package of %s", bundle).isNotEmpty();
        asked.addAll(ofColumns(bundle));
        assertThat(keys).as("keys of %s", bundle).containsAll(asked);
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextThatIsThereIsAskedFor(Path bundle) {
        String sources = sources(bundle);
        Set<String> literals = new TreeSet<>(found(ANY, sources));
        List<String> beginnings = found(BEGINNING, sources).stream()
                .filter(text -> text.matches("[a-zA-Z][a-zA-Z0-9.-]*[.-]"))
                .toList();
        List<String> ends = found(END, sources).stream()
                .filter(text -> text.matches("\\.[a-zA-Z0-9.-]+"))
                .toList();
        List<String> forgotten = keys(bundle).stream()
                .filter(key -> !literals.contains(key)
                        && !ofColumns(bundle).contains(key)
                        && !isOfAForm(bundle, key)
                        && beginnings.stream().noneMatch(key::startsWith)
                        && ends.stream().noneMatch(key::endsWith))
                .sorted()
                .toList();
        assertThat(forgotten).as("texts of %s nobody asks for", bundle).isEmpty();
    }

    /** The keys of the forms, which follow from the columns of their records. */
    private static List<String> ofColumns(Path bundle) {
        List<String> keys = new ArrayList<>(fields(bundle));
        forms(bundle)
                .forEach((what, columns) -> columns.all().stream()
                        .filter(column -> !NOT_TYPED.contains(column))
                        .forEach(column -> addKeys(what, column, keys)));
        return keys;
    }

    private static List<String> fields(Path bundle) {
        return FIELDS.getOrDefault(bundle.getParent().getFileName().toString(), List.of());
    }

    private static Map<String, Columns<?>> forms(Path bundle) {
        return FORMS.getOrDefault(bundle.getParent().getFileName().toString(), Map.of());
    }

    /** What a form may have besides: a unit that is not chosen, and what differs between versions. */
    private static boolean isOfAForm(Path bundle, String key) {
        boolean isBesideAField =
                fields(bundle).stream().anyMatch(field -> BESIDES.stream().anyMatch(end -> key.equals(field + end)));
        return isBesideAField
                || forms(bundle).entrySet().stream()
                        .anyMatch(form -> form.getValue().all().stream()
                                .anyMatch(column -> key.equals(form.getKey() + "." + column.field() + ".unit")
                                        || key.equals("change")
                                        || key.equals("change.nothing")));
    }

    private static void addKeys(String what, Column<?, ?> column, List<String> keys) {
        String key = what + "." + column.field();
        keys.add(key);
        keys.add(key + ".plain");
        if (column.type().isYesNo()) {
            keys.addAll(List.of(key + ".tick", key + ".yes", key + ".no"));
        }
        // Calibrations say the name of a unit by one text for all, and the masses of the fills share one.
        if (column.hasUnit() && !what.equals("calibration") && !what.equals("fill")) {
            keys.add(what + "." + column.unitField());
        }
    }

    @Test
    void aTextThatNobodyAsksForWouldBeFound() {
        String source = "texts.get(\"there\"); texts.get(\"made.\" + part); texts.get(good ? \"one\" : \"other\")";
        assertThat(found(ASKED, source)).containsExactly("there");
        assertThat(found(ASKED_EITHER, source)).containsExactly("one", "other");
        assertThat(found(BEGINNING, source)).containsExactly("made.");
    }

    private static Set<String> keys(Path bundle) {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(bundle, StandardCharsets.UTF_8)) {
            texts.load(reader);
        } catch (IOException failure) {
            throw new UncheckedIOException("reading " + bundle, failure);
        }
        return texts.stringPropertyNames();
    }

    /** Returns the sources of a bundle's package, with those of its rooms; a screen beside it has a bundle of its own. */
    private static String sources(Path bundle) {
        Path folder = SOURCES.resolve(BUNDLES.relativize(bundle.getParent()));
        try (Stream<Path> files = folder.equals(SOURCES) ? Files.list(folder) : Files.walk(folder)) {
            StringBuilder all = new StringBuilder();
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file, StandardCharsets.UTF_8)).append('\n');
            }
            return all.toString();
        } catch (IOException failure) {
            throw new UncheckedIOException("reading the sources of " + folder, failure);
        }
    }

    private static List<String> found(Pattern pattern, String source) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(source);
        while (matcher.find()) {
            for (int group = 1; group <= matcher.groupCount(); group++) {
                found.add(matcher.group(group));
            }
        }
        return found;
    }
}

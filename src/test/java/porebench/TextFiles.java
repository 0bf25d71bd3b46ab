package porebench;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of texts in the source tree: an English one a bundle, and beside it one a language. */
final class TextFiles {
    static final Path FOLDER = Path.of("src/main/resources/porebench");

    /** The languages beside English. What Spain says otherwise than the Americas stands in files of its own. */
    static final List<String> LANGUAGES = List.of("es", "fr", "de");

    static final String SPAIN = "es_ES";

    private TextFiles() {}

    /** A bundle in a language other than English. */
    record Translation(Path english, String language) {
        Path file() {
            return english.resolveSibling(nameOf(english).replace(".properties", "_" + language + ".properties"));
        }

        /** Returns the texts that stand in the file. */
        Map<String, String> texts() {
            return read(file());
        }

        @Override
        public String toString() {
            return FOLDER.relativize(file()).toString();
        }
    }

    /** Returns the English bundles. */
    static List<Path> bundles() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".properties"))
                    .filter(file -> !file.getParent().endsWith("theme"))
                    .filter(file -> !nameOf(file).contains("_"))
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException("listing " + FOLDER, failure);
        }
    }

    /** Returns every bundle in every language, there or not. */
    static List<Translation> wanted() {
        return bundles().stream()
                .flatMap(bundle -> LANGUAGES.stream().map(language -> new Translation(bundle, language)))
                .toList();
    }

    /** Returns every bundle in every language in which its file is there. */
    static List<Translation> there() {
        return wanted().stream().filter(each -> Files.exists(each.file())).toList();
    }

    /** Returns the bundles of which Spain says something otherwise. */
    static List<Translation> ofSpain() {
        return bundles().stream()
                .map(bundle -> new Translation(bundle, SPAIN))
                .filter(each -> Files.exists(each.file()))
                .toList();
    }

    /** Returns whether a bundle gives the figures of a named standard, whose translation holds its clauses only. */
    static boolean isProfile(Path bundle) {
        return bundle.getParent().endsWith("profile");
    }

    /** Returns whether a bundle is written for picocli, with percent signs doubled and apostrophes not. */
    static boolean isHelp(Path bundle) {
        return nameOf(bundle).equals("help.properties");
    }

    /** Returns whether the texts of a bundle are patterns, in which an apostrophe stands twice. */
    static boolean isOfPatterns(Path bundle) {
        return !isProfile(bundle) && !isHelp(bundle);
    }

    static String nameOf(Path file) {
        return file.getFileName().toString();
    }

    static Map<String, String> read(Path file) {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            texts.load(reader);
        } catch (IOException failure) {
            throw new UncheckedIOException("reading " + file, failure);
        }
        Map<String, String> read = new TreeMap<>();
        texts.stringPropertyNames().forEach(key -> read.put(key, texts.getProperty(key)));
        return read;
    }
}

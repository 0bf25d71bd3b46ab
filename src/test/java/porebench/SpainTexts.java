package porebench;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import porebench.TextFiles.Translation;

/**
 * The Spanish of Spain: what the texts of the Americas become when the words of {@code spain/words.tsv} are put in. Run as a program
 * from the folder of the project, it writes the files {@code ..._es_ES.properties} anew.
 */
final class SpainTexts {
    private static final Path FOLDER = Path.of("src/test/resources/spain");
    private static final String HEAD =
            "# Lo que en España se dice de otro modo que en América; lo demás está en %s_es.\n";

    private final Map<String, String> words = new HashMap<>();
    private final Map<String, Character> letters = new HashMap<>();
    private final Pattern any;

    SpainTexts() throws IOException {
        for (String line : lines("words.tsv")) {
            String[] halves = line.split("\t", -1);
            if (halves.length != 2 || words.put(halves[0].toLowerCase(Locale.ROOT), halves[1]) != null) {
                throw new IllegalStateException("words.tsv must have two halves a line, each word once: " + line);
            }
        }
        for (String line : lines("letters.tsv")) {
            String[] parts = line.split("\t", -1);
            letters.put(parts[0] + " " + parts[1], parts[2].charAt(0));
        }
        String alternatives = words.keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Pattern::quote)
                .collect(joining("|"));
        any = Pattern.compile(
                "(?<![\\p{L}\\d])(?:" + alternatives + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static List<String> lines(String name) throws IOException {
        return Files.readAllLines(FOLDER.resolve(name), StandardCharsets.UTF_8).stream()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .toList();
    }

    /** Returns a text as Spain says it; a letter marked by & stays the letter where the new words have it, and is the first one otherwise. */
    String said(String americas) {
        return said(americas, Optional.empty());
    }

    private String said(String americas, Optional<Character> letter) {
        int mark = americas.indexOf('&');
        boolean isMarked = mark >= 0 && mark + 1 < americas.length() && Character.isLetter(americas.charAt(mark + 1));
        String plain = isMarked ? americas.replaceFirst("&", "") : americas;
        String spain = any.matcher(plain).replaceAll(this::put);
        if (spain.equals(plain)) {
            return americas;
        }
        return isMarked ? marked(spain, letter.orElse(americas.charAt(mark + 1))) : spain;
    }

    private String put(MatchResult found) {
        String word = words.getOrDefault(found.group().toLowerCase(Locale.ROOT), "");
        boolean isBegin = Character.isUpperCase(found.group().charAt(0));
        boolean isAll =
                found.group().length() > 1 && found.group().equals(found.group().toUpperCase(Locale.ROOT));
        String cased = isAll
                ? word.toUpperCase(Locale.ROOT)
                : isBegin ? word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) : word;
        return cased.replace("\\", "\\\\").replace("$", "\\$");
    }

    private static String marked(String text, char letter) {
        int at = text.indexOf(letter);
        if (at < 0) {
            at = text.toLowerCase(Locale.ROOT).indexOf(Character.toLowerCase(letter));
        }
        return text.substring(0, Math.max(0, at)) + "&" + text.substring(Math.max(0, at));
    }

    /** Returns what should stand in the file of Spain, by key: what is said otherwise. */
    Map<String, String> of(Path bundle) {
        Map<String, String> wanted = new TreeMap<>();
        new Translation(bundle, "es").texts().forEach((key, text) -> {
            String said = said(text, Optional.ofNullable(letters.get(nameOf(bundle) + " " + key)));
            if (!said.equals(text)) {
                wanted.put(key, said);
            }
        });
        return wanted;
    }

    static Path ofSpain(Path bundle) {
        return new Translation(bundle, TextFiles.SPAIN).file();
    }

    /** Returns the name of a bundle within the program, such as {@code desk/mix/mix}. */
    private static String nameOf(Path bundle) {
        return TextFiles.FOLDER.relativize(bundle).toString().replace('\\', '/').replace(".properties", "");
    }

    public static void main(String[] arguments) throws IOException {
        SpainTexts spain = new SpainTexts();
        for (Path bundle : TextFiles.bundles()) {
            Map<String, String> wanted = spain.of(bundle);
            Path file = ofSpain(bundle);
            if (wanted.isEmpty()) {
                Files.deleteIfExists(file);
                continue;
            }
            // In the order of the file of the Americas, so that both can be read side by side.
            String name = TextFiles.nameOf(bundle).replace(".properties", "");
            StringBuilder text = new StringBuilder(String.format(Locale.ROOT, HEAD, name));
            for (String line : Files.readAllLines(new Translation(bundle, "es").file(), StandardCharsets.UTF_8)) {
                int end = line.indexOf(" = ");
                if (!line.startsWith("#") && end > 0 && wanted.containsKey(line.substring(0, end))) {
                    String key = line.substring(0, end);
                    text.append(key)
                            .append(" = ")
                            .append(escaped(wanted.get(key)))
                            .append('\n');
                }
            }
            Files.writeString(file, text, StandardCharsets.UTF_8);
        }
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace("\n", "\\n").replaceFirst("^ ", "\\\\ ");
    }
}

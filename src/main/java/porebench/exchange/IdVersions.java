package porebench.exchange;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A column of versions of other records: {@code S-01:1;S-02:2}, a semicolon in an id being written {@code %3B}. */
final class IdVersions {
    private static final Pattern ID_VERSION = Pattern.compile("(.*\\S.*):(\\d{1,9})", Pattern.DOTALL);

    private IdVersions() {}

    /** Reads a column; what is not written like this is noted as an error. */
    static <I> Map<I, Integer> read(Entry entry, String column, Function<String, I> make) {
        Map<I, Integer> versions = new LinkedHashMap<>();
        String all = entry.text(column);
        for (String one : all.isBlank() ? new String[0] : all.split(";", -1)) {
            Matcher matcher = ID_VERSION.matcher(one.strip());
            boolean good = matcher.matches()
                    && Integer.parseInt(matcher.group(2)) >= 1
                    && versions.put(make.apply(Escapes.read(matcher.group(1))), Integer.valueOf(matcher.group(2)))
                            == null;
            if (!good) {
                entry.error(column, "csv.not-versions", column, Findings.quoted(one));
            }
        }
        return versions;
    }

    static <I extends Comparable<I>> String written(Map<I, Integer> versions, Function<I, String> text) {
        return versions.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> Escapes.written(text.apply(entry.getKey())) + ":" + entry.getValue())
                .collect(Collectors.joining(";"));
    }
}

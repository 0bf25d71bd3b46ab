package porebench.exchange;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import porebench.record.SourceId;

/** The column {@code source_versions}: {@code S-01:1;S-02:2}, a semicolon in an id being written {@code %3B}. */
final class SourceVersions {
    private static final Pattern SOURCE_VERSION = Pattern.compile("(.*\\S.*):(\\d{1,9})", Pattern.DOTALL);

    private SourceVersions() {}

    static Map<SourceId, Integer> read(Entry entry) {
        Map<SourceId, Integer> versions = new LinkedHashMap<>();
        String all = entry.text("source_versions");
        for (String one : all.isBlank() ? new String[0] : all.split(";", -1)) {
            Matcher matcher = SOURCE_VERSION.matcher(one.strip());
            boolean good = matcher.matches()
                    && Integer.parseInt(matcher.group(2)) >= 1
                    && versions.put(
                                    new SourceId(
                                            matcher.group(1).replace("%3B", ";").replace("%25", "%")),
                                    Integer.valueOf(matcher.group(2)))
                            == null;
            if (!good) {
                entry.error("source_versions", "csv.not-source-versions", Findings.quoted(one));
            }
        }
        return versions;
    }

    static String written(Map<SourceId, Integer> versions) {
        return versions.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> entry.getKey().text().replace("%", "%25").replace(";", "%3B") + ":" + entry.getValue())
                .collect(Collectors.joining(";"));
    }
}

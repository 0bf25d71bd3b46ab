package porebench.exchange.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The first row of a file, which names its columns.
 *
 * @param line the line it stands on
 * @param names the names without white space around them
 */
public record Heading(int line, List<String> names) {
    public Heading {
        names = List.copyOf(names);
    }

    /** Reads the first row of a file; empty, with the problem noted, when there is none. */
    public static Optional<Heading> read(CsvRows rows, Findings findings) {
        Optional<CsvRows.Raw> first = rows.next();
        if (first.isEmpty()) {
            if (findings.isEmpty()) {
                findings.error(0, 0, "", "csv.empty");
            }
            return Optional.empty();
        }
        return first.map(raw ->
                new Heading(raw.line(), raw.fields().stream().map(String::strip).toList()));
    }

    /** Returns how many columns of a format are named here. */
    public long known(Headings columns) {
        return names.stream().distinct().filter(columns::knows).count();
    }

    /** Returns whether all columns that a format needs are named here. */
    public boolean hasAllOf(Headings columns) {
        return names.containsAll(columns.needed());
    }

    /** Returns whether all columns that a format needs are named here, and none of its columns twice. */
    boolean fits(Headings columns) {
        return hasAllOf(columns)
                && known(columns) == names.stream().filter(columns::knows).count();
    }

    /** Returns the separator that makes columns of a format out of this row when the comma does not; empty otherwise. */
    public Optional<String> otherSeparator(Headings columns) {
        String whole = String.join(",", names);
        return List.of(";", "\t", "|").stream()
                .filter(separator ->
                        new Heading(line, List.of(whole.split(java.util.regex.Pattern.quote(separator), -1)))
                                        .known(columns)
                                >= 2)
                .findFirst();
    }

    /**
     * Notes what is wrong with this heading for a format.
     *
     * @return the place of each known column, counted from 1
     */
    Map<String, Integer> match(Headings columns, Findings findings) {
        Map<String, Integer> places = new HashMap<>();
        for (int index = 0; index < names.size(); index++) {
            String name = names.get(index);
            if (!columns.knows(name)) {
                if (!name.isEmpty()) {
                    findings.warning(line, index + 1, name, "csv.column-unknown", Findings.quoted(name));
                }
            } else if (places.containsKey(name)) {
                findings.error(line, index + 1, name, "csv.column-twice", name, places.get(name));
            } else {
                places.put(name, index + 1);
            }
        }
        columns.needed().stream()
                .filter(name -> !places.containsKey(name))
                .forEach(name -> findings.error(line, 0, name, "csv.column-missing", name));
        return places;
    }
}

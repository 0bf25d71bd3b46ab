package porebench.exchange.text;

import java.util.Map;
import java.util.Optional;

/** A file under a heading that was matched with a format: gives one entry after the other. */
public final class Table {
    private final CsvRows rows;
    private final Heading heading;
    private final Findings findings;
    private final Map<String, Integer> places;
    private final boolean whole;
    private final boolean watching;
    private boolean marked;

    private Table(
            CsvRows rows,
            Heading heading,
            Findings findings,
            Map<String, Integer> places,
            boolean whole,
            boolean watching) {
        this.rows = rows;
        this.heading = heading;
        this.findings = findings;
        this.places = places;
        this.whole = whole;
        this.watching = watching;
    }

    /** Matches a file with the columns of a format, and with the one by which any file says that it is simulated. */
    public static Table of(CsvRows rows, Heading heading, Headings columns, Findings findings) {
        rows.isUnder(heading);
        Headings known = columns.marked();
        Map<String, Integer> places = heading.match(known, findings);
        return new Table(rows, heading, findings, places, heading.fits(known), !known.equals(columns));
    }

    /** Returns whether the heading is sound, so that rows under it can be used. */
    public boolean isWhole() {
        return whole;
    }

    /** Returns whether any row so far says that it is simulated, of records that do not know it of themselves. */
    public boolean isMarked() {
        return marked;
    }

    Findings findings() {
        return findings;
    }

    /** Returns how many rows so far could not be told apart into cells; it is not known what they belong to. */
    int lost() {
        return rows.lost();
    }

    /** Returns the next entry with the right number of fields; empty at the end. */
    public Optional<HeadedRow> next() {
        Optional<CsvRows.Raw> row = rows.next();
        while (row.isPresent()) {
            CsvRows.Raw raw = row.get();
            if (raw.fields().size() == heading.names().size()) {
                HeadedRow entry = new HeadedRow(raw, places, findings, rows.style());
                marked |= watching && entry.optionalYesNo(Headings.SIMULATED).orElse(false);
                return Optional.of(entry);
            }
            if (raw.lastLine() > raw.line()) {
                rows.rejectRunOn(raw);
            } else {
                rows.lose();
                findings.error(
                        raw.line(),
                        0,
                        "",
                        "csv.fields-wrong-number",
                        raw.fields().size(),
                        heading.names().size());
            }
            row = rows.next();
        }
        return Optional.empty();
    }
}

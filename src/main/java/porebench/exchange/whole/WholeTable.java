package porebench.exchange.whole;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import porebench.exchange.text.CsvRows;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HarmlessCell;
import porebench.exchange.text.Heading;
import porebench.exchange.text.RawFile;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.port.OpeningRefused;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;
import porebench.record.chain.ChainRow;

/** One file of a whole export, read row by row; whatever is wrong in it is refused with its place. */
final class WholeTable {
    private final String file;
    private final String table;
    private final CsvRows rows;
    private final Findings findings;
    private final Heading heading;
    private Optional<Row> next = Optional.empty();
    private long before;

    /**
     * A row and the entry it belongs to.
     *
     * @param number the number of the entry
     * @param row what it says besides
     */
    record Row(long number, ChainRow row) {}

    private WholeTable(String file, String table, byte[] bytes) {
        this.file = file;
        this.table = table;
        this.findings = new Findings(file);
        RawFile.refusal(bytes).ifPresent(code -> {
            throw refused(0, 0, code, RawFile.LARGEST / 1_000_000);
        });
        this.rows = new CsvRows(bytes, findings);
        this.heading = Heading.read(rows, findings).orElseThrow(this::firstFinding);
    }

    /** Opens a file without looking at what its rows say. */
    static WholeTable open(Path folder, String name, String table) {
        Path path = folder.resolve(name);
        try (InputStream stream = Files.newInputStream(path)) {
            return new WholeTable(name, table, stream.readNBytes(RawFile.LARGEST + 1));
        } catch (NoSuchFileException absent) {
            throw new OpeningRefused(
                    Problem.error("file", "csv.file-missing", path.toString()).at(Place.of(name)));
        } catch (IOException failure) {
            throw new OpeningRefused(
                    Problem.error("file", "csv.file-unreadable", path.toString(), String.valueOf(failure.getMessage()))
                            .at(Place.of(name)));
        }
    }

    /** Opens the file of a table, looks through it once, and stands at its first row. */
    static WholeTable of(Path folder, String table) {
        WholeTable checked = opened(folder, table);
        while (checked.peek().isPresent()) {
            checked.advance();
        }
        return opened(folder, table);
    }

    private static WholeTable opened(Path folder, String table) {
        WholeTable opened = open(folder, WholeExport.fileName(table), table);
        if (!opened.heading.names().contains(ChainEntry.NUMBER)) {
            throw opened.refused(opened.heading.line(), 0, "csv.column-missing", ChainEntry.NUMBER);
        }
        List<String> names = opened.heading.names();
        for (int i = 0; i < names.size(); i++) {
            if (names.indexOf(names.get(i)) < i) {
                throw opened.refused(
                        opened.heading.line(),
                        i + 1,
                        "csv.column-twice",
                        names.get(i),
                        names.indexOf(names.get(i)) + 1);
            }
        }
        opened.advance();
        return opened;
    }

    ChainOutline.TableOutline outline() {
        return new ChainOutline.TableOutline(table, heading.names(), Place.of(file, heading.line()));
    }

    List<String> names() {
        return heading.names();
    }

    /** Returns the next line with as many fields as the heading. */
    Optional<CsvRows.Raw> raw() {
        Optional<CsvRows.Raw> raw = rows.next();
        if (!findings.isEmpty()) {
            throw firstFinding();
        }
        raw.filter(one -> one.fields().size() != heading.names().size()).ifPresent(one -> {
            throw refused(
                    one.line(),
                    0,
                    "csv.fields-wrong-number",
                    one.fields().size(),
                    heading.names().size());
        });
        return raw;
    }

    /** Returns the row that stands next, without going on to the one after it. */
    Optional<Row> peek() {
        return next;
    }

    /** Returns the rows of an entry that stand next, and goes on to the one after them. */
    List<ChainRow> takeAll(long number) {
        List<ChainRow> taken = new ArrayList<>();
        while (next.isPresent() && next.get().number() == number) {
            taken.add(next.get().row());
            advance();
        }
        return taken;
    }

    void advance() {
        next = raw().map(this::row);
        next.ifPresent(row -> {
            if (table.equals(ChainEntry.TABLE) && row.number() != before + 1) {
                throw refused(
                        row.row().place().line().orElse(0),
                        numberColumn(),
                        "whole.entry-order",
                        row.number(),
                        before + 1);
            }
            if (row.number() < before) {
                throw refused(
                        row.row().place().line().orElse(0), numberColumn(), "whole.line-order", row.number(), before);
            }
            before = row.number();
        });
    }

    private int numberColumn() {
        return heading.names().indexOf(ChainEntry.NUMBER) + 1;
    }

    private Row row(CsvRows.Raw raw) {
        TreeMap<String, String> cells = new TreeMap<>();
        for (int i = 0; i < raw.fields().size(); i++) {
            String cell = raw.fields().get(i);
            if (!cell.isEmpty() && i + 1 != numberColumn()) {
                int column = i + 1;
                cells.put(
                        heading.names().get(i),
                        WholeCell.read(HarmlessCell.read(cell))
                                .filter(text -> HarmlessCell.written(WholeCell.written(text))
                                        .equals(cell))
                                .orElseThrow(() ->
                                        refused(raw.line(), column, "whole.cell-unreadable", Findings.quoted(cell))));
            }
        }
        String number = raw.fields().get(numberColumn() - 1);
        if (!number.matches("[1-9]\\d{0,17}")) {
            throw refused(raw.line(), numberColumn(), "whole.entry-number", Findings.quoted(number));
        }
        return new Row(Long.parseLong(number), new ChainRow(table, cells, Place.of(file, raw.line())));
    }

    private OpeningRefused firstFinding() {
        return new OpeningRefused(findings.all().get(0));
    }

    OpeningRefused refused(int line, int column, String code, Object... values) {
        return new OpeningRefused(Problem.error("file", code, values).at(Findings.place(file, line, column)));
    }
}

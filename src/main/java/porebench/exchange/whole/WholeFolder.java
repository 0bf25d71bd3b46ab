package porebench.exchange.whole;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import porebench.exchange.photo.PhotoFiles;
import porebench.exchange.text.CsvRows;
import porebench.exchange.text.Findings;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.port.ChainSource;
import porebench.port.OpeningRefused;
import porebench.record.PhotoFile;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;
import porebench.record.chain.ChainRow;

/** A whole lab book in the files of a folder, read entry by entry. */
public final class WholeFolder implements ChainSource {
    private final Path folder;
    private final ChainOutline outline;
    private final WholeTable entries;
    private final List<WholeTable> tables = new ArrayList<>();

    /** What {@code book.csv} says, and the line of each. */
    private static final class Outline {
        private final WholeTable file;
        private final Map<String, String> said = new TreeMap<>();
        private final Map<String, Integer> lines = new TreeMap<>();
        private final List<String> tables = new ArrayList<>();

        Outline(Path folder) {
            file = WholeTable.open(folder, WholeExport.OUTLINE, "");
            if (!file.names().equals(WholeExport.HEADING)) {
                throw file.refused(1, 0, "whole.not-whole", folder.toString());
            }
            for (Optional<CsvRows.Raw> raw = file.raw(); raw.isPresent(); raw = file.raw()) {
                String name = raw.get().fields().get(0);
                String value = raw.get().fields().get(1);
                lines.put(name, raw.get().line());
                if (name.equals("table")) {
                    checkTable(value, raw.get().line());
                    tables.add(value);
                } else {
                    said.put(name, value);
                }
            }
        }

        /** The name of a table becomes that of a file, so it is letters only. */
        private void checkTable(String name, int line) {
            if (!name.matches("[a-z_]{1,60}") || tables.contains(name)) {
                throw file.refused(line, 2, "whole.table-unknown", Findings.quoted(name));
            }
        }

        String value(String name, String form) {
            String value = said.getOrDefault(name, "");
            if (!value.matches(form)) {
                throw file.refused(lines.getOrDefault(name, 0), 2, "whole.outline", name, Findings.quoted(value));
            }
            return value;
        }
    }

    private WholeFolder(Path folder) {
        this.folder = folder;
        Outline stated = new Outline(folder);
        stated.value("form", WholeExport.FORM);
        if (!stated.tables.contains(ChainEntry.TABLE)) {
            throw stated.file.refused(0, 0, "whole.not-whole", folder.toString());
        }
        entries = WholeTable.of(folder, ChainEntry.TABLE);
        List<ChainOutline.TableOutline> outlines = new ArrayList<>();
        outlines.add(entries.outline());
        for (String table : stated.tables) {
            if (!table.equals(ChainEntry.TABLE)) {
                WholeTable opened = WholeTable.of(folder, table);
                tables.add(opened);
                outlines.add(opened.outline());
            }
        }
        outline = new ChainOutline(
                Integer.parseInt(stated.value("schema_step", "\\d{1,6}")),
                Long.parseLong(stated.value("entries", "\\d{1,18}")),
                stated.value("head", "[0-9a-f]{64}"),
                outlines,
                Findings.place(WholeExport.OUTLINE, stated.lines.getOrDefault("entries", 0), 0));
    }

    /** Opens a folder; one without the files of a whole export is refused. */
    public static WholeFolder open(Path folder) {
        if (!Files.isRegularFile(folder.resolve(WholeExport.OUTLINE))) {
            throw new OpeningRefused(Problem.error("file", "whole.not-whole", folder.toString()));
        }
        return new WholeFolder(folder);
    }

    @Override
    public ChainOutline outline() {
        return outline;
    }

    @Override
    public Answer<PhotoFile> photo(PhotoFile stated) {
        return PhotoFiles.read(folder, stated);
    }

    @Override
    public Optional<ChainEntry> next() {
        Optional<WholeTable.Row> row = entries.peek();
        long number = row.map(WholeTable.Row::number).orElse(Long.MAX_VALUE);
        for (WholeTable table : tables) {
            table.peek().filter(left -> left.number() < number).ifPresent(left -> {
                Place place = left.row().place();
                throw table.refused(place.line().orElse(0), 0, "whole.without-entry", left.number());
            });
        }
        if (row.isEmpty()) {
            return Optional.empty();
        }
        entries.advance();
        List<ChainRow> rows = new ArrayList<>();
        tables.forEach(table -> rows.addAll(table.takeAll(number)));
        return Optional.of(new ChainEntry(number, row.get().row(), rows));
    }
}

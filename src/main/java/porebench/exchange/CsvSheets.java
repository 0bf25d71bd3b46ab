package porebench.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetLook;
import porebench.evidence.intake.SheetStyle;
import porebench.evidence.study.ValueRow;
import porebench.exchange.photo.PhotoFiles;
import porebench.exchange.schema.DataPackage;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.CsvRows;
import porebench.exchange.text.Findings;
import porebench.exchange.text.FirstRows;
import porebench.exchange.text.Heading;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RawFile;
import porebench.exchange.text.Table;
import porebench.exchange.text.ValueTable;
import porebench.exchange.text.Values;
import porebench.exchange.whole.WholeExport;
import porebench.exchange.whole.WholeFolder;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.ChainSource;
import porebench.port.DataTable;
import porebench.port.LabSheets;
import porebench.port.OpenBooks;
import porebench.port.OutputFile;
import porebench.port.OutputFolder;
import porebench.record.Equipment;
import porebench.record.Kept;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.PhotoFile;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/**
 * CSV files of lab records: UTF-8, a heading row, a decimal point, RFC 4180.
 *
 * <p>Any file can be read: what cannot be used comes back as problems, each with line and column. Source of the form: RFC
 * 4180 (recalled). Differences from the source: line ends may also be LF or CR, a byte-order mark is passed over, blank lines
 * are skipped, and columns are known by their names in any order.
 */
public final class CsvSheets implements LabSheets {
    /** So many bytes of a file are looked at first. */
    private static final int LOOKED_AT = 100_000;

    /** All formats, in the order in which their records may refer to another. */
    static final List<Format<? extends Kept>> FORMATS = SheetFormats.ALL;

    @Override
    public Sheet<MixDesign> mixDesigns(Path file) {
        return read(file, (name, bytes) -> one(name, bytes, SheetFormats.MIX_DESIGNS));
    }

    @Override
    public Sheet<Trial> trials(Path file) {
        return read(file, (name, bytes) -> one(name, bytes, SheetFormats.TRIALS));
    }

    @Override
    public Sheet<MeterCalibration> calibrations(Path file) {
        return read(file, (name, bytes) -> one(name, bytes, SheetFormats.CALIBRATIONS));
    }

    @Override
    public Sheet<Equipment> equipment(Path file) {
        return read(file, (name, bytes) -> one(name, bytes, SheetFormats.EQUIPMENT));
    }

    @Override
    public Sheet<Double> values(Path file) {
        return read(file, CsvSheets::values);
    }

    @Override
    public Sheet<ValueRow> table(Path file, List<String> factors) {
        return read(file, (name, bytes) -> table(name, bytes, factors));
    }

    @Override
    public Sheet<ValueRow> readings(Path file, String belongsTo) {
        return read(file, (name, bytes) -> readings(name, bytes, belongsTo));
    }

    @Override
    public Sheet<Kept> records(Path file, SheetStyle style, Progress progress) {
        Sheet<Kept> sheet = read(file, (name, bytes) -> records(name, bytes, style, progress));
        return PhotoFiles.beside(folderOf(file), sheet);
    }

    @Override
    public SheetLook look(Path file) {
        SheetLook nothing = new SheetLook(SheetStyle.DOCUMENTED, Map.of());
        try {
            if (OpenBooks.contains(file)) {
                return nothing;
            }
            try (InputStream stream = Files.newInputStream(file)) {
                byte[] bytes = stream.readNBytes(LOOKED_AT);
                return RawFile.refusal(bytes).isPresent()
                        ? nothing
                        : FirstRows.look(
                                bytes,
                                heading -> FORMATS.stream()
                                        .mapToLong(format -> heading.known(format.columns()))
                                        .max()
                                        .orElseThrow());
            }
        } catch (IOException | SecurityException unreadable) {
            return nothing;
        }
    }

    private static Path folderOf(Path file) {
        return Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    }

    @Override
    public Answer<PhotoFile> photo(Path file) {
        return isOpenBook(file)
                ? Answer.refused(List.of(Problem.error("file", "csv.lab-book", file.toString())))
                : PhotoFiles.read(file);
    }

    @Override
    public List<Path> writePhotos(LabBook book, List<PhotoFile> photos, OutputFolder folder) {
        return Export.writePhotos(book, photos, folder);
    }

    @Override
    public List<Path> export(LabBook book, OutputFolder folder, Progress progress) {
        return Export.write(book, folder, progress);
    }

    @Override
    public List<Path> exportWhole(LabBook book, OutputFolder folder, Progress progress) {
        return WholeExport.write(book, folder, progress);
    }

    @Override
    public ChainSource readWhole(Path folder) {
        return WholeFolder.open(folder);
    }

    @Override
    public Map<String, String> schemas() {
        return Schemas.all();
    }

    @Override
    public void writeTrials(OutputFile file, List<Trial> trials) {
        Export.write(SheetFormats.TRIALS, trials, file);
    }

    @Override
    public void writeTable(OutputFile file, DataTable table) {
        Export.write(table, file);
    }

    private static <T> Sheet<T> read(Path file, BiFunction<String, byte[], Sheet<T>> reader) {
        String name = Optional.ofNullable(file.getFileName()).orElse(file).toString();
        if (name.endsWith(DataPackage.FILE)) {
            return passedOver(name);
        }
        if (isOpenBook(file)) {
            return refused(name, "csv.lab-book", file.toString());
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return reader.apply(name, stream.readNBytes(RawFile.LARGEST + 1));
        } catch (NoSuchFileException absent) {
            return refused(name, "csv.file-missing", file.toString());
        } catch (IOException | SecurityException failure) {
            return refused(name, "csv.file-unreadable", file.toString(), String.valueOf(failure.getMessage()));
        }
    }

    /** What describes the files of an export holds no records, and often comes along with them. */
    private static <T> Sheet<T> passedOver(String name) {
        Findings findings = new Findings(name);
        findings.warning(0, 0, "", "csv.data-package");
        return new Sheet<>(name, List.of(), findings.all());
    }

    private static boolean isOpenBook(Path file) {
        try {
            return OpenBooks.contains(file);
        } catch (IOException gone) {
            // Reading it says so.
            return false;
        }
    }

    private static <T> Sheet<T> refused(String name, String code, Object... values) {
        Findings findings = new Findings(name);
        findings.error(0, 0, "", code, values);
        return new Sheet<>(name, List.of(), findings.all());
    }

    static Sheet<Double> values(String name, byte[] bytes) {
        return read(name, bytes, findings -> Values.read(new CsvRows(bytes, findings), findings));
    }

    static Sheet<ValueRow> table(String name, byte[] bytes, List<String> factors) {
        return read(name, bytes, findings -> ValueTable.read(new CsvRows(bytes, findings), factors, findings));
    }

    static Sheet<ValueRow> readings(String name, byte[] bytes, String belongsTo) {
        return read(
                name,
                bytes,
                findings -> ValueTable.readings(
                        new CsvRows(bytes, new Findings(name)), belongsTo, new CsvRows(bytes, findings), findings));
    }

    private static <T> Sheet<T> read(String name, byte[] bytes, Function<Findings, List<Sheet.Row<T>>> reading) {
        Optional<String> refusal = RawFile.refusal(bytes);
        if (refusal.isPresent()) {
            return refused(name, refusal.get(), RawFile.LARGEST / 1_000_000);
        }
        Findings findings = new Findings(name);
        List<Sheet.Row<T>> rows = reading.apply(findings);
        return new Sheet<>(name, rows, findings.all());
    }

    static <T extends Kept> Sheet<T> one(String name, byte[] bytes, Format<T> format) {
        return one(name, bytes, format, SheetStyle.DOCUMENTED, Progress.UNHEARD);
    }

    private static <T extends Kept> Sheet<T> one(
            String name, byte[] bytes, Format<T> format, SheetStyle style, Progress progress) {
        return read(name, bytes, findings -> {
            CsvRows rows = new CsvRows(bytes, findings, progress, style);
            return Heading.read(rows, findings)
                    .filter(heading -> isOfKind(heading, format, findings))
                    .map(heading -> read(rows, heading, format, findings))
                    .orElse(List.of());
        });
    }

    /**
     * Reads the rows of a file. Where one says that it comes from a training book, of records that do not know it of
     * themselves, no row of the file is taken for anything else.
     */
    private static <T extends Kept> List<Sheet.Row<T>> read(
            CsvRows rows, Heading heading, Format<T> format, Findings findings) {
        Table table = Table.of(rows, heading, format.columns(), findings);
        List<Sheet.Row<T>> good = format.read(table);
        if (!table.isMarked()) {
            return good;
        }
        findings.warning(heading.line(), 0, Headings.SIMULATED, "csv.simulated");
        return good.stream()
                .map(row -> new Sheet.Row<>(row.line(), row.value(), true))
                .toList();
    }

    static Sheet<Kept> records(String name, byte[] bytes) {
        return records(name, bytes, SheetStyle.DOCUMENTED, Progress.UNHEARD);
    }

    static Sheet<Kept> records(String name, byte[] bytes, SheetStyle style, Progress progress) {
        Optional<String> refusal = RawFile.refusal(bytes);
        if (refusal.isPresent()) {
            return refused(name, refusal.get(), RawFile.LARGEST / 1_000_000);
        }
        Findings findings = new Findings(name);
        CsvRows top = new CsvRows(bytes, findings, Progress.UNHEARD, style);
        Optional<Heading> heading = Heading.read(top, findings);
        if (heading.isEmpty()) {
            return new Sheet<>(name, List.of(), findings.all());
        }
        Format<? extends Kept> format = closest(heading.get());
        if (3 * heading.get().known(format.columns())
                < format.columns().needed().size()) {
            if (!noteSeparator(heading.get(), findings)) {
                findings.error(heading.get().line(), 0, "", "csv.kind-unknown", fileNames());
            }
            return new Sheet<>(name, List.of(), findings.all());
        }
        Sheet<? extends Kept> sheet = one(name, bytes, format, style, progress);
        List<Sheet.Row<Kept>> rows = sheet.rows().stream()
                .map(row -> new Sheet.Row<Kept>(row.line(), row.value(), row.simulated()))
                .toList();
        return new Sheet<>(name, rows, sheet.problems());
    }

    /** Returns the format that a heading means: one it has all columns of, else the one it has the largest share of. */
    private static Format<? extends Kept> closest(Heading heading) {
        Comparator<Format<? extends Kept>> byShare = Comparator.comparing(
                        (Format<? extends Kept> format) -> heading.hasAllOf(format.columns()))
                .thenComparing(format -> heading.known(format.columns()))
                .thenComparing(format -> -format.columns().needed().size());
        return FORMATS.stream().max(byShare).orElseThrow();
    }

    /** Notes a heading that cannot be meant for a format, rather than each of its missing columns. */
    private static boolean isOfKind(Heading heading, Format<?> format, Findings findings) {
        if (heading.known(format.columns()) >= 1) {
            if (heading.hasAllOf(format.columns())) {
                return true;
            }
            Format<?> other = closest(heading);
            if (other == format || !heading.hasAllOf(other.columns())) {
                return true;
            }
            findings.error(heading.line(), 0, "", "csv.other-kind", other.fileName(), format.fileName());
            return false;
        }
        if (noteSeparator(heading, findings)) {
            return false;
        }
        findings.error(
                heading.line(),
                0,
                "",
                "csv.heading-unknown",
                String.join(",", format.columns().needed()));
        return false;
    }

    private static boolean noteSeparator(Heading heading, Findings findings) {
        Optional<String> separator = FORMATS.stream()
                .flatMap(format -> heading.otherSeparator(format.columns()).stream())
                .findFirst();
        separator
                .map(symbol -> symbol.equals("\t") ? "tab" : symbol)
                .ifPresent(symbol -> findings.error(heading.line(), 0, "", "csv.separator", symbol));
        return separator.isPresent();
    }

    private static String fileNames() {
        return String.join(", ", FORMATS.stream().map(Format::fileName).toList());
    }
}

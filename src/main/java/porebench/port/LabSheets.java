package porebench.port;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetLook;
import porebench.evidence.intake.SheetStyle;
import porebench.evidence.study.ValueRow;
import porebench.method.Answer;
import porebench.record.Equipment;
import porebench.record.Kept;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.PhotoFile;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/**
 * CSV in and out. Reading never fails on bad content: it gives the good rows and all problems, with line and column.
 */
public interface LabSheets {
    /** Reads mix designs. */
    Sheet<MixDesign> mixDesigns(Path file);

    /** Reads trials; a row that names no determination belongs to one named after its mix. */
    Sheet<Trial> trials(Path file);

    /** Reads calibrations of meters. */
    Sheet<MeterCalibration> calibrations(Path file);

    /** Reads the equipment of a laboratory. */
    Sheet<Equipment> equipment(Path file);

    /** Reads numbers, one a line, a first line that is no number being their heading. */
    Sheet<Double> values(Path file);

    /**
     * Reads a table of numbers, one a row in the column {@code value}, and what each belongs to in the other columns.
     *
     * @param factors the columns that must be there besides; none means all that are there, from left to right
     */
    Sheet<ValueRow> table(Path file, List<String> factors);

    /**
     * Reads readings, one a row in the column {@code value}; a file of one column without a heading is a list of them.
     *
     * @param belongsTo the column that may say beside each what it belongs to; it is left out of a row where the file is without it
     */
    Sheet<ValueRow> readings(Path file, String belongsTo);

    /** Looks at the first rows of a file; one that cannot be read seems to be written as documented, and reading it says why. */
    SheetLook look(Path file);

    /**
     * Reads a file of any kind of record, known by its heading, and says how far it is.
     *
     * @param style how the file is written, as a person says
     */
    Sheet<Kept> records(Path file, SheetStyle style, Progress progress);

    /** Reads a file of any kind of record that is written as documented, and says how far it is. */
    default Sheet<Kept> records(Path file, Progress progress) {
        return records(file, SheetStyle.DOCUMENTED, progress);
    }

    /** Reads the photo of a sheet; refused when it cannot be read, is too large or no picture of a kind that is kept. */
    Answer<PhotoFile> photo(Path file);

    /**
     * Writes photos into a folder, each under the name of its file.
     *
     * @param book holds their bytes
     * @throws OutputRefused if one of the files may not be written; none is then
     */
    List<Path> writePhotos(LabBook book, List<PhotoFile> photos, OutputFolder folder);

    /** Reads a file of any kind of record while nobody listens. */
    default Sheet<Kept> records(Path file) {
        return records(file, Progress.UNHEARD);
    }

    /**
     * Writes every kind of record of a lab book into a folder, one file a kind, and returns the files.
     *
     * @param progress hears how far it is; where it ends the work, no file is written
     * @throws OutputRefused if one of the files may not be written; none is then
     */
    List<Path> export(LabBook book, OutputFolder folder, Progress progress);

    /** Writes every kind of record of a lab book into a folder while nobody listens. */
    default List<Path> export(LabBook book, OutputFolder folder) {
        return export(book, folder, Progress.UNHEARD);
    }

    /**
     * Writes a whole lab book into a folder, all versions of all records with who, when and why and every hash, one file a
     * table, and returns the files. What {@link #readWhole} gives of them is the same lab book.
     *
     * @param progress hears how far it is; where it ends the work, no file is written
     * @throws OutputRefused if one of the files may not be written; none is then
     */
    List<Path> exportWhole(LabBook book, OutputFolder folder, Progress progress);

    /** Writes a whole lab book into a folder while nobody listens. */
    default List<Path> exportWhole(LabBook book, OutputFolder folder) {
        return exportWhole(book, folder, Progress.UNHEARD);
    }

    /**
     * Reads what {@link #exportWhole} wrote.
     *
     * @throws OpeningRefused with the place, if the folder holds no such files or they cannot be read
     */
    ChainSource readWhole(Path folder);

    /** Returns what programs are told of the files, by the names of the files that say it: a table schema of each kind. */
    Map<String, String> schemas();

    /**
     * Writes a trial sheet, whole or not at all.
     *
     * @throws OutputRefused if nothing may be written there
     */
    void writeTrials(OutputFile file, List<Trial> trials);

    /**
     * Writes figures under their heading, whole or not at all.
     *
     * @throws OutputRefused if nothing may be written there
     */
    void writeTable(OutputFile file, DataTable table);
}

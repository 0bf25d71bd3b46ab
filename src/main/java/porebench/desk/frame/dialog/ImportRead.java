package porebench.desk.frame.dialog;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import porebench.desk.SheetImport;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetLook;
import porebench.evidence.intake.SheetStyle;
import porebench.port.LabSheets;
import porebench.record.Kept;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/**
 * Some files as they were read for one import; nothing of them is kept yet.
 *
 * @param files the files, in the order in which they were chosen
 * @param otherwise those that seem to be written in another way than is documented, with a first look at them
 * @param style how those were read; all others are read as documented
 * @param incoming what all of them would bring
 */
public record ImportRead(List<Path> files, Map<Path, SheetLook> otherwise, SheetStyle style, ImportModel incoming) {
    public ImportRead {
        files = List.copyOf(files);
    }

    /**
     * Reads files and checks them together against the lab book; beside the event thread.
     *
     * @param style how those files are read that seem to be written in another way than is documented, as a person says
     * @param taking what is taken of them
     * @param now the day and time at which they are to be kept
     * @param zone that of the laboratory
     * @param progress hears how far it is
     */
    public static ImportRead of(
            LabSheets sheets,
            LabBook book,
            List<Path> files,
            SheetStyle style,
            SheetImport.Taking taking,
            LocalDateTime now,
            ZoneId zone,
            Progress progress) {
        Map<Path, SheetLook> otherwise = new LinkedHashMap<>();
        List<Sheet<Kept>> read = new ArrayList<>();
        for (Path file : files) {
            SheetLook look = sheets.look(file);
            if (look.isOtherwise()) {
                otherwise.put(file, look);
            }
            read.add(taking.rows()
                    .apply(sheets.records(
                            file, (look.isOtherwise() ? style : SheetStyle.DOCUMENTED).in(zone), progress)));
        }
        return new ImportRead(
                files,
                otherwise,
                style,
                ImportModel.of(book, read, now, progress).keeping(taking.drafts()));
    }

    /** Returns the names of the files that seem to be written in another way. */
    String otherwiseNames() {
        return otherwise.keySet().stream().map(ImportModel::name).collect(Collectors.joining(", "));
    }
}

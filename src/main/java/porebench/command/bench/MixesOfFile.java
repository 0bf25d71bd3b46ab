package porebench.command.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.port.LabSheets;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/**
 * The mix designs of a file. What is wrong with one mix does not refuse a question about another, but is still said.
 *
 * @param file the file
 * @param sheet its usable mixes and its problems
 */
record MixesOfFile(Path file, Sheet<MixDesign> sheet) {
    static MixesOfFile read(LabSheets sheets, Path file) {
        return new MixesOfFile(file, sheets.mixDesigns(file));
    }

    /** Returns a mix, or adds the problem that it is not among the usable ones. */
    Optional<MixDesign> find(MixId id, String field, List<Problem> problems) {
        Optional<MixDesign> mix =
                sheet.values().stream().filter(design -> design.id().equals(id)).findFirst();
        if (mix.isEmpty()) {
            problems.add(Problem.error(field, "command.mix-not-in-file", id.text(), file.toString()));
        }
        return mix;
    }

    /** Returns the problems of the file followed by others. */
    List<Problem> with(List<Problem> others) {
        List<Problem> all = new ArrayList<>(sheet.problems());
        all.addAll(others);
        return all;
    }
}

package porebench.port;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import porebench.method.Problem;

/**
 * A folder into which several files are to be written together, and whether files that are there may be replaced. It is made
 * when it is not there.
 *
 * @param path where
 * @param replace whether files that are there may be replaced
 */
public record OutputFolder(Path path, boolean replace) {
    /** Returns a folder in which none of the files may be there yet. */
    public static OutputFolder fresh(Path path) {
        return new OutputFolder(path, false);
    }

    /** Returns a folder in which the files may be there, and are then replaced. */
    public static OutputFolder replacing(Path path) {
        return new OutputFolder(path, true);
    }

    /**
     * Writes some files: all of them are whole on the disk before the first takes its place.
     *
     * @param contents what is to stand in each, by the name of the file, in the order in which they are written
     * @return the files
     * @throws OutputRefused if one of them may not be written; none is then
     * @throws IOException if the file system fails
     */
    public List<Path> write(Map<String, OutputFile.Content> contents) throws IOException {
        OutputRefused.unlessNone(problems(contents.keySet()));
        List<Path> made = missingFolders();
        boolean done = false;
        try {
            Files.createDirectories(path);
            List<Path> files = writeIntoFolder(contents);
            done = true;
            return files;
        } finally {
            if (!done) {
                removeEmpty(made);
            }
        }
    }

    private static void removeEmpty(List<Path> made) throws IOException {
        for (Path folder : made) {
            try {
                Files.deleteIfExists(folder);
            } catch (DirectoryNotEmptyException usedMeanwhile) {
                return;
            }
        }
    }

    private List<Problem> problems(Iterable<String> names) {
        if (Files.exists(path) && !Files.isDirectory(path)) {
            return List.of(Problem.error("folder", "output.not-a-folder", path.toString()));
        }
        List<Problem> problems = new ArrayList<>();
        if (Files.exists(path)) {
            names.forEach(name -> problems.addAll(file(name).problems()));
        }
        return problems;
    }

    private OutputFile file(String name) {
        return new OutputFile(path.resolve(name), replace);
    }

    /** Returns the folders that have to be made, the innermost first. */
    private List<Path> missingFolders() {
        List<Path> missing = new ArrayList<>();
        for (Path folder = path.toAbsolutePath();
                folder != null && !Files.exists(folder);
                folder = folder.getParent()) {
            missing.add(folder);
        }
        return missing;
    }

    private List<Path> writeIntoFolder(Map<String, OutputFile.Content> contents) throws IOException {
        List<PreparedFile> prepared = new ArrayList<>();
        try {
            for (Map.Entry<String, OutputFile.Content> one : contents.entrySet()) {
                prepared.add(file(one.getKey()).prepare(one.getValue()));
            }
            OutputRefused.unlessNone(problems(contents.keySet()));
            for (PreparedFile each : prepared) {
                each.release();
            }
            return prepared.stream().map(PreparedFile::path).toList();
        } finally {
            for (PreparedFile each : prepared) {
                each.close();
            }
        }
    }
}

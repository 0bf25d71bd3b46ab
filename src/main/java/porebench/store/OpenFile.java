package porebench.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.store.file.Steps;

/**
 * A lab book's file as it was opened.
 *
 * @param name the lab book's name for people
 * @param identity which file it is; empty when nothing is written to it, and for one that has no name yet
 * @param warnings what is to be told about it
 * @param notWritable why nothing can be kept in it, if so
 * @param steps the schema steps this program knows
 */
record OpenFile(
        String name,
        Optional<FileIdentity> identity,
        List<Problem> warnings,
        Optional<Problem> notWritable,
        Steps steps) {
    OpenFile {
        warnings = List.copyOf(warnings);
    }

    /** Returns a file that only this program knows yet. */
    static OpenFile unnamed(Path named, Steps steps) {
        return new OpenFile(nameOf(named), Optional.empty(), List.of(), Optional.empty(), steps);
    }

    /** Returns what people call a file. */
    static String nameOf(Path file) {
        Path name = file.toAbsolutePath().getFileName();
        return name == null ? file.toString() : name.toString();
    }
}

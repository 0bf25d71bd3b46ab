package porebench.desk.study;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import porebench.desk.form.Days;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.KeptReadings;
import porebench.evidence.study.ValueRow;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.KeptStudy;
import porebench.record.KeptStudy.Layout;
import porebench.record.book.Version;

/**
 * Readings a study is made of: those of a file, or those of a study the lab book keeps.
 *
 * @param file the file; empty for a kept study
 * @param kept the kept study; empty for a file
 * @param sheet the readings
 * @param refused what keeps the readings from being kept, by the gate that an import has too
 */
record Opened(Optional<Path> file, Optional<Version<KeptStudy>> kept, Sheet<ValueRow> sheet, List<Problem> refused) {
    static Opened of(Path file, Layout layout, Sheet<ValueRow> sheet) {
        List<Problem> refused = KeptReadings.check(layout, sheet).stream()
                .filter(Problem::isError)
                .toList();
        return new Opened(Optional.of(file), Optional.empty(), sheet, refused);
    }

    static Opened of(Version<KeptStudy> kept) {
        return new Opened(Optional.empty(), Optional.of(kept), KeptReadings.sheet(kept.value()), List.of());
    }

    /** Returns whether the readings are those of the kept study of a name, in whatever version. */
    boolean isOf(String id) {
        return kept.filter(version -> version.value().recordId().equals(id)).isPresent();
    }

    /** Returns the name of the file the readings were read from, also of those that are kept; may be empty. */
    String fileName() {
        return kept.map(version -> version.value().fileName())
                .orElseGet(() -> file.map(path -> Objects.toString(path.getFileName(), ""))
                        .orElse(""));
    }

    /** Returns what the readings are called: the file, or the kept study with its day, who made it and the version. */
    String words(Texts texts) {
        return kept.map(version -> texts.get(
                        "kept.subject",
                        version.value().recordId(),
                        Days.show(version.value().madeOn()),
                        version.value().by(),
                        Integer.toString(version.number())))
                .orElseGet(this::fileName);
    }
}

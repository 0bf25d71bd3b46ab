package porebench.desk.study;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.method.Texts;
import porebench.record.KeptStudy;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.book.Namesakes;
import porebench.record.book.Version;

/** The studies that the lab book keeps, as of its last change; they are read beside the event thread. */
final class KeptStudies {
    private static final Comparator<Version<KeptStudy>> NEWEST_FIRST = Comparator.comparing(
                    (Version<KeptStudy> version) -> version.value().madeOn())
            .reversed()
            .thenComparing(version -> version.value().id());

    private final DeskModel desk;
    private final Texts texts;
    private final Runnable changed;
    private Consumer<Exception> failed = failure -> {};
    private Read read;
    private List<Object> seen = List.of();

    /** What was read at one moment. */
    private record Read(List<Version<KeptStudy>> studies, Namesakes names) {}

    /**
     * One of them to choose from.
     *
     * @param id its name
     * @param version its newest version
     * @param words what it is called in a list
     */
    record Choice(String id, int version, String words) {}

    KeptStudies(DeskModel desk, Texts texts, Runnable changed) {
        this.desk = desk;
        this.texts = texts;
        this.changed = changed;
        this.read = new Read(List.of(), desk.names());
    }

    /** Says who is told when the lab book could not be read. */
    void onFailure(Consumer<Exception> told) {
        failed = told;
    }

    /** Reads them anew if the lab book is another one, or somebody changed it. */
    void follow() {
        LabBook book = desk.book();
        List<Object> now =
                List.of(System.identityHashCode(book), desk.standing().upTo());
        if (now.equals(seen)) {
            return;
        }
        seen = now;
        desk.tools()
                .tasks()
                .run(
                        texts.get("kept.reading"),
                        () -> new Read(
                                book.latest(KeptStudy.class).stream()
                                        .sorted(NEWEST_FIRST)
                                        .toList(),
                                new Namesakes(book).knowing(RecordKind.STUDY)),
                        found -> take(now, found),
                        failure -> fail(now, failure));
    }

    private void take(List<Object> asOf, Read found) {
        if (asOf.equals(seen)) {
            read = found;
            changed.run();
        }
    }

    /** What failed is read anew at the next occasion. A lab book that was closed meanwhile has nothing to tell. */
    private void fail(List<Object> asOf, Exception failure) {
        if (asOf.equals(seen)) {
            seen = List.of();
            if (!(failure instanceof CancellationException)) {
                failed.accept(failure);
            }
        }
    }

    Namesakes names() {
        return read.names();
    }

    /** Returns the newest version of a study. */
    Optional<Version<KeptStudy>> find(String id) {
        return read.studies().stream()
                .filter(version -> version.value().recordId().equals(id))
                .findFirst();
    }

    /** Returns those of a layout, the newest day first. */
    List<Choice> of(KeptStudy.Layout layout) {
        return read.studies().stream()
                .filter(version -> version.value().layout() == layout)
                .map(version -> new Choice(version.value().recordId(), version.number(), words(version.value())))
                .toList();
    }

    private String words(KeptStudy study) {
        LocalDate day = study.madeOn();
        return study.title().isBlank()
                ? texts.get("kept.choice", Days.show(day), study.recordId())
                : texts.get("kept.choice-title", Days.show(day), study.recordId(), study.title());
    }
}

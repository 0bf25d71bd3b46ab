package porebench.desk.register;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.form.History;
import porebench.desk.form.Texts;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.Draft;
import porebench.record.Kept;
import porebench.record.Version;
import porebench.record.Wording;

/**
 * A register of one kind of record, and the draft of the record that is looked at.
 *
 * @param <T> the kind of record
 * @param <D> its draft as typed: immutable, with a meaningful {@code equals}
 */
abstract class RecordModel<T extends Kept, D> {
    private final DeskModel desk;
    private final Texts texts;
    private final Class<T> kind;
    private final History<D> history;
    private Optional<Version<T>> base = Optional.empty();
    private boolean triedSaving;
    private boolean begun;

    RecordModel(DeskModel desk, Texts texts, Class<T> kind, D blank) {
        this.desk = desk;
        this.texts = texts;
        this.kind = kind;
        this.history = new History<>(blank);
    }

    abstract D blank();

    abstract D draftOf(T record);

    /** Reads a draft; its problems stand under the fields of the form. */
    abstract Answer<T> read(D draft);

    /** Reads a draft and holds its texts, and a new one's name, against the rules of the lab book. */
    private Answer<T> judged() {
        Answer<T> answer = read(draft());
        if (answer.value().isEmpty()) {
            return answer;
        }
        T record = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(Wording.ofForm(record, base.map(Version::value), desk.names()));
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(record, problems);
    }

    /** Returns what a version says, each thing by its words. */
    abstract Map<String, String> said(T record);

    /** Returns what saving the draft would make untrue; empty when nothing. */
    Optional<String> effects() {
        return Optional.empty();
    }

    final DeskModel desk() {
        return desk;
    }

    final Texts texts() {
        return texts;
    }

    final History<D> history() {
        return history;
    }

    final D draft() {
        return history.draft();
    }

    /** Returns the newest version of every record, in the order of their ids. */
    final List<Version<T>> rows() {
        return desk.book().latest(kind);
    }

    /** Returns the version the draft corrects; empty for a new record. */
    final Optional<Version<T>> base() {
        return base;
    }

    final boolean isNew() {
        return base.isEmpty();
    }

    /** Shows a record; a draft before is dropped. */
    final void show(String recordId) {
        base = desk.book().latest(kind, recordId);
        triedSaving = false;
        begun = false;
        history.restart(base.map(version -> draftOf(version.value())).orElseGet(this::blank));
    }

    /** Begins a new record; a draft before is dropped. */
    final void begin() {
        base = Optional.empty();
        triedSaving = false;
        begun = true;
        history.restart(blank());
    }

    /** Drops the draft and shows what the lab book says. */
    final void dropDraft() {
        begun = false;
        triedSaving = false;
        if (base.isPresent()) {
            show(base.get().value().recordId());
        } else {
            history.restart(blank());
            follow();
        }
    }

    /**
     * Follows the lab book: with a draft it stays as it is, without one it shows the newest version, or the first record where
     * the one on view is not in the lab book.
     */
    final void follow() {
        if (history.isChanged()) {
            return;
        }
        Optional<Version<T>> newest =
                base.flatMap(known -> desk.book().latest(kind, known.value().recordId()));
        if (base.isPresent() && newest.isEmpty()) {
            base = Optional.empty();
            history.restart(blank());
        }
        if (!newest.equals(base)) {
            show(newest.orElseThrow().value().recordId());
        } else if (base.isEmpty() && !begun) {
            rows().stream().findFirst().ifPresent(first -> show(first.value().recordId()));
        }
    }

    /** Returns whether a new record is being entered. */
    final boolean isBegun() {
        return begun;
    }

    /** Returns what to say about the draft: of a new one that nobody tried to save not yet what is not filled in. */
    final List<Problem> problems() {
        return judged().problems().stream()
                .filter(problem -> triedSaving || !isNew() || !problem.code().equals("form.required"))
                .toList();
    }

    /** Notes that somebody wants to save; returns whether the draft can be. */
    final boolean trySaving() {
        triedSaving = true;
        return !Problem.anyError(judged().problems());
    }

    /**
     * Keeps the draft as a new version.
     *
     * @return why it was not kept; empty when it was
     */
    final List<Problem> save(String why) {
        T record = judged().value().orElseThrow();
        Draft kept = base.map(version -> Draft.correcting(version, record)).orElseGet(() -> Draft.of(record));
        List<Problem> problems = desk.keep(List.of(kept), why);
        if (problems.isEmpty()) {
            show(record.recordId());
        }
        return problems;
    }

    /** Returns all versions of the record on view, the newest first. */
    final List<Version<T>> versions() {
        List<Version<T>> versions = new ArrayList<>(
                base.map(version -> desk.book().history(kind, version.value().recordId()))
                        .orElse(List.of()));
        Collections.reverse(versions);
        return versions;
    }

    /** Returns what one version says differently from the one before, in words. */
    final List<String> changes(T before, T after) {
        Map<String, String> then = said(before);
        List<String> changes = new ArrayList<>();
        said(after).forEach((what, now) -> {
            String was = then.getOrDefault(what, "");
            if (!was.equals(now)) {
                changes.add(texts.get("version.change", what, orNothing(was), orNothing(now)));
            }
        });
        return changes;
    }

    private String orNothing(String said) {
        return said.isEmpty() ? texts.get("version.nothing") : said;
    }
}

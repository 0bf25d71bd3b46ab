package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.RecordDraft;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.id.MixId;

/**
 * A register of one kind of record, and the draft of the record that is looked at.
 *
 * @param <T> the kind of record
 */
abstract class RecordModel<T extends Kept> extends RecordDraft<T> {
    private final Class<T> kind;
    private final String what;
    private final Supplier<TypedDraft> blank;
    private boolean begun;

    /**
     * Makes the register.
     *
     * @param columns the columns of its records, the first of which is their name
     * @param what the word that leads the keys of its texts, such as {@code source}
     * @param blank gives the draft with which a new record begins
     */
    RecordModel(
            DeskModel desk, Texts texts, Class<T> kind, Columns<T> columns, String what, Supplier<TypedDraft> blank) {
        super(desk, texts, kind, columns);
        this.kind = kind;
        this.what = what;
        this.blank = blank;
        restart(Optional.empty(), blank.get());
    }

    @Override
    public String key(Column<?, ?> column) {
        return what + "." + column.field();
    }

    /** Returns the word that leads the keys of its texts. */
    final String what() {
        return what;
    }

    /** Returns what is said of the record on view besides its fields; blank where nothing is. */
    String note() {
        return "";
    }

    /** Notes what the form asks for beyond what every record must state. */
    void requireMore(DraftReader reader) {}

    /** Returns what else is wrong or doubtful about a record. */
    List<Problem> lookAt(T record) {
        return List.of();
    }

    final TypedDraft draftOf(T record) {
        TypedDraft kept = keptDraft(record);
        return turned().map(column -> inShownUnit(column, record, kept)).orElse(kept);
    }

    private TypedDraft keptDraft(T record) {
        return asTyped(TypedDraft.of(columns(), record, desk().tools().numbers()));
    }

    /** Returns what the form begins with from what is kept. */
    TypedDraft asTyped(TypedDraft kept) {
        return kept;
    }

    /** Returns the columns of the form, in their order. */
    List<Column<T, ?>> inForm() {
        return columns().all();
    }

    /** Returns why the draft is kept where the form says so; empty where it is asked for. */
    Optional<String> reasonTyped() {
        return Optional.empty();
    }

    /** Returns the column that is shown in the units of the screen, whatever unit it was kept in. */
    Optional<Column<?, ?>> turned() {
        return Optional.empty();
    }

    /** Returns a draft of a record with a column in the units of the screen. */
    TypedDraft inShownUnit(Column<?, ?> column, T record, TypedDraft kept) {
        return kept;
    }

    /** Returns a draft in which a quantity that nobody changed since it was shown is the one that is kept, digit for digit. */
    private TypedDraft asKept(TypedDraft draft) {
        if (turned().isEmpty() || base().isEmpty()) {
            return draft;
        }
        Column<?, ?> column = turned().get();
        T record = base().get().value();
        TypedDraft kept = keptDraft(record);
        TypedDraft shown = inShownUnit(column, record, kept);
        boolean isAsShown = shown.text(column).equals(draft.text(column))
                && shown.unit(column).equals(draft.unit(column));
        return isAsShown ? draft.with(column, kept.text(column)).withUnit(column, kept.unit(column)) : draft;
    }

    /** Returns a draft with the name of its record, where the form does not ask for it. */
    TypedDraft named(TypedDraft draft) {
        return draft;
    }

    /** Reads a draft; its problems stand under the fields of the form. */
    final Answer<T> read(TypedDraft draft) {
        TypedDraft named = named(asKept(draft));
        DraftReader reader = new DraftReader(named, desk().tools().numbers(), this::words);
        Optional<T> record = columns().read(reader);
        requireMore(reader);
        List<Problem> problems = new ArrayList<>(reader.problems());
        if (isNew() && find(named.text(columns().all().get(0)).strip()).isPresent()) {
            problems.add(alreadyThere(texts().get(what + ".word")));
        }
        if (record.isEmpty() || Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        problems.addAll(columns().check().apply(record.get()));
        lookAt(record.get()).stream()
                .filter(problem -> !problems.contains(problem))
                .forEach(problems::add);
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(record.get(), problems);
    }

    /** Reads a draft and holds its texts, and a new one's name, against the rules of the lab book. */
    private Answer<T> judged() {
        Answer<T> answer = read(draft());
        if (answer.value().isEmpty()) {
            return answer;
        }
        T record = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(wording(record));
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(record, problems);
    }

    /** Returns the mixes that use the record on view, as far as that is known. */
    List<MixId> usedBy() {
        return List.of();
    }

    /** Returns what saving the draft would make untrue; empty when nothing. */
    Optional<String> effects() {
        return Optional.empty();
    }

    /** Asks for the newest version of every record that is listed, in the order in which they are. */
    Question<List<Version<T>>> listed() {
        return new Question.Newest<>(kind);
    }

    /** Returns the newest version of every record that is listed. */
    final List<Version<T>> rows() {
        return desk().answer(listed()).orElse(List.of());
    }

    private Optional<Version<T>> find(String recordId) {
        return rows().stream()
                .filter(version -> version.value().recordId().equals(recordId))
                .findFirst();
    }

    @Override
    protected final TypedDraft typed(T record) {
        return draftOf(record);
    }

    private String nameOf(String recordId) {
        return what + "/" + recordId;
    }

    /** Shows a record, with the draft of it that was not saved; a draft before stays kept outside the lab book. */
    final void show(String recordId) {
        begun = false;
        Optional<Version<T>> found = find(recordId);
        if (found.isPresent()) {
            turnTo(nameOf(recordId), found, draftOf(found.get().value()));
        } else {
            showNone();
        }
    }

    /** Shows no record; a draft before stays kept outside the lab book. */
    final void showNone() {
        begun = false;
        turnAway();
        restart(Optional.empty(), blank.get());
    }

    /** Begins a new record, or goes on with one that was begun and not saved; a draft before stays kept outside the lab book. */
    final void begin() {
        begun = true;
        turnTo(nameOf(""), Optional.empty(), blank.get());
    }

    /** Drops the draft and shows what the lab book says. */
    final void dropDraft() {
        if (takeBack(texts().get("step.drop"))) {
            return;
        }
        Optional<Version<T>> of = base();
        giveUp(
                texts().get("step.drop"),
                () -> showWhatIsKept(of.map(version -> version.value().recordId())),
                () -> of.ifPresentOrElse(this::goBackTo, this::begin));
    }

    private void showWhatIsKept(Optional<String> recordId) {
        begun = false;
        forgetTyped();
        restart(Optional.empty(), blank.get());
        recordId.ifPresentOrElse(this::show, this::follow);
    }

    private void goBackTo(Version<T> version) {
        begun = false;
        turnTo(nameOf(version.value().recordId()), Optional.of(version), draftOf(version.value()));
    }

    /**
     * Follows the lab book: with a draft it stays as it is, without one it shows the newest version, or the first record where
     * the one on view is not in the lab book.
     */
    final void follow() {
        if (isOfAnotherBook()) {
            showNone();
        }
        if (history().isChanged()) {
            return;
        }
        Optional<Version<T>> newest = base().flatMap(known -> find(known.value().recordId()));
        if (base().isPresent() && newest.isEmpty()) {
            showNone();
        }
        if (!newest.equals(base())
                || newest.filter(same -> !draftOf(same.value()).equals(draft())).isPresent()) {
            show(newest.orElseThrow().value().recordId());
        } else if (base().isEmpty() && !begun) {
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
                .filter(problem -> isTried() || !isNew() || problem.kind() != Problem.Kind.NOT_YET)
                .toList();
    }

    /** Notes that somebody wants to save; returns whether the draft can be. */
    final boolean trySaving() {
        setTried();
        return !Problem.anyError(judged().problems());
    }

    /**
     * Keeps the draft as a new version.
     *
     * @param outcome hears why it was not kept; empty when it was
     */
    final void save(String why, Outcome outcome) {
        T record = judged().value().orElseThrow();
        desk().keep(List.of(kept(record)), why, outcome.first(() -> {
            forgetTyped();
            show(record.recordId());
        }));
    }

    /** Returns what one version says differently from the one before, in words. */
    List<String> changes(T before, T after) {
        return changes(columns().all(), draftOf(before), draftOf(after));
    }
}

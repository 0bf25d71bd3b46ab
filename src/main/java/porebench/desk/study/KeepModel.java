package porebench.desk.study;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.KeptDraft;
import porebench.desk.LiveDraft;
import porebench.desk.Question;
import porebench.desk.form.Days;
import porebench.desk.form.DraftModel;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.evidence.study.KeptReadings;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.KeptStudy;
import porebench.record.KeptStudy.Layout;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.book.Wording;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.StudyColumns;
import porebench.record.id.StudyId;

/** Keeping the study on view in the lab book, as a new one or as a correction of the one with its name. */
final class KeepModel extends DraftModel {
    static final String LEAD = "keep.";
    static final Column<KeptStudy, StudyId> ID = StudyColumns.ID.called(LEAD + "id");
    static final Column<KeptStudy, String> TITLE = StudyColumns.TITLE.called(LEAD + "title");
    static final Column<KeptStudy, LocalDate> MADE_ON = StudyColumns.MADE_ON.called(LEAD + "madeOn");
    static final Column<KeptStudy, String> BY = StudyColumns.BY.called(LEAD + "by");
    static final Column<KeptStudy, String> REMARKS = StudyColumns.REMARKS.called(LEAD + "remarks");
    /** What is typed of a study, in the order in which people meet it; the rest are its readings. */
    static final List<Column<KeptStudy, ?>> TYPED = List.of(ID, TITLE, MADE_ON, BY, REMARKS);

    private final StudyModel model;

    private final DeskModel desk;
    private final KeptStudies kept;
    private final LiveDraft live;
    private Optional<Layout> begun = Optional.empty();
    private Optional<Version<KeptStudy>> from = Optional.empty();
    private boolean tried;
    private boolean underWay;
    private Runnable whenEnded = () -> {};

    /** What became of it. */
    private record Done(List<Problem> refused, Optional<Version<KeptStudy>> version) {}

    KeepModel(StudyModel model, KeptStudies kept) {
        super(model.texts(), "", TypedDraft.BLANK);
        this.model = model;
        this.desk = model.desk();
        this.kept = kept;
        this.live = new LiveDraft(desk, history(), List.of(), this::asKept);
    }

    private KeptDraft asKept(TypedDraft typed) {
        return from.map(version -> new KeptDraft(version.value().recordId(), version.number(), typed))
                .orElseGet(() -> KeptDraft.ofNew(typed));
    }

    /** Returns the name under which is kept what is typed of the study on view. */
    private String place() {
        return "study/" + model.kind().name()
                + model.opened()
                        .flatMap(Opened::kept)
                        .map(version -> '\t' + version.value().recordId())
                        .orElse("");
    }

    /** Returns whether there are readings on view that can be kept: as an import would take them, however they are divided up. */
    boolean isPossible() {
        return desk.hasBook()
                && model.opened().filter(opened -> opened.refused().isEmpty()).isPresent();
    }

    /** Returns whether somebody is about to keep the study on view. */
    boolean isOpen() {
        return desk.hasBook()
                && begun.filter(model.kind()::equals).isPresent()
                && model.opened().isPresent();
    }

    boolean isUnderWay() {
        return underWay;
    }

    /**
     * Begins, or goes on with what was typed of the study and not saved; a study that is kept already begins with what is said of it.
     * The draft of another study stays kept outside the lab book.
     */
    void begin() {
        live.leave();
        begun = Optional.of(model.kind());
        begin(model.opened().flatMap(Opened::kept));
        String place = place();
        int number = from.map(Version::number).orElse(0);
        Optional<KeptDraft> older = live.find(place).filter(typed -> typed.version() != number);
        if (older.isEmpty()) {
            live.goOn(place);
        } else {
            desk.ask(
                    new Question.Versions<>(KeptStudy.class, older.get().recordId()),
                    all -> all.stream()
                            .filter(version -> version.number() == older.get().version())
                            .findFirst()
                            .ifPresent(version -> {
                                begin(Optional.of(version));
                                live.goOn(place);
                            }));
        }
    }

    private void begin(Optional<Version<KeptStudy>> corrected) {
        tried = false;
        from = corrected;
        history()
                .restart(from.map(version -> draftOf(version.value()))
                        .orElseGet(() -> TypedDraft.BLANK.with(BY, desk.person())));
    }

    /** Goes on with what was typed of the study on view and not saved, if anything was. */
    void goOn() {
        if (!isOpen() && isPossible() && live.find(place()).isPresent()) {
            begin();
        }
    }

    /** Shows the study again that somebody is about to keep, if another one is on view. */
    void turnBack() {
        if (!isOpen()) {
            begun.ifPresent(model::turnBackTo);
        }
    }

    /** Leaves the draft of the kind on view, unless it corrects the kept study of a name: its readings are going to be others. */
    void leaveFor(String id) {
        if (begun.filter(model.kind()::equals).isPresent()
                && from.filter(version -> version.value().recordId().equals(id)).isEmpty()) {
            leave();
        }
    }

    /** A correction of which nothing is typed yet begins anew with what somebody else said meanwhile. */
    void follow() {
        if (from.isPresent() && !history().isChanged() && isOpen()) {
            Optional<Version<KeptStudy>> now = model.opened().flatMap(Opened::kept);
            if (now.filter(version -> version.number() > from.get().number()).isPresent()) {
                begin();
            }
        }
    }

    /** Drops the draft. */
    void close() {
        live.forget();
        leave();
    }

    /** Leaves the draft, which stays kept outside the lab book. */
    void leave() {
        live.leave();
        begun = Optional.empty();
        from = Optional.empty();
        history().restart(TypedDraft.BLANK);
    }

    private TypedDraft draftOf(KeptStudy study) {
        return TypedDraft.of(
                new Columns<>("", TYPED, any -> study, 1, any -> List.of()),
                study,
                desk.tools().numbers());
    }

    /**
     * Returns the study with the name that is typed, of which the draft is a correction; empty for a new name. It is the version
     * the draft began with, so that the lab book refuses to undo what somebody else corrected since.
     */
    Optional<Version<KeptStudy>> base() {
        String id = draft().text(ID).strip();
        return from.filter(version -> version.value().recordId().equals(id)).or(() -> kept.find(id));
    }

    private Answer<KeptStudy> read() {
        DraftReader reader = new DraftReader(draft(), desk.tools().numbers(), this::words);
        reader.require(BY);
        Optional<StudyId> id = ID.read(reader);
        Optional<LocalDate> day = MADE_ON.read(reader);
        List<Problem> problems = new ArrayList<>(reader.problems());
        day.flatMap(typed -> Days.checkYear(MADE_ON.field(), typed)).ifPresent(problems::add);
        Optional<Opened> opened = model.opened();
        if (Problem.anyError(problems) || id.isEmpty() || day.isEmpty() || opened.isEmpty()) {
            return Answer.refused(problems);
        }
        problems.addAll(opened.get().refused());
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        KeptStudy study = new KeptStudy(
                id.get(),
                model.kind(),
                draft().text(TITLE).strip(),
                day.get(),
                draft().text(BY),
                opened.get().fileName(),
                KeptReadings.layers(opened.get().sheet()),
                KeptReadings.readings(opened.get().sheet()),
                draft().text(REMARKS).strip());
        List<Problem> found = new ArrayList<>(Wording.ofForm(study, base().map(Version::value), kept.names()));
        base().flatMap(before -> against(before, study)).ifPresent(found::add);
        found.forEach(problem -> problems.add(problem.under(LEAD + problem.field())));
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(study, problems);
    }

    private static Optional<Problem> against(Version<KeptStudy> before, KeptStudy study) {
        if (before.value().layout() != study.layout()) {
            return Optional.of(Problem.error(
                    "id",
                    "study.name-of-another-kind",
                    study.recordId(),
                    before.value().layout().word(),
                    study.layout().word()));
        }
        return before.value().equals(study)
                ? Optional.of(Problem.error("id", "study.kept-already", study.recordId(), before.number())
                        .of(Problem.Kind.NOT_YET))
                : Optional.empty();
    }

    /** Returns what is wrong or doubtful; not yet what is only not filled in. */
    List<Problem> problems() {
        return read().problems().stream()
                .filter(problem -> tried || !problem.kind().isNotYet())
                .toList();
    }

    /** Notes that somebody wants to keep it; returns whether it can be. */
    boolean tryKeeping() {
        tried = true;
        return isOpen() && !underWay && read().value().isPresent();
    }

    /**
     * Keeps the study and shows it as it is kept.
     *
     * @param why the reason
     * @param done takes why it was not kept; empty when it was
     * @param failed takes what went wrong with the lab book
     */
    void keep(String why, Consumer<List<Problem>> done, Consumer<Exception> failed) {
        KeptStudy study = read().value().orElseThrow();
        Draft draft = base().map(version -> Draft.correcting(version, study)).orElseGet(() -> Draft.of(study));
        LabBook book = desk.book();
        String who = desk.person();
        underWay = true;
        desk.tools()
                .tasks()
                .await(
                        texts().get("keep.doing"),
                        progress -> {
                            List<Problem> refused = book.keep(List.of(draft), who, why, progress);
                            return new Done(
                                    refused,
                                    refused.isEmpty()
                                            ? book.latest(KeptStudy.class, study.recordId())
                                            : Optional.empty());
                        },
                        result -> {
                            underWay = false;
                            result.version().ifPresent(version -> show(version, book));
                            end();
                            done.accept(result.refused());
                        },
                        failure -> {
                            underWay = false;
                            end();
                            failed.accept(failure);
                        });
    }

    private void show(Version<KeptStudy> version, LabBook of) {
        close();
        if (of == desk.book()) {
            desk.refresh();
            model.show(version);
        }
    }

    private void end() {
        Runnable told = whenEnded;
        whenEnded = () -> {};
        told.run();
    }

    /** Says who hears once the keeping that is under way has come to its end, good or bad. */
    void whenEnded(Runnable told) {
        whenEnded = told;
    }

    @Override
    public Optional<LocalDate> today() {
        return Optional.of(desk.tools().today());
    }
}

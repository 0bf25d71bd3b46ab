package porebench.desk.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.form.Days;
import porebench.desk.form.DraftModel;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.SourceMeasurement;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.book.Wording;
import porebench.record.column.Column;
import porebench.record.column.MeasurementColumns;
import porebench.record.id.SourceId;

/** A measurement of the source on view that is entered or corrected, without its window; what a file may not say it may not either. */
final class MeasurementModel extends DraftModel {
    static final List<Column<SourceMeasurement, ?>> TYPED = List.of(
            MeasurementColumns.TESTED_ON,
            MeasurementColumns.TESTED_BY,
            MeasurementColumns.LOT,
            MeasurementColumns.RELATIVE_DENSITY,
            MeasurementColumns.ABSORPTION,
            MeasurementColumns.RETAINED,
            MeasurementColumns.REMARKS);

    private final SourcesModel sources;
    private final DeskModel desk;
    private Optional<SourceId> of = Optional.empty();
    private Optional<Version<SourceMeasurement>> corrected = Optional.empty();
    private boolean tried;

    MeasurementModel(SourcesModel sources) {
        super(sources.texts(), "measured.", TypedDraft.BLANK);
        this.sources = sources;
        this.desk = sources.desk();
    }

    /** Turns to the source on view; what was begun of another one is dropped. */
    void follow() {
        Optional<SourceId> now = sources.base().map(version -> version.value().id());
        if (!now.equals(of)) {
            of = now;
            begin();
        }
    }

    /** Begins a new measurement, of today. */
    void begin() {
        tried = false;
        corrected = Optional.empty();
        history()
                .restart(TypedDraft.BLANK
                        .with(
                                MeasurementColumns.TESTED_ON,
                                Days.show(desk.tools().today()))
                        .with(MeasurementColumns.TESTED_BY, desk.person()));
    }

    /** Begins the correction of a measurement. */
    void correct(Version<SourceMeasurement> version) {
        tried = false;
        corrected = Optional.of(version);
        history()
                .restart(TypedDraft.of(
                        MeasurementColumns.ALL, version.value(), desk.tools().numbers()));
    }

    /** Returns the measurement that is being corrected; empty where a new one is entered. */
    Optional<SourceMeasurement> corrected() {
        return corrected.map(Version::value);
    }

    /** Returns what is wrong with what is typed; what is only missing once it was tried. */
    List<Problem> problems() {
        return of.isEmpty()
                ? List.of()
                : attempt().problems().stream()
                        .filter(problem -> tried || problem.kind() != Problem.Kind.NOT_YET)
                        .toList();
    }

    /** Returns whether it could be kept, apart from what is still to be typed. */
    boolean canKeep() {
        tried = true;
        return attempt().value().isPresent();
    }

    private Answer<SourceMeasurement> attempt() {
        TypedDraft whole = draft().with(
                        MeasurementColumns.SOURCE, of.map(SourceId::text).orElse(""))
                .with(
                        MeasurementColumns.ID,
                        corrected().map(SourceMeasurement::recordId).orElseGet(this::nextId));
        DraftReader reader = new DraftReader(whole, desk.tools().numbers(), this::words);
        Optional<SourceMeasurement> read = MeasurementColumns.ALL.read(reader);
        List<Problem> problems = new ArrayList<>(reader.problems());
        read.ifPresent(measured -> {
            problems.addAll(measured.check(desk.tools().today()));
            problems.addAll(corrected()
                    .map(before -> Wording.checkCorrection(before, measured))
                    .orElseGet(() -> Wording.check(measured)));
        });
        return read.isEmpty() || Problem.anyError(problems)
                ? Answer.refused(problems)
                : Answer.of(read.get(), problems);
    }

    /** Returns the first name of a measurement of the source that is free. */
    private String nextId() {
        List<String> taken = sources.measured().stream()
                .map(one -> one.measurement().value().recordId())
                .collect(Collectors.toList());
        String source = of.map(SourceId::text).orElse("");
        return IntStream.rangeClosed(taken.size() + 1, 2 * taken.size() + 1)
                .mapToObj(number -> source + "/m" + number)
                .filter(id -> !taken.contains(id))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Keeps the measurement, a correction as a new version of it.
     *
     * @param why why it is corrected; of a new one nobody is asked
     * @param outcome hears why it was not kept; empty when it was
     */
    void keep(String why, Outcome outcome) {
        tried = true;
        Answer<SourceMeasurement> answer = attempt();
        if (answer.value().isEmpty()) {
            outcome.take(answer.problems());
            return;
        }
        SourceMeasurement measured = answer.value().get();
        Draft draft =
                corrected.map(version -> Draft.correcting(version, measured)).orElseGet(() -> Draft.of(measured));
        desk.keep(List.of(draft), why, outcome.first(this::begin));
    }

    @Override
    public Optional<LocalDate> today() {
        return Optional.of(desk.tools().today());
    }
}

package porebench.desk.meter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.RecordDraft;
import porebench.desk.form.Days;
import porebench.desk.form.PartWords;
import porebench.desk.form.TypedDraft;
import porebench.evidence.MeterStory;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.MeterCalibration;
import porebench.record.book.Version;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;

/** The draft of a calibration, what it tells so far, what is wrong with it, and how it gets into the lab book. */
final class CalibrationModel extends RecordDraft<MeterCalibration> {
    private final TypedRows fills = new TypedRows(this, CalibrationColumns.FILLS, CalibrationColumns.OF_FILL, "fill");
    private final TypedRows points =
            new TypedRows(this, CalibrationColumns.POINTS, CalibrationColumns.OF_POINT, "point");
    private Optional<MeterStory> story = Optional.empty();
    private Optional<CalibrationReading> reading = Optional.empty();

    CalibrationModel(DeskModel desk, Texts texts) {
        super(desk, texts, MeterCalibration.class, CalibrationColumns.ALL);
        close();
        history().onChange(this::read);
    }

    private void read() {
        reading = story.map(known -> new CalibrationReader(
                                draft(),
                                without(known, base()),
                                desk().tools().numbers(),
                                this,
                                desk().tools().today())
                        .read())
                .map(this::againstTheBook);
    }

    private static MeterStory without(MeterStory story, Optional<Version<MeterCalibration>> base) {
        return MeterStory.of(
                story.meter(),
                story.calibrations().stream()
                        .map(one -> one.calibration())
                        .filter(version -> base.filter(own ->
                                        own.value().id().equals(version.value().id()))
                                .isEmpty())
                        .toList(),
                story.profile());
    }

    private CalibrationReading againstTheBook(CalibrationReading read) {
        List<Problem> problems = new ArrayList<>(read.problems());
        if (isNew() && isTaken(typedName())) {
            problems.add(alreadyThere(texts().get("record")));
        }
        read.calibration().ifPresent(made -> problems.addAll(wording(made)));
        return new CalibrationReading(
                Problem.anyError(problems) ? Optional.empty() : read.calibration(),
                read.results(),
                read.drift(),
                problems);
    }

    private boolean isTaken(String id) {
        boolean isOfMeter = story.map(MeterStory::calibrations).orElse(List.of()).stream()
                .anyMatch(one -> one.calibration().value().id().text().equals(id));
        return isOfMeter
                || desk().answer(new Question.One<>(MeterCalibration.class, id))
                        .flatMap(found -> found)
                        .isPresent();
    }

    /** Begins a new calibration of a meter, as of today by the person who works here. */
    void begin(MeterStory meter) {
        LocalDate today = desk().tools().today();
        story = Optional.of(meter);
        turnTo(
                nameOf(meter, ""),
                Optional.empty(),
                CalibrationFields.begun(desk().units())
                        .with(CalibrationColumns.ID, proposedId(meter, today))
                        .with(CalibrationColumns.CALIBRATED_ON, Days.show(today))
                        .with(CalibrationColumns.BY, desk().person()));
    }

    /** Begins the correction of a calibration. */
    void correct(MeterStory meter, Version<MeterCalibration> kept) {
        story = Optional.of(meter);
        turnTo(nameOf(meter, '\t' + kept.value().recordId()), Optional.of(kept), typed(kept.value()));
    }

    /** Goes on with what was typed of a meter's calibration and not saved, if anything was. */
    void goOn(MeterStory meter) {
        Optional<String> correction =
                desk().unsaved().names(nameOf(meter, "\t")).stream().findFirst();
        if (desk().unsaved().find(nameOf(meter, "")).isPresent()) {
            begin(meter);
        } else if (correction.isPresent()) {
            story = Optional.of(meter);
            turnTo(correction.get(), Optional.empty(), CalibrationFields.empty(desk().units()));
        }
    }

    private static String nameOf(MeterStory meter, String end) {
        return "calibration/" + meter.meter().value().recordId() + end;
    }

    @Override
    protected TypedDraft typed(MeterCalibration calibration) {
        return CalibrationFields.of(calibration, desk().tools().numbers(), desk().units());
    }

    /** Drops the draft. */
    void close() {
        forgetTyped();
        leave();
    }

    /** Leaves the draft, which stays kept outside the lab book. */
    void leave() {
        turnAway();
        story = Optional.empty();
        restart(Optional.empty(), CalibrationFields.empty(desk().units()));
    }

    /** Follows the lab book: the draft stays, and is held against the meter as it is now. */
    void follow(Optional<MeterStory> meter) {
        if (isOfAnotherBook()) {
            leave();
        }
        if (isOpen()) {
            story = meter.or(() -> story);
            followNewest();
            read();
        }
    }

    private String proposedId(MeterStory meter, LocalDate day) {
        String plain = meter.meter().value().id().text() + "/" + Days.show(day);
        String id = plain;
        for (int number = 2; isTaken(id); number++) {
            id = plain + "-" + number;
        }
        return id;
    }

    /** Takes over what is typed in a field; the id of a new calibration follows its date until somebody gives another. */
    @Override
    public void type(Column<?, ?> field, String text) {
        TypedDraft changed = draft().with(field, text);
        if (field == CalibrationColumns.CALIBRATED_ON && isNew() && story.isPresent()) {
            Optional<LocalDate> before = Days.parse(draft().text(CalibrationColumns.CALIBRATED_ON));
            Optional<LocalDate> after = Days.parse(text);
            boolean follows = before.filter(
                            day -> proposedId(story.get(), day).equals(draft().text(CalibrationColumns.ID)))
                    .isPresent();
            if (follows && after.isPresent()) {
                changed = changed.with(CalibrationColumns.ID, proposedId(story.get(), after.get()));
            }
        }
        update(words(field), changed);
    }

    @Override
    public String key(Column<?, ?> column) {
        return "calibration." + column.field();
    }

    @Override
    public void chooseUnit(Column<?, ?> column, String symbol) {
        update(words(column), draft().withUnit(column, symbol));
    }

    @Override
    public String unitName(Column<?, ?> column) {
        return texts().get("unit-of", words(column));
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return texts().get("reason." + symbol);
    }

    /** Returns the rows of the fills of the bowl. */
    TypedRows fills() {
        return fills;
    }

    /** Returns the rows of the points of the dial. */
    TypedRows points() {
        return points;
    }

    /** Returns how a cell of one of the tables is called. */
    String cellWords(int row, TypedDraft typed, Column<?, ?> cell) {
        return CalibrationColumns.OF_FILL.columns().all().contains(cell)
                ? texts().get("name.fill", row + 1, texts().get(fills.key(cell.field()) + ".plain"))
                : texts().get(points.key(cell.field()) + ".plain", row + 1);
    }

    @Override
    protected PartWords partWords(Column<?, ?> column) {
        return column == CalibrationColumns.FILLS
                ? fills.words(texts().get("section.fills"))
                : points.words(texts().get("section.points"));
    }

    boolean isOpen() {
        return story.isPresent();
    }

    Optional<MeterStory> story() {
        return story;
    }

    /** Returns what the draft says; empty while there is none. */
    Optional<CalibrationReading> reading() {
        return reading;
    }

    /** Returns the problems a person should see by now. */
    List<Problem> shownProblems() {
        return reading.map(CalibrationReading::problems).orElse(List.of()).stream()
                .filter(problem -> isTried() || !isNew() || !problem.kind().isNotYet())
                .toList();
    }

    /** Notes that somebody wants to save; returns whether the draft can be. */
    boolean trySaving() {
        setTried();
        return reading.flatMap(CalibrationReading::calibration).isPresent();
    }

    /** Returns how many errors kept a tried saving from being done; 0 when it was not tried. */
    int errorsInTheWay() {
        return errorsIn(shownProblems());
    }

    /**
     * Keeps the draft as a new calibration or as a new version of one.
     *
     * @param outcome hears why it was not kept; empty when it was, and the draft is left then
     */
    void save(String why, Outcome outcome) {
        MeterCalibration made = reading.flatMap(CalibrationReading::calibration).orElseThrow();
        desk().keep(List.of(kept(made)), why, outcome.first(this::close));
    }
}

package porebench.desk.meter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.chart.meter.BowlHistory;
import porebench.chart.meter.DialErrors;
import porebench.chart.meter.ElevationReadings;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.StandardAtmosphere;
import porebench.method.Texts;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.ImpliedChamber;
import porebench.method.meter.MeterState;
import porebench.record.MeterCalibration;
import porebench.record.book.Version;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** The meter that is looked at: its state today, its calibrations, and the one of them that is chosen. */
final class MeterModel {
    private final DeskModel desk;
    private final Texts texts;
    private final CalibrationWords words;
    private final MeasuredWords measuredWords;
    private final CalibrationModel entry;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<MeterStory> story = Optional.empty();
    private Optional<CalibrationId> chosen = Optional.empty();
    private String usedElevation = "";

    MeterModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.meter.meter", desk.tools().locale());
        this.words = new CalibrationWords(desk, texts);
        this.measuredWords = new MeasuredWords(desk, texts);
        this.entry = new CalibrationModel(desk, texts);
        entry.history().onChange(this::fire);
        follow();
        desk.onChange(this::follow);
    }

    /** Calls back after every change. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Looks at a meter. */
    void open(MeterId meter) {
        if (story.filter(known -> known.meter().value().id().equals(meter)).isEmpty()) {
            story = read(meter);
            chosen = Optional.empty();
            usedElevation = "";
        }
        fire();
    }

    private Optional<MeterStory> read(MeterId meter) {
        return desk.meters().stream()
                .filter(known -> known.meter().value().id().equals(meter))
                .findFirst();
    }

    private void follow() {
        story = story.flatMap(known -> read(known.meter().value().id()))
                .or(() -> meters().stream().findFirst().flatMap(this::read));
        entry.follow(story);
        fire();
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    CalibrationWords words() {
        return words;
    }

    CalibrationModel entry() {
        return entry;
    }

    /** Returns all meters of the lab book, by which to choose one. */
    List<MeterId> meters() {
        return desk.meters().stream().map(known -> known.meter().value().id()).toList();
    }

    /** Returns the meter that is looked at; empty while the lab book has none. */
    Optional<MeterStory> story() {
        return story;
    }

    private LocalDate today() {
        return desk.tools().today();
    }

    Optional<MeterState> state() {
        return story.map(known -> known.stateOn(today()));
    }

    /** Returns what meter it is: name, type, serial number. */
    String heading() {
        return story.map(known -> known.meter().value())
                .map(meter -> texts.get("heading", meter.id().text(), typeWords(meter.type())))
                .orElse("");
    }

    private String typeWords(MeterType type) {
        return texts.get(type == MeterType.A ? "type.A" : "type.B");
    }

    /** Returns the state with the day until which it holds, in a sentence. */
    String stateSentence() {
        return story.map(known -> {
                    String due = known.nextDue().map(Days::show).orElse("");
                    boolean isInPart = known.isCalibratedInPartOn(today());
                    return texts.get(
                            "state."
                                    + (isInPart
                                            ? "PART"
                                            : known.stateOn(today()).name()),
                            due);
                })
                .orElse("");
    }

    /** Returns what a person should look at today. */
    List<Problem> concerns() {
        return story.map(known -> known.toLookAtOn(today())).orElse(List.of());
    }

    /** Says the bowl volume in force and what it rests on. */
    List<String> bowlInForce() {
        return story.map(known -> known.bowlCalibrationOn(today())
                        .map(words::bowl)
                        .orElseGet(() -> List.of(texts.get(
                                "bowl.as-stated",
                                words.stated(known.meter().value().bowl())))))
                .orElse(List.of());
    }

    /** Says the dial or column in force and what the model makes of it. */
    List<String> meterInForce() {
        if (story.isEmpty()) {
            return List.of();
        }
        MeterStory known = story.get();
        if (known.meter().value().type() == MeterType.B) {
            return known.dialOn(today())
                    .map(dial -> words.dial(dial, lastDrift(known)))
                    .orElseGet(() -> List.of(texts.get("dial.never")));
        }
        return known.columnOn(today()).map(words::column).orElseGet(() -> List.of(texts.get("column.never")));
    }

    private static Optional<ImpliedChamber.Drift> lastDrift(MeterStory story) {
        return story.chamberChanges().stream().reduce((earlier, later) -> later).map(MeterStory.ChamberChange::drift);
    }

    Optional<BowlHistory> bowlPlot() {
        return story.flatMap(known -> StoryPlots.bowl(known, words.bowlUnit(), today()));
    }

    /** Returns the plot of the chosen calibration's dial, or of the dial in force where it has none. */
    Optional<DialErrors> dialPlot() {
        return chosen().flatMap(StoryPlots::dial)
                .or(() -> calibrations().stream()
                        .filter(one -> !one.calibration().value().calibratedOn().isAfter(today()))
                        .flatMap(one -> StoryPlots.dial(one).stream())
                        .findFirst());
    }

    Optional<DialCalibration> shownDial() {
        return chosen().flatMap(one -> CalibrationResults.of(one).dial())
                .or(() -> story.flatMap(known -> known.dialOn(today())));
    }

    Optional<ElevationReadings> elevationPlot() {
        return story.flatMap(
                known -> known.columnOn(today()).map(column -> StoryPlots.elevation(column, known.profile())));
    }

    String usedElevation() {
        return usedElevation;
    }

    /** Takes the elevation in the unit shown at which somebody wants to use a Type A meter. */
    void useAt(String elevation) {
        usedElevation = elevation;
        fire();
    }

    /** Says what a Type A meter reads where it is to be used; blank while nothing is typed or known. */
    String usedElevationSentence() {
        if (usedElevation.isBlank() || story.isEmpty()) {
            return "";
        }
        Optional<Double> metres = desk.tools()
                .numbers()
                .parse(usedElevation)
                .map(typed -> desk.units().elevation().of(typed.doubleValue()).metres())
                .filter(StandardAtmosphere::covers);
        if (metres.isEmpty()) {
            return texts.get(
                    "elevation.range",
                    words.height(StandardAtmosphere.LOWEST_METRES),
                    words.height(StandardAtmosphere.HIGHEST_METRES));
        }
        MeterStory known = story.get();
        return known.columnOn(today())
                .map(column -> words.elevation(column.elevationUse(metres.get(), known.profile())))
                .orElseGet(() -> texts.get("column.never"));
    }

    /** Returns the calibrations, the newest first. */
    List<JudgedCalibration> calibrations() {
        List<JudgedCalibration> newestFirst =
                new ArrayList<>(story.map(MeterStory::calibrations).orElse(List.of()));
        Collections.reverse(newestFirst);
        return newestFirst;
    }

    /** Returns the change of the implied chamber at a calibration since the dial check before it. */
    Optional<ImpliedChamber.Drift> driftAt(JudgedCalibration one) {
        CalibrationId id = one.calibration().value().id();
        return story.map(MeterStory::chamberChanges).orElse(List.of()).stream()
                .filter(change -> change.later().equals(id))
                .map(MeterStory.ChamberChange::drift)
                .findFirst();
    }

    /** Looks at one of the calibrations. */
    void choose(CalibrationId id) {
        chosen = Optional.of(id);
        fire();
    }

    /** Returns the calibration that is looked at, the newest one unless another was chosen. */
    Optional<JudgedCalibration> chosen() {
        List<JudgedCalibration> all = calibrations();
        return chosen.flatMap(id -> all.stream()
                        .filter(one -> one.calibration().value().id().equals(id))
                        .findFirst())
                .or(() -> all.stream().findFirst());
    }

    /** Says what was written down at a calibration. */
    List<String> measured(MeterCalibration calibration) {
        return measuredWords.of(calibration);
    }

    String reasonWords(MeterCalibration.Reason reason) {
        return texts.get("reason." + reason.symbol());
    }

    /** Returns who kept a version of a calibration, when and why. */
    String stampWords(Version<MeterCalibration> version) {
        return texts.get(
                "detail.stamp",
                Integer.toString(version.number()),
                Days.show(version.stamp().at(), desk.tools().zone()),
                version.stamp().who(),
                version.stamp().why());
    }

    /** Returns all versions of a calibration, the newest first. */
    List<Version<MeterCalibration>> versions(CalibrationId id) {
        return entry.versions(id.text());
    }

    /** Begins a new calibration of the meter. */
    void begin() {
        story.ifPresent(entry::begin);
    }

    /** Begins the correction of the calibration that is looked at. */
    void correctChosen() {
        story.ifPresent(known -> chosen().ifPresent(one -> entry.correct(known, one.calibration())));
    }

    /** Looks at the calibration that was just kept. */
    void lookAt(String id) {
        chosen = Optional.of(new CalibrationId(id));
        fire();
    }
}

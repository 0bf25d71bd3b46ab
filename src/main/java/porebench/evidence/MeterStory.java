package porebench.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCheck;
import porebench.method.meter.DialCurve;
import porebench.method.meter.ImpliedChamber;
import porebench.method.meter.Intervals;
import porebench.method.meter.MeterState;
import porebench.method.profile.Profiles;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.book.Belonging;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/**
 * Everything a lab book knows about one meter: its calibrations with what they tell, and how it stood on any day.
 *
 * @param meter the meter, in its newest version
 * @param profile whose limits and intervals hold
 * @param calibrations its calibrations and notes, the oldest first
 */
public record MeterStory(Version<Meter> meter, Profile profile, List<JudgedCalibration> calibrations) {
    private static final MathContext WRITTEN_BOWL = new MathContext(5, RoundingMode.HALF_EVEN);

    public MeterStory {
        calibrations = List.copyOf(calibrations);
    }

    /**
     * How the chamber that the dial checks imply changed from one calibration to the next.
     *
     * @param earlier the calibration before
     * @param later the calibration after
     * @param drift the change
     */
    public record ChamberChange(CalibrationId earlier, CalibrationId later, ImpliedChamber.Drift drift) {}

    /** Gathers what a lab book knows about one meter, judged under a profile; empty when it has no such meter. */
    public static Optional<MeterStory> of(LabBook book, MeterId meterId, Profile profile) {
        return book.latest(Meter.class, meterId.text())
                .map(meter -> of(meter, book.latestOf(Belonging.CALIBRATIONS_OF_METER, meterId.text()), profile));
    }

    /** Gathers what a lab book knows about every meter, judged under a profile, in the order of their ids. */
    public static List<MeterStory> ofAll(LabBook book, Profile profile) {
        List<Version<MeterCalibration>> all = book.latest(MeterCalibration.class);
        return book.latest(Meter.class).stream()
                .map(meter -> of(meter, all, profile))
                .toList();
    }

    /** Gathers what a lab book knows about every meter, under {@link #usualProfile}, in the order of their ids. */
    public static List<MeterStory> ofAll(LabBook book) {
        return ofAll(book, usualProfile(book));
    }

    /** Returns the profile of meters that belong to no mix: the laboratory's own copy of the default one, or that one. */
    public static Profile usualProfile(LabBook book) {
        return EvidenceReader.profileOf(book, Profiles.DEFAULT_ID);
    }

    /** Makes the story of a meter out of calibrations, of which those of other meters are passed over. */
    public static MeterStory of(Version<Meter> meter, List<Version<MeterCalibration>> calibrations, Profile profile) {
        List<Version<MeterCalibration>> own = calibrations.stream()
                .filter(version ->
                        version.value().meterId().equals(meter.value().id()))
                .sorted(Comparator.comparing((Version<MeterCalibration> version) ->
                                version.value().calibratedOn())
                        .thenComparing(version -> version.value().id()))
                .toList();
        List<JudgedCalibration> judged = new ArrayList<>();
        Volume bowl = meter.value().bowl().value();
        for (Version<MeterCalibration> calibration : own) {
            JudgedCalibration one = JudgedCalibration.of(
                    calibration, bowl, meter.value().divisionPercent().doubleValue(), profile);
            judged.add(one);
            bowl = one.bowl()
                    .flatMap(Answer::value)
                    .map(BowlCalibration::volume)
                    .orElse(bowl);
        }
        return new MeterStory(meter, profile, judged);
    }

    /** Returns whether the laboratory kept any calibration or note of the meter by a day. */
    public boolean isKeptOn(LocalDate day) {
        return calibrations.stream().anyMatch(one -> isBy(one, day));
    }

    /** Returns whether the meter may be trusted on a day, by what was known of it up to that day. */
    public MeterState stateOn(LocalDate day) {
        return Intervals.of(profile).stateOn(day, knownOn(day));
    }

    /** Returns whether of bowl and of dial or column one was calibrated by a day and the other never. */
    public boolean isCalibratedInPartOn(LocalDate day) {
        Intervals.Known known = knownOn(day);
        return known.meterCalibratedOn().isPresent() != known.bowlCalibratedOn().isPresent();
    }

    /** Returns the last day on which the newest calibration holds; empty when bowl, dial or column never were calibrated. */
    public Optional<LocalDate> nextDue() {
        return nextDueOn(LocalDate.MAX);
    }

    /** Returns the last day on which the calibration holds, by what was known up to a day. */
    public Optional<LocalDate> nextDueOn(LocalDate day) {
        return Intervals.of(profile).nextDue(knownOn(day));
    }

    private Intervals.Known knownOn(LocalDate day) {
        Intervals.Known known = Intervals.Known.NOTHING;
        boolean passesBowl = true;
        boolean passesMeter = true;
        for (JudgedCalibration one : calibrations) {
            if (!isBy(one, day)) {
                break;
            }
            MeterCalibration made = one.calibration().value();
            if (made.bowl().isPresent()) {
                known = known.withBowl(made.calibratedOn());
                passesBowl = one.passesBowl();
            }
            if (made.checksMeter()) {
                known = known.withMeter(made.calibratedOn());
                passesMeter = one.passesMeter();
            }
            if (made.isNote()) {
                known = made.reason() == MeterCalibration.Reason.PROJECT
                        ? known.withProject(made.calibratedOn())
                        : known.withRepair(made.calibratedOn());
            }
        }
        return known.withPassed(passesBowl && passesMeter);
    }

    /** Returns the bowl volume in force on a day: of the newest calibration by then, else as the register states it. */
    public Volume bowlOn(LocalDate day) {
        return bowlCalibrationOn(day)
                .map(BowlCalibration::volume)
                .orElseGet(() -> meter.value().bowl().value());
    }

    /**
     * Returns the meter as it was on a day: as the register states it, with the bowl volume in force then. The register's
     * digits stay while the volume found by calibration rounds to them; else that one is written, with five significant
     * digits in the register's unit.
     */
    public Meter meterOn(LocalDate day) {
        Meter stated = meter.value();
        Typed<Volume> bowl = stated.bowl();
        return bowlCalibrationOn(day)
                .map(calibration -> BigDecimal.valueOf(bowl.unit().in(calibration.volume())))
                .filter(found -> found.setScale(bowl.number().scale(), RoundingMode.HALF_EVEN)
                                .compareTo(bowl.number())
                        != 0)
                .map(found -> stated.withBowl(new Typed<>(found.round(WRITTEN_BOWL), bowl.unit())))
                .orElse(stated);
    }

    /** Returns the newest calibration of the bowl made by a day. */
    public Optional<BowlCalibration> bowlCalibrationOn(LocalDate day) {
        return newestBy(day, one -> one.bowl().flatMap(Answer::value));
    }

    /** Returns the newest dial check of a Type B meter made by a day. */
    public Optional<DialCalibration> dialOn(LocalDate day) {
        return newestBy(day, one -> one.dial().flatMap(Answer::value));
    }

    /** Returns the dial check in force on a day, as it was read. */
    public Optional<DialCheck> dialCheckOn(LocalDate day) {
        return newestBy(
                day,
                one -> one.dial()
                        .flatMap(Answer::value)
                        .flatMap(any -> one.calibration().value().dial()));
    }

    /** Returns the day of the dial check in force on a day. */
    public Optional<LocalDate> dialCheckedOn(LocalDate day) {
        return newestBy(
                day,
                one -> one.dial()
                        .flatMap(Answer::value)
                        .map(any -> one.calibration().value().calibratedOn()));
    }

    /** Returns whether any amount of water of the dial check in force on a day was read off as a share of the bowl. */
    public boolean isDialCheckedInSharesOn(LocalDate day) {
        return dialCheckOn(day).stream()
                .flatMap(check -> check.points().stream())
                .anyMatch(point -> point.amount().unit() == CheckAmount.Unit.PERCENT);
    }

    /** Returns the curve along which readings of a Type B meter are corrected on a day. */
    public Optional<DialCurve> dialCurveOn(LocalDate day) {
        return dialOn(day).map(DialCalibration::curve);
    }

    /** Returns the newest column check of a Type A meter made by a day. */
    public Optional<ColumnCalibration> columnOn(LocalDate day) {
        return newestBy(day, one -> one.column().flatMap(Answer::value));
    }

    private <T> Optional<T> newestBy(LocalDate day, Function<JudgedCalibration, Optional<T>> part) {
        return calibrations.stream()
                .filter(one -> isBy(one, day))
                .flatMap(one -> part.apply(one).stream())
                .reduce((earlier, later) -> later);
    }

    private static boolean isBy(JudgedCalibration one, LocalDate day) {
        return !one.calibration().value().calibratedOn().isAfter(day);
    }

    /** Returns how the implied chamber changed from each dial check to the next, the oldest first. */
    public List<ChamberChange> chamberChanges() {
        List<ChamberChange> changes = new ArrayList<>();
        Optional<JudgedCalibration> before = Optional.empty();
        for (JudgedCalibration one : calibrations) {
            Optional<ImpliedChamber> chamber = chamber(one);
            if (chamber.isEmpty()) {
                continue;
            }
            before.ifPresent(earlier -> changes.add(new ChamberChange(
                    earlier.calibration().value().id(),
                    one.calibration().value().id(),
                    chamber.get().since(chamber(earlier).orElseThrow(), profile))));
            before = Optional.of(one);
        }
        return List.copyOf(changes);
    }

    private static Optional<ImpliedChamber> chamber(JudgedCalibration one) {
        return one.dial().flatMap(Answer::value).flatMap(DialCalibration::chamber);
    }

    /** Returns what a person should look at on a day: state, newest calibrations, drift, and the stated bowl volume. */
    public List<Problem> toLookAtOn(LocalDate day) {
        return MeterConcerns.of(this, day);
    }
}

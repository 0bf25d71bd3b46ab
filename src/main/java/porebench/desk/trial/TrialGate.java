package porebench.desk.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Evidence;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.method.trial.TrialFactor;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Slack;
import porebench.quantity.Typed;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/**
 * What a new trial of the selected mix passes on its way into the lab book, wherever it is typed: the same reading, the same
 * judging and the same keeping as in the form of the Trials page, which has its own draft beside it.
 */
public final class TrialGate {
    private final DeskModel desk;
    private final DeterminationsModel determinations;
    private final Texts texts;
    private final BenchModel entry;
    private final StopModel stop;
    private TypedTrial read;

    TrialGate(DeskModel desk, DeterminationsModel determinations, Texts texts) {
        this.desk = desk;
        this.determinations = determinations;
        this.texts = texts;
        this.entry = new Apart(desk, determinations, texts);
        this.stop = new StopModel(desk, determinations, entry, texts);
        this.read = entry.read();
    }

    /** The form's rules on a draft of their own. */
    private static final class Apart extends BenchModel {
        Apart(DeskModel desk, DeterminationsModel determinations, Texts texts) {
            super(desk, determinations, texts);
        }

        @Override
        void startNew() {
            restart(Optional.empty(), fresh());
        }
    }

    /** Returns what a new trial of the selected mix begins with, its name the next that is free. */
    public TypedDraft fresh() {
        determinations.follow();
        return entry.fresh();
    }

    /** Reads and judges a draft of a new trial of the selected mix; what is asked from now on is about this one. */
    public void take(TypedDraft draft) {
        determinations.follow();
        entry.history().restart(draft);
        read = entry.read();
    }

    /** Returns whether there is an open determination that a new trial joins. */
    public boolean isOpen() {
        determinations.follow();
        return entry.determination().isPresent();
    }

    /** Returns the meters in service. */
    public List<Meter> meters() {
        return entry.meters();
    }

    /** Returns the meter that is chosen. */
    public Optional<Meter> meter() {
        return entry.meter();
    }

    /** Returns the type of meter, which decides what is read. */
    public MeterType type() {
        return entry.type();
    }

    /** Returns what is weighed and withdrawn for the chosen meter; empty when it cannot be computed. */
    public Optional<CorrectionSample> sample() {
        return entry.target();
    }

    /** Returns what is weighed for one trial, with the limits by the profile of the mix. */
    public Optional<WeighOut> weighOut() {
        return entry.target()
                .flatMap(sample -> desk.evidence().map(evidence -> WeighOut.of(sample, 1, 0, evidence.profile())));
    }

    /** Returns whether the mass of one aggregate is between its limits; so it is while either is not known. */
    public boolean isWithinLimits(Role role) {
        Optional<Mass> weighed = read.trial()
                .map(Trial::readings)
                .flatMap(readings -> role == Role.FINE ? readings.fine() : readings.coarse())
                .map(Typed::value);
        Optional<WeighOut> list = weighOut();
        if (weighed.isEmpty() || list.isEmpty()) {
            return true;
        }
        double kilograms = weighed.get().kilograms();
        return !Slack.isBelow(
                        kilograms, sum(list.get(), role, WeighOut.Line::lowest).kilograms())
                && !Slack.isAbove(
                        kilograms, sum(list.get(), role, WeighOut.Line::highest).kilograms());
    }

    private static Mass sum(WeighOut list, Role role, Function<WeighOut.Line, Mass> which) {
        return new Mass(list.lines().stream()
                .filter(line -> line.role() == role)
                .mapToDouble(line -> which.apply(line).kilograms())
                .sum());
    }

    /** Returns how long the mix design lets the aggregate soak, in minutes. */
    public Optional<BigDecimal> soakMinutes() {
        return desk.evidence().map(Evidence::mix).flatMap(mix -> mix.value().soakMinutes());
    }

    /** Returns the air expected of the concrete, in %, as the mix design states it. */
    public Optional<BigDecimal> targetAirPercent() {
        return desk.evidence()
                .map(evidence -> evidence.mix().value())
                .map(MixDesign::batch)
                .map(batch -> batch.targetAirPercent());
    }

    /** Returns the mass to weigh of one aggregate, and its least and greatest, which are rounded inward; in the draft's unit. */
    public Optional<Limits> limits(Role role) {
        MassUnit unit = entry.massUnit();
        Numbers numbers = desk.tools().numbers();
        return weighOut()
                .map(list -> new Limits(
                        show(sum(list, role, WeighOut.Line::each)),
                        Masses.limit(sum(list, role, WeighOut.Line::lowest), unit, numbers, RoundingMode.CEILING),
                        Masses.limit(sum(list, role, WeighOut.Line::highest), unit, numbers, RoundingMode.FLOOR)));
    }

    /**
     * What is weighed of one aggregate, in words.
     *
     * @param each the mass
     * @param lowest the least within the tolerance
     * @param highest the greatest within it
     */
    public record Limits(String each, String lowest, String highest) {}

    /** Returns a mass in the unit in which the draft states its masses, and in its decimals. */
    public String show(Mass mass) {
        return Masses.show(mass, entry.massUnit(), desk.tools().numbers());
    }

    /** Returns the unit in which the draft states its masses. */
    public MassUnit massUnit() {
        return entry.massUnit();
    }

    /** Returns the unit beside a field of the draft, as people write it; empty text where it has none. */
    public String unit(Column<Trial, ?> column) {
        if (column == TrialColumns.FINE || column == TrialColumns.COARSE) {
            return entry.massUnit().symbol();
        }
        return entry.unitWords(entry.draft().unit(column));
    }

    /** Returns everything wrong or doubtful about the draft that stands under one of its fields. */
    public List<Problem> problems(Column<Trial, ?> column) {
        return read.problems().stream()
                .filter(problem -> problem.field().equals(column.field()))
                .toList();
    }

    /** Returns what forbids keeping the draft. */
    public List<Problem> errors() {
        return read.errors();
    }

    /** Returns what makes it doubtful; it is then kept only with a reason. */
    public List<Problem> doubts() {
        return read.doubts();
    }

    /** Returns its factor; empty while anything measured is missing or refused. */
    public Optional<TrialFactor> figures() {
        return read.live();
    }

    /** Says whether the trials are enough with this one; empty where nothing can be said. */
    public Optional<String> nextWithThis() {
        return stop.withTyped(read.live());
    }

    /** Says whether the trials kept are enough; empty where none counts. */
    public Optional<String> next() {
        return stop.sentence();
    }

    /**
     * Keeps the draft as a trial in the person's name.
     *
     * @param keptBecause why it is kept in spite of its doubts; empty when it has none
     * @param outcome hears why nothing was kept; empty when it was
     */
    public void keep(Optional<String> keptBecause, Outcome outcome) {
        entry.keep(keptBecause, texts.get("why.entered"), outcome);
    }
}

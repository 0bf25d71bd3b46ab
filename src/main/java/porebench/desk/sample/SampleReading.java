package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.ColumnModel;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.evidence.Evidence;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.TodaysMoisture;
import porebench.method.sample.WeighOut;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.column.Column;

/** What follows from the selected mix and what is typed on the page. */
final class SampleReading {
    private static final int MOST_TRIALS = 20;
    private static final BigDecimal GREATEST_SPARE = BigDecimal.valueOf(200);

    private final Evidence evidence;
    private final ColumnModel form;
    private final Numbers numbers;
    private final DraftReader reader;
    private final List<Problem> problems = new ArrayList<>();
    private final Optional<Meter> meter;
    private final MeterType meterType;
    private final Optional<CorrectionSample> sample;
    private final Optional<WeighOut> weighOut;

    /**
     * Reads what is typed, and computes the sample from it.
     *
     * @param evidence of the mix
     * @param meters the meters as they are today
     * @param moistures the columns of its aggregates' moistures
     */
    SampleReading(
            Evidence evidence,
            List<Meter> meters,
            ColumnModel form,
            List<Column<SampleReading, BigDecimal>> moistures,
            Numbers numbers) {
        this.evidence = evidence;
        this.form = form;
        this.numbers = numbers;
        this.reader = new DraftReader(form.draft(), numbers, form::words);
        meter = SampleFields.METER
                .read(reader)
                .flatMap(
                        id -> meters.stream().filter(one -> one.id().equals(id)).findFirst());
        meterType = meter.map(Meter::type)
                .or(() -> SampleFields.METER_TYPE.read(reader))
                .orElseThrow();
        Optional<Volume> bowl = bowl();
        List<Optional<BigDecimal>> today =
                moistures.stream().map(column -> column.read(reader)).toList();
        boolean isRead = !Problem.anyError(reader.problems());
        Optional<Integer> trials = trials();
        Optional<BigDecimal> spare = spare();
        sample = bowl.flatMap(volume -> sample(volume, today, isRead));
        weighOut = sample.filter(computed -> trials.isPresent() && spare.isPresent())
                .map(computed -> WeighOut.of(
                        computed, trials.orElseThrow(), spare.orElseThrow().doubleValue(), evidence.profile()));
        problems.addAll(0, reader.problems());
    }

    private Optional<Volume> bowl() {
        if (meter.isEmpty()) {
            reader.require(SampleFields.BOWL);
        }
        Optional<Volume> bowl =
                meter.map(Meter::bowl).or(() -> SampleFields.BOWL.read(reader)).map(Typed::value);
        double leastLitres = evidence.profile().number(FigureName.LEAST_BOWL);
        bowl.map(volume -> volume.in(VolumeUnit.LITRE))
                .filter(litres -> litres > 0 && litres < leastLitres)
                .ifPresent(litres -> problems.add(Problem.warning(
                        SampleFields.BOWL.field(),
                        "trial.bowl-small",
                        litres,
                        leastLitres,
                        evidence.profile().title())));
        return bowl;
    }

    private Optional<Integer> trials() {
        String typed = form.draft().text(SampleFields.TRIALS);
        Optional<Integer> trials = numbers.parse(typed)
                .filter(number -> number.stripTrailingZeros().scale() <= 0)
                .filter(number -> number.signum() > 0 && number.compareTo(BigDecimal.valueOf(MOST_TRIALS)) <= 0)
                .map(BigDecimal::intValueExact);
        if (trials.isEmpty()) {
            problems.add(Problem.error(
                    SampleFields.TRIALS.field(),
                    "form.not-a-whole-number",
                    form.words(SampleFields.TRIALS),
                    typed.strip(),
                    "1",
                    Integer.toString(MOST_TRIALS)));
        }
        return trials;
    }

    private Optional<BigDecimal> spare() {
        Optional<BigDecimal> spare = SampleFields.SPARE.read(reader);
        if (spare.isPresent() && (spare.get().signum() < 0 || spare.get().compareTo(GREATEST_SPARE) > 0)) {
            problems.add(Problem.error(
                    SampleFields.SPARE.field(),
                    "form.out-of-range",
                    form.words(SampleFields.SPARE),
                    spare.get(),
                    BigDecimal.ZERO,
                    GREATEST_SPARE));
            return Optional.empty();
        }
        return spare;
    }

    private Optional<CorrectionSample> sample(Volume bowl, List<Optional<BigDecimal>> moistures, boolean isRead) {
        Answer<CorrectionSample> designed =
                CorrectionSample.of(evidence.mix().value().batch(), bowl);
        problems.addAll(designed.problems());
        if (designed.value().isEmpty()) {
            return Optional.empty();
        }
        Answer<CorrectionSample> today = TodaysMoisture.of(designed.value().get(), moistures);
        problems.addAll(today.problems());
        return isRead ? today.value() : Optional.empty();
    }

    /** Returns the correction sample by today's moisture; empty while a problem forbids one. */
    Optional<CorrectionSample> sample() {
        return sample;
    }

    /** Returns what to weigh and to fetch; empty while a problem forbids one. */
    Optional<WeighOut> weighOut() {
        return weighOut;
    }

    /** Returns the meter chosen from the register. */
    Optional<Meter> meter() {
        return meter;
    }

    /** Returns the type of meter. */
    MeterType meterType() {
        return meterType;
    }

    /** Returns everything wrong or doubtful. */
    List<Problem> problems() {
        return problems;
    }
}

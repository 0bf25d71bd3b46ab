package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.evidence.Evidence;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.TodaysMoisture;
import porebench.method.sample.WeighOut;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.MixDesign;

/** Reads what is typed on the correction sample page and computes the sample from it. */
final class SampleReader {
    private static final int MOST_TRIALS = 20;
    private static final BigDecimal GREATEST_SPARE = BigDecimal.valueOf(200);

    private final Evidence evidence;
    private final List<Meter> meters;
    private final SampleDraft draft;
    private final Numbers numbers;
    private final Texts texts;
    private final List<Problem> problems = new ArrayList<>();

    private SampleReader(Evidence evidence, List<Meter> meters, SampleDraft draft, Numbers numbers, Texts texts) {
        this.evidence = evidence;
        this.meters = meters;
        this.draft = draft;
        this.numbers = numbers;
        this.texts = texts;
    }

    /** Reads a draft for the mix of some evidence, on one of the meters as they are today. */
    static SampleReading read(Evidence evidence, List<Meter> meters, SampleDraft draft, Numbers numbers, Texts texts) {
        return new SampleReader(evidence, meters, draft, numbers, texts).read();
    }

    private SampleReading read() {
        Optional<Meter> meter = draft.meter()
                .flatMap(
                        id -> meters.stream().filter(one -> one.id().equals(id)).findFirst());
        Optional<Volume> bowl = bowl(meter);
        List<Optional<BigDecimal>> moistures = moistures();
        boolean isRead = !Problem.anyError(problems);
        Optional<Integer> trials = trials();
        Optional<BigDecimal> spare = spare();
        Optional<CorrectionSample> sample = bowl.flatMap(volume -> sample(volume, moistures, isRead));
        Profile profile = evidence.profile();
        Optional<WeighOut> weighOut = sample.filter(computed -> trials.isPresent() && spare.isPresent())
                .map(computed -> WeighOut.of(
                        computed, trials.orElseThrow(), spare.orElseThrow().doubleValue(), profile));
        MeterType type = meter.map(Meter::type).orElse(draft.meterType());
        return new SampleReading(sample, weighOut, meter, type, problems);
    }

    private Optional<Volume> bowl(Optional<Meter> meter) {
        String name = texts.get("name.bowl");
        Optional<Volume> bowl = meter.map(chosen -> chosen.bowl().value());
        if (bowl.isEmpty()) {
            if (draft.bowl().isBlank()) {
                problems.add(Problem.missing("bowl", name));
                return Optional.empty();
            }
            bowl = number("bowl", name, draft.bowl()).map(number -> new Typed<>(number, draft.bowlUnit()).value());
        }
        double leastLitres = evidence.profile().number(FigureName.LEAST_BOWL);
        bowl.map(volume -> volume.in(VolumeUnit.LITRE))
                .filter(litres -> litres > 0 && litres < leastLitres)
                .ifPresent(litres -> problems.add(Problem.warning(
                        "bowl",
                        "trial.bowl-small",
                        litres,
                        leastLitres,
                        evidence.profile().title())));
        return bowl;
    }

    private Optional<Integer> trials() {
        String name = texts.get("name.trials");
        Optional<Integer> trials = numbers.parse(draft.trials())
                .filter(number -> number.stripTrailingZeros().scale() <= 0)
                .filter(number -> number.signum() > 0 && number.compareTo(BigDecimal.valueOf(MOST_TRIALS)) <= 0)
                .map(BigDecimal::intValueExact);
        if (trials.isEmpty()) {
            problems.add(Problem.error(
                    "trials",
                    "form.not-a-whole-number",
                    name,
                    draft.trials().strip(),
                    "1",
                    Integer.toString(MOST_TRIALS)));
        }
        return trials;
    }

    private Optional<BigDecimal> spare() {
        if (draft.spare().isBlank()) {
            return Optional.of(BigDecimal.ZERO);
        }
        String name = texts.get("name.spare");
        Optional<BigDecimal> spare = number("spare", name, draft.spare());
        if (spare.isPresent() && (spare.get().signum() < 0 || spare.get().compareTo(GREATEST_SPARE) > 0)) {
            problems.add(
                    Problem.error("spare", "form.out-of-range", name, spare.get(), BigDecimal.ZERO, GREATEST_SPARE));
            return Optional.empty();
        }
        return spare;
    }

    private List<Optional<BigDecimal>> moistures() {
        MixDesign mix = evidence.mix().value();
        List<Optional<BigDecimal>> moistures = new ArrayList<>();
        for (int index = 0; index < draft.moistures().size(); index++) {
            String typed = draft.moistures().get(index);
            String name = texts.get("name.moisture", mix.aggregates().get(index).name());
            moistures.add(typed.isBlank() ? Optional.empty() : number("moisture." + index, name, typed));
        }
        return moistures;
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

    private Optional<BigDecimal> number(String field, String name, String typed) {
        Optional<BigDecimal> number = numbers.parse(typed);
        if (number.isEmpty()) {
            problems.add(Problem.notANumber(field, name, typed.strip()));
        }
        return number;
    }
}

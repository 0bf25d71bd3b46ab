package porebench.desk.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.desk.Bowl;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.desk.trial.TrialGate;
import porebench.method.Digits;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.method.trial.TrialFactor;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** Says what stands on the screen of the bench view. */
final class BenchWords {
    private static final int FACTOR_DECIMALS = Digits.AIR;
    private static final int SECONDS = 60;
    private static final int BOWL_DECIMALS = 4;

    /** Strokes of the rod for one layer of a sample that is put in by layers (recalled). */
    private static final String RODS = "25";

    private static final Set<BenchStep> NOTHING_LARGE =
            Set.of(BenchStep.FOAM, BenchStep.COVER, BenchStep.FILL, BenchStep.ZERO, BenchStep.PUMP);

    private final BowlsModel model;
    private final Texts texts;
    private final TrialGate gate;
    private final Numbers numbers;

    BenchWords(BowlsModel model) {
        this.model = model;
        this.texts = model.texts();
        this.gate = model.gate();
        this.numbers = model.desk().tools().numbers();
    }

    /** The largest words of a screen. */
    private record Big(String label, String digits, String unit, boolean isTyped) {
        static final Big NOTHING = new Big("", "", "", false);
    }

    /** Returns a span as minutes and seconds. */
    static String clock(Duration span) {
        long seconds = Math.abs(span.toSeconds());
        return String.format(Locale.ROOT, "%d:%02d", seconds / SECONDS, seconds % SECONDS);
    }

    /** Returns a factor as it is shown while it is not rounded by its profile; a sign of nothing where there is none. */
    static String factor(BowlsModel model, Optional<TrialFactor> figures) {
        OptionalDouble factor = figures.map(TrialFactor::factorPercent).orElse(OptionalDouble.empty());
        return factor.isPresent()
                ? model.desk().tools().numbers().show(factor.getAsDouble(), FACTOR_DECIMALS)
                : model.texts().get("nothing");
    }

    BenchScreen screen() {
        if (model.saved().isPresent()) {
            return kept(model.saved().get());
        }
        if (model.current().isEmpty() || !model.isReady()) {
            String title = model.current()
                    .map(bowl -> texts.get("turning", bowl.mix().text()))
                    .orElseGet(() -> texts.get("no-bowl"));
            return screen("", title, Big.NOTHING, "", "", "", texts.get("keys.none"));
        }
        Bowl bowl = model.current().get();
        BenchStep step = model.step();
        return screen(
                place(step),
                texts.get("title." + step.name()),
                big(bowl, step),
                limits(step),
                how(bowl, step),
                caution(step),
                keys(step));
    }

    private BenchScreen screen(
            String step, String title, Big big, String limits, String how, String caution, String keys) {
        boolean isResult = model.isReady()
                && model.step() == BenchStep.RESULT
                && model.saved().isEmpty();
        String doubts = isResult && model.message().isEmpty() ? doubts() : "";
        return new BenchScreen(
                step,
                title,
                big.label(),
                big.digits(),
                big.unit(),
                big.isTyped(),
                limits,
                how,
                caution,
                doubts.isEmpty() ? model.message() : doubts,
                model.isAlarm() || !doubts.isEmpty(),
                model.current().isPresent() ? model.before() : "",
                keys,
                chips(),
                model.rings());
    }

    private String doubts() {
        List<Problem> problems = new ArrayList<>(gate.errors());
        problems.addAll(gate.doubts());
        String said =
                problems.stream().map(model.desk().tools().problemText()::say).collect(Collectors.joining(" "));
        return said.isEmpty() || !gate.errors().isEmpty() ? said : said + " " + texts.get("doubt.choose");
    }

    private BenchScreen kept(SavedTrial saved) {
        return screen(
                "",
                texts.get("kept.title", saved.trial()),
                new Big(texts.get("label.RESULT"), saved.factor(), "%", true),
                gate.next().orElse(""),
                texts.get("kept.how"),
                texts.get("caution.clean"),
                texts.get("keys.kept"));
    }

    private String place(BenchStep step) {
        List<BenchStep> all = List.of(BenchStep.values()).stream()
                .filter(one -> one.isOf(gate.type()))
                .toList();
        return texts.get("place", Integer.toString(all.indexOf(step) + 1), Integer.toString(all.size()));
    }

    private List<BenchScreen.Chip> chips() {
        Optional<Integer> shown = model.current().map(Bowl::number);
        return model.bowls().all().stream()
                .map(bowl -> new BenchScreen.Chip(
                        bowl.number(),
                        texts.get(
                                "bowl",
                                Integer.toString(bowl.number()),
                                bowl.mix().text(),
                                state(bowl)),
                        shown.filter(number -> number == bowl.number()).isPresent(),
                        model.bowls().rings(bowl)))
                .toList();
    }

    private String state(Bowl bowl) {
        BenchStep step = BenchStep.of(bowl.step());
        if (step != BenchStep.SOAK) {
            return texts.get("title." + step.name());
        }
        Optional<Duration> left = bowl.soakLeft(now());
        return left.filter(still -> still.toSeconds() > 0)
                .map(still -> texts.get("soaking", clock(still)))
                .orElseGet(() -> left.isPresent()
                        ? texts.get("soaked")
                        : texts.get("soaking.since", clock(bowl.soaked(now()).orElse(Duration.ZERO))));
    }

    private Instant now() {
        return model.desk().tools().clock().instant();
    }

    private Big big(Bowl bowl, BenchStep step) {
        boolean isTyped = !bowl.typed().isEmpty() && (step.column().isPresent() || step == BenchStep.METER);
        if (isTyped && step != BenchStep.SOAK) {
            return new Big(texts.get("label.typed." + step.name()), bowl.typed(), unit(step), true);
        }
        if (NOTHING_LARGE.contains(step)) {
            return Big.NOTHING;
        }
        String label = texts.get("label." + step.name());
        return switch (step) {
            case METER ->
                new Big(
                        label,
                        gate.meter().map(Meter::recordId).orElse(texts.get("nothing")),
                        gate.meter()
                                .map(meter -> texts.get("type", meter.type().name()))
                                .orElse(""),
                        false);
            case WATER ->
                new Big(
                        label,
                        gate.sample().map(this::firstWater).orElse(texts.get("nothing")),
                        waterUnit().symbol(),
                        false);
            case FINE, COARSE ->
                new Big(
                        label,
                        step.role()
                                .flatMap(gate::limits)
                                .map(TrialGate.Limits::each)
                                .orElse(texts.get("nothing")),
                        gate.unit(TrialColumns.FINE),
                        false);
            case ADD -> new Big(label, RODS, texts.get("unit.ADD"), false);
            case SOAK -> soak(bowl, label);
            case WITHDRAW -> withdraw(label);
            case READ, H1, H2 -> new Big(label, texts.get("nothing"), unit(step), false);
            case RESULT -> new Big(label, factor(model, model.figures()), "%", true);
            default -> Big.NOTHING;
        };
    }

    /** Returns the unit of what is read at a step; empty text where nothing is. */
    String unit(BenchStep step) {
        return switch (step) {
            case READ, H1, H2 -> texts.get("unit.reading");
            case SOAK -> texts.get("unit.minutes");
            case WATER -> texts.get("unit.degrees", gate.unit(TrialColumns.WATER));
            default -> step.column().map(gate::unit).orElse("");
        };
    }

    /** Returns what the water is measured in: no cylinder is marked in cubic feet. */
    private VolumeUnit waterUnit() {
        return isUs() ? VolumeUnit.MILLILITRE : VolumeUnit.LITRE;
    }

    private boolean isUs() {
        return model.desk().units() == UnitSystem.US;
    }

    private String firstWater(CorrectionSample sample) {
        return numbers.show(sample.firstWater().in(waterUnit()), isUs() ? 0 : 2);
    }

    private Big soak(Bowl bowl, String label) {
        if (!bowl.typed().isEmpty()) {
            return new Big(texts.get("label.typed.SOAK"), bowl.typed(), texts.get("unit.minutes"), true);
        }
        Optional<Duration> left = bowl.soakLeft(now());
        return left.filter(still -> still.toSeconds() > 0)
                .map(still -> new Big(label, clock(still), texts.get("unit.minutes"), false))
                .orElseGet(() -> new Big(
                        texts.get(left.isPresent() ? "label.soaked" : "label.soaking"),
                        clock(bowl.soaked(now()).orElse(Duration.ZERO)),
                        texts.get("unit.minutes"),
                        left.isPresent()));
    }

    private Big withdraw(String label) {
        String unit = gate.unit(TrialColumns.WITHDRAWN);
        Optional<String> target = unit.equals("%")
                ? gate.targetAirPercent().map(numbers::show)
                : gate.sample().map(sample -> numbers.show(sample.withdrawal().in(VolumeUnit.MILLILITRE), 0));
        return new Big(label, target.orElse(texts.get("nothing")), unit, false);
    }

    /** Returns the limits of what is weighed at a step, in words. */
    String massLimits(BenchStep step) {
        return step.role()
                .flatMap(gate::limits)
                .map(limits ->
                        texts.get("limits.mass", limits.lowest(), limits.highest(), gate.unit(TrialColumns.FINE)))
                .orElse("");
    }

    private String limits(BenchStep step) {
        return switch (step) {
            case METER ->
                gate.meter()
                        .map(Meter::bowl)
                        .map(bowl -> texts.get(
                                "limits.bowl",
                                numbers.show(bowl, model.desk().units().bowlVolume(), BOWL_DECIMALS),
                                model.desk().units().bowlVolume().symbol()))
                        .orElse("");
            case WATER ->
                gate.sample()
                        .map(sample -> texts.get(sample.isThirdTooMuch() ? "limits.less-than-third" : "limits.third"))
                        .orElse("");
            case FINE, COARSE -> massLimits(step);
            case SOAK ->
                gate.soakMinutes()
                        .map(minutes -> texts.get("limits.soak", numbers.show(minutes)))
                        .orElseGet(() -> texts.get("limits.soak.none"));
            case RESULT -> gate.nextWithThis().orElse("");
            default -> "";
        };
    }

    private String how(Bowl bowl, BenchStep step) {
        return switch (step) {
            case METER -> texts.get("how.METER", meters(), bowl.draft().text(TrialColumns.OPERATOR));
            case WATER -> texts.get("how.WATER", unit(step));
            case FINE, COARSE -> texts.get("how.weigh", lines(step));
            case FILL, PUMP -> texts.get("how." + step.name() + "." + gate.type());
            case READ, H1, H2, RESULT, ADD, FOAM, SOAK, COVER, ZERO, WITHDRAW -> texts.get("how." + step.name());
        };
    }

    private String meters() {
        List<Meter> meters = gate.meters();
        return IntStream.range(0, meters.size())
                .mapToObj(i -> texts.get(
                        "meter.choice", Integer.toString(i + 1), meters.get(i).recordId()))
                .collect(Collectors.joining("   "));
    }

    private String lines(BenchStep step) {
        Role role = step.role().orElseThrow();
        String unit = gate.unit(TrialColumns.FINE);
        return gate.weighOut().map(WeighOut::lines).orElse(List.of()).stream()
                .filter(line -> line.role() == role)
                .map(line -> texts.get("weigh.line", line.name(), gate.show(line.each()), unit))
                .collect(Collectors.joining("; "));
    }

    private String caution(BenchStep step) {
        MeterType type = gate.type();
        return switch (step) {
            case FINE, COARSE -> texts.get("caution.dust");
            case ADD, WATER -> texts.get("caution.wet");
            case COVER -> texts.get("caution.lift");
            case FILL, PUMP, READ, H1, ZERO, WITHDRAW -> texts.get("caution.pressure." + type);
            case H2, RESULT -> texts.get("caution.release." + type);
            default -> "";
        };
    }

    private String keys(BenchStep step) {
        Optional<Column<Trial, ?>> column = step.column();
        return texts.get(
                step == BenchStep.RESULT
                        ? "keys.result"
                        : column.isPresent() || step == BenchStep.METER ? "keys.number" : "keys.done");
    }
}

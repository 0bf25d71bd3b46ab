package porebench.evidence.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.RegisterRow;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.method.trial.StopRule;
import porebench.record.Trial;
import porebench.record.id.MeterId;

/** Plans the test of one mix. */
final class TestPlanner {
    private final Evidence evidence;
    private final LaboratoryScatter scatter;
    private final WeekPlan.Wish wish;
    private final Arranging.Spot spot;
    private final List<Problem> doubts = new ArrayList<>();

    TestPlanner(Evidence evidence, LaboratoryScatter scatter, WeekPlan.Wish wish, Arranging.Spot spot) {
        this.evidence = evidence;
        this.scatter = scatter;
        this.wish = wish;
        this.spot = spot;
    }

    PlannedTest plan(RegisterRow row, Need need, int cardsOut, LoadsAtRisk risk) {
        Optional<JudgedDetermination> open = evidence.openDetermination();
        int trials = spot.trials().orElseGet(() -> trials(open));
        Optional<MeterStory> meter = wanted().or(this::meter);
        if (meter.isEmpty()) {
            doubts.add(Problem.warning("meter", "plan.no-meter", row.mixId().text()));
        }
        Optional<WeighOut> weighOut = meter.flatMap(story -> weighOut(story, trials));
        return new PlannedTest(
                row.mixId(),
                row.title(),
                row.plant(),
                need,
                row.state(),
                row.uncoveredSince(),
                row.recheckBy(),
                cardsOut,
                open.map(judged -> judged.determination().value().id()),
                trials,
                meter.map(story -> story.meter().value().id()),
                weighOut,
                row.due().stream()
                        .filter(why -> !why.field().equals("recheckBy"))
                        .toList(),
                doubts,
                spot.place(),
                risk);
    }

    /** Returns the meter that a person wants; it is doubted where it cannot be trusted. */
    private Optional<MeterStory> wanted() {
        Optional<MeterStory> wanted = spot.meter()
                .flatMap(id -> Optional.ofNullable(evidence.stories().get(id)));
        wanted.filter(story -> !isTrusted(story))
                .ifPresent(story -> doubts.add(Problem.warning(
                        "meter",
                        "plan.meter-not-trusted",
                        evidence.mix().value().id().text(),
                        story.meter().value().id().text())));
        return wanted;
    }

    /**
     * Returns how many trials are planned: as many as the open determination still wants, or else as many as the newest one took in all,
     * and no fewer than the profile's least.
     */
    private int trials(Optional<JudgedDetermination> open) {
        int least = evidence.profile().count(FigureName.LEAST_TRIALS);
        if (open.isPresent()) {
            int counted = open.get().counted();
            int wanted = evidence.stop(open.get(), scatter)
                    .filter(rule -> rule.verdict() == StopRule.Advice.MORE)
                    .map(StopRule::moreTrials)
                    .orElse(0);
            return Math.max(1, Math.max(least - counted, wanted));
        }
        int before = evidence.determinations().stream()
                .filter(judged -> judged.counted() > 0)
                .reduce((earlier, later) -> later)
                .flatMap(judged -> evidence.stop(judged, scatter))
                .filter(rule -> rule.verdict() == StopRule.Advice.ENOUGH)
                .map(StopRule::trialsInAll)
                .orElse(least);
        return Math.max(least, before);
    }

    /** Returns the meter of the newest trial where it can be trusted, or else one of its type, or else any that can. */
    private Optional<MeterStory> meter() {
        Optional<Trial> newest = evidence.determinations().stream()
                .flatMap(judged -> judged.trials().stream())
                .map(judged -> judged.trial().value())
                .max(Comparator.comparing(Trial::testedAt));
        Optional<MeterId> last = newest.map(Trial::meterId);
        Optional<MeterType> type = newest.map(trial -> trial.readings().meterType());
        Optional<MeterStory> chosen = evidence.stories().values().stream()
                .filter(this::isTrusted)
                .min(Comparator.comparing((MeterStory story) ->
                                !last.equals(Optional.of(story.meter().value().id())))
                        .thenComparing(story ->
                                !type.equals(Optional.of(story.meter().value().type())))
                        .thenComparing(story -> story.meter().value().id()));
        chosen.filter(story -> last.isPresent()
                        && !last.get().equals(story.meter().value().id()))
                .ifPresent(story -> doubts.add(Problem.warning(
                        "meter",
                        "plan.other-meter",
                        evidence.mix().value().id().text(),
                        last.orElseThrow().text(),
                        story.meter().value().id().text())));
        return chosen;
    }

    private boolean isTrusted(MeterStory story) {
        MeterState state = story.stateOn(wish.until());
        return state == MeterState.OK || state == MeterState.DUE;
    }

    private Optional<WeighOut> weighOut(MeterStory story, int trials) {
        Answer<CorrectionSample> sample =
                CorrectionSample.of(evidence.mix().value().batch(), story.bowlOn(wish.from()));
        if (sample.value().isEmpty()) {
            doubts.add(Problem.warning(
                    "mix", "plan.no-sample", evidence.mix().value().id().text()));
        }
        return sample.value().map(known -> WeighOut.of(known, trials, wish.sparePercent(), evidence.profile()));
    }
}

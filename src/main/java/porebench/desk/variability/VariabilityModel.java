package porebench.desk.variability;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.factor.FactorOverTime;
import porebench.chart.look.TrialPoint;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.TrialPoints;
import porebench.desk.form.FileNames;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.trial.Variability;
import porebench.record.Determination;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** The Variability page without its window: the verdict, the numbers, what is left out and why, the plots' data. */
final class VariabilityModel {
    private static final String BUNDLE = "porebench.desk.variability.variability";
    private static final String SHOWS_KNOWN = "showsWhatIsKnown";

    private final DeskModel desk;
    private final Settings settings;
    private final Texts texts;
    private final TrialPoints points;
    private final PlotRecords plots;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<MixId> mix = Optional.empty();
    private Optional<DeterminationId> chosen = Optional.empty();
    private Optional<Found> besides = Optional.empty();
    private Optional<Besides.Wanted> underWay = Optional.empty();

    /**
     * Makes the page without its window.
     *
     * @param settings where it is remembered whether a person wants to see what the laboratory knows besides
     */
    VariabilityModel(DeskModel desk, Settings settings) {
        this.desk = desk;
        this.settings = settings;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.points = new TrialPoints(desk.tools().problemText());
        this.plots = new PlotRecords(points);
        follow();
        desk.onChange(this::follow);
    }

    /**
     * A determination to choose.
     *
     * @param id its name
     * @param words its name, day and number of trials
     */
    record Choice(DeterminationId id, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * A trial that is not in the numbers.
     *
     * @param state struck or void
     * @param sentence which trial, its factor if it has one, and why it does not count
     */
    record LeftOut(TrialPoint.State state, String sentence) {}

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    private void follow() {
        if (!mix.equals(desk.selected())) {
            mix = desk.selected();
            chosen = Optional.empty();
        }
        List.copyOf(listeners).forEach(Runnable::run);
    }

    void choose(DeterminationId id) {
        chosen = Optional.of(id);
        besides = besides.filter(found -> found.besides().isPresent());
        follow();
    }

    /** Returns all determinations of the mix, the newest first. */
    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        determinations().forEach(judged -> choices.add(choice(judged)));
        Collections.reverse(choices);
        return choices;
    }

    private List<JudgedDetermination> determinations() {
        return desk.evidence().map(Evidence::determinations).orElse(List.of());
    }

    private Choice choice(JudgedDetermination judged) {
        Determination one = judged.determination().value();
        return new Choice(
                one.id(),
                texts.get(
                        "determination.choice",
                        one.id().text(),
                        one.openedOn().toString(),
                        Integer.toString(judged.trials().size()),
                        Integer.toString(judged.counted())));
    }

    /** Returns the determination looked at: the one chosen, else the newest. */
    Optional<JudgedDetermination> judged() {
        return chosen.flatMap(id -> desk.evidence().flatMap(evidence -> evidence.determination(id)))
                .or(() -> determinations().stream().reduce((earlier, later) -> later));
    }

    Verdict verdict() {
        return trials().flatMap(trials -> variability(trials)
                        .map(found -> Verdict.of(trials, found, desk.tools().numbers(), texts)))
                .orElseGet(() -> Verdict.ofNothing(judged(), texts));
    }

    /** Returns the questions with their answers; none when no trial counts. */
    List<Finding> questions() {
        return trials().flatMap(trials -> variability(trials)
                        .map(found -> Questions.of(trials, found, desk.tools().numbers(), texts)))
                .orElse(List.of());
    }

    /** Returns whether the page shows what the laboratory knows besides. */
    boolean showsKnown() {
        return Boolean.parseBoolean(settings.get(SHOWS_KNOWN, Boolean.toString(true)));
    }

    /** Shows what the laboratory knows besides, or no longer; it is remembered. */
    void showKnown(boolean shown) {
        settings.put(SHOWS_KNOWN, Boolean.toString(shown));
        follow();
    }

    /** Returns what the laboratory knows besides these trials; empty when no trial counts, or nobody wants to see it. */
    Optional<Finding> known() {
        return wanted().flatMap(wanted -> wanted.trials().judged().summary().map(summary -> {
            KnownWords words = new KnownWords(summary, desk.tools().numbers(), texts);
            return besides.filter(found -> found.to().isSameAs(wanted))
                    .map(found -> found.besides()
                            .map(known -> words.question(
                                    known,
                                    new TestWords(
                                            wanted.trials().divisionPercent(),
                                            desk.tools().numbers(),
                                            texts)))
                            .orElseGet(() -> words.notFound("known.failed")))
                    .orElseGet(() -> words.notFound("known.pending"));
        }));
    }

    private Optional<Besides.Wanted> wanted() {
        return trials().filter(any -> showsKnown())
                .filter(trials -> trials.judged().summary().isPresent())
                .map(trials -> new Besides.Wanted(trials, desk.scatter()));
    }

    /** Finds out what the laboratory knows besides, off the event thread, unless that is known or under way. */
    void workOutKnown() {
        wanted().filter(wanted ->
                        besides.filter(found -> found.to().isSameAs(wanted)).isEmpty())
                .filter(wanted -> underWay.filter(wanted::isSameAs).isEmpty())
                .ifPresent(wanted -> {
                    underWay = Optional.of(wanted);
                    desk.tools().tasks().workOut(wanted::found, found -> know(wanted, Optional.of(found)), failed -> {
                        know(wanted, Optional.empty());
                        if (!(failed instanceof CancellationException)) {
                            throw new IllegalStateException("working out what the laboratory knows", failed);
                        }
                    });
                });
    }

    private void know(Besides.Wanted wanted, Optional<Besides> found) {
        if (underWay.filter(wanted::isSameAs).isPresent()) {
            underWay = Optional.empty();
            besides = Optional.of(new Found(wanted, found));
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    /** What was found, or that nothing was because a person stopped it. */
    private record Found(Besides.Wanted to, Optional<Besides> besides) {}

    private Optional<TrialsToJudge> trials() {
        return desk.evidence()
                .flatMap(evidence -> judged().map(judged -> new TrialsToJudge(
                        judged,
                        evidence.divisionPercent(judged),
                        evidence.profile(),
                        evidence.elsewhere(judged, judged.meterType(), desk.scatter()))));
    }

    private static Optional<Variability> variability(TrialsToJudge trials) {
        return Variability.of(
                trials.factors(),
                trials.judged().meterType(),
                trials.divisionPercent(),
                trials.profile(),
                trials.elsewhere());
    }

    private Optional<Figures> figures() {
        return trials().flatMap(trials -> trials.judged()
                .summary()
                .map(summary -> new Figures(
                        trials.judged(),
                        summary,
                        trials.profile(),
                        trials.divisionPercent(),
                        desk.tools().numbers(),
                        texts)));
    }

    /** Returns the numbers; none when no trial counts. */
    List<Figures.Line> lines() {
        return figures().map(Figures::lines).orElse(List.of());
    }

    /** Returns what belongs beside the numbers when all readings are equal. */
    Optional<String> remark() {
        return figures().flatMap(Figures::resolutionRemark);
    }

    /** Returns what a person should look at before a factor is issued. */
    List<Problem> doubts() {
        return judged().flatMap(JudgedDetermination::summary)
                .map(summary -> summary.doubts())
                .orElse(List.of());
    }

    /** Returns the trials that are not in the numbers, with their reasons. */
    List<LeftOut> leftOut() {
        return judged().map(JudgedDetermination::trials).orElse(List.of()).stream()
                .filter(trial -> !trial.counts())
                .map(this::leftOut)
                .toList();
    }

    private LeftOut leftOut(JudgedTrial trial) {
        String key = trial.isStruck() ? "left.struck" : "left.void";
        String factor = trial.factorPercent().isPresent()
                ? texts.get(
                        "left.factor",
                        desk.tools().numbers().show(trial.factorPercent().getAsDouble(), 2))
                : texts.get("left.no-factor");
        return new LeftOut(
                TrialPoints.state(trial),
                texts.get(key, trial.trial().value().id().text(), factor, points.reason(trial)));
    }

    Optional<FactorByTrial> byTrial() {
        return judged().map(plots::byTrial);
    }

    Optional<FactorOverTime> overTime() {
        return desk.evidence()
                .map(evidence -> plots.overTime(evidence, desk.tools().today()));
    }

    /** Returns what a plot is of, for the title of a picture: the determination, or the mix. */
    String subject(String kind) {
        String mixId = desk.selected().map(MixId::text).orElse("");
        return judged().filter(any -> kind.equals("by-trial"))
                .map(one -> texts.get(
                        "picture.determination",
                        mixId,
                        one.determination().value().id().text()))
                .orElse(mixId);
    }

    /** Returns the name a picture of a plot is saved under unless the person says otherwise. */
    String pictureName(String kind) {
        String id = desk.selected().map(MixId::text).orElse("");
        return FileNames.part(id) + "-" + kind + ".png";
    }

    /** Calls back after every change of what the page shows. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }
}

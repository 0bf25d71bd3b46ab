package porebench.desk.trial;

import java.util.Arrays;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.method.trial.StopRule;
import porebench.method.trial.StopText;
import porebench.method.trial.TrialFactor;

/** Whether the trials of the determination looked at are enough, and whether they would be with the one being typed. */
final class StopModel {
    private final DeskModel desk;
    private final DeterminationsModel determinations;
    private final BenchModel entry;
    private final StopText words;
    private final Texts texts;

    StopModel(DeskModel desk, DeterminationsModel determinations, BenchModel entry, Texts texts) {
        this.desk = desk;
        this.determinations = determinations;
        this.entry = entry;
        this.texts = texts;
        this.words = StopText.in(texts.locale());
    }

    /** Returns what to do after the trials kept; empty when none counts. */
    Optional<StopRule> kept() {
        return determinations.judged().flatMap(judged -> rule(judged, factors(judged), judged.meterType()));
    }

    /** Says it in a sentence; empty when no trial counts. */
    Optional<String> sentence() {
        return kept().map(words::say);
    }

    /** Says what it was reckoned with; empty when that is nothing. */
    Optional<String> basis() {
        return kept().flatMap(stop -> words.reasons(stop).stream().findFirst());
    }

    /**
     * Says what it would be with the trial in the form as well.
     *
     * @param typed what the form gives
     * @return the sentence; empty for a correction, for a trial that does not count, and for the first one
     */
    Optional<String> withTyped(Optional<TrialFactor> typed) {
        Optional<TrialFactor> counting =
                typed.filter(TrialFactor::counts).filter(figures -> entry.base().isEmpty());
        return counting.flatMap(figures -> joined().flatMap(judged -> {
                    double[] kept = factors(judged);
                    double[] all = Arrays.copyOf(kept, kept.length + 1);
                    all[kept.length] = figures.factorPercent().getAsDouble();
                    boolean typeA = entry.type() == MeterType.A || judged.meterType() == MeterType.A;
                    return rule(judged, all, typeA ? MeterType.A : MeterType.B);
                }))
                .map(stop -> texts.get("stop.with-typed", words.say(stop)));
    }

    /** Returns the determination looked at, if it has trials that count: a trial in the form that joins none has no figures. */
    private Optional<JudgedDetermination> joined() {
        return determinations.judged().filter(judged -> judged.counted() > 0);
    }

    private Optional<StopRule> rule(JudgedDetermination judged, double[] factors, MeterType type) {
        return desk.evidence()
                .flatMap(evidence -> StopRule.of(
                        factors,
                        type,
                        evidence.divisionPercent(judged),
                        evidence.profile(),
                        evidence.elsewhere(judged, type, desk.scatter())));
    }

    private static double[] factors(JudgedDetermination judged) {
        return judged.trials().stream()
                .filter(JudgedTrial::counts)
                .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                .toArray();
    }
}

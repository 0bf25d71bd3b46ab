package porebench.desk;

import java.util.stream.Collectors;
import porebench.chart.look.TrialPoint;
import porebench.evidence.JudgedTrial;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.Trial;

/** Turns trials into points of plots. */
public final class TrialPoints {
    private final ProblemText problemText;

    public TrialPoints(ProblemText problemText) {
        this.problemText = problemText;
    }

    /** Returns the point of a trial. */
    public TrialPoint point(JudgedTrial judged) {
        Trial trial = judged.trial().value();
        return new TrialPoint(
                trial.id().text(),
                trial.testedAt(),
                trial.operator(),
                trial.meterId().text(),
                judged.factorPercent(),
                state(judged),
                reason(judged),
                trial.simulated());
    }

    /** Returns whether a trial counts, or why it does not. */
    public static TrialPoint.State state(JudgedTrial judged) {
        return judged.isStruck()
                ? TrialPoint.State.STRUCK
                : judged.isVoid() ? TrialPoint.State.VOID : TrialPoint.State.COUNTED;
    }

    /** Says why a trial does not count: the person's reason, or what is wrong with its readings. */
    public String reason(JudgedTrial judged) {
        return judged.trial()
                .value()
                .struckBecause()
                .orElseGet(() -> judged.figures().problems().stream()
                        .filter(Problem::isError)
                        .map(problemText::say)
                        .collect(Collectors.joining(" ")));
    }
}

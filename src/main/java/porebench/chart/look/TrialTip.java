package porebench.chart.look;

import porebench.method.Dates;

/** What is said about a trial under the pointer. */
public final class TrialTip {
    private final PlotWords words;

    public TrialTip(PlotWords words) {
        this.words = words;
    }

    /** Returns the trial's name, when, who and on what, its factor, and whether it counts: one line each, as HTML. */
    public String of(TrialPoint trial) {
        String made = Dates.minute(trial.testedAt());
        String factor = trial.factorPercent().isPresent()
                ? words.get("tip.factor", words.percent(trial.factorPercent().getAsDouble()))
                : words.get("tip.no-factor");
        String state = switch (trial.state()) {
            case COUNTED -> words.get("tip.counted");
            case STRUCK -> words.get("tip.struck", trial.reason());
            case VOID -> words.get("tip.void", trial.reason());
        };
        return words.lines(
                words.get("tip.trial", trial.id()),
                words.get("tip.made", made, trial.operator(), trial.meter()),
                factor,
                state);
    }
}

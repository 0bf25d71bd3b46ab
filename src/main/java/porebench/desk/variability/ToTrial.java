package porebench.desk.variability;

import java.util.function.Consumer;
import porebench.record.id.TrialId;

/**
 * The ways from this page to a trial.
 *
 * @param open turns the window to a trial
 * @param strike turns the window to a trial and asks why it should be struck
 */
public record ToTrial(Consumer<TrialId> open, Consumer<TrialId> strike) {}

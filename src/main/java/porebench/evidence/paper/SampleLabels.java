package porebench.evidence.paper;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.method.sample.WeighOut;
import porebench.record.Laboratory;

/**
 * Labels for the bags and trays of a correction sample: one for each aggregate of each trial.
 *
 * @param sheet the trial sheet whose masses they name
 * @param day the day that stands on them
 */
public record SampleLabels(TrialSheet sheet, LocalDate day) implements Printed {

    /**
     * One label.
     *
     * @param line the aggregate and its mass for one trial
     * @param trial the number of the trial, from 1
     */
    public record Label(WeighOut.Line line, int trial) {}

    @Override
    public Optional<Laboratory> laboratory() {
        return sheet.laboratory();
    }

    /** Returns the labels, those of a trial together. */
    public List<Label> labels() {
        return IntStream.rangeClosed(1, sheet.weighOut().trials())
                .boxed()
                .flatMap(trial -> sheet.weighOut().lines().stream().map(line -> new Label(line, trial)))
                .toList();
    }
}

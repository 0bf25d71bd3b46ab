package porebench.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.trial.DeterminationSummary;
import porebench.record.Determination;
import porebench.record.book.Version;

/**
 * A determination with its trials judged and summed up.
 *
 * @param determination the determination
 * @param trials all its trials in the order in which they were made, void and struck ones among them
 * @param summary what the trials that count say together; empty when none counts
 */
public record JudgedDetermination(
        Version<Determination> determination, List<JudgedTrial> trials, Optional<DeterminationSummary> summary) {
    private static final Comparator<JudgedTrial> AS_MADE = Comparator.comparing(
                    (JudgedTrial judged) -> judged.trial().value().testedAt())
            .thenComparing(judged -> judged.trial().value().id());

    public JudgedDetermination {
        trials = List.copyOf(trials);
    }

    /**
     * Sums up judged trials.
     *
     * @param determination the determination
     * @param trials its trials, in any order
     * @param divisionPercent a division of the meter's scale, in % air
     * @param profile whose rounding and limits hold
     */
    public static JudgedDetermination of(
            Version<Determination> determination, List<JudgedTrial> trials, double divisionPercent, Profile profile) {
        List<JudgedTrial> inOrder = trials.stream().sorted(AS_MADE).toList();
        double[] factors = inOrder.stream()
                .filter(JudgedTrial::counts)
                .mapToDouble(t -> t.factorPercent().orElseThrow())
                .toArray();
        return new JudgedDetermination(
                determination,
                inOrder,
                DeterminationSummary.of(factors, meterTypeOf(inOrder), divisionPercent, profile));
    }

    /** Returns the trials of a determination, each doubted before which no soak fits after the one before it on its meter. */
    static List<JudgedTrial> inCompany(List<JudgedTrial> trials) {
        Soaks before = new Soaks();
        List<JudgedTrial> doubted = new ArrayList<>();
        for (JudgedTrial judged : trials.stream().sorted(AS_MADE).toList()) {
            doubted.add(before.doubt(judged.trial().value(), "testedAt")
                    .map(doubt -> judged.alsoDoubted(List.of(doubt)))
                    .orElse(judged));
            before.add(judged.trial().value());
        }
        return doubted;
    }

    /** Returns the type of meter of the trials that count: Type A as soon as one was made on it. */
    public MeterType meterType() {
        return meterTypeOf(trials);
    }

    private static MeterType meterTypeOf(List<JudgedTrial> trials) {
        return trials.stream()
                        .filter(JudgedTrial::counts)
                        .anyMatch(t -> t.trial().value().readings().meterType() == MeterType.A)
                ? MeterType.A
                : MeterType.B;
    }

    /** Returns how many trials count. */
    public int counted() {
        return (int) trials.stream().filter(JudgedTrial::counts).count();
    }
}

package porebench.evidence.source;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.Evidence;
import porebench.evidence.custody.HeldCard;
import porebench.method.Problem;
import porebench.method.sample.Constituent;
import porebench.record.MixDesign;

/**
 * What keeping the draft of a mix design would do to its factor in force, and by which rule; nothing is kept.
 *
 * <p>Whether the factor still holds is asked of the evidence as it would be, so that it is the rule of the register.
 *
 * @param touched the mix as it stands and as it would stand
 * @param why what would take its factor from it: the aggregates that differ, or a source; empty where nothing would
 */
public record DraftTouch(TouchedMix touched, List<Problem> why) {
    private static final int SHARE_DECIMALS = 1;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public DraftTouch {
        why = List.copyOf(why);
    }

    /**
     * Looks at a draft.
     *
     * @param evidence everything known about the mix as it is kept
     * @param draft the draft, of the same mix
     * @param cards where the cards of the mix are
     * @param now the day and time of the question, by the laboratory's clock
     */
    public static DraftTouch of(Evidence evidence, MixDesign draft, List<HeldCard> cards, LocalDateTime now) {
        Evidence then = evidence.with(draft);
        TouchedMix touched = TouchedMix.of(evidence, then, now, now).with(cards);
        return new DraftTouch(
                touched,
                touched.becomesUntrue()
                        ? touched.inForce().stream()
                                .flatMap(issue -> then.changesSince(issue, now.toLocalDate()).stream())
                                .flatMap(change -> change.source().isPresent()
                                        ? Stream.of(change.asProblem(draft.id()))
                                        : differences(evidence.mix().value(), draft).stream())
                                .toList()
                        : List.of());
    }

    /** Returns whether the factor in force would no longer stand for the mix, so that a new test is asked for. */
    public boolean asksForNewTest() {
        return touched.becomesUntrue();
    }

    /** Returns how the aggregates of two designs differ: sources that come or go, shares of the aggregate, or else the rest. */
    private static List<Problem> differences(MixDesign kept, MixDesign draft) {
        List<Problem> differences = new ArrayList<>();
        Map<String, BigDecimal> before = masses(kept);
        Map<String, BigDecimal> after = masses(draft);
        before.keySet().stream()
                .filter(source -> !after.containsKey(source))
                .forEach(source -> differences.add(Problem.warning("constituents", "draft.source-out", source)));
        after.keySet().stream()
                .filter(source -> !before.containsKey(source))
                .forEach(source -> differences.add(Problem.warning("constituents", "draft.source-in", source)));
        after.keySet().stream().filter(before::containsKey).forEach(source -> {
            BigDecimal was = share(before, source);
            BigDecimal is = share(after, source);
            if (was.compareTo(is) != 0) {
                differences.add(Problem.warning("constituents", "draft.share", source, was, is));
            }
        });
        if (differences.isEmpty()) {
            differences.add(Problem.warning(
                    "constituents", "draft.aggregates", draft.id().text()));
        }
        return differences;
    }

    /** Returns the masses of the aggregates by their source, in kg as the design states them. */
    private static Map<String, BigDecimal> masses(MixDesign mix) {
        Map<String, BigDecimal> masses = new LinkedHashMap<>();
        for (Constituent aggregate : mix.aggregates()) {
            masses.merge(
                    aggregate.sourceOrName(),
                    BigDecimal.valueOf(aggregate.mass().value().kilograms()),
                    BigDecimal::add);
        }
        return masses;
    }

    private static BigDecimal share(Map<String, BigDecimal> masses, String source) {
        BigDecimal all = masses.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return all.signum() == 0
                ? BigDecimal.ZERO
                : Optional.ofNullable(masses.get(source))
                        .orElse(BigDecimal.ZERO)
                        .multiply(HUNDRED)
                        .divide(all, SHARE_DECIMALS, RoundingMode.HALF_EVEN);
    }
}

package porebench.desk.variability;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.method.trial.DeterminationSummary;
import porebench.method.trial.KnownFactor;
import porebench.method.trial.NextDetermination;
import porebench.statistics.Judged;
import porebench.statistics.comparison.EqualScatterTest;

/** Says what the laboratory's other determinations add: the factor drawn towards them, and where the next one should lie. */
final class KnownWords {
    private static final double LEVEL = 0.05;
    private static final double LEAST_SAID = 0.0005;
    private static final TestWords.Counts MIXES = new TestWords.Counts(2, Integer.MAX_VALUE);
    private static final int DECIMALS = Digits.AIR;
    private static final int FINE_DECIMALS = Digits.SCATTER;

    private final DeterminationSummary summary;
    private final Numbers numbers;
    private final Texts texts;

    KnownWords(DeterminationSummary summary, Numbers numbers, Texts texts) {
        this.summary = summary;
        this.numbers = numbers;
        this.texts = texts;
    }

    /** Says that nothing can be said yet, or at all. */
    Finding notFound(String key) {
        return new Finding("known", texts.get("question.known"), texts.get(key), false, List.of(), List.of());
    }

    Finding question(Besides besides, TestWords tests) {
        Optional<KnownFactor> known = besides.known();
        Judged<EqualScatterTest> alike = besides.alike();
        List<String> reasons = new ArrayList<>();
        known.ifPresent(factor -> reasons.addAll(reasons(factor)));
        reasons.add(besides.next()
                .map(this::next)
                .orElseGet(() -> texts.get("known.next-few", Integer.toString(NextDetermination.FEWEST))));
        alike.meaningful()
                .filter(test -> test.p() < LEVEL)
                .ifPresent(test -> reasons.add(texts.get("known.unlike", Integer.toString(test.sets()))));
        return new Finding(
                "known",
                texts.get("question.known"),
                known.map(this::answer).orElseGet(() -> texts.get("known.unknown")),
                false,
                reasons,
                alike.meaningful().isEmpty()
                        ? List.of()
                        : List.of(tests.line("alike", alike, EqualScatterTest::statistic, EqualScatterTest::p, MIXES)));
    }

    private String answer(KnownFactor known) {
        boolean isSame = known.card().compareTo(summary.reportedPercent()) == 0;
        return texts.get(
                isSame ? "known.same" : "known.other",
                numbers.show(known.meanPercent(), FINE_DECIMALS),
                numbers.show(summary.summary().mean(), FINE_DECIMALS),
                numbers.show(known.card()),
                numbers.show(summary.reportedPercent()));
    }

    private List<String> reasons(KnownFactor known) {
        List<String> reasons = new ArrayList<>();
        reasons.add(texts.get(
                "known.rests-on",
                Integer.toString(known.others()),
                Integer.toString(known.sameMix()),
                numbers.show(known.aroundPercent(), DECIMALS),
                Digits.share(known.ownShare())));
        List<String> differences = new ArrayList<>();
        known.betweenDeterminationsPercent()
                .ifPresent(value -> differences.add(difference("known.determinations", value)));
        known.betweenMixesPercent().ifPresent(value -> differences.add(difference("known.mixes", value)));
        known.betweenSourcesPercent().ifPresent(value -> differences.add(difference("known.sources", value)));
        if (!differences.isEmpty()) {
            reasons.add(String.join(" ", differences));
        }
        return reasons;
    }

    private String difference(String key, double value) {
        return value < LEAST_SAID ? texts.get(key + ".none") : texts.get(key, numbers.show(value, FINE_DECIMALS));
    }

    private String next(NextDetermination next) {
        return texts.get(
                "known.next",
                numbers.show(next.lowPercent(), DECIMALS),
                numbers.show(next.highPercent(), DECIMALS),
                Integer.toString(next.determinations()));
    }
}

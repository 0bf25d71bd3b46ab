package porebench.desk.variability;

import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.trial.DeterminationSummary;
import porebench.record.JudgedDetermination;
import porebench.statistics.CriticalRange;
import porebench.statistics.Summary;

/**
 * What the trials of a determination say together, in one sentence.
 *
 * @param kind what kind of thing it says
 * @param sentence the sentence, figures in it
 */
record Verdict(Kind kind, String sentence) {
    private static final int DECIMALS = 2;

    /** What the sentence says; agreeing trials alone are good news. */
    enum Kind {
        NO_TRIAL("verdict.no-trial"),
        NONE_COUNTS("verdict.none-counts"),
        ONE_ONLY("verdict.one-only"),
        TOO_WIDE("verdict.too-wide"),
        TOO_FEW("verdict.too-few"),
        ALL_EQUAL("verdict.all-equal"),
        AGREE("verdict.agree");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        boolean isGood() {
            return this == AGREE || this == ALL_EQUAL;
        }
    }

    /** Judges a determination; one that is not there yet has no trial. */
    static Verdict of(Optional<JudgedDetermination> judged, Profile profile, Numbers numbers, Texts texts) {
        if (judged.isEmpty() || judged.get().trials().isEmpty()) {
            return new Verdict(Kind.NO_TRIAL, texts.get(Kind.NO_TRIAL.key));
        }
        Optional<DeterminationSummary> known = judged.get().summary();
        if (known.isEmpty()) {
            String all = Integer.toString(judged.get().trials().size());
            return new Verdict(Kind.NONE_COUNTS, texts.get(Kind.NONE_COUNTS.key, all));
        }
        DeterminationSummary determination = known.get();
        Summary summary = determination.summary();
        int least = profile.count(FigureName.LEAST_TRIALS);
        Kind kind = kind(determination, least);
        return new Verdict(
                kind,
                texts.get(
                        kind.key,
                        Integer.toString(summary.count()),
                        numbers.show(summary.range(), DECIMALS),
                        numbers.show(determination.reportedPercent()),
                        numbers.show(summary.mean(), DECIMALS),
                        determination
                                .rangeCheck()
                                .map(CriticalRange.Verdict::limit)
                                .map(limit -> numbers.show(limit, DECIMALS))
                                .orElse(""),
                        Integer.toString(least)));
    }

    private static Kind kind(DeterminationSummary determination, int least) {
        Summary summary = determination.summary();
        if (summary.count() == 1) {
            return Kind.ONE_ONLY;
        }
        if (determination.rangeCheck().filter(check -> !check.passes()).isPresent()) {
            return Kind.TOO_WIDE;
        }
        if (summary.count() < least) {
            return Kind.TOO_FEW;
        }
        return summary.range() == 0 ? Kind.ALL_EQUAL : Kind.AGREE;
    }
}

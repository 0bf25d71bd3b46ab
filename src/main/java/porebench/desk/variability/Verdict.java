package porebench.desk.variability;

import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.evidence.JudgedDetermination;
import porebench.method.Digits;
import porebench.method.FigureName;
import porebench.method.Texts;
import porebench.method.trial.LaboratoryCheck;
import porebench.method.trial.StopText;
import porebench.method.trial.Variability;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.Summary;

/**
 * What the trials of a determination say together, in one sentence.
 *
 * @param kind what kind of thing it says
 * @param sentence the sentence, figures in it
 */
record Verdict(Kind kind, String sentence) {
    private static final int DECIMALS = Digits.AIR;

    /** What the sentence says; agreeing trials alone are good news. */
    enum Kind {
        NO_TRIAL("verdict.no-trial"),
        NONE_COUNTS("verdict.none-counts"),
        ONE_ONLY("verdict.one-only"),
        STANDS_OUT("verdict.stands-out"),
        STAND_OUT("verdict.stand-out"),
        TOO_WIDE("verdict.too-wide"),
        WIDER_THAN_USUAL("verdict.wider-than-usual"),
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

    /** Says that there is nothing to judge: no trial, or none that counts. */
    static Verdict ofNothing(Optional<JudgedDetermination> judged, Texts texts) {
        int made = judged.map(one -> one.trials().size()).orElse(0);
        Kind kind = made == 0 ? Kind.NO_TRIAL : Kind.NONE_COUNTS;
        return new Verdict(kind, texts.get(kind.key, Integer.toString(made)));
    }

    /** Judges trials that count. */
    static Verdict of(TrialsToJudge trials, Variability variability, Numbers numbers, Texts texts) {
        Summary summary = variability.summary().summary();
        int least = trials.profile().count(FigureName.LEAST_TRIALS);
        Kind kind = kind(variability, least);
        String limit = (kind == Kind.WIDER_THAN_USUAL
                        ? variability.laboratory().flatMap(LaboratoryCheck::range)
                        : variability.summary().rangeCheck())
                .map(CriticalRange.RangeCheck::limit)
                .map(value -> numbers.show(value, DECIMALS))
                .orElse("");
        return new Verdict(
                kind,
                texts.get(
                        kind.key,
                        Integer.toString(summary.count()),
                        numbers.show(summary.range(), DECIMALS),
                        numbers.show(variability.summary().reportedPercent()),
                        numbers.show(summary.mean(), DECIMALS),
                        limit,
                        Integer.toString(least),
                        kind.isGood() ? StopText.in(texts.locale()).clause(variability.stop()) : "",
                        variability.outliers().suspects().map(trials::names).orElse("")));
    }

    private static Kind kind(Variability variability, int least) {
        Summary summary = variability.summary().summary();
        if (summary.count() == 1) {
            return Kind.ONE_ONLY;
        }
        if (variability.outliers().suspects().isPresent()) {
            boolean one = variability.outliers().suspects().get().indices().size() == 1;
            return one ? Kind.STANDS_OUT : Kind.STAND_OUT;
        }
        if (variability.alarms().contains(Variability.Alarm.RANGE)) {
            return Kind.TOO_WIDE;
        }
        if (variability.alarms().contains(Variability.Alarm.LABORATORY)) {
            return Kind.WIDER_THAN_USUAL;
        }
        if (summary.count() < least) {
            return Kind.TOO_FEW;
        }
        return summary.range() == 0 ? Kind.ALL_EQUAL : Kind.AGREE;
    }
}

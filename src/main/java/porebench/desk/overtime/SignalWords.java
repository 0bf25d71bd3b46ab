package porebench.desk.overtime;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import porebench.desk.form.Numbers;
import porebench.evidence.FactorHistory.HistoryChange;
import porebench.evidence.FactorHistory.Made;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.statistics.control.ChartPoint;
import porebench.statistics.control.RunRule;

/** Explains signals: what happened, at which trial, and what to check. */
final class SignalWords {
    private static final int DECIMALS = Digits.AIR;
    private static final int MOST_DECIMALS = 6;

    /** A little longer after a change than the usual rules look back. */
    private static final int SOON_AFTER = 12;

    private final Charted outcome;
    private final Texts texts;
    private final Numbers numbers;

    SignalWords(Charted outcome, Texts texts, Numbers numbers) {
        this.outcome = outcome;
        this.texts = texts;
        this.numbers = numbers;
    }

    /** Returns the name and day of a point: its trial, or its determination. */
    String point(int index) {
        Series.Point point = outcome.series().points().get(index);
        return texts.get(
                "signal.point",
                outcome.wishes().kind().isOfDeterminations()
                        ? point.first().determination().text()
                        : point.first().trial().id().text(),
                point.day().toString());
    }

    /** Says what happened, how long it went on, and what to check. */
    String said(Charted.Spell spell) {
        String happened = happened(spell.first());
        String wholly = spell.last().index() == spell.first().index()
                ? happened
                : texts.get("signal.until", happened, point(spell.last().index()));
        return texts.get("signal.said", wholly, check(spell.first()));
    }

    /** Says what happened, one sentence a rule. */
    String happened(Charted.Signal signal) {
        return signal.point().signals().stream()
                .map(rule -> happened(signal, rule))
                .collect(Collectors.joining(" "));
    }

    private String happened(Charted.Signal signal, RunRule rule) {
        ChartPoint point = signal.point();
        boolean isAbove = point.value() >= point.centre();
        if (rule != RunRule.BEYOND_LIMITS) {
            return texts.get("rule.said." + rule.symbol(), texts.get(isAbove ? "side.above" : "side.below"));
        }
        double limit = isAbove ? point.high() : point.low();
        int decimals = DECIMALS;
        // A value just beyond its limit must not read as one on it.
        while (decimals < MOST_DECIMALS && number(point.value(), decimals).equals(number(limit, decimals))) {
            decimals++;
        }
        return texts.get(
                "beyond." + plotted(signal.isOfSpread()) + (isAbove ? ".high" : ".low"),
                number(point.value(), decimals),
                number(limit, decimals));
    }

    private String plotted(boolean isOfSpread) {
        return switch (outcome.wishes().kind()) {
            case TRIALS -> isOfSpread ? "trial-range" : "value";
            case MEANS -> isOfSpread ? "moving-range" : "mean";
            case MEAN_RANGE -> isOfSpread ? "range" : "mean";
            case MEAN_DEVIATION -> isOfSpread ? "deviation" : "mean";
            case EWMA -> "average";
            case CUSUM -> "sum";
        };
    }

    /** Says what to check: what changed shortly before, who and what is new, and what the pattern usually means. */
    String check(Charted.Signal signal) {
        StringBuilder said = new StringBuilder();
        List<HistoryChange> before = before(signal);
        if (!before.isEmpty()) {
            said.append(texts.get("check.after", changes(before))).append(' ');
        }
        stranger(signal).ifPresent(words -> said.append(words).append(' '));
        return said.append(texts.get(usual(signal))).toString();
    }

    /** Returns what changed at the point or a few points before it. */
    private List<HistoryChange> before(Charted.Signal signal) {
        return outcome
                .series()
                .points()
                .subList(Math.max(0, signal.index() - SOON_AFTER + 1), signal.index() + 1)
                .stream()
                .flatMap(point -> point.changes().stream())
                .distinct()
                .toList();
    }

    /** Says some changes in a few words, such as {@code B-1, B-2 calibrated}. */
    String changes(List<HistoryChange> changes) {
        Map<HistoryChange.Of, String> ids = new EnumMap<>(HistoryChange.Of.class);
        for (HistoryChange change : changes) {
            ids.merge(
                    change.of(),
                    change.id(),
                    (all, one) -> List.of(all.split(", ", -1)).contains(one) ? all : all + ", " + one);
        }
        return ids.entrySet().stream()
                .map(each -> texts.get(key(each.getKey()), each.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String key(HistoryChange.Of of) {
        return switch (of) {
            case SOURCE -> "change.source";
            case MIX -> "change.mix";
            case CALIBRATION -> "change.calibration";
            case REPAIR -> "change.repair";
            case METHOD -> "change.method";
        };
    }

    /** Names the operator of a point that made none of the points before it. */
    private Optional<String> stranger(Charted.Signal signal) {
        Set<String> known = new TreeSet<>();
        outcome.series().points().subList(0, signal.index()).stream()
                .flatMap(point -> point.made().stream())
                .map(SignalWords::operator)
                .forEach(known::add);
        String here = operator(outcome.series().points().get(signal.index()).first());
        return known.isEmpty() || here.isBlank() || known.contains(here)
                ? Optional.empty()
                : Optional.of(texts.get("check.operator", here));
    }

    private static String operator(Made made) {
        return made.trial().operator().strip();
    }

    private String usual(Charted.Signal signal) {
        if (signal.isOfSpread()) {
            return plotted(true).endsWith("-range") ? "check.jump" : "check.spread";
        }
        if (!outcome.wishes().kind().hasSpread()) {
            return "check.shift";
        }
        return switch (signal.point().signals().get(0)) {
            case BEYOND_LIMITS -> "check.single";
            case TWO_OF_THREE, FOUR_OF_FIVE, EIGHT_ON_ONE_SIDE, NINE_ON_ONE_SIDE -> "check.shift";
            case SIX_IN_A_TREND -> "check.trend";
            case FOURTEEN_ALTERNATING -> "check.alternating";
            case FIFTEEN_WITHIN_ONE -> "check.quiet";
            case EIGHT_BEYOND_ONE -> "check.mixture";
        };
    }

    private String number(double percent, int decimals) {
        return numbers.show(percent, decimals);
    }
}

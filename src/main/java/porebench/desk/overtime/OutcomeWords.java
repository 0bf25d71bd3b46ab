package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import porebench.desk.form.Numbers;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.record.id.MixId;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;

/**
 * Says how the factor stands over time, what a reader of the chart must know of it, each of its phases, and how often it signals by
 * chance.
 */
final class OutcomeWords {
    private static final int DECIMALS = Digits.AIR;

    private final Charted outcome;
    private final SignalWords signals;
    private final Texts texts;
    private final Numbers numbers;

    OutcomeWords(Charted outcome, SignalWords signals, Texts texts, Numbers numbers) {
        this.outcome = outcome;
        this.signals = signals;
        this.texts = texts;
        this.numbers = numbers;
    }

    /** Says in one sentence how the factor stands. */
    String verdict() {
        String said = plain();
        return outcome.series().isSimulated() ? texts.get("verdict.simulated", said) : said;
    }

    private String plain() {
        int points = outcome.series().points().size();
        String counted = texts.get(
                outcome.wishes().kind().isOfDeterminations() ? "points.determinations" : "points.trials", points);
        if (points == 0) {
            return texts.get(outcome.wishes().id().isBlank() ? "verdict.nothing" : "verdict.none");
        }
        // One determination has limits, from its own spread, but nothing to lie beside.
        if (points == 1 || outcome.limited().isEmpty()) {
            return texts.get(points == 1 ? "verdict.one" : "verdict.no-limits", counted);
        }
        String standing = standing(points, counted);
        int base = outcome.fewestInBase();
        return base < ChartTerms.FEWEST_FOR_LASTING_LIMITS
                ? texts.get("verdict.provisional", standing, base)
                : texts.get("verdict.plain", standing);
    }

    private String standing(int points, String counted) {
        int signalling = outcome.signalling();
        if (signalling == 0) {
            return texts.get("verdict.quiet", counted);
        }
        int last = outcome.signals().get(outcome.signals().size() - 1).index();
        String point = signals.point(last);
        if (last == points - 1) {
            return texts.get("verdict.now", point, signalling, counted);
        }
        return texts.get("verdict.before", point, signalling, counted, points - 1 - last);
    }

    /** Says what is charted, what is not, and how far the limits can be trusted. */
    List<String> remarks() {
        List<String> said = new ArrayList<>();
        whatIsCharted(said);
        whatIsLeftOut(said);
        howFarTheLimitsHold(said);
        return said;
    }

    private void whatIsCharted(List<String> said) {
        Series series = outcome.series();
        if (series.isDifference()) {
            said.add(texts.get(
                    "remark.difference",
                    list(series.references().keySet().stream().sorted().toList())));
        }
        if (!series.late().isEmpty()) {
            said.add(texts.get("remark.late", list(series.late())));
        }
        if (outcome.wishes().kind() == PhasedChart.Kind.TRIALS
                && !outcome.limited().isEmpty()) {
            PhasedChart.Spread spread = outcome.limited().get(0).spreads();
            said.add(
                    spread.isBetweenKnown()
                            ? texts.get("remark.trials", numbers.show(spread.between(), DECIMALS + 1))
                            : texts.get("remark.trials-of-one"));
        }
    }

    private void whatIsLeftOut(List<String> said) {
        Series series = outcome.series();
        if (series.struck() + series.voided() > 0) {
            said.add(texts.get("remark.not-counted", series.struck(), series.voided()));
        }
        if (!series.unreferenced().isEmpty()) {
            said.add(texts.get(
                    outcome.wishes().kind().isOfDeterminations() ? "remark.unreferenced-means" : "remark.unreferenced",
                    list(series.unreferenced())));
        }
        if (series.alone() > 0) {
            said.add(texts.get("remark.alone", series.alone()));
        }
    }

    private void howFarTheLimitsHold(List<String> said) {
        List<PhasedChart.Limited> limited = outcome.limited();
        int without = outcome.phases().size() - limited.size();
        if (limited.isEmpty() && outcome.series().points().size() > 1) {
            said.add(texts.get(
                    outcome.wishes().base() instanceof BaseChoice.Between ? "remark.no-base" : "remark.no-pair"));
        } else if (without > 0) {
            said.add(texts.get("remark.short-phases", without));
        }
        if (!limited.isEmpty() && outcome.fewestInBase() < ChartTerms.FEWEST_FOR_LASTING_LIMITS) {
            said.add(texts.get("remark.provisional", outcome.fewestInBase(), ChartTerms.FEWEST_FOR_LASTING_LIMITS));
        }
        if (limited.stream().anyMatch(PhasedChart.Limited::isSigmaOfDivision)) {
            double division = outcome.series().divisionPercent();
            said.add(texts.get(
                    "remark.division",
                    numbers.show(division, DECIMALS),
                    numbers.show(division / Math.sqrt(12), DECIMALS + 1)));
        }
    }

    private static String list(Collection<MixId> mixes) {
        return mixes.stream().map(MixId::text).collect(Collectors.joining(", "));
    }

    /** Says each phase: when, how many points, what began it, and its limits. */
    List<String> phases() {
        List<String> said = new ArrayList<>();
        for (PhasedChart.Phase phase : outcome.phases()) {
            List<Series.Point> points = outcome.series().points().subList(phase.first(), phase.first() + phase.count());
            String begun = said.isEmpty()
                    ? texts.get("phase.first")
                    : texts.get("phase.begun", signals.changes(points.get(0).changes()));
            said.add(texts.get(
                    "phase.said",
                    said.size() + 1,
                    points.get(0).day().toString(),
                    points.get(points.size() - 1).day().toString(),
                    phase.count(),
                    begun,
                    phase.chart().meaningful().map(this::limits).orElseGet(() -> texts.get("phase.no-limits"))));
        }
        return said;
    }

    private String limits(PhasedChart.Limited limited) {
        return texts.get(
                "phase.limits",
                numbers.show(limited.centre(), DECIMALS),
                numbers.show(limited.sigma(), DECIMALS + 1),
                limited.base());
    }

    /** Says how often the chart signals by chance. */
    String alarms(Alarms of, FalseAlarms found) {
        String unit = of.kind() == PhasedChart.Kind.TRIALS ? "trials" : "determinations";
        boolean isRare = found.pointsPerAlarm().isEmpty();
        double every = isRare
                ? powerOfTen(found.rarerThan())
                : rounded(found.pointsPerAlarm().getAsDouble());
        return texts.get(
                        isRare ? "alarms.rare." + unit : "alarms.said." + unit,
                        every,
                        of.process().sizes().size(),
                        Math.round(100 * found.shareWithAlarm()))
                + " "
                + texts.get(
                        "alarms.how",
                        found.charts(),
                        Long.toString(found.seed()),
                        of.newestBase(),
                        numbers.show(of.terms().division(), DECIMALS));
    }

    /** Rounds to two digits: more are not known. */
    private static double rounded(double length) {
        double unit = Math.max(1, powerOfTen(length) / 10);
        return unit * Math.rint(length / unit);
    }

    private static double powerOfTen(double length) {
        return Math.pow(10, Math.floor(Math.log10(length)));
    }
}

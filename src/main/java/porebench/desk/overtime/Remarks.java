package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.record.id.MixId;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.PhasedChart;

/** Says what a reader of a control chart must know: what is charted, what is not, and how far its limits can be trusted. */
final class Remarks {
    private static final int DECIMALS = 2;

    private final Charted outcome;
    private final Texts texts;
    private final Numbers numbers;

    Remarks(Charted outcome, Texts texts, Numbers numbers) {
        this.outcome = outcome;
        this.texts = texts;
        this.numbers = numbers;
    }

    List<String> all() {
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
}

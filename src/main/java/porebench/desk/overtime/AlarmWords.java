package porebench.desk.overtime;

import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;

/** Says how often a chart signals by chance. */
final class AlarmWords {
    private static final int DIVISION_DECIMALS = 2;

    private final Texts texts;
    private final Numbers numbers;

    AlarmWords(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
    }

    String said(Alarms of, FalseAlarms found) {
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
                        numbers.show(of.terms().division(), DIVISION_DECIMALS));
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

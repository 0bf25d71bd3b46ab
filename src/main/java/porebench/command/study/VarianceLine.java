package porebench.command.study;

import porebench.command.reply.NumberText;
import porebench.command.reply.ReportLayout;
import porebench.method.Digits;
import porebench.method.Texts;

/**
 * One layer of the scatter and its variance, as it is said; what is not known is not a number.
 *
 * @param name the layer, as programs read it
 * @param title the layer, as people read it
 * @param groups how many groups it has
 * @param variance its variance, in the square of the values' unit
 * @param low the lower end of its 95 % interval
 * @param high the upper end; may be infinite
 * @param share its part of the whole, from 0 to 1
 */
record VarianceLine(String name, String title, int groups, double variance, double low, double high, double share) {
    /** Returns how lines are said. */
    static ReportLayout<VarianceLine> layout(Texts words, NumberText numbers) {
        return new ReportLayout<VarianceLine>(words, numbers)
                .field((json, line) -> json.text("level", line.name))
                .cell("components.layer", VarianceLine::title)
                .whole("groups", "components.groups", VarianceLine::groups)
                .number("variance", "variance.variance", VarianceLine::variance)
                .number("low", "variance.low", VarianceLine::low)
                .number("high", "variance.high", VarianceLine::high)
                .number("share", "variance.share", VarianceLine::share, Digits::share);
    }

    /** Writes the mean of all values and its standard error as rows. */
    static ReportLayout<double[]> mean(Texts words, NumberText numbers) {
        return new ReportLayout<double[]>(words, numbers)
                .number("mean", "components.mean", of -> of[0])
                .number("standardError", "components.standard-error", of -> of[1]);
    }
}

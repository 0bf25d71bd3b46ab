package porebench.command.study;

import porebench.command.reply.NumberText;
import porebench.command.reply.ReportLayout;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.FTest;
import porebench.statistics.variance.MeanSquare;

/**
 * One line of an analysis of variance, as it is said.
 *
 * @param source what varies, as programs read it
 * @param name what varies, as people read it
 */
record AnovaLine(String source, String name, MeanSquare squares, Judged<FTest> test) {
    /** Returns how lines are said. */
    static ReportLayout<AnovaLine> layout(Texts words, NumberText numbers) {
        return new ReportLayout<AnovaLine>(words, numbers)
                .field((json, line) -> json.text("source", line.source))
                .cell("anova.source", AnovaLine::name)
                .whole("df", "anova.df", line -> line.squares.degreesOfFreedom())
                .number("ss", "anova.ss", line -> line.squares.sumOfSquares())
                .number("ms", "anova.ms", line -> line.squares.meanSquare().orElse(Double.NaN))
                .number(
                        "f",
                        "anova.f",
                        line -> line.test.map(FTest::statistic).meaningful().orElse(Double.NaN))
                .number(
                        "p",
                        "anova.p",
                        line -> line.test.map(FTest::p).meaningful().orElse(Double.NaN),
                        numbers::probability);
    }
}

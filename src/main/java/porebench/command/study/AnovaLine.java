package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.TextPage;
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
    void json(JsonFields json) {
        json.text("source", source);
        json.whole("df", squares.degreesOfFreedom());
        json.number("ss", squares.sumOfSquares());
        json.number("ms", squares.meanSquare());
        json.number("f", f());
        json.number("p", p());
    }

    private OptionalDouble f() {
        return test.meaningful()
                .map(done -> OptionalDouble.of(done.statistic()))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble p() {
        return test.meaningful().map(done -> OptionalDouble.of(done.p())).orElse(OptionalDouble.empty());
    }

    /** Adds lines as a table. */
    static void table(TextPage page, List<AnovaLine> lines, Texts words, NumberText shown) {
        List<List<String>> cells = new ArrayList<>();
        for (AnovaLine line : lines) {
            cells.add(List.of(
                    line.name,
                    Integer.toString(line.squares.degreesOfFreedom()),
                    shown.sixDigits(line.squares.sumOfSquares()),
                    shown.sixDigits(line.squares.meanSquare()),
                    shown.sixDigits(line.f()),
                    shown.probability(line.p())));
        }
        page.table(
                List.of(
                        words.get("anova.source"),
                        words.get("anova.df"),
                        words.get("anova.ss"),
                        words.get("anova.ms"),
                        words.get("anova.f"),
                        words.get("anova.p")),
                cells);
    }
}

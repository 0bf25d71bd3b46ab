package porebench.desk.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import porebench.desk.form.Numbers;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.FTest;
import porebench.statistics.variance.MeanSquare;
import porebench.statistics.variance.VarianceInterval;

/** Figures of studies in words: three digits that count, a dash where there is no number. */
final class StudyFigures {
    private static final int DIGITS = 3;
    private static final int P_DECIMALS = 4;
    private static final double LEAST_P = 1e-4;
    /** The columns of tables that hold words. */
    private static final Set<String> WORDS = Set.of("", "source", "level", "laboratory");

    private final Texts texts;
    private final Numbers numbers;

    StudyFigures(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
    }

    /** Says a number to three digits that count. */
    String number(double value) {
        if (!Double.isFinite(value)) {
            return texts.get("none");
        }
        return numbers.show(value, Digits.decimals(value, DIGITS));
    }

    String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : texts.get("none");
    }

    /** Says a standard deviation, given as a variance. */
    String root(OptionalDouble variance) {
        return variance.isPresent() ? number(Math.sqrt(variance.getAsDouble())) : texts.get("none");
    }

    /** Says how many are to be expected: in whole numbers, below one to one decimal. */
    String expected(double count) {
        return numbers.show(count, count < 1 ? 1 : 0);
    }

    String percent(double share) {
        return Digits.share(share);
    }

    /** Says a share in %, one that is not known as nothing. */
    String share(OptionalDouble share) {
        return share.isPresent() ? Digits.share(share.getAsDouble()) : texts.get("none");
    }

    /** Says why something is not shown. */
    String why(Judged.Reason reason) {
        return texts.get(
                switch (reason) {
                    case TOO_FEW -> "reason.too-few";
                    case TOO_MANY -> "reason.too-many";
                    case NO_SPREAD -> "reason.no-spread";
                    case WITHIN_ONE_DIVISION -> "reason.within-one-division";
                    case SCALE_TOO_COARSE -> "reason.scale-too-coarse";
                });
    }

    private String p(FTest test) {
        return test.p() < LEAST_P
                ? texts.get("p.small", numbers.show(LEAST_P, P_DECIMALS))
                : numbers.show(test.p(), P_DECIMALS);
    }

    /**
     * Returns a table.
     *
     * @param name its name, which is also the key of its title
     * @param unit of its figures, for the title
     * @param columns the keys of their headings; one of no key has no heading
     */
    StudyShown.Table table(String name, String unit, List<List<String>> rows, String... columns) {
        return new StudyShown.Table(
                name,
                texts.get("table." + name, unit),
                Arrays.stream(columns)
                        .map(key -> new StudyShown.Column(
                                key.isEmpty() ? "" : texts.get("column." + key), !WORDS.contains(key)))
                        .toList(),
                rows);
    }

    /** Returns a row of an analysis of variance. */
    List<String> anovaRow(String name, MeanSquare squares, Judged<FTest> test) {
        Optional<FTest> done = test.meaningful();
        return List.of(
                name,
                Integer.toString(squares.degreesOfFreedom()),
                number(squares.sumOfSquares()),
                number(squares.meanSquare()),
                done.map(known -> number(known.statistic())).orElse(texts.get("none")),
                done.map(this::p).orElse(texts.get("none")));
    }

    /** Returns an analysis of variance. */
    StudyShown.Table anova(List<List<String>> rows) {
        return table("anova", "", rows, "source", "df", "ss", "ms", "f", "p");
    }

    /** Returns the row of a component. */
    List<String> componentRow(
            String name, OptionalDouble variance, Optional<VarianceInterval> interval, OptionalDouble share) {
        List<String> row = new ArrayList<>();
        row.add(name);
        row.add(root(variance));
        Optional<VarianceInterval> roots = interval.map(VarianceInterval::ofRoots);
        row.add(roots.map(known -> number(known.low())).orElse(texts.get("none")));
        row.add(roots.map(known -> number(known.high())).orElse(texts.get("none")));
        row.add(number(variance));
        row.add(share(share));
        return row;
    }

    /** Returns the components. */
    StudyShown.Table components(String unit, List<List<String>> rows) {
        return table("components", unit, rows, "source", "deviation", "low", "high", "variance", "share");
    }
}

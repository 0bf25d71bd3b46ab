package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;
import porebench.statistics.distribution.ChiSquare;
import porebench.statistics.distribution.FRatio;

/** Against the certified values of NIST StRD, analysis of variance (seen), the e-Handbook and JCGM 100. */
class AnovaReferenceTest {
    /** The order of the nine treatments' own tenths in the sets SmLs. */
    private static final int[] TENTHS = {4, 3, 5, 3, 5, 3, 5, 3, 5};

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SiRstv", "AtmWtAg", "SmLs01", "SmLs02", "SmLs03", "SmLs04", "SmLs05", "SmLs06", "SmLs07", "SmLs08",
                "SmLs09"
            })
    void reachesTheCertifiedDigits(String set) {
        ReferenceFile.Row certified = ReferenceFile.read("strd-anova-certified.csv").rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
        NestedAnova anova = analysed(groups(set));

        assertThat(anova.squares().get(0).degreesOfFreedom()).isEqualTo(certified.whole("betweenDegrees"));
        assertThat(anova.squares().get(1).degreesOfFreedom()).isEqualTo(certified.whole("withinDegrees"));
        double floor = certified.number("floor");
        FTest test = anova.tests().get(0).meaningful().orElseThrow();
        assertThat(digits(test.statistic(), certified.number("f"))).isGreaterThanOrEqualTo(floor);
        // The rounding of the data to doubles moves both sums one way and their ratio less.
        assertThat(digits(anova.squares().get(0).sumOfSquares(), certified.number("betweenSquares")))
                .isGreaterThanOrEqualTo(floor - 1);
        assertThat(digits(anova.squares().get(1).sumOfSquares(), certified.number("withinSquares")))
                .isGreaterThanOrEqualTo(floor - 1);
    }

    /** Analyses groups as the product does, as one layer of named groups. */
    private static NestedAnova analysed(List<double[]> groups) {
        List<List<String>> paths = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            paths.addAll(Collections.nCopies(groups.get(group).length, List.of("group " + group)));
        }
        return NestedAnova.of(NestedValues.of(
                paths, groups.stream().flatMapToDouble(Arrays::stream).toArray()));
    }

    private static List<double[]> groups(String set) {
        return switch (set) {
            case "SiRstv" -> values("strd-anova-sirstv.csv");
            case "AtmWtAg" -> values("strd-anova-atmwtag.csv");
            default -> made(Integer.parseInt(set.substring(4)));
        };
    }

    private static List<double[]> values(String file) {
        return ReferenceFile.read(file).rows().stream()
                .map(row -> row.numbers("values"))
                .toList();
    }

    /**
     * Makes a set by its rule, as read from the files of NIST: 21, 201 or 2001 values a treatment; a treatment begins with its
     * own value and then takes a tenth less and a tenth more in turn; on 1, a million or a million millions.
     */
    private static List<double[]> made(int number) {
        int size = new int[] {21, 201, 2001}[(number - 1) % 3];
        BigDecimal base = BigDecimal.ONE.movePointRight(6 * ((number - 1) / 3));
        List<double[]> groups = new ArrayList<>();
        for (int tenths : TENTHS) {
            double[] group = new double[size];
            for (int i = 0; i < size; i++) {
                int step = i == 0 ? 0 : i % 2 == 1 ? -1 : 1;
                group[i] = base.add(BigDecimal.valueOf(tenths + step, 1)).doubleValue();
            }
            groups.add(group);
        }
        return groups;
    }

    /** The log relative error of NIST: how many digits agree. */
    private static double digits(double value, double certified) {
        double relative = Math.abs(value - certified) / Math.abs(certified);
        return relative == 0 ? 17 : -Math.log10(relative);
    }

    /** NIST/SEMATECH e-Handbook 1.3.5.4 prints F 2.2969, 0.000729 and 0.003174; further digits and p by R 4.2.2. */
    @Test
    void analysesTheGearsOfTheHandbook() {
        NestedAnova anova = analysed(values("anova-gear.csv"));
        FTest test = anova.tests().get(0).meaningful().orElseThrow();
        assertThat(test.statistic())
                .isCloseTo(2.2969, within(0.00005))
                .isCloseTo(2.29691241335851, withPercentage(1e-7));
        assertThat(test.p()).isCloseTo(0.0226608192786429, withPercentage(1e-7));
        assertThat(anova.squares().get(0).sumOfSquares()).isCloseTo(0.000729, within(0.0000005));
        assertThat(anova.squares().get(1).sumOfSquares()).isCloseTo(0.003174, within(0.0000005));
    }

    /**
     * JCGM 100:2008, H.5 (recalled). Five readings with the printed mean m and standard deviation s are m - s, m - s, m, m +
     * s, m + s. The component between days is sqrt((sa^2 - sb^2) / 5) = 42.6, the mean's uncertainty sa / sqrt 50 = 18.05.
     */
    @Test
    void findsWhatVariesBetweenDaysOfAVoltageStandard() {
        List<double[]> days = new ArrayList<>();
        List<List<String>> paths = new ArrayList<>();
        for (ReferenceFile.Row row : ReferenceFile.read("gum-voltage-days.csv").rows()) {
            double mean = row.number("mean");
            double s = row.number("standardDeviation");
            days.add(new double[] {mean - s, mean - s, mean, mean + s, mean + s});
            for (int i = 0; i < 5; i++) {
                paths.add(List.of(row.text("day")));
            }
        }
        assertThat(analysed(days).tests().get(0).meaningful().orElseThrow().statistic())
                .isCloseTo(2.2615192699707953, withPercentage(1e-9));
        VarianceLayers layers = VarianceLayers.of(
                        paths,
                        0.95,
                        days.stream().flatMapToDouble(Arrays::stream).toArray())
                .meaningful()
                .orElseThrow();
        assertThat(Math.sqrt(layers.layers().get(0).variance().orElseThrow()))
                .isCloseTo(42.638610567314586, withPercentage(1e-7));
        assertThat(Math.sqrt(layers.meanVariance())).isCloseTo(18.05328532736109, withPercentage(1e-7));
        assertThat(layers.mean()).isCloseTo(97.1, withPercentage(1e-9));
    }

    @Test
    void findsPointsOfFAndChiSquare() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("f-chi-square-points.csv").rows()) {
            double tail = row.number("upperTail");
            double point = row.number("point");
            if (row.text("distribution").equals("f")) {
                FRatio f = new FRatio(row.number("numerator"), row.number("denominator"));
                assertThat(f.upperPoint(tail)).as(row.toString()).isCloseTo(point, withPercentage(1e-7));
                assertThat(f.upperTail(point)).as(row.toString()).isCloseTo(tail, withPercentage(1e-7));
            } else {
                ChiSquare chiSquare = new ChiSquare(row.number("numerator"));
                assertThat(chiSquare.upperPoint(tail)).as(row.toString()).isCloseTo(point, withPercentage(1e-7));
                assertThat(chiSquare.upperTail(point)).as(row.toString()).isCloseTo(tail, withPercentage(1e-7));
            }
        }
    }
}

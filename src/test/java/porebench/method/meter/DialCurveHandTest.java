package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.ReferenceFile;
import porebench.method.Answer;
import porebench.method.RoundingRule;
import porebench.method.Said;
import porebench.method.Ties;
import porebench.method.WaterDensity;
import porebench.method.profile.Profiles;
import porebench.quantity.MassUnit;
import porebench.quantity.Temperature;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** The curve of a dial, by pencil and against a manual's table. */
class DialCurveHandTest {
    private static final Volume BOWL = Volume.of(7, VolumeUnit.LITRE);
    /** 350 mL of 7 L are 5 %, 700 mL are 10 %: errors +0.1 and +0.3 %. */
    private static final DialCurve CURVE = curve(Fills.millilitres("350", "5.1", "700", "10.3"));

    private static Answer<DialCurve> answer(DialCheck check) {
        return DialCurve.of(check, BOWL, 0.1, Profiles.standard());
    }

    private static DialCurve curve(DialCheck check) {
        return answer(check).value().orElseThrow();
    }

    /**
     * Iowa DOT I.M. 318 (seen), printed to 0.05 %: one vessel of 0.0125 ft3 in four bowls; two vessels are twice that. The
     * vessel's water is weighed at 23 C.
     */
    @Test
    void reckonsTheAirOfAVesselAsAManualPrintsIt() {
        double density = WaterDensity.at(new Temperature(23)).kilogramsPerCubicMetre();
        RoundingRule printed = new RoundingRule(new BigDecimal("0.05"), Ties.TO_EVEN, "I.M. 318, table");
        for (ReferenceFile.Row row : ReferenceFile.read("withdrawal-vessel.csv").rows()) {
            double grams =
                    Volume.of(row.number("vessel_ft3"), VolumeUnit.CUBIC_FOOT).cubicMetres() * density * 1000;
            DialCheck check = new DialCheck(
                    Optional.of(new Typed<>(BigDecimal.valueOf(grams), MassUnit.GRAM)),
                    Fills.number("23"),
                    List.of(
                            Fills.point("1", CheckAmount.Unit.VESSELS, "5.1"),
                            Fills.point("2", CheckAmount.Unit.VESSELS, "10.2")),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
            DialCurve curve = DialCurve.of(
                            check, Volume.of(row.number("bowl_ft3"), VolumeUnit.CUBIC_FOOT), 0.1, Profiles.standard())
                    .value()
                    .orElseThrow();
            double one = curve.knots().get(0).truePercent();
            assertThat(one).isCloseTo(row.number("exact_pct"), offset(0.0005));
            assertThat(printed.round(one)).isEqualTo(new BigDecimal(row.text("printed_pct")));
            assertThat(curve.knots().get(1).truePercent()).isCloseTo(2 * one, offset(1e-9));
        }
    }

    /** 350 g of water at 20 C in 7 L: 350 / 0.99820675 / 70 = 5.008982 %. */
    @Test
    void reckonsWithEveryWayOfMeasuringWater() {
        DialCheck check = new DialCheck(
                Optional.empty(),
                Fills.number("20"),
                List.of(
                        Fills.point("0", CheckAmount.Unit.MILLILITRE, "0.0"),
                        Fills.point("350", CheckAmount.Unit.GRAM, "5.0"),
                        Fills.point("9.5", CheckAmount.Unit.PERCENT, "9.5"),
                        Fills.point("700", CheckAmount.Unit.MILLILITRE, "10.0")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(curve(check).knots().stream().map(DialCurve.Knot::truePercent))
                .satisfiesExactly(
                        zero -> assertThat(zero).isZero(),
                        grams -> assertThat(grams).isCloseTo(5.008982, offset(2e-6)),
                        percent -> assertThat(percent).isEqualTo(9.5),
                        millilitres -> assertThat(millilitres).isCloseTo(10, offset(1e-9)));
    }

    /** Half way from 5.1 to 10.3 lies 7.7, and half way from 5 to 10 lies 7.5. */
    @Test
    void correctsAReadingAlongTheCurveAndBack() {
        DialCurve.Corrected corrected = CURVE.trueOf(7.7);
        assertThat(corrected.truePercent()).isCloseTo(7.5, offset(1e-9));
        assertThat(corrected.correctionPercent()).isCloseTo(-0.2, offset(1e-9));
        assertThat(corrected.readingPercent()).isEqualTo(7.7);
        assertThat(corrected.isExtrapolated()).isFalse();
        assertThat(CURVE.readingOf(7.5)).isCloseTo(7.7, offset(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"4.0, 3.9, true", "5.1, 5.0, false", "10.3, 10.0, false", "11.0, 10.7, true", "0.0, -0.1, true"})
    void holdsTheErrorOfTheNearestPointBeyondTheLastAndSaysSo(double reading, double truth, boolean isExtrapolated) {
        DialCurve.Corrected corrected = CURVE.trueOf(reading);
        assertThat(corrected.truePercent()).isCloseTo(truth, offset(1e-9));
        assertThat(corrected.isExtrapolated()).isEqualTo(isExtrapolated);
        assertThat(CURVE.readingOf(truth)).isCloseTo(reading, offset(1e-9));
    }

    /**
     * <pre>
     * at a point:  scale 0.1 / sqrt(12) = 0.0288675; amount 1 mL = 0.0142857 %, / sqrt(12) = 0.0041239; together 0.0291606
     * half way:    sqrt((0.0291606 / 2)^2 + (0.0291606 / 2)^2) = 0.0206197
     * at 11.0:     the error rose by 0.2 over 5.2, so by 0.0269231 over 0.7; sqrt(0.0291606^2 + 0.0269231^2) = 0.0396887
     * </pre>
     */
    @Test
    void saysHowUncertainTheCorrectionIs() {
        assertThat(CURVE.trueOf(5.1).standardUncertaintyPercent()).isCloseTo(0.0291606, offset(1e-7));
        assertThat(CURVE.trueOf(7.7).standardUncertaintyPercent()).isCloseTo(0.0206197, offset(1e-7));
        assertThat(CURVE.trueOf(11.0).standardUncertaintyPercent()).isCloseTo(0.0396887, offset(1e-7));
    }

    /**
     * Repeats 5.0, 5.2 and 9.9, 10.1 of two amounts: means 5.1 and 10.0; pooled s2 = (0.02 + 0.02) / 2 = 0.02.
     *
     * <pre>
     * u = sqrt(0.02 / 2 + 0.0288675^2 + 0.0041239^2) = sqrt(0.01 + 0.00085034) = 0.104165
     * </pre>
     */
    @Test
    void takesRepeatsOfOneAmountAsOnePoint() {
        DialCurve repeated = curve(Fills.millilitres("350", "5.0", "350", "5.2", "700", "9.9", "700", "10.1"));
        assertThat(repeated.knots()).hasSize(2);
        DialCurve.Knot first = repeated.knots().get(0);
        assertThat(first.readingPercent()).isCloseTo(5.1, offset(1e-12));
        assertThat(first.count()).isEqualTo(2);
        assertThat(first.errorPercent()).isCloseTo(0.1, offset(1e-12));
        assertThat(first.standardUncertaintyPercent()).isCloseTo(0.104165, offset(1e-6));
    }

    /** ASTM C231 (recalled): within 0.1 %, which is still within. */
    @Test
    void passesAtTheToleranceAndFailsBeyondIt() {
        assertThat(CURVE.tolerancePercent()).isEqualTo(0.1);
        assertThat(CURVE.toleranceClause()).contains("C231");
        assertThat(CURVE.passes(CURVE.knots().get(0))).isTrue();
        assertThat(CURVE.passes(CURVE.knots().get(1))).isFalse();
        assertThat(CURVE.passes()).isFalse();
        assertThat(CURVE.largestError().value()).isCloseTo(0.3, offset(1e-9));
        assertThat(curve(Fills.millilitres("350", "4.9", "700", "10.1")).passes())
                .isTrue();
        Answer<DialCurve> off = answer(Fills.millilitres("350", "5.0", "700", "10.3"));
        assertThat(Said.text(Said.one(off.problems(), "meter.dial-off")))
                .isEqualTo("The dial is off by 0.3 % at the worst, more than 0.1 %. Set the initial pressure "
                        + "line or the dial, and check again.");
    }

    @Test
    void refusesToBeACurveThatCannotBeGoneAlong() {
        DialCurve.Knot low = new DialCurve.Knot(5, 5.1, 1, 0.03);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DialCurve(List.of(low), 0.1, "ours"))
                .withMessage("count of knots must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DialCurve(List.of(low, new DialCurve.Knot(10, 5.1, 1, 0.03)), 0.1, "ours"))
                .withMessage("rise of the reading at knot 1 must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DialCurve(List.of(low, new DialCurve.Knot(5, 10, 1, 0.03)), 0.1, "ours"))
                .withMessage("rise of the true air at knot 1 must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> CURVE.trueOf(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> CURVE.readingOf(Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> new DialCurve.Knot(5, 5, 0, 0.03));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DialCurve.of(
                        Fills.millilitres("350", "5.1", "700", "10.3"), new Volume(0), 0.1, Profiles.standard()))
                .withMessage("bowl must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DialCurve.of(Fills.millilitres(), BOWL, 0, Profiles.standard()))
                .withMessage("divisionPercent must be greater than 0, but is 0.0");
    }
}

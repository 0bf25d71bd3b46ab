package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.budget.BudgetPart;
import porebench.method.budget.Capability;
import porebench.method.budget.Origin;
import porebench.method.meter.MeterCheck;
import porebench.method.simulate.Fault;
import porebench.method.trial.Scatter;
import porebench.method.trial.StopRule;
import porebench.quantity.Symbolic;
import porebench.statistics.control.RunRule;

/** Lab books, files and other programs hold these words: whoever renames a constant changes what they mean. */
class SymbolsTest {
    static Stream<Arguments> symbols() {
        return Stream.of(
                arguments(
                        FigureName.values(),
                        "factor-step factor-ties air-step air-ties high-air-looks-at high-air-above "
                                + "carry-rounded-factor advise-volumetric-from usual-factor-below factor-low "
                                + "factor-high second-person factor-steps least-bowl mass-tolerance soak-tolerance "
                                + "withdrawal-tolerance scale-top repeatability field-scatter least-trials "
                                + "half-width recheck-months recheck-notice-days recheck-lots recheck-tonnes "
                                + "recheck-production-days recheck-notice-share recheck-seasons proportion-tolerance "
                                + "air-tolerance bowl-shape-low "
                                + "bowl-shape-high dial-tolerance leak-marks expansion-limit elevation-limit "
                                + "chamber-drift calibration-months bowl-months calibration-notice-days "
                                + "calibrate-each-project cylinder-limit balance-limit vessel-limit one-measure"),
                arguments(Mark.values(), "seen recalled derived laboratory"),
                arguments(MoistureState.values(), "ssd oven-dry stock"),
                arguments(Role.values(), "cement scm water admixture fine coarse"),
                arguments(Capability.Standing.values(), "ample takes-part too-wide"),
                arguments(
                        Origin.values(),
                        "scatter laboratory-scatter other-trials profile laboratory division digits "
                                + "calibration equipment assumed budget"),
                arguments(
                        BudgetPart.values(),
                        "repeatability occasions field-scatter reading released dial dial-measure bowl "
                                + "water water-measure share share-measure sample factor rounding"),
                arguments(MeterCheck.Subject.values(), "bowl-volume bowl-shape dial-error leak expansion elevation"),
                arguments(Fault.values(), "leak line foam soak"),
                arguments(Scatter.Basis.values(), "laboratory own own-wider"),
                arguments(StopRule.Advice.values(), "enough more not-yet-known out-of-reach"),
                arguments(EquipmentKind.values(), "balance cylinder thermometer vessel"),
                arguments(FactorIssue.Action.values(), "issued withdrawn"),
                arguments(FactorOrigin.values(), "here imported confirmed"),
                arguments(KeptStudy.Layout.values(), "operators layers laboratories"),
                arguments(MeterCalibration.Reason.values(), "routine repair project season doubt"),
                arguments(
                        RunRule.values(),
                        "beyond-limits two-of-three four-of-five eight-on-one-side nine-on-one-side "
                                + "six-in-a-trend fourteen-alternating fifteen-within-one eight-beyond-one"));
    }

    @ParameterizedTest
    @MethodSource("symbols")
    void aConstantKeepsTheWordByWhichDataKnowsIt(Symbolic[] constants, String words) {
        assertThat(Arrays.stream(constants).map(Symbolic::symbol)).containsExactly(words.split(" "));
    }
}

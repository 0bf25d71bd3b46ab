package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a figure of a profile may be. */
class FigureNameTest {
    @ParameterizedTest
    @EnumSource(FigureName.class)
    void isFoundByItsKeyAndHasAUnitOrWords(FigureName name) {
        assertThat(FigureName.ofKey(name.symbol())).contains(name);
        assertThat(name.unit().isEmpty()).isEqualTo(!name.words().isEmpty());
        assertThat(name.symbol()).matches("[a-z]+(-[a-z]+)*");
    }

    @Test
    void hasAKeyOfItsOwnEach() {
        List<String> keys =
                Arrays.stream(FigureName.values()).map(FigureName::symbol).toList();
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(FigureName.ofKey("no-such-figure")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = FigureName.class,
            names = {"FACTOR_TIES", "AIR_TIES", "HIGH_AIR_LOOKS_AT", "CARRY_ROUNDED_FACTOR", "CALIBRATE_EACH_PROJECT"})
    void takesEachOfItsWordsAndNoOther(FigureName name) {
        assertThat(name.words())
                .hasSizeGreaterThan(1)
                .allMatch(word -> name.check(word).isEmpty());
        Problem problem = name.check("sometimes").orElseThrow();
        assertThat(problem.isError()).isTrue();
        assertThat(Said.text(problem))
                .isEqualTo(name.symbol() + ": sometimes must be one of " + String.join(", ", name.words())
                        + ". Choose one of them.");
    }

    @ParameterizedTest
    @CsvSource({
        "FACTOR_STEP, 0.01, 1, 0.0099, 1.01",
        "AIR_STEP, 0.01, 1, 0, 1.0001",
        "HIGH_AIR_ABOVE, 0, 100, -0.1, 100.1",
        "ADVISE_VOLUMETRIC_FROM, 0.1, 10, 0.09, 10.1",
        "USUAL_FACTOR_BELOW, 0.1, 10, 0.09, 10.1",
        "LEAST_BOWL, 0.5, 50, 0.49, 51",
        "MASS_TOLERANCE, 0.01, 20, 0, 20.1",
        "SOAK_TOLERANCE, 0, 120, -1, 121",
        "WITHDRAWAL_TOLERANCE, 0.1, 10, 0, 11",
        "SCALE_TOP, 1, 100, 0.9, 101",
        "REPEATABILITY, 0.001, 5, 0, 5.1",
        "FIELD_SCATTER, 0.01, 5, 0.009, 5.1",
        "LEAST_TRIALS, 1, 20, 0, 21",
        "HALF_WIDTH, 0.001, 1, 0, 1.1",
        "RECHECK_MONTHS, 1, 120, 0, 121",
        "RECHECK_NOTICE_DAYS, 0, 365, -1, 366",
        "RECHECK_LOTS, 0, 1000, -1, 1001",
        "RECHECK_TONNES, 0, 10000000, -1, 10000001",
        "RECHECK_PRODUCTION_DAYS, 0, 3650, -1, 3651",
        "RECHECK_NOTICE_SHARE, 1, 100, 0.9, 101",
        "PROPORTION_TOLERANCE, 0, 50, -0.1, 51",
        "AIR_TOLERANCE, 0.1, 10, 0, 11",
        "BOWL_SHAPE_LOW, 0.1, 10, 0.09, 10.1",
        "BOWL_SHAPE_HIGH, 0.1, 10, 0.09, 10.1",
        "DIAL_TOLERANCE, 0.01, 2, 0, 2.1",
        "LEAK_MARKS, 0, 10, -0.1, 10.1",
        "EXPANSION_LIMIT, 0, 2, -0.1, 2.1",
        "ELEVATION_LIMIT, 1, 2000, 0, 2001",
        "CHAMBER_DRIFT, 0.1, 20, 0, 21",
        "CALIBRATION_MONTHS, 1, 120, 0, 121",
        "BOWL_MONTHS, 1, 120, 0, 121",
        "CALIBRATION_NOTICE_DAYS, 0, 365, -1, 366",
        "CYLINDER_LIMIT, 0.01, 50, 0, 51",
        "BALANCE_LIMIT, 0.001, 100, 0, 101",
        "VESSEL_LIMIT, 0.001, 1, 0, 1.1"
    })
    void takesItsBoundsAndNothingBeyond(FigureName name, String low, String high, String below, String above) {
        assertThat(name.check(low)).isEmpty();
        assertThat(name.check(high)).isEmpty();
        assertThat(name.check(below)).isPresent();
        assertThat(name.check(above)).isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "LEAST_TRIALS, 2.5",
        "RECHECK_MONTHS, 0.5e1.5",
        "RECHECK_NOTICE_DAYS, 30.1",
        "CALIBRATION_MONTHS, 2.5",
        "RECHECK_LOTS, 2.5"
    })
    void takesWholeNumbersOnlyWhereThingsAreCounted(FigureName name, String value) {
        assertThat(name.check(value)).isPresent();
        assertThat(name.check("3.0")).isEmpty();
        assertThat(name.check("1e1")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"'0,1'", "0.1 %", "many", "NaN", "''", "1 2"})
    void refusesWhatIsNoPlainNumber(String value) {
        Problem problem = FigureName.AIR_STEP.check(value).orElseThrow();
        assertThat(Said.text(problem))
                .isEqualTo("air-step: " + value + " must be a number from 0.01 to 1 % air. Correct it.");
    }

    @Test
    void keepsAFigureWithoutTheBlanksAroundItAndNeverWithoutAClause() {
        assertThat(new Figure(" 0.1 ", "a clause", Mark.SEEN).value()).isEqualTo("0.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Figure(" ", "a clause", Mark.SEEN))
                .withMessage("value must not be blank, but is \" \"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Figure("0.1", "", Mark.SEEN))
                .withMessage("clause must not be blank, but is \"\"");
    }
}

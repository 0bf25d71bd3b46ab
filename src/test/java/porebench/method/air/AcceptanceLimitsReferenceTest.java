package porebench.method.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.ReferenceFile;

/** Against the worked examples of JCGM 106. */
class AcceptanceLimitsReferenceTest {
    static Stream<ReferenceFile.Row> rows() {
        return ReferenceFile.read("conformance.csv").rows().stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theProbabilityOfConformityIsThatOfTheExample(ReferenceFile.Row row) {
        AcceptanceLimits limits =
                new AcceptanceLimits(new BigDecimal(row.text("low")), new BigDecimal(row.text("high")), 0);
        assertThat(limits.conforming(row.number("measured"), row.number("standard")))
                .isCloseTo(row.number("probability"), within(0.005));
    }
}

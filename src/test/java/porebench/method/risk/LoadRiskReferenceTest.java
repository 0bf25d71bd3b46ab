package porebench.method.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.ReferenceFile;

/** Against the integrals of JCGM 106 in R 4.2.2. */
class LoadRiskReferenceTest {
    static Stream<ReferenceFile.Row> rows() {
        return ReferenceFile.read("load-risk.csv").rows().stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheIntegral(ReferenceFile.Row row) {
        LoadRisk risk = LoadRisk.of(
                new AirLimits(row.number("target"), row.number("tolerance")),
                new Loads(row.number("mean"), row.number("spread"), row.number("readingSpread")),
                row.number("error"));
        assertThat(risk.wronglyPassed()).isCloseTo(row.number("wronglyPassed"), within(1e-11));
        assertThat(risk.wronglyFailed()).isCloseTo(row.number("wronglyFailed"), within(1e-11));
    }
}

package porebench.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of a plan, which the window, the sheet and the command line share. */
class PlanTextTest {
    @Test
    void hasATextForEverythingItSaysAndNoMore() throws Exception {
        Set<String> used = new HashSet<>();
        Stream.of(Need.values()).forEach(need -> used.add("need." + need.symbol()));
        Stream.of(PlannedTest.Placing.values()).forEach(placing -> used.add("placing." + placing.symbol()));
        Stream.of(LoadsAtRisk.Cause.values()).forEach(cause -> used.add("risk." + cause.symbol()));
        Matcher literals = Pattern.compile("\"(short\\.[a-z-]+)\"")
                .matcher(Files.readString(Path.of("src/main/java/porebench/evidence/plan/PlanText.java")));
        while (literals.find()) {
            used.add(literals.group(1));
        }
        assertThat(used)
                .isEqualTo(ResourceBundle.getBundle("porebench.evidence.plan.plan", Locale.ROOT)
                        .keySet());
    }

    /** 0.0225 x 80 = 1.8. */
    @Test
    void saysInSpanishToo() {
        LoadsAtRisk risk = new LoadsAtRisk(
                OptionalDouble.of(80),
                LoadsAtRisk.Cause.SPREAD,
                OptionalDouble.of(0.125),
                0,
                OptionalDouble.of(0.0225));
        assertThat(PlanText.in(Locale.forLanguageTag("es")).say(risk))
                .isEqualTo(
                        "Probablemente 1,8 de 80 cargas por semana mal juzgadas: error 0,12 % de aire, lo que difieren aquí las determinaciones.");
        assertThat(PlanText.in(Locale.forLanguageTag("es")).say(Need.NO_MORE)).isEqualTo("ya no necesita ensayo");
    }

    /** 0.0001 x 80 = 0.008 is said to be less than 0.01; 0.000125 x 80 = 0.01 is not. */
    @Test
    void aLoadInYearsIsNotSaidWithDigits() {
        PlanText text = PlanText.in(Locale.ENGLISH);
        assertThat(text.brief(spread(0.0001))).isEqualTo("< 0.01 of 80");
        assertThat(text.brief(spread(0.000125))).isEqualTo("0.010 of 80");
        assertThat(text.brief(spread(0))).isEqualTo("0 of 80");
    }

    private static LoadsAtRisk spread(double share) {
        return new LoadsAtRisk(
                OptionalDouble.of(80), LoadsAtRisk.Cause.SPREAD, OptionalDouble.of(0.125), 0, OptionalDouble.of(share));
    }
}

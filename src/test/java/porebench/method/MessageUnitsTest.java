package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

class MessageUnitsTest {
    private static final ZoneId ZONE = ZoneId.of("UTC");
    private static final Pattern SI = Pattern.compile("\\} ?(L|C|kPa|kg|kg/m3|m3|m|g)(?![\\p{L}\\w/])");

    private boolean isUs = true;
    private final ProblemText english = ProblemText.in(Locale.US, ZONE, () -> isUs);

    /** By NIST SP 811 (2008), appendix B, recalled: 1 ft3 is 28.316846592 L, 1 psi 6.894757 kPa, 1 ft 0.3048 m. */
    @Test
    void bothHalvesOfAMessageAreReadInUsUnits() {
        Problem water = Problem.error(
                "water", "trial.water-impossible", 440.0, Limit.WATER.lowInclusive(), Limit.WATER.highInclusive());
        assertThat(english.say(water))
                .isEqualTo("Water of 824 F is not possible: it must be from -4 to 212 F. Check the "
                        + "temperature and its unit.");
        assertThat(english.say(Problem.error(
                        "bowl",
                        "trial.bowl-impossible",
                        Typed.of("705", VolumeUnit.LITRE),
                        Limit.BOWL.lowInclusive(),
                        Limit.BOWL.highInclusive())))
                .isEqualTo("A bowl of 24.9 ft3 is not possible: it must hold from 0.01766 to 1.766 ft3. Check the "
                        + "volume and its unit.");
        assertThat(english.say(Problem.error(
                        "pressure",
                        "meter.pressure-out-of-range",
                        Typed.of("30", PressureUnit.POUND_PER_SQUARE_INCH),
                        690.0)))
                .contains("of 30 psi must be greater than 0 and at most 100.1 psi");
        isUs = false;
        assertThat(english.say(water)).contains("440 C", "from -20 to 100 C");
    }

    @ParameterizedTest
    @CsvSource({"en-US", "es-US", "es-ES", "fr-US", "de-US"})
    void noMessageHasASiUnitBehindAPlaceForAReaderOfUsUnits(String tag) {
        Texts texts = Texts.of("porebench.method.problems", Locale.forLanguageTag(tag));
        List<String> left = new ArrayList<>();
        int turned = 0;
        for (String key : texts.keys()) {
            String pattern = texts.plain(key);
            MessageUnits us = MessageUnits.us(pattern, List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0));
            turned += us.pattern().equals(pattern) ? 0 : 1;
            if (SI.matcher(us.pattern()).find()) {
                left.add(key);
            }
        }
        assertThat(left).isEmpty();
        assertThat(turned).isGreaterThan(30);
    }

    /** A number before "bis" or "à" is turned as the one before "to" is: else a reader saw litres beside cubic feet. */
    @ParameterizedTest
    @CsvSource({"es-US", "es-ES", "fr-US", "de-US"})
    void everyLanguageTurnsTheSameNumbers(String tag) {
        List<Object> ones = List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0);
        Texts english = Texts.of("porebench.method.problems", Locale.US);
        Texts other = Texts.of("porebench.method.problems", Locale.forLanguageTag(tag));
        for (String key : english.keys()) {
            assertThat(MessageUnits.us(other.plain(key), ones).values())
                    .as(key)
                    .isEqualTo(MessageUnits.us(english.plain(key), ones).values());
        }
    }

    /** A number before "to" has the unit behind the last; a unit that is not behind a number stays as it is. */
    @Test
    void everyNumberOfARangeIsTurned() {
        MessageUnits range = MessageUnits.us("from {0} to {1} m, {2} %, {3} min", List.of(0.3048, 3.048, 5.0, 15.0));
        assertThat(range.pattern()).isEqualTo("from {0} to {1} ft, {2} %, {3} min");
        assertThat(range.values()).containsExactly(1.0, 10.0, 5.0, 15.0);
    }
}

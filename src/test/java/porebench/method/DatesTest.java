package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DatesTest {
    @Test
    void dayAndMinuteAreYearMonthDay() {
        assertThat(Dates.day(LocalDate.of(2026, 6, 12))).isEqualTo("2026-06-12");
        assertThat(Dates.minute(LocalDateTime.of(2026, 6, 12, 9, 5))).isEqualTo("2026-06-12 09:05");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "en-US", "es-ES", "es-MX", "ar-EG", "th-TH-u-ca-buddhist"})
    void aMomentReadsTheSameInEveryLanguageButForItsZone(String language) {
        assertThat(Dates.moment(
                        Instant.parse("2026-06-12T09:05:30Z"), ZoneId.of("UTC"), Locale.forLanguageTag(language)))
                .startsWith("2026-06-12 09:05:30 ");
    }
}

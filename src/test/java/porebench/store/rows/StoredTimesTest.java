package porebench.store.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What it tells is what {@code parse} of the Java library tells of the same text: that is the outside of every line here. */
class StoredTimesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-29T12:45",
                "2024-02-29T00:00",
                "2000-02-29T23:59",
                "0000-01-01T00:00",
                "9999-12-31T23:59",
                "2026-11-29T12:45:07",
                "2026-11-29T12:45:07.123456789",
                "+12026-11-29T12:45",
                "-0044-03-15T12:00"
            })
    void aMomentIsAsTheLibraryReadsIt(String text) {
        assertThat(StoredTimes.moment(text)).isEqualTo(LocalDateTime.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-11-29",
                "2026-11-29T12:4x",
                "2026-11-29T1 :45",
                "2026-02-29T12:45",
                "2026-11-31T12:45",
                "2026-13-01T12:45",
                "2026-00-01T12:45",
                "2026-01-00T12:45",
                "2026-11-29T24:00",
                "2026-11-29T12:60",
                "2026/11-29T12:45",
                "2026-11/29T12:45",
                "2026-11-29 12:45",
                "2026-11-29T12.45",
                "2026-11-29T12:-1",
                "2026-11-29T\u0661\u0662:45"
            })
    void whatIsNoMomentFailsAsTheLibraryFails(String text) {
        assertThatThrownBy(() -> LocalDateTime.parse(text)).isInstanceOf(DateTimeParseException.class);
        assertThatThrownBy(() -> StoredTimes.moment(text)).isInstanceOf(DateTimeParseException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-29T12:45:07Z",
                "2026-11-29T12:45:07.1Z",
                "2026-11-29T12:45:07.012Z",
                "2026-11-29T12:45:07.000001Z",
                "2026-11-29T12:45:07.123456789Z",
                "2024-02-29T23:59:59.999Z",
                "2026-11-29T24:00:00Z",
                "2026-11-29T12:45:07.Z",
                "1969-12-31T23:59:59.5Z"
            })
    void anInstantIsAsTheLibraryReadsIt(String text) {
        assertThat(StoredTimes.instant(text)).isEqualTo(Instant.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-11-29T12:45:07",
                "2026-11-29T12:45:7xZ",
                "2026-11-29T12:45-07Z",
                "2026-02-30T12:45:07Z",
                "2026-11-29T12:45:61Z",
                "2026-11-29T12:45:07,1Z",
                "2026-11-29T12:45:07.1234567890Z",
                "2026-11-29T12:45:07.12x4Z",
                "2026-11-29T12:45:07z."
            })
    void whatIsNoInstantFailsAsTheLibraryFails(String text) {
        assertThatThrownBy(() -> Instant.parse(text)).isInstanceOf(DateTimeParseException.class);
        assertThatThrownBy(() -> StoredTimes.instant(text)).isInstanceOf(DateTimeParseException.class);
    }

    @Test
    void everyMinuteOfALeapYearsLastDaysIsRead() {
        LocalDateTime from = LocalDateTime.of(2028, 2, 27, 0, 0);
        for (LocalDateTime one = from; one.isBefore(from.plusDays(4)); one = one.plusMinutes(7)) {
            assertThat(StoredTimes.moment(one.toString())).isEqualTo(one);
        }
    }
}

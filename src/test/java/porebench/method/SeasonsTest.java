package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SeasonsTest {
    @ParameterizedTest
    @CsvSource({
        "none, 2026-03-01, ",
        "'04-01,10-01', 2026-03-31, 2026-04-01",
        "'04-01,10-01', 2026-04-01, 2026-10-01",
        "'10-01, 04-01', 2026-12-31, 2027-04-01",
        "01-01, 2026-01-01, 2027-01-01",
        "12-31, 2026-12-30, 2026-12-31"
    })
    void theNextSeasonBeginsAfterADay(String text, LocalDate day, LocalDate expected) {
        assertThat(Seasons.parse(text).orElseThrow().firstAfter(day).orElse(null))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "April", "4-1", "04/01", "13-01", "02-30", "02-29", "04-01,", "04-01,04-01", "None"})
    void refusesWhatIsNoDayOfEveryYear(String text) {
        assertThat(Seasons.parse(text)).isEmpty();
        assertThat(Said.text(FigureName.RECHECK_SEASONS.check(text).orElseThrow()))
                .isEqualTo("recheck-seasons: " + text
                        + " are not days of the year. Write days such as 04-01,10-01, each once, or none.");
    }

    @Test
    void takesTwelveDaysAndNoMore() {
        String twelve = "01-01,02-01,03-01,04-01,05-01,06-01,07-01,08-01,09-01,10-01,11-01,12-01";
        assertThat(FigureName.RECHECK_SEASONS.check(twelve)).isEmpty();
        assertThat(FigureName.RECHECK_SEASONS.check("none")).isEmpty();
        assertThat(FigureName.RECHECK_SEASONS.check(twelve + ",12-15")).isPresent();
    }
}

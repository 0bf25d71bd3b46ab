package porebench.chart.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Date;
import java.util.TimeZone;
import org.jfree.chart.axis.DateTickUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateMarksTest {
    @ParameterizedTest
    @CsvSource({"1, 2026-06-12", "13, 2026-06-12", "40, 2026-06", "150, 2026-06", "300, 2026", "9000, 2026"})
    void marksAreWrittenAsDatesAreEverywhere(int days, String written) {
        DateTickUnit mark =
                (DateTickUnit) DateMarks.in(TimeZone.getTimeZone("UTC")).getCeilingTickUnit(days * 86_400_000.0);
        assertThat(mark.dateToString(Date.from(Instant.parse("2026-06-12T09:00:00Z"))))
                .isEqualTo(written);
    }
}

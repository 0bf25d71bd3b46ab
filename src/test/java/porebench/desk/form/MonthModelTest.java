package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** November 2026 begins on a Sunday (29 November 2026 is a Sunday, 28 days after the 1st). */
class MonthModelTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 29);

    private static MonthModel in(Locale locale) {
        return MonthModel.of(DAY, locale);
    }

    @Test
    void aWeekBeginsAsTheLocaleSays() {
        MonthModel american = in(Locale.US);
        assertThat(american.weekDays()).hasSize(7).startsWith("Sun");
        assertThat(american.days()).hasSize(42).startsWith(LocalDate.of(2026, 11, 1));
        MonthModel german = in(Locale.GERMANY);
        assertThat(german.days().get(0)).isEqualTo(LocalDate.of(2026, 10, 26));
        assertThat(german.days().get(0).getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        assertThat(in(Locale.forLanguageTag("es-MX")).days().get(0).getDayOfWeek())
                .isEqualTo(DayOfWeek.SUNDAY);
    }

    @Test
    void everyDayOfTheMonthIsOnViewWhateverTheLocale() {
        for (Locale locale : new Locale[] {Locale.US, Locale.GERMANY, Locale.forLanguageTag("ar-EG")}) {
            for (LocalDate day = LocalDate.of(2026, 1, 15); day.getYear() < 2029; day = day.plusMonths(1)) {
                MonthModel month = MonthModel.of(day, locale);
                assertThat(month.days())
                        .contains(day.withDayOfMonth(1), day.withDayOfMonth(day.lengthOfMonth()))
                        .isSorted();
                assertThat(month.days().stream().filter(month::isOfMonth)).hasSize(day.lengthOfMonth());
            }
        }
    }

    @Test
    void monthsAreCalledInTheLanguage() {
        assertThat(in(Locale.ENGLISH).title()).isEqualTo("November 2026");
        assertThat(in(Locale.forLanguageTag("es")).title()).isEqualTo("noviembre 2026");
        assertThat(in(Locale.ENGLISH).spoken()).isEqualTo("Sunday 2026-11-29");
    }

    @Test
    void daysWeeksAndMonthsAreTurned() {
        assertThat(in(Locale.US).plusDays(7).marked()).isEqualTo("2026-12-06");
        assertThat(in(Locale.US).plusDays(-1).marked()).isEqualTo("2026-11-28");
        assertThat(MonthModel.of(LocalDate.of(2027, 1, 31), Locale.US)
                        .plusMonths(1)
                        .marked())
                .isEqualTo("2027-02-28");
        assertThat(in(Locale.GERMANY).firstOfWeek().marked()).isEqualTo("2026-11-23");
        assertThat(in(Locale.GERMANY).lastOfWeek().marked()).isEqualTo("2026-11-29");
        assertThat(in(Locale.US).firstOfWeek().marked()).isEqualTo("2026-11-29");
        assertThat(in(Locale.US).lastOfWeek().marked()).isEqualTo("2026-12-05");
    }

    @Test
    void noDayIsMarkedThatNoLaboratoryCanHave() {
        MonthModel last = MonthModel.of(LocalDate.of(2199, 12, 31), Locale.US);
        assertThat(last.plusDays(1).marked()).isEqualTo("2199-12-31");
        assertThat(MonthModel.of(LocalDate.of(1930, 1, 1), Locale.US)
                        .plusMonths(-1)
                        .marked())
                .isEqualTo("1930-01-01");
    }
}

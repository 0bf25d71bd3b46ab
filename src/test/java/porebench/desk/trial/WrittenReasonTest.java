package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.record.book.Draft;
import porebench.record.id.TrialId;

/** Why a trial was kept, where the program wrote it for a person: it stands in the language of who reads it. */
class WrittenReasonTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static String story(Locale locale, String why) {
        BenchBook bench = new BenchBook(locale);
        bench.keep(BenchBook.determination(1, DAY));
        assertThat(bench.book.keep(List.of(Draft.of(BenchBook.trial("K7-T1", 1, DAY, "6.4"))), "R. Vane", why))
                .isEmpty();
        TrialsModel model = new TrialsModel(bench.select().desk);
        model.select(Optional.of(new TrialId("K7-T1")));
        return String.join("\n", model.story());
    }

    @Test
    void whatTheProgramWroteIsReadInEitherLanguage() {
        Locale spanish = Locale.forLanguageTag("es-MX");
        assertThat(story(spanish, "entered at the bench"))
                .contains("anotado en la mesa")
                .doesNotContain("entered");
        assertThat(story(Locale.ENGLISH, "anotado en la mesa")).contains("entered at the bench");
    }

    @Test
    void whatAPersonWroteStaysAsWritten() {
        assertThat(story(Locale.forLanguageTag("es-MX"), "typed from the sheet"))
                .contains("typed from the sheet");
    }
}

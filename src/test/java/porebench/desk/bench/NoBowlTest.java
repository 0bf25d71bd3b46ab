package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.trial.TrialsPage;

/** The bench while no bowl stands on it. */
class NoBowlTest {
    private final BenchBook bench = new BenchBook().select();
    private final BowlsModel model = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
    private final BenchWords words = new BenchWords(model);

    @Test
    void whatWasReadInABowlDoesNotStandWhereThereIsNone() {
        model.open();
        model.enter();
        for (String typed : List.of("21.5", "4900")) {
            typed.chars().forEach(sign -> model.type((char) sign));
            model.enter();
        }
        assertThat(words.screen().before()).isNotBlank();
        bench.desk.selectNone();
        model.begin();
        assertThat(words.screen().title()).contains("No bowl");
        assertThat(words.screen().before()).isBlank();
    }
}

package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.TurnedClock;
import porebench.desk.trial.TrialsPage;

/** What lines of the balance do to the step that weighs. */
class BenchBalanceTest {
    private final BenchBook bench = new BenchBook(Locale.ENGLISH, new TurnedClock());
    private BowlsModel model;
    private BenchWords words;

    @BeforeEach
    void open() {
        bench.select();
        model = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
        words = new BenchWords(model);
        model.open();
    }

    private void enter(String text) {
        text.chars().forEach(sign -> model.type((char) sign));
        model.enter();
    }

    private void weigh(String line) {
        new BenchBalance(model)
                .weighed(
                        BalancePattern.parse(BalancePattern.USUAL).orElseThrow().read(line));
    }

    @Test
    void theBalanceFillsTheMassThatIsWeighedNowAndNothingElse() {
        weigh("4902.0 g");
        assertThat(words.screen().message()).contains("4902.0 g").contains("nothing is weighed");
        assertThat(words.screen().digits()).isEqualTo("B-1");
        model.enter();
        enter("21.5");
        weigh("US,GS,+ 4902.0 g");
        assertThat(words.screen().message()).contains("not at rest");
        assertThat(words.screen().isTyped()).isFalse();
        weigh("tare");
        assertThat(words.screen().message()).contains("not a mass");
        weigh("10.81 lb");
        assertThat(words.screen().message()).contains("switch its unit");
        weigh("4.9020 kg");
        assertThat(words.screen().digits()).isEqualTo("4902.0");
        assertThat(model.step()).isEqualTo(BenchStep.FINE);
        weigh("4903.0 g");
        model.enter();
        assertThat(words.screen().before()).contains("4903.0 g");
        weigh("7350 g");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.ADD);
        new BenchBalance(model).deaf("/dev/ttyUSB0");
        assertThat(words.screen().message()).contains("/dev/ttyUSB0");
    }

    @Test
    void aBalanceThatSendsAllTheTimeLeavesAQuestionStanding() {
        model.enter();
        enter("21.5");
        weigh("4800.0 g");
        model.enter();
        weigh("4800.0 g");
        assertThat(words.screen().message()).contains("Enter again saves it");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.COARSE);
    }

    @Test
    void anotherLineOfTheBalanceTakesAQuestionBack() {
        model.enter();
        enter("21.5");
        weigh("4800.0 g");
        model.enter();
        weigh("US,GS,+ 4700.0 g");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.FINE);
        weigh("4700.0 g");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.FINE);
        assertThat(words.screen().message()).contains("Enter again saves it");
    }
}

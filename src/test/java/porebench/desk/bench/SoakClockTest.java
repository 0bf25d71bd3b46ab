package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.TurnedClock;
import porebench.desk.trial.TrialsPage;

/** What the bench says besides the steps: minutes that its clock does not show, and that nothing on it is real. */
class SoakClockTest {
    private final TurnedClock clock = new TurnedClock();
    private final BenchBook bench = new BenchBook(Locale.ENGLISH, clock);

    @Test
    void minutesThatTheClockOfTheBowlDoesNotShowAreAskedAboutOnce() {
        bench.select();
        BowlsModel model = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
        model.open();
        for (String typed : new String[] {"", "21.5", "4900", "7350", "", ""}) {
            typed.chars().forEach(sign -> model.type((char) sign));
            model.enter();
        }
        clock.turn(Duration.ofSeconds(13 * 60 + 59));
        List.of('1', '5').forEach(model::type);
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.SOAK);
        assertThat(model.message()).contains("13:59 min").contains("Enter again");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.COVER);

        // A minute apart is how people round.
        model.back();
        clock.turn(Duration.ofSeconds(1));
        List.of('1', '5').forEach(model::type);
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.COVER);

        // The clock ran on, and minutes of before would be too few.
        model.back();
        clock.turn(Duration.ofSeconds(121));
        List.of('1', '5').forEach(model::type);
        model.enter();
        assertThat(model.message()).contains("16:01 min");
    }

    @Test
    void enterEndsTheSoakNoSecondTooEarlyAndFillsInWholeMinutes() {
        bench.select();
        BowlsModel model = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
        model.open();
        for (String typed : new String[] {"", "21.5", "4900", "7350", "", ""}) {
            typed.chars().forEach(sign -> model.type((char) sign));
            model.enter();
        }
        clock.turn(Duration.ofSeconds(14 * 60 + 59));
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.SOAK);
        assertThat(model.message()).contains("Still 0:01 to soak");
        clock.turn(Duration.ofSeconds(30));
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.COVER);
        // 15:29 by the clock.
        assertThat(model.before()).isEqualTo("Soak: 15 min");
    }

    @Test
    void aBenchOfTheDemoSaysThatNothingOnItIsReal() {
        BenchPane pane = new BenchPane(number -> {});
        pane.sayInvented("DEMO. Invented");
        assertThat(saidInvented(pane)).containsExactly("DEMO. Invented");
        pane.sayInvented("");
        assertThat(saidInvented(pane)).isEmpty();
    }

    private static List<String> saidInvented(BenchPane pane) {
        return Stream.of(pane.component().getComponents())
                .flatMap(part -> Stream.of(((Container) part).getComponents()))
                .filter(Component::isVisible)
                .flatMap(part -> part instanceof JPanel box ? Stream.of(box.getComponents()) : Stream.empty())
                .filter(part -> "benchInvented".equals(part.getName()))
                .map(part -> ((JTextArea) part).getText())
                .toList();
    }
}

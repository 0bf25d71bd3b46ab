package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import porebench.record.book.Progress.Stage;

class PaceTest {
    private static final Locale SPANISH = Locale.forLanguageTag("es");

    private long nanos;
    private final Pace pace = new Pace(() -> nanos);

    private void after(double seconds) {
        nanos += Math.round(seconds * 1e9);
    }

    private String words() {
        return pace.words(Locale.ENGLISH).orElse("");
    }

    @Test
    void nothingIsSaidBeforeTheWorkSaysSomething() {
        assertThat(pace.words(Locale.ENGLISH)).isEmpty();
        assertThat(pace.part()).isEmpty();
        assertThat(pace.left()).isEmpty();
    }

    /** 30 of 120 took 10 s, so that the 90 that are left take 30 s. */
    @Test
    void theRestTakesAsLongAsThePartSoFarLetsReckon() {
        pace.at(Stage.CHECKING, 0, 120);
        after(10);
        pace.at(Stage.CHECKING, 30, 120);
        assertThat(pace.part()).contains(0.25);
        assertThat(pace.left()).contains(Duration.ofSeconds(30));
        assertThat(words()).isEqualTo("Checking the records: 25 %, about 30 s left");
        assertThat(pace.words(SPANISH)).contains("Comprobando los registros: 25 %, faltan unos 30 s");
    }

    @Test
    void eachStageIsReckonedByItself() {
        pace.at(Stage.READING, 0, 10);
        after(100);
        pace.at(Stage.KEEPING, 0, 40);
        after(2);
        pace.at(Stage.KEEPING, 10, 40);
        assertThat(pace.left()).contains(Duration.ofSeconds(6));
    }

    @Test
    void whatJustBeganOrHasNoKnownLengthHasNoTimeLeft() {
        pace.at(Stage.WRITING, 0, 100);
        after(0.9);
        pace.at(Stage.WRITING, 50, 100);
        assertThat(words()).isEqualTo("Writing the files: 50 %");
        after(5);
        pace.at(Stage.WRITING, 0, 100);
        assertThat(pace.left()).isEmpty();
        pace.at(Stage.WORKING_OUT, 7, 0);
        assertThat(words()).isEqualTo("Computing the mixes");
        assertThat(pace.part()).isEmpty();
    }

    /** A second counts: at 0.4 s it says 1 s, from 100 s on it counts minutes, 150 s being 3 by rounding half up. */
    @Test
    void timeIsSaidInSecondsThenInMinutes() {
        pace.at(Stage.READING, 0, 1000);
        after(2);
        pace.at(Stage.READING, 833, 1000);
        assertThat(words()).endsWith("83 %, about 1 s left");
        pace.at(Stage.READING, 20, 1000);
        assertThat(words()).endsWith("2 %, about 98 s left");
        pace.at(Stage.READING, 13, 1000);
        assertThat(words()).endsWith("1 %, about 3 min left");
    }

    @Test
    void moreThanThereWasToDoIsAllOfItWithNoTimeLeft() {
        pace.at(Stage.WRITING, 0, 10);
        after(3);
        pace.at(Stage.WRITING, 12, 10);
        assertThat(words()).isEqualTo("Writing the files: 100 %");
    }

    @Test
    void whatIsEndedEndsWhereItNextSaysHowFarItIs() {
        pace.at(Stage.READING, 1, 10);
        pace.end();
        assertThatThrownBy(() -> pace.at(Stage.READING, 2, 10)).isInstanceOf(CancellationException.class);
        assertThat(pace.part()).contains(0.1);
    }
}

package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class HoldsCommandTest {
    private static final String HEAD = "reading_id,air_pct,value\n";

    @TempDir
    Path folder;

    private static double number(Object value) {
        return new BigDecimal(value.toString()).doubleValue();
    }

    /** With 2500 kg/m3 free of air, 2375 is 5 %: the differences are what the meter reads above 5. */
    private static String rows(double... air) {
        StringBuilder rows = new StringBuilder(HEAD);
        for (int i = 0; i < air.length; i++) {
            rows.append("R-").append(i + 1).append(',').append(air[i]).append(",2375\n");
        }
        return rows.toString();
    }

    private Terminal with(String rows) {
        LabFiles.write(folder, "pairs.csv", rows);
        return new Terminal(folder);
    }

    private static String[] line(String... more) {
        String[] line = {"holds", "--pairs", "pairs.csv", "--air-free-density", "2500"};
        String[] all = Arrays.copyOf(line, line.length + more.length);
        System.arraycopy(more, 0, all, line.length, more.length);
        return all;
    }

    private static final double[] SHIFTED = {6, 5, 6, 5, 6, 5, 6, 5, 10.5, 11.5, 10.5, 11.5, 10.5, 11.5};

    /** Worked in HoldHandTest: a shift of 5.5 and an interval of 0.6354871 to either side. */
    @Test
    @SuppressWarnings("unchecked")
    void answersWithTheFieldsOfTheContract() {
        Said said = with(rows(SHIFTED)).json(line());
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys(
                        "verdict",
                        "shift",
                        "spreadPercent",
                        "sumLimit",
                        "averageLimit",
                        "runLength",
                        "pairsForHalfStep",
                        "tellablePercent",
                        "signals",
                        "points",
                        "problems");
        assertThat(said.json().get("verdict")).isEqualTo("recheck");
        Map<String, Object> shift = (Map<String, Object>) said.json().get("shift");
        assertThat(number(shift.get("percent"))).isCloseTo(5.5, within(1e-9));
        assertThat(number(shift.get("low"))).isCloseTo(4.8645129, within(1e-6));
        assertThat(said.list("points")).hasSize(14);
        assertThat(number(said.list("points").get(8).get("gravimetricPercent"))).isCloseTo(5, within(1e-9));
        assertThat(said.list("points").get(8).get("farOut")).isEqualTo(true);
    }

    @Test
    void saysItInWordsInBothLanguages() {
        Terminal terminal = with(rows(SHIFTED));
        assertThat(terminal.run(line()).out())
                .contains("Recheck G: air by the meter less air by density has changed by 5.50 % air")
                .contains("since R-9.");
        assertThat(terminal.in(Locale.forLanguageTag("es")).run(line()).out()).contains("Vuelva a determinar G");
        assertThat(with(rows(5)).run(line()).out()).contains("nothing is said from fewer than 8", "Two pairs at least");
        assertThat(with(rows(5, 6, 5, 6, 5, 6, 5, 6)).run(line()).out()).contains("scatter too much");
        assertThat(with(rows(5, 5, 5, 5, 5, 5, 5, 5)).run(line()).out()).contains("G holds so far");
        assertThat(with(rows(5, 6, 5, 6, 5, 6, 5, 6, 50)).run(line()).out()).contains("far out", "scatter too much");
    }

    @Test
    void aDoubtedDensityIsToldAndLeftOut() {
        Said said = with(HEAD + "R-1,5,2375\nR-2,5,2600\n").json(line());
        assertThat(said.codes()).containsExactly("hold.density-doubted");
        assertThat(said.list("points").get(1).get("doubted")).isEqualTo(true);
        assertThat(with(HEAD + "R-1,5,2375\nR-2,5,2600\n").run(line()).out()).contains("density doubted, left out");
    }

    @Test
    void refusesAllThatIsWrongAtOnce() {
        Said said = with(HEAD + "R-1,five,2375\nR-2,5,-1\n").json(line());
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("form.not-a-number", "hold.density-not-positive");
        assertThat(with(rows(5)).json(line("--step", "0")).codes()).containsExactly("command.not-positive");
        assertThat(with(HEAD).json(line()).status()).isEqualTo(1);
    }
}

package porebench.desk.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.chart.hold.HoldPlot;
import porebench.evidence.Bench;
import porebench.evidence.hold.PairsBench;

class HoldModelTest {
    @TempDir
    Path folder;

    private Optional<HoldDesk> made = Optional.empty();

    private HoldDesk desk(Locale locale) {
        made = Optional.of(new HoldDesk(folder, locale));
        return made.get();
    }

    @AfterEach
    void close() {
        made.ifPresent(one -> one.made.close());
    }

    @Test
    void withoutADensityItSaysWhatIsWanted() {
        HoldModel model = new HoldModel(desk(Locale.ENGLISH).desk);
        assertThat(model.sentence())
                .isEqualTo("No field reading since 2026-03-09 00:00 has a density. Once crews write the density "
                        + "down with the gauge reading, this says whether G still holds.");
        assertThat(model.plot()).isEmpty();
        assertThat(model.reasons()).isEmpty();
        assertThat(model.notes()).isEmpty();
    }

    @Test
    void aShiftIsSaidWithWhatItRestsOnAndPlotted() {
        HoldDesk one = desk(Locale.ENGLISH);
        HoldModel model = new HoldModel(one.desk);
        one.read(PairsBench.SHIFTED);
        assertThat(model.sentence())
                .startsWith("Recheck G: air by the meter less air by density has changed by 5.50 % air");
        assertThat(model.reasons())
                .containsExactly(
                        model.reasons().get(0),
                        "14 pairs under revision 1 since 2026-03-09 00:00; density of the mix without air 2417 kg/m3, from its"
                                + " design.");
        assertThat(model.reasons().get(0)).startsWith("A shift of ").contains("is seen in about 20 pairs");
        HoldPlot plot = model.plot().orElseThrow();
        assertThat(plot.shiftFrom()).hasValue(8);
        assertThat(plot.points()).hasSize(14);
        assertThat(plot.points().get(8).label()).isEqualTo("2026-03-17");
        assertThat(plot.points().get(8).said())
                .containsExactly(
                        "M-1-R09, 2026-03-17 08:00, truck 12",
                        "by the meter 10.50 %, by density 5.00 %: difference 5.50 % air",
                        "sum up 2.50, sum down 0.00, average 0.49",
                        "far out: it counts at the limit only");
        assertThat(model.reading("M-1-R09"))
                .hasValueSatisfying(reading -> assertThat(reading.readAt()).isEqualTo("2026-03-17T08:00"));
        assertThat(model.reading("M-1-R15")).isEmpty();
        assertThat(model.subject()).isEqualTo("M-1");
        assertThat(model.pictureName()).isEqualTo("M-1-hold.png");
        assertThat(one.desk.rows().get(0).state().isUsable())
                .as("the state stays")
                .isTrue();
    }

    @Test
    void aDoubtedDensityIsSaidAtItsPointAndBeside() {
        HoldDesk one = desk(Locale.forLanguageTag("es"));
        one.made.keep(List.of(PairsBench.reading("odd", "M-1", PairsBench.FIRST, 0, -2.5)));
        one.desk.refresh();
        HoldModel model = new HoldModel(one.desk);
        assertThat(model.plot().orElseThrow().points().get(0).said())
                .last()
                .isEqualTo("la densidad es dudosa: no cuenta");
        assertThat(model.notes()).hasSize(1);
        assertThat(model.plot().orElseThrow().shiftFrom()).isEmpty();
    }

    @Test
    void withoutAFactorItSaysWhy() {
        HoldDesk one = desk(Locale.ENGLISH);
        one.made.bench.withdraw(Bench.START.plusDays(3));
        one.desk.refresh();
        HoldModel model = new HoldModel(one.desk);
        assertThat(model.sentence()).startsWith("No factor of mix M-1 is in force at ");
        assertThat(model.plot()).isEmpty();
    }
}

package porebench.record.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;

/** Which stone a measurement is of, and when it is doubted. The sample source: density 2.650, absorption 1.20 %. */
class MeasuredStoneTest {
    private static final LocalDate NOV_9 = LocalDate.of(2026, 11, 9);
    private static final Stamp STAMP = new Stamp("M. Ash", Instant.EPOCH, "kept");

    private static SourceMeasurement measured(LocalDate day, String lot, String density, String absorption) {
        return new SourceMeasurement(
                new MeasurementId("S-9/m1"),
                new SourceId("S-9"),
                day,
                "R. Vale",
                lot,
                some(density),
                some(absorption),
                Optional.empty(),
                "");
    }

    private static Optional<BigDecimal> some(String text) {
        return Optional.of(text).filter(one -> !one.isEmpty()).map(BigDecimal::new);
    }

    private static <T extends Kept> Version<T> kept(T value, int number) {
        return new Version<>(value, number, STAMP);
    }

    private static SourceStory story(Role role) {
        return SourceStory.of(List.of(
                kept(Samples.source("S-9", role, "ledge 4"), 1),
                kept(SampleSources.changed(Samples.source("S-9", role, "ledge 5"), NOV_9), 2)));
    }

    private static MeasuredStone of(Role role, SourceMeasurement one) {
        return MeasuredStone.of(story(role), List.of(kept(one, 1))).get(0);
    }

    /** The day says it, the 9th being the first of ledge 5, unless a ledge is named. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-08, '', 1",
        "2026-11-09, '', 2",
        "2026-11-05, ' Ledge 5 ', 2",
        "2026-11-20, ledge 4, 1",
        "2026-11-20, heap 7, 2",
    })
    void theStoneIsTheOneNamedOrElseThatOfTheDay(LocalDate day, String lot, int stone) {
        assertThat(of(Role.COARSE, measured(day, lot, "2.65", "")).stone().number())
                .isEqualTo(stone);
    }

    /** 2.650 +- 0.032 (fine 0.056) and 1.20 +- 0.41 % (fine 0.66 %): at the limit there is no doubt yet. */
    @ParameterizedTest
    @CsvSource({
        "COARSE, 2.682, 1.61, ''",
        "COARSE, 2.683, 1.20, relativeDensity",
        "COARSE, 2.617, 1.20, relativeDensity",
        "COARSE, 2.650, 1.62, absorption",
        "FINE, 2.706, 1.86, ''",
        "FINE, 2.707, 1.20, relativeDensity",
        "FINE, 2.650, 1.87, absorption",
    })
    void aFigureFarFromTheOneInUseIsDoubted(Role role, String density, String absorption, String field) {
        assertThat(of(role, measured(NOV_9, "", density, absorption)).doubts())
                .extracting(Problem::field)
                .isEqualTo(field.isEmpty() ? List.of() : List.of(field));
    }

    @Test
    void whereNoFigureIsInUseNothingIsFar() {
        Source bare = Samples.bareSource("S-9", Role.COARSE);
        SourceStory story = SourceStory.of(List.of(kept(bare, 1)));
        assertThat(MeasuredStone.of(story, List.of(kept(measured(NOV_9, "", "2.9", "9"), 1)))
                        .get(0)
                        .doubts())
                .isEmpty();
    }

    @Test
    void theEarliestComesFirst() {
        List<Version<SourceMeasurement>> all = new ArrayList<>();
        all.add(kept(SampleSources.measurement("b", "S-9", NOV_9, "2.65"), 1));
        all.add(kept(SampleSources.measurement("a", "S-9", NOV_9, "2.65"), 1));
        all.add(kept(SampleSources.measurement("c", "S-9", NOV_9.minusDays(1), "2.65"), 1));
        assertThat(MeasuredStone.of(story(Role.COARSE), all))
                .extracting(one -> one.measurement().value().id().text())
                .containsExactly("c", "a", "b");
    }

    @Test
    void aMeasurementStatesAFigureAndIsNotOfADayToCome() {
        assertThat(measured(NOV_9, "", "2.65", "").check(NOV_9)).isEmpty();
        assertThat(measured(NOV_9, "", "", "1").check(NOV_9)).isEmpty();
        assertThat(measured(NOV_9, "", "", "").check(NOV_9.minusDays(1)))
                .extracting(Problem::code)
                .containsExactly("measurement.no-figure", "measurement.to-come");
    }
}

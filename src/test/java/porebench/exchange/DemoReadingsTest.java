package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.field.FieldOutcome;
import porebench.evidence.field.FieldReadings;
import porebench.evidence.hold.MixHold;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.air.AirVerdict;
import porebench.method.hold.HoldVerdict;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** The field readings of the demo: what each was made for is to be seen. */
class DemoReadingsTest {
    private static final LocalDateTime DAY = LocalDateTime.of(2026, 11, 25, 8, 0);

    @TempDir
    private static Path folder;

    private static LabBook book;
    private static LaboratoryStanding standing;

    @BeforeAll
    static void fill() {
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
        book = new SqliteShelf(clock).create(folder.resolve("demo.porebench"));
        new DemoLaboratory().fill(book);
        standing = LaboratoryStanding.of(book);
    }

    @AfterAll
    static void close() {
        book.close();
    }

    private static FieldReadings readings() {
        return new FieldReadings(book, standing::evidence, standing::scatter, Optional.empty());
    }

    private static HoldVerdict verdict(String mix) {
        return MixHold.of(book, standing.evidence(new MixId(mix)).orElseThrow(), DAY)
                .value()
                .orElseThrow()
                .hold()
                .verdict();
    }

    @Test
    void oneIsOnALapsedFactorAndOneLoadFailed() {
        List<FieldOutcome> all = readings().between(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 11, 25));
        assertThat(all).hasSize(66);
        assertThat(all.stream().filter(outcome -> outcome.air().isEmpty()))
                .singleElement()
                .satisfies(outcome -> {
                    assertThat(outcome.reading().mixId()).isEqualTo(new MixId("HG-103"));
                    assertThat(outcome.problems()).extracting(Problem::code).containsExactly("field.lapsed");
                });
        assertThat(all.stream()
                        .filter(outcome -> outcome.air()
                                .filter(air -> air.verdict().equals(Optional.of(AirVerdict.FAILS)))
                                .isPresent()))
                .singleElement()
                .satisfies(outcome -> assertThat(outcome.air().orElseThrow().reportedPercent())
                        .isEqualByComparingTo("7.3"));
        assertThat(all).allSatisfy(outcome -> assertThat(outcome.said()).isEmpty());
    }

    /** A factor rounded to 0.1 % stands for half of that: 26 pairs cannot tell so little, and it is not said that they do. */
    @Test
    void theFactorOfOneMixIsToBeCheckedAgainAndNothingSpeaksAgainstThatOfTheOther() {
        assertThat(verdict("HG-107")).isEqualTo(HoldVerdict.RECHECK);
        assertThat(verdict("HG-101")).isEqualTo(HoldVerdict.CANNOT_TELL);
    }
}

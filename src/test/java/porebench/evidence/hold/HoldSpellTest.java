package porebench.evidence.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.method.Role;
import porebench.method.sample.AirFreeDensity;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/** What begins the time whose pairs belong together, under a factor in force from {@link Bench#START}. */
class HoldSpellTest {
    private static final LocalDateTime LATER = PairsBench.FIRST.plusDays(6);

    @TempDir
    Path folder;

    private static Version<MixDesign> version(int number, MixDesign mix, LocalDateTime kept) {
        return new Version<>(mix, number, new Stamp("R. Vale", kept.toInstant(ZoneOffset.UTC), "typed"));
    }

    private static MixDesign withStone(String source) {
        return Samples.mix(
                "M-1",
                Samples.constituent("Sand", Role.FINE, "S-1", "700"),
                Samples.constituent("Stone", Role.COARSE, source, "1050"),
                PairsBench.of("Cement", Role.CEMENT, "315", "3.15"),
                PairsBench.of("Water", Role.WATER, "160", "1"));
    }

    /** The register of sources got the stone late, as a laboratory writes it down: no other stone came by that. */
    @Test
    void theFirstStoneOfASourceIsNoChangeWheneverItWasKept() {
        try (Bench bench = new Bench(folder)) {
            bench.issue(Bench.START);
        }
        Instant late = LATER.toInstant(ZoneOffset.UTC);
        try (LabBook book = new SqliteShelf(Clock.fixed(late, ZoneOffset.UTC)).open(folder.resolve("book.porebench"))) {
            Books.keep(book, Samples.source("S-3", Role.COARSE, "Ledge 7"));
            Books.correct(book, withStone("S-3"));
            Evidence evidence = Evidence.of(book, Bench.MIX).orElseThrow();
            assertThat(evidence.stones())
                    .filteredOn(story -> story.id().text().equals("S-3"))
                    .singleElement()
                    .satisfies(story ->
                            assertThat(story.versions().get(0).stamp().at()).isEqualTo(late));
            HoldSpell spell = HoldSpell.at(
                            evidence,
                            List.of(version(1, withStone("S-3"), PairsBench.NOW.minusYears(1))),
                            PairsBench.NOW)
                    .orElseThrow();
            assertThat(spell.begun()).isEqualTo(HoldSpell.Begun.REVISION);
            assertThat(spell.from()).isEqualTo(Bench.START.atStartOfDay());
        }
    }

    /** As heavy and as dense as the one before, so that the density without air is the same: only the stone is another. */
    @Test
    void otherAggregatesOfTheSameDensityAreAnotherConcrete() {
        MixDesign before = withStone("S-2");
        MixDesign after = withStone("S-9");
        assertThat(AirFreeDensity.of(after.batch()).value())
                .isPresent()
                .isEqualTo(AirFreeDensity.of(before.batch()).value());
        try (PairsBench made = new PairsBench(folder)) {
            HoldSpell spell = HoldSpell.at(
                            made.bench.evidence(),
                            List.of(version(1, before, PairsBench.NOW.minusYears(1)), version(2, after, LATER)),
                            PairsBench.NOW)
                    .orElseThrow();
            assertThat(spell.begun()).isEqualTo(HoldSpell.Begun.MIX);
            assertThat(spell.what()).isEqualTo("2");
            assertThat(spell.from()).isEqualTo(LATER);
        }
    }
}

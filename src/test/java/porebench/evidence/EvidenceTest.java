package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.FigureName;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

class EvidenceTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    /** Revision 1 holds 2026-03-09 to 2027-03-09; 30 days before its end is 2027-02-07. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-08, NO_FACTOR",
        "2026-03-09, IN_FORCE",
        "2027-02-06, IN_FORCE",
        "2027-02-07, RECHECK_DUE",
        "2027-03-09, RECHECK_DUE",
        "2027-03-10, LAPSED",
    })
    void theStateFollowsTheDay(LocalDate day, FactorState state) {
        bench.issue(Bench.START);
        assertThat(bench.evidence().stateOn(day)).isEqualTo(state);
    }

    @Test
    void withoutAnIssueThereIsNoFactor() {
        Evidence evidence = bench.evidence();
        assertThat(evidence.stateOn(Bench.START)).isEqualTo(FactorState.NO_FACTOR);
        assertThat(evidence.inForceOn(Bench.START)).isEmpty();
        assertThat(evidence.newestIssue()).isEmpty();
        assertThat(Evidence.of(bench.book, new MixId("M-9"))).isEmpty();
    }

    @Test
    void aWithdrawalHoldsFromItsDay() {
        bench.issue(Bench.START);
        LocalDate from = LocalDate.of(2026, 6, 1);
        bench.withdraw(from);
        Evidence evidence = bench.evidence();
        assertThat(evidence.stateOn(from.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
        assertThat(evidence.stateOn(from)).isEqualTo(FactorState.WITHDRAWN);
        assertThat(evidence.inForceOn(from.minusDays(1)))
                .map(FactorIssue::revision)
                .contains(1);
        assertThat(evidence.inForceOn(from)).isEmpty();
        bench.issue(from.plusDays(9));
        assertThat(bench.evidence().stateOn(from.plusDays(8))).isEqualTo(FactorState.WITHDRAWN);
        assertThat(bench.evidence().stateOn(from.plusDays(9))).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aReplacementOfALaterDayLeavesTheOldOneInForceUntilThen() {
        bench.issue(Bench.START);
        LocalDate from = LocalDate.of(2026, 9, 1);
        bench.issue(from);
        Evidence evidence = bench.evidence();
        assertThat(evidence.inForceOn(from.minusDays(1)))
                .map(FactorIssue::revision)
                .contains(1);
        assertThat(evidence.inForceOn(from)).map(FactorIssue::revision).contains(2);
        assertThat(evidence.newestIssue()).map(FactorIssue::revision).contains(2);
        // Revision 1 would lapse after 2027-03-09; revision 2 holds on.
        assertThat(evidence.stateOn(LocalDate.of(2027, 3, 10))).isEqualTo(FactorState.IN_FORCE);
    }

    static Stream<Arguments> sourceChanges() {
        return Stream.of(
                Arguments.of("ledge", true, stone("Quarry", "Ledge 2", "2.650", "1.20", "")),
                Arguments.of("place", true, stone("Quarry", "Ledge 1", "2.650", "1.20", "", "South face")),
                Arguments.of("density", true, stone("Quarry", "Ledge 1", "2.651", "1.20", "")),
                Arguments.of("absorption", true, stone("Quarry", "Ledge 1", "2.650", "1.21", "")),
                Arguments.of("digits", false, stone("Quarry", "Ledge 1", "2.65", "1.2000", "")),
                Arguments.of("name", false, stone("Other name", "Ledge 1", "2.650", "1.20", "")),
                Arguments.of("remark", false, stone("Quarry", "Ledge 1", "2.650", "1.20", "washed twice")));
    }

    private static Source stone(String name, String ledge, String density, String absorption, String remarks) {
        return stone(name, ledge, density, absorption, remarks, "North face");
    }

    private static Source stone(
            String name, String ledge, String density, String absorption, String remarks, String place) {
        return new Source(
                new SourceId("S-2"),
                name,
                Role.COARSE,
                place,
                ledge,
                Samples.some(density),
                Samples.some(absorption),
                remarks);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sourceChanges")
    void anotherStoneMakesTheFactorUntrueAndAnotherWordDoesNot(String what, boolean isChange, Source corrected) {
        FactorIssue issue = bench.issue(Bench.START);
        Books.correct(bench.book, corrected);
        Evidence evidence = bench.evidence();
        assertThat(evidence.changesSince(issue, Bench.START))
                .isEqualTo(
                        isChange ? List.of(new Evidence.AggregateChange(Optional.of(new SourceId("S-2")))) : List.of());
        assertThat(evidence.stateOn(Bench.START))
                .isEqualTo(isChange ? FactorState.SOURCE_CHANGED : FactorState.IN_FORCE);
    }

    @Test
    void aFactorIssuedAgainFromTheOldTrialsIsStillUntrue() {
        bench.issue(Bench.START);
        Books.correct(bench.book, Samples.source("S-1", Role.FINE, "Ledge 2"));
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.SOURCE_CHANGED);
        FactorIssue again = bench.issue(Bench.START.plusDays(1));
        assertThat(again.sourceVersions()).isEqualTo(Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1));
        assertThat(bench.evidence().stateOn(Bench.START.plusDays(1))).isEqualTo(FactorState.SOURCE_CHANGED);
    }

    @Test
    void aFactorFromTrialsAfterTheChangeIsTrueAgain() {
        bench.issue(Bench.START);
        Books.correct(bench.book, Samples.source("S-1", Role.FINE, "Ledge 2"));
        DeterminationId second = bench.evidence().nextDeterminationId();
        Books.keep(
                bench.book,
                new Determination(second, Bench.MIX, 1, bench.evidence().sourceVersions(), Bench.START, "new ledge"),
                Samples.trial("T-4", "M-1", second.text(), "5.4"));
        bench.keep(bench.issuing(Bench.decision(second, Bench.START)));
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void newTrialsDoNotJoinADeterminationOfAnotherStone() {
        assertThat(bench.evidence().openDetermination()).isPresent();
        Books.correct(bench.book, Samples.source("S-1", Role.FINE, "Ledge 2"));
        assertThat(bench.evidence().openDetermination()).isEmpty();
    }

    @Test
    void aFactorThatRestsOnAVersionNobodyHasIsNotVouchedFor() {
        FactorIssue issue = Samples.issue("M-1", 1, "M-1/1", Bench.START);
        Books.keep(bench.book, issue.restingOn(1, Map.of(new SourceId("S-1"), 7)));
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.SOURCE_CHANGED);
        Books.keep(bench.book, Samples.issue("M-1", 2, "M-1/1", Bench.START).restingOn(4, Map.of()));
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.SOURCE_CHANGED);
    }

    private static MixDesign with(MixDesign mix, UnaryOperator<Batch> change) {
        return new MixDesign(
                mix.id(),
                mix.title() + ", corrected",
                change.apply(mix.batch()),
                Samples.some("12"),
                Samples.some("1.0"),
                mix.profileId(),
                "corrected",
                Optional.empty());
    }

    private static Batch batch(Batch batch, List<Constituent> constituents) {
        return new Batch(constituents, batch.volume(), batch.targetAirPercent(), batch.wetSieved());
    }

    private static Batch stated(Batch batch, String number, VolumeUnit unit) {
        return new Batch(
                batch.constituents(),
                new BatchVolume.Stated(Typed.of(number, unit)),
                batch.targetAirPercent(),
                batch.wetSieved());
    }

    private static Constituent moist(Constituent c) {
        return new Constituent(
                c.name(),
                c.role(),
                c.sourceId(),
                c.mass(),
                c.state(),
                c.absorptionPercent(),
                Samples.some("4.5"),
                c.relativeDensity(),
                c.retainedPercent());
    }

    static Stream<Arguments> mixChanges() {
        Constituent sand = Samples.constituent("Sand", Role.FINE, "S-1", "700");
        Constituent stone = Samples.constituent("Stone", Role.COARSE, "S-2", "1050");
        Constituent cement = Samples.constituent("Cement", Role.CEMENT, "", "350");
        return Stream.of(
                change("words only", false, batch -> batch),
                change("moisture", false, batch -> batch(batch, List.of(moist(sand), moist(stone)))),
                change("cement", false, batch -> batch(batch, List.of(cement, sand, stone))),
                change(
                        "digits of a mass",
                        false,
                        batch -> batch(batch, List.of(Samples.constituent("Sand", Role.FINE, "S-1", "700.0"), stone))),
                change("digits of the volume", false, batch -> stated(batch, "1.000", VolumeUnit.CUBIC_METRE)),
                change("unit of the volume", false, batch -> stated(batch, "1000", VolumeUnit.LITRE)),
                change("volume", true, batch -> stated(batch, "1.01", VolumeUnit.CUBIC_METRE)),
                change(
                        "mass",
                        true,
                        batch -> batch(batch, List.of(Samples.constituent("Sand", Role.FINE, "S-1", "701"), stone))),
                change(
                        "source",
                        true,
                        batch -> batch(batch, List.of(Samples.constituent("Sand", Role.FINE, "S-3", "700"), stone))),
                change("wet sieving", true, batch -> batch.withWetSieved(true)));
    }

    private static Arguments change(String what, boolean isChange, UnaryOperator<Batch> change) {
        return Arguments.of(what, isChange, change);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mixChanges")
    void otherAggregatesInTheBowlMakeTheFactorUntrue(String what, boolean isChange, UnaryOperator<Batch> change) {
        FactorIssue issue = bench.issue(Bench.START);
        Books.correct(bench.book, with(bench.mix(), change));
        Evidence evidence = bench.evidence();
        assertThat(evidence.changesSince(issue, Bench.START))
                .isEqualTo(isChange ? List.of(new Evidence.AggregateChange(Optional.empty())) : List.of());
        assertThat(evidence.stateOn(Bench.START))
                .isEqualTo(isChange ? FactorState.SOURCE_CHANGED : FactorState.IN_FORCE);
    }

    @Test
    void whereTheConstituentsGiveTheVolumeMoreCementMeansLessAggregateInTheBowl() {
        Constituent stone = Samples.constituent("Stone", Role.COARSE, "S-2", "1050");
        UnaryOperator<Batch> computed = batch ->
                new Batch(batch.constituents(), new BatchVolume.FromConstituents(), batch.targetAirPercent(), false);
        MixDesign lean =
                with(Samples.mix("M-1", Samples.constituent("Cement", Role.CEMENT, "", "350"), stone), computed);
        MixDesign rich =
                with(Samples.mix("M-1", Samples.constituent("Cement", Role.CEMENT, "", "400"), stone), computed);
        assertThat(lean.hasSameAggregatesAs(lean)).isTrue();
        assertThat(lean.hasSameAggregatesAs(rich)).isFalse();
        assertThat(rich.hasSameAggregatesAs(lean)).isFalse();
    }

    @Test
    void mixesWhoseVolumeIsNotKnownAreComparedAsWritten() {
        MixDesign nothing = Samples.mix("M-1");
        assertThat(nothing.hasSameAggregatesAs(Samples.mix("M-1"))).isTrue();
        assertThat(nothing.hasSameAggregatesAs(bench.mix())).isFalse();
        assertThat(nothing.hasSameAggregatesAs(with(nothing, batch -> stated(batch, "2", VolumeUnit.CUBIC_METRE))))
                .isFalse();
    }

    @Test
    void aDeterminationIsOpenUntilAFactorIsIssuedFromIt() {
        assertThat(bench.evidence().openDetermination())
                .map(judged -> judged.determination().value().id())
                .contains(Bench.FIRST);
        assertThat(bench.evidence().nextDeterminationId()).isEqualTo(new DeterminationId("M-1/2"));
        bench.issue(Bench.START);
        assertThat(bench.evidence().openDetermination()).isEmpty();
        bench.withdraw(Bench.START.plusDays(1));
        assertThat(bench.evidence().openDetermination()).isEmpty();
    }

    @Test
    void theNextDeterminationGetsAFreeName() {
        Books.keep(bench.book, Samples.determination("M-1/3", "M-1"));
        assertThat(bench.evidence().nextDeterminationId()).isEqualTo(new DeterminationId("M-1/4"));
    }

    @Test
    void aStruckTrialStaysVisibleAndLeavesTheNumbers() {
        JudgedDetermination before = bench.evidence().determination(Bench.FIRST).orElseThrow();
        assertThat(before.counted()).isEqualTo(3);
        // (0.4 + 0.4 + 0.5) / 3 = 0.4333..., and without T-3 0.4.
        assertThat(before.summary().orElseThrow().summary().mean()).isBetween(0.43333, 0.43334);
        bench.strike(List.of("T-3"));
        JudgedDetermination after = bench.evidence().determination(Bench.FIRST).orElseThrow();
        assertThat(after.trials()).hasSize(3);
        assertThat(after.counted()).isEqualTo(2);
        assertThat(after.summary().orElseThrow().reportedPercent()).isEqualTo("0.4");
        Books.correct(bench.book, bench.newest(Trial.class, "T-3").standing());
        assertThat(bench.evidence().determination(Bench.FIRST).orElseThrow().counted())
                .isEqualTo(3);
    }

    @Test
    void theLaboratorysOwnProfileGoesBeforeANamedOneAndAnUnknownNameMeansTheDefault() {
        assertThat(bench.evidence().profile().id()).isEqualTo(Profiles.DEFAULT_ID);
        Books.keep(bench.book, Samples.profile());
        MixDesign mix = bench.mix();
        for (String id : List.of("own", "en-12350-7", "nobody")) {
            Books.correct(
                    bench.book,
                    new MixDesign(
                            mix.id(),
                            id,
                            mix.batch(),
                            Optional.empty(),
                            Optional.empty(),
                            id,
                            mix.remarks(),
                            Optional.empty()));
            assertThat(bench.evidence().profile().id()).isEqualTo(id.equals("nobody") ? Profiles.DEFAULT_ID : id);
        }
        assertThat(bench.newest(LaboratoryProfile.class, "own")
                        .profile()
                        .figure(FigureName.FACTOR_STEP)
                        .value())
                .isEqualTo("0.05");
    }

    @Test
    void allMixesComeInTheOrderOfTheirIdsEachWithItsOwnEvidence() {
        Books.keep(
                bench.book,
                Samples.mix("A-1", "S-1", "S-9"),
                Samples.determination("A-1/1", "A-1"),
                Samples.trial("T-9", "A-1", "A-1/1", "5.9"));
        bench.issue(Bench.START);
        List<Evidence> all = Evidence.ofAll(bench.book);
        assertThat(all)
                .extracting(evidence -> evidence.mix().value().id().text())
                .containsExactly("A-1", "M-1");
        assertThat(all).extracting(evidence -> evidence.issues().size()).containsExactly(0, 1);
        assertThat(all)
                .extracting(evidence -> evidence.determinations().get(0).counted())
                .containsExactly(1, 3);
        assertThat(all).extracting(evidence -> evidence.sources().size()).containsExactly(1, 2);
    }

    /** By its letters r10 would stand before r2. */
    @Test
    void theTenthRevisionIsNewerThanTheNinth() {
        for (int revision = 1; revision <= 10; revision++) {
            Books.keep(bench.book, Samples.issue("M-1", revision, "M-1/1", Bench.START.plusDays(revision)));
        }
        assertThat(bench.evidence().newestIssue().orElseThrow().revision()).isEqualTo(10);
    }
}

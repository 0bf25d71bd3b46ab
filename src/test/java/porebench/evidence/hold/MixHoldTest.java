package porebench.evidence.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.field.FieldOutcome;
import porebench.evidence.field.FieldReadings;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.method.hold.HoldVerdict;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.store.Books;

class MixHoldTest {
    @TempDir
    Path folder;

    private PairsBench made;

    @BeforeEach
    void begin() {
        made = new PairsBench(folder);
    }

    @AfterEach
    void end() {
        made.close();
    }

    private Answer<MixHold> answer(LocalDateTime moment) {
        return MixHold.of(made.bench.book, made.bench.evidence(), moment);
    }

    private MixHold hold() {
        return answer(PairsBench.NOW).value().orElseThrow();
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    /** With T of the design and G of the card the gauge's 6.4 beside 5 % by density is a difference of 1. */
    @Test
    void aGaugeIsCorrectedAndHeldAgainstItsDensity() {
        made.keep(PairsBench.readings("M-1", 1));
        MixHold hold = hold();
        assertThat(hold.airFree().kilogramsPerCubicMetre()).isCloseTo(2417.4867, within(1e-3));
        MixHold.Pair pair = hold.pairs().get(0);
        assertThat(pair.corrected().airPercent()).isCloseTo(6, within(1e-9));
        assertThat(pair.corrected().revision()).isEqualTo(1);
        assertThat(pair.corrected().factorPercent()).isEqualByComparingTo("0.4");
        assertThat(pair.air().gravimetricPercent()).isCloseTo(5, within(1e-9));
        assertThat(pair.air().difference()).isCloseTo(1, within(1e-9));
        assertThat(hold.hold().verdict()).isEqualTo(HoldVerdict.TOO_FEW);
        assertThat(hold.hold().halfStep()).isEqualTo(0.05);
        assertThat(hold.spell().begun()).isEqualTo(HoldSpell.Begun.REVISION);
        assertThat(hold.spell().from()).isEqualTo(Bench.START.atStartOfDay());
        assertThat(hold.notes()).isEmpty();
        assertThat(hold.remark()).isEmpty();
    }

    /** Kept in any order, they are charted in the order of time. */
    @Test
    void aLastingShiftIsSaidWithHowMuchAndSinceWhen() {
        List<FieldReading> mixed = new ArrayList<>(PairsBench.readings("M-1", PairsBench.SHIFTED));
        Collections.reverse(mixed);
        made.keep(mixed);
        MixHold hold = hold();
        assertThat(hold.hold().verdict()).isEqualTo(HoldVerdict.RECHECK);
        HoldRemark remark = hold.remark().orElseThrow();
        assertThat(remark.shift().percent()).isCloseTo(5.5, within(1e-6));
        assertThat(remark.shift().low()).isCloseTo(4.2290258, within(1e-5));
        assertThat(remark.since()).isEqualTo(PairsBench.FIRST.plusDays(8));
        assertThat(ProblemText.in(Locale.ENGLISH, ZoneOffset.UTC).say(remark.asProblem()))
                .isEqualTo("Recheck G: air by the meter less air by density has changed by 5.50 % air (95 % "
                        + "interval 4.23 to 6.77) since 2026-03-17, by 14 pairs. G, a density or a mass of "
                        + "the mix may have changed. Test again.");
    }

    @Test
    void whatWasStruckHasNoDensityOrIsYetToComeIsNotCharted() {
        List<FieldReading> all = PairsBench.readings("M-1", 0, 0, 0, 0);
        made.keep(List.of(
                PairsBench.with(all.get(0), true, true),
                PairsBench.with(all.get(1), false, false),
                all.get(2),
                PairsBench.reading("late", "M-1", PairsBench.NOW.plusMinutes(1), 0, 5),
                PairsBench.reading("now", "M-1", PairsBench.NOW, 0, 5)));
        assertThat(hold().pairs())
                .extracting(pair -> pair.reading().id().text())
                .containsExactly("M-1-R03", "now");
    }

    /** Air of -2.5 % by density is none. */
    @Test
    void aDoubtedDensityIsNamed() {
        made.keep(List.of(PairsBench.reading("odd", "M-1", PairsBench.FIRST, 0, -2.5)));
        MixHold hold = hold();
        assertThat(hold.hold().charted()).isZero();
        assertThat(codes(hold.notes())).containsExactly("hold.density-doubted");
        assertThat(hold.notes().get(0).values().toString()).isEqualTo("[odd, -2.5, -2]");
    }

    /** Revision 1 ends where revision 2 begins: the pairs before are of another G, whatever they say. */
    @Test
    void aNewRevisionBeginsAnew() {
        made.keep(PairsBench.readings("M-1", PairsBench.SHIFTED));
        LocalDate day = Bench.START.plusDays(14);
        made.bench.issue(day);
        assertThat(answer(day.minusDays(1).atTime(23, 0)).value().orElseThrow().remark())
                .isPresent();
        MixHold hold = hold();
        assertThat(hold.spell().issue().revision()).isEqualTo(2);
        assertThat(hold.pairs()).isEmpty();
        assertThat(hold.remark()).isEmpty();
        assertThat(hold.earlier()).isZero();
    }

    /** From the day of the other stone on the factor is untrue: readings have no corrected air. */
    @Test
    void anotherStoneBeginsAnewAndSaysSo() {
        made.keep(PairsBench.readings("M-1", PairsBench.SHIFTED));
        LocalDate day = Bench.START.plusDays(10);
        Books.correct(made.bench.book, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), day));
        MixHold hold = hold();
        assertThat(hold.spell().begun()).isEqualTo(HoldSpell.Begun.STONE);
        assertThat(hold.spell().what()).isEqualTo("S-2");
        assertThat(hold.spell().from()).isEqualTo(day.atStartOfDay());
        assertThat(hold.earlier()).isEqualTo(10);
        assertThat(hold.notCorrected()).isEqualTo(4);
        assertThat(hold.pairs()).isEmpty();
        assertThat(codes(hold.notes())).containsExactly("hold.begun-stone", "hold.not-corrected");
        assertThat(hold.notes().get(1).values().toString()).isEqualTo("[4, 2026-03-19 00:00]");
        assertThat(answer(day.minusDays(1).atTime(12, 0)).value().orElseThrow().pairs())
                .hasSize(10);
    }

    private static Version<MixDesign> version(int number, MixDesign mix, LocalDateTime at) {
        return new Version<>(mix, number, new Stamp("R. Vale", at.toInstant(ZoneOffset.UTC), "for a test"));
    }

    /** The aggregate is the same, so that the factor holds; T is another. */
    private static MixDesign moreCement() {
        MixDesign whole = PairsBench.whole("M-1");
        return Samples.mix(
                "M-1",
                whole.batch().constituents().get(0),
                whole.batch().constituents().get(1),
                PairsBench.of("Cement", Role.CEMENT, "350", "3.15"),
                whole.batch().constituents().get(3));
    }

    private MixHold with(List<Version<MixDesign>> mixes) {
        return MixHold.of(
                        mixes,
                        made.bench.evidence(),
                        PairsBench.readings("M-1", PairsBench.QUIET),
                        Correcting.by(made.bench.evidence()),
                        PairsBench.NOW)
                .value()
                .orElseThrow();
    }

    /** 35 kg more of cement: 2260 kg in 0.0111 m3 more. */
    @Test
    void anotherConcreteBeginsAnewAndSaysSo() {
        LocalDateTime day = PairsBench.FIRST.plusDays(6);
        Version<MixDesign> first = version(1, PairsBench.whole("M-1"), PairsBench.NOW.minusYears(1));
        Version<MixDesign> second = version(2, moreCement(), day);
        MixHold hold = with(List.of(first, second));
        assertThat(hold.spell().begun()).isEqualTo(HoldSpell.Begun.MIX);
        assertThat(hold.spell().what()).isEqualTo("2");
        assertThat(hold.pairs()).hasSize(8);
        assertThat(hold.earlier()).isEqualTo(6);
        assertThat(hold.airFree().kilogramsPerCubicMetre())
                .isCloseTo(2260 / (0.26 + 35 / 3150.0 + 1750 / 2650.0), within(1e-6));
        assertThat(codes(hold.notes())).containsExactly("hold.begun-mix");
        // A version that only words it anew stands between.
        MixHold worded = with(List.of(first, second, version(3, moreCement(), day.plusDays(2))));
        assertThat(worded.spell().what()).isEqualTo("2");
        assertThat(worded.pairs()).hasSize(8);
        // A version to come, and one from before the revision, change nothing.
        MixHold toCome = with(List.of(first, version(2, moreCement(), PairsBench.NOW.plusDays(1))));
        assertThat(toCome.pairs()).hasSize(14);
        assertThat(toCome.airFree().kilogramsPerCubicMetre()).isCloseTo(PairsBench.AIR_FREE, within(1e-6));
        MixHold before = with(List.of(first, version(2, moreCement(), PairsBench.NOW.minusDays(100))));
        assertThat(before.spell().begun()).isEqualTo(HoldSpell.Begun.REVISION);
        assertThat(before.pairs()).hasSize(14);
    }

    /** What the first version lacked is filled in: the concrete is the same. */
    @Test
    void aDesignThatIsCompletedIsTheSameConcrete() {
        MixHold hold = with(List.of(
                version(1, Samples.mix("M-1", "S-1", "S-2"), PairsBench.FIRST.minusYears(1)),
                version(2, PairsBench.whole("M-1"), PairsBench.FIRST.plusDays(6))));
        assertThat(hold.spell().begun()).isEqualTo(HoldSpell.Begun.REVISION);
        assertThat(hold.pairs()).hasSize(14);
    }

    /** The first version stands for readings from before it was kept. */
    @Test
    void theFirstVersionCountsForAllBeforeIt() {
        List<Version<MixDesign>> one = List.of(version(1, moreCement(), PairsBench.NOW.plusYears(1)));
        assertThat(HoldSpell.mixAt(one, PairsBench.FIRST).number()).isEqualTo(1);
        assertThat(with(one).pairs()).hasSize(14);
        assertThat(one.get(0).stamp().at()).isAfter(Instant.EPOCH);
    }

    @Test
    void withoutAFactorOrAWholeMixItIsRefusedWithTheReason() {
        Answer<MixHold> before = answer(Bench.START.minusDays(1).atTime(12, 0));
        assertThat(before.value()).isEmpty();
        assertThat(codes(before.problems())).containsExactly("hold.no-factor");
        Answer<MixHold> bare = MixHold.of(
                List.of(version(1, Samples.mix("M-1", "S-1", "S-2"), PairsBench.FIRST)),
                made.bench.evidence(),
                List.of(),
                Correcting.by(made.bench.evidence()),
                PairsBench.NOW);
        assertThat(codes(bare.problems())).containsExactly("hold.no-air-free", "hold.not-whole");
        made.bench.withdraw(Bench.START.plusDays(20));
        assertThat(codes(answer(PairsBench.NOW).problems())).containsExactly("hold.no-factor");
    }

    /** A factor that lapsed is no longer subtracted: the year ends on 9 March 2027. */
    @Test
    void aLapsedFactorCorrectsNothing() {
        LocalDateTime late = Bench.START.plusYears(2).atTime(8, 0);
        made.keep(List.of(PairsBench.reading("late", "M-1", late, 0, 5)));
        MixHold hold = answer(late.plusDays(1)).value().orElseThrow();
        assertThat(hold.pairs()).isEmpty();
        assertThat(hold.notCorrected()).isEqualTo(1);
        assertThat(codes(hold.notes())).containsExactly("hold.not-corrected");
        assertThat(Optional.of(hold.mixId())).contains(Bench.MIX);
    }

    /** The air beside a density is the one that is made of every field reading, and there is none where that is marked. */
    @Test
    void airByTheMeterIsThatOfTheFieldReading() {
        List<FieldReading> readings = new ArrayList<>(PairsBench.readings("M-1", PairsBench.SHIFTED));
        readings.add(PairsBench.reading("early", "M-1", Bench.START.minusDays(1).atTime(8, 0), 0, 5));
        made.keep(readings);
        Books.correct(
                made.bench.book,
                SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), Bench.START.plusDays(10)));
        Evidence evidence = made.bench.evidence();
        Correcting correcting = Correcting.by(evidence);
        List<FieldOutcome> outcomes = new FieldReadings(
                        made.bench.book, any -> Optional.of(evidence), made.bench::scatter, Optional.empty())
                .ofMix(Bench.MIX, Optional.empty(), Optional.empty());
        assertThat(outcomes).hasSize(15);
        assertThat(outcomes).filteredOn(outcome -> outcome.air().isEmpty()).hasSize(5);
        for (FieldOutcome outcome : outcomes) {
            assertThat(correcting.of(outcome.reading()).map(one -> one.revision() + " " + one.airPercent()))
                    .as(outcome.reading().recordId())
                    .isEqualTo(outcome.air()
                            .map(air -> air.issue().revision() + " "
                                    + air.airPercent().doubleValue()));
        }
    }

    /** Names say nothing of the order: Z was read before A. */
    @Test
    void pairsStandInTheOrderOfTime() {
        made.keep(List.of(
                PairsBench.reading("A", "M-1", PairsBench.FIRST.plusDays(1), 0, 5),
                PairsBench.reading("Z", "M-1", PairsBench.FIRST, 0, 5)));
        assertThat(hold().pairs())
                .extracting(pair -> pair.reading().id().text())
                .containsExactly("Z", "A");
    }
}

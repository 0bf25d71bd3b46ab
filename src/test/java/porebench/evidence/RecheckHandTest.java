package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.record.Production;
import porebench.record.SampleProduction;
import porebench.record.Samples;
import porebench.record.SourceMeasurement;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;
import porebench.record.source.SourceStory;

/**
 * Each rule one below, at and above its boundary, by pencil. The mix has 700 kg of sand and 1050 kg of stone in a cubic metre of concrete:
 * 1.75 t. Its newest trial is of 2 March 2026, its card says 9 March 2027, and notice is given 30 days before.
 */
class RecheckHandTest {
    private static final LocalDate TRIAL = LocalDate.of(2026, 3, 2);
    private static final LocalDate CARD = LocalDate.of(2027, 3, 9);
    private static final LocalDate JULY = LocalDate.of(2026, 7, 10);

    private final List<Production> made = new ArrayList<>();
    private final List<SourceMeasurement> measured = new ArrayList<>();
    private Profile profile = Profiles.standard().copyAs("own", "Own");

    private void rule(FigureName name, String value) {
        profile = profile.with(name, new Figure(value, "our rule", Mark.LABORATORY));
    }

    private Recheck recheck() {
        SourceStory story = SourceStory.of(List.of(new Version<>(
                Samples.source("S-2", Role.COARSE, "Ledge 1"), 1, new Stamp("R. Vale", Instant.EPOCH, "new"))));
        return Recheck.of(
                profile,
                Samples.mix("M-1", "S-1", "S-2"),
                List.of(story),
                new Reported(made, Map.of(new SourceId("S-2"), measured)),
                TRIAL,
                CARD);
    }

    private FactorState state(LocalDate day) {
        return recheck().stateOn(day);
    }

    private List<Problem> why(LocalDate day) {
        return recheck().why(day, Recheck.Level.values());
    }

    private void volume(String id, LocalDate day, String cubicMetres) {
        made.add(SampleProduction.volume(id, "M-1", day, day, cubicMetres));
    }

    private void lot(String id, LocalDate day, String lot) {
        measured.add(new SourceMeasurement(
                new MeasurementId(id),
                new SourceId("S-2"),
                day,
                "M. Ash",
                lot,
                Optional.of(new BigDecimal("2.65")),
                Optional.empty(),
                Optional.empty(),
                ""));
    }

    /** Nothing but the day on the card, as ever: 30 days before is 7 February 2027. */
    @Test
    void withoutAnyRuleTheCardAloneCounts() {
        volume("p1", JULY, "100000");
        lot("m1", JULY, "Ledge 9");
        assertThat(state(LocalDate.of(2027, 2, 6))).isEqualTo(FactorState.IN_FORCE);
        assertThat(why(LocalDate.of(2027, 2, 6))).isEmpty();
        assertThat(state(LocalDate.of(2027, 2, 7))).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(why(CARD)).containsExactly(Problem.warning("recheckBy", "register.recheck-soon", CARD.toString()));
        assertThat(state(CARD)).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(CARD.plusDays(1))).isEqualTo(FactorState.LAPSED);
        assertThat(why(CARD.plusDays(1)))
                .containsExactly(Problem.warning("recheckBy", "register.recheck-overdue", CARD.toString()));
        assertThat(recheck().lapsesOn()).isEqualTo(CARD.plusDays(1));
        assertThat(recheck().days()).containsExactlyInAnyOrder(LocalDate.of(2027, 2, 7), CARD.plusDays(1));
    }

    /** 1000 t at 1.75 t a cubic metre are 571.43 m3; 90 % of them 514.29 m3. 571 m3 are 999.25 t, 572 m3 1001 t. */
    @ParameterizedTest
    @CsvSource({
        "514, IN_FORCE, 0",
        "515, RECHECK_DUE, 901",
        "571, RECHECK_DUE, 999",
        "571.42857, RECHECK_DUE, 999",
        "572, LAPSED, 1001",
        "600, LAPSED, 1050"
    })
    void tonnesOfAggregate(String cubicMetres, FactorState expected, String tonnes) {
        rule(FigureName.RECHECK_TONNES, "1000");
        volume("p1", JULY, cubicMetres);
        assertThat(state(JULY.minusDays(1))).as("nobody knows it yet").isEqualTo(FactorState.IN_FORCE);
        assertThat(state(JULY)).isEqualTo(expected);
        assertThat(why(JULY))
                .isEqualTo(
                        expected == FactorState.IN_FORCE
                                ? List.of()
                                : List.of(Problem.warning(
                                        "production",
                                        "register.recheck-tonnes",
                                        new BigDecimal(tonnes),
                                        new BigDecimal("1000"),
                                        "2026-03-02")));
    }

    /** Exactly 700 t: 400 m3 in ten days of 40 m3 each, whose tenths are not exact in binary. */
    @Test
    void anAmountThatIsReachedExactlyCounts() {
        rule(FigureName.RECHECK_TONNES, "70");
        for (int i = 0; i < 10; i++) {
            made.add(SampleProduction.mass("p" + i, "M-1", JULY.plusDays(i), JULY.plusDays(i), "7"));
        }
        assertThat(state(JULY.plusDays(8))).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(JULY.plusDays(9))).isEqualTo(FactorState.LAPSED);
        assertThat(recheck().lapsesOn()).isEqualTo(JULY.plusDays(9));
    }

    /** A notice share of 60 % of 5 days is 3 days. */
    @Test
    void productionDays() {
        rule(FigureName.RECHECK_PRODUCTION_DAYS, "5");
        rule(FigureName.RECHECK_NOTICE_SHARE, "60");
        made.add(SampleProduction.days("p1", "M-1", JULY, JULY.plusDays(6), 2));
        made.add(SampleProduction.days("p2", "M-1", JULY.plusDays(7), JULY.plusDays(13), 1));
        made.add(SampleProduction.days("p3", "M-1", JULY.plusDays(14), JULY.plusDays(20), 1));
        made.add(SampleProduction.days("p4", "M-1", JULY.plusDays(21), JULY.plusDays(27), 1));
        assertThat(state(JULY.plusDays(12))).isEqualTo(FactorState.IN_FORCE);
        assertThat(state(JULY.plusDays(13))).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(JULY.plusDays(26))).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(JULY.plusDays(27))).isEqualTo(FactorState.LAPSED);
        assertThat(why(JULY.plusDays(27)))
                .containsExactly(Problem.warning(
                        "production", "register.recheck-days", new BigDecimal("5"), new BigDecimal("5"), "2026-03-02"));
    }

    /** The trial of 2 March is the fifth of eight days: of the 8 production days 3 come after it; one on the day itself is none. */
    @Test
    void aSpellInWhichTheTrialFallsCountsByItsDaysAfterIt() {
        rule(FigureName.RECHECK_PRODUCTION_DAYS, "3");
        made.add(SampleProduction.days("p1", "M-1", LocalDate.of(2026, 2, 26), LocalDate.of(2026, 3, 5), 8));
        assertThat(state(LocalDate.of(2026, 3, 5))).isEqualTo(FactorState.LAPSED);
        rule(FigureName.RECHECK_PRODUCTION_DAYS, "4");
        assertThat(state(LocalDate.of(2026, 3, 5))).isEqualTo(FactorState.IN_FORCE);
        made.clear();
        made.add(SampleProduction.days("p1", "M-1", TRIAL, TRIAL, 1));
        rule(FigureName.RECHECK_PRODUCTION_DAYS, "1");
        assertThat(why(TRIAL)).isEmpty();
    }

    /** Three new lots lapse it; the ledge it was tested from, a lot named twice or in other letters, and one from before are not new. */
    @Test
    void newLotsOfASource() {
        rule(FigureName.RECHECK_LOTS, "3");
        rule(FigureName.RECHECK_NOTICE_SHARE, "60");
        lot("m1", TRIAL, "Lot A");
        lot("m2", JULY, " ledge 1 ");
        lot("m3", JULY.plusDays(1), "lot a");
        lot("m4", JULY.plusDays(2), "");
        lot("m5", JULY.plusDays(3), "Lot B");
        lot("m6", JULY.plusDays(4), "LOT B");
        lot("m7", JULY.plusDays(5), "Lot C");
        lot("m8", JULY.plusDays(6), "Lot D");
        lot("m9", JULY.plusDays(7), "Lot E");
        assertThat(state(JULY.plusDays(4))).as("one of three").isEqualTo(FactorState.IN_FORCE);
        assertThat(state(JULY.plusDays(5))).as("two of three").isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(JULY.plusDays(6))).as("three of three").isEqualTo(FactorState.LAPSED);
        assertThat(why(JULY.plusDays(7)))
                .containsExactly(Problem.warning("sources", "register.recheck-lots", 4, 3, "S-2", "2026-03-02"));
    }

    /** Each source by itself: two new lots of one and two of another are not three of any. */
    @Test
    void lotsOfTwoSourcesAreNotAddedUp() {
        rule(FigureName.RECHECK_LOTS, "3");
        lot("m1", JULY, "Lot A");
        lot("m2", JULY, "Lot B");
        assertThat(state(JULY)).isEqualTo(FactorState.IN_FORCE);
    }

    /** From the first day of a season a factor tested before it is due; the card's day alone lapses it. */
    @Test
    void aSeason() {
        rule(FigureName.RECHECK_SEASONS, "10-01,04-01");
        LocalDate april = LocalDate.of(2026, 4, 1);
        assertThat(state(april.minusDays(1))).isEqualTo(FactorState.IN_FORCE);
        assertThat(why(april.minusDays(31))).isEmpty();
        assertThat(why(april.minusDays(30)))
                .containsExactly(Problem.warning("season", "register.season-begins", "2026-04-01"));
        assertThat(state(april)).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(why(LocalDate.of(2026, 10, 1)))
                .as("the first season counts")
                .containsExactly(Problem.warning("season", "register.season-began", "2026-04-01", "2026-03-02"));
        assertThat(state(CARD)).isEqualTo(FactorState.RECHECK_DUE);
        rule(FigureName.RECHECK_SEASONS, "03-02");
        assertThat(state(LocalDate.of(2026, 12, 1)))
                .as("tested on its first day")
                .isEqualTo(FactorState.IN_FORCE);
        rule(FigureName.RECHECK_SEASONS, "03-03");
        assertThat(state(LocalDate.of(2026, 3, 3))).as("tested on its eve").isEqualTo(FactorState.RECHECK_DUE);
    }

    /** The first rule counts: tonnes in July before days in August before the card; the reasons stand together, the worst first. */
    @Test
    void ofSeveralRulesTheFirstCounts() {
        rule(FigureName.RECHECK_TONNES, "1000");
        rule(FigureName.RECHECK_PRODUCTION_DAYS, "1");
        rule(FigureName.RECHECK_SEASONS, "04-01");
        volume("p1", JULY, "600");
        made.add(SampleProduction.days("p2", "M-1", JULY.plusDays(30), JULY.plusDays(30), 1));
        assertThat(recheck().lapsesOn()).isEqualTo(JULY);
        assertThat(recheck().on(JULY.plusDays(30)))
                .extracting(due -> due.level() + " " + due.why().code())
                .containsExactly(
                        "LAPSED register.recheck-tonnes",
                        "LAPSED register.recheck-days",
                        "DUE register.season-began",
                        "NOTE register.recheck-no-days",
                        "NOTE register.recheck-no-concrete");
        assertThat(recheck().besideItsDay(CARD.plusDays(1))).hasSize(3);
        assertThat(recheck().on(CARD.plusDays(1)).get(0).why().code()).isEqualTo("register.recheck-tonnes");
    }

    /** A year of days is three rows of the register, whatever is said last: due, lapsed, and as it is known now. */
    @Test
    void theRegisterIsNotCutAnewForEverySpell() {
        rule(FigureName.RECHECK_TONNES, "1000");
        for (int i = 0; i < 300; i++) {
            volume("p" + i, JULY.minusDays(100).plusDays(i), "10");
        }
        assertThat(recheck().days()).hasSize(5);
        assertThat(why(JULY.plusDays(199)).get(0).values().get(0)).isEqualTo(new BigDecimal("5250"));
        // 52 spells of 17.5 t are 910 t, 58 are 1015 t.
        assertThat(state(JULY.minusDays(100).plusDays(50))).isEqualTo(FactorState.IN_FORCE);
        assertThat(state(JULY.minusDays(100).plusDays(51))).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(JULY.minusDays(100).plusDays(56))).isEqualTo(FactorState.RECHECK_DUE);
        assertThat(state(JULY.minusDays(100).plusDays(57))).isEqualTo(FactorState.LAPSED);
    }

    /** Months on, or the eve of the first season after the first day, whichever comes first. */
    @ParameterizedTest
    @CsvSource({
        "none, 2026-03-09, 2027-03-09",
        "'04-01,10-01', 2026-03-09, 2026-03-31",
        "'04-01,10-01', 2026-04-01, 2026-09-30",
        "'04-01,10-01', 2026-12-31, 2027-03-31",
        "03-10, 2026-03-10, 2027-03-09"
    })
    void theUsualDayOfACardEndsOnTheEveOfASeason(String seasons, LocalDate from, LocalDate until) {
        rule(FigureName.RECHECK_SEASONS, seasons);
        assertThat(Recheck.usualDay(profile, from)).isEqualTo(until);
    }
}

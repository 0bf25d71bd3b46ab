package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Bowl;
import porebench.desk.TurnedClock;
import porebench.desk.trial.TrialsPage;
import porebench.method.MeterType;
import porebench.record.Trial;
import porebench.record.book.Version;

/** The bench by its keys: what each step takes, what it refuses, and what outlives leaving it. */
class BowlsModelTest {
    private final TurnedClock clock = new TurnedClock();
    private final BenchBook bench = new BenchBook(Locale.ENGLISH, clock);
    private BowlsModel model;
    private BenchWords words;

    @BeforeEach
    void open() {
        bench.select();
        model = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
        words = new BenchWords(model);
        model.open();
    }

    private void type(String text) {
        text.chars().forEach(sign -> model.type((char) sign));
    }

    private void enter(String text) {
        type(text);
        model.enter();
    }

    /** Takes the meter, the water, both masses, and does what comes before the soak. */
    private void toSoak(String fine, String coarse) {
        model.enter();
        enter("21.5");
        enter(fine);
        enter(coarse);
        model.enter();
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.SOAK);
    }

    /** Goes from the end of the soak to the reading of a Type B meter. */
    private void toReading() {
        model.enter();
        model.enter();
        model.enter();
        enter("420");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.READ);
    }

    private Optional<Trial> kept(String id) {
        return bench.book.latest(Trial.class, id).map(Version::value);
    }

    @Test
    void aWholeTypeBTrialIsMadeWithDigitsAndEnterAlone() {
        assertThat(BenchStep.of("a step of another program")).isEqualTo(BenchStep.METER);
        assertThat(words.screen().digits()).isEqualTo("B-1");
        toSoak("4905.0", "7350");
        clock.turn(Duration.ofMinutes(15));
        toReading();
        clock.turn(Duration.ofMinutes(4));
        enter("6.4");
        assertThat(model.step()).isEqualTo(BenchStep.RESULT);
        assertThat(words.screen().digits()).isEqualTo("0.40");
        model.enter();
        Trial trial = kept("K7-T1").orElseThrow();
        assertThat(trial.readings().soakMinutes()).contains(new BigDecimal("15"));
        assertThat(trial.readings().fine().orElseThrow().number()).isEqualTo("4905.0");
        assertThat(trial.readings().gaugePercent()).contains(new BigDecimal("6.4"));
        assertThat(trial.testedAt()).isEqualTo(LocalDateTime.parse("2026-03-04T09:49"));
        assertThat(trial.operator()).isEqualTo("R. Vane");
        assertThat(trial.keptBecause()).isEmpty();
        assertThat(words.screen().title()).contains("K7-T1");
        assertThat(words.screen().limits()).isNotBlank();
        assertThat(model.bowls().all()).isEmpty();
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.METER);
        assertThat(model.current().orElseThrow().number()).isEqualTo(1);
    }

    @Test
    void aTypeAMeterHasStepsOfItsOwn() {
        enter("2");
        assertThat(words.screen().digits()).isEqualTo("E-1");
        assertThat(model.gate().type()).isEqualTo(MeterType.A);
        toSoak("4900", "7350");
        clock.turn(Duration.ofMinutes(15));
        enter("15");
        List<BenchStep> seen = new java.util.ArrayList<>();
        while (model.step() != BenchStep.H1) {
            seen.add(model.step());
            model.enter();
        }
        assertThat(seen).containsExactly(BenchStep.COVER, BenchStep.FILL, BenchStep.ZERO, BenchStep.PUMP);
        clock.turn(Duration.ofMinutes(4));
        enter("0.9");
        assertThat(words.screen().caution()).contains("clamps");
        clock.turn(Duration.ofMinutes(2));
        enter("0.4");
        assertThat(words.screen().digits()).isEqualTo("0.50");
        model.enter();
        assertThat(kept("K7-T1").orElseThrow().readings().h1Percent()).contains(new BigDecimal("0.9"));
        assertThat(kept("K7-T1").orElseThrow().testedAt())
                .as("the moment of the reading under pressure")
                .isEqualTo(LocalDateTime.parse("2026-03-04T09:49"));
    }

    /** One determination is made on one type of meter: that is said before anything is weighed, not after the soak. */
    @Test
    void aMeterOfTheOtherTypeIsRefusedBeforeAnythingIsWeighed() {
        toSoak("4905.0", "7350");
        clock.turn(Duration.ofMinutes(15));
        toReading();
        enter("6.4");
        model.enter();
        assertThat(kept("K7-T1")).isPresent();
        model.enter();
        enter("2");
        assertThat(words.screen().message())
                .contains("one determination is made on one type of meter")
                .contains("Choose another meter");
        model.enter();
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.METER);
        enter("1");
        assertThat(words.screen().message()).isEmpty();
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.WATER);
    }

    @Test
    void theMassesStandWithTheirLimitsAndAreReadBack() {
        model.enter();
        enter("21");
        BenchScreen screen = words.screen();
        assertThat(screen.digits()).isEqualTo("4900");
        assertThat(screen.unit()).isEqualTo("g");
        // 1 % of the mass by the profile of the mix.
        assertThat(screen.limits()).contains("4851").contains("4949");
        type("49");
        assertThat(words.screen().digits()).isEqualTo("49");
        assertThat(words.screen().isTyped()).isTrue();
        enter("05");
        assertThat(words.screen().before()).contains("4905 g");
        // 1 % of 7350 g is 73.5 g: rounded inward, as on the printed sheet.
        assertThat(words.screen().limits()).contains("7277").contains("7423");
    }

    @Test
    void aDoubtfulMassIsTakenByASecondEnterOnly() {
        model.enter();
        enter("21");
        enter("5200");
        assertThat(model.step()).isEqualTo(BenchStep.FINE);
        assertThat(words.screen().message()).contains("Enter again");
        assertThat(words.screen().isAlarm()).isTrue();
        enter("4900");
        assertThat(model.step()).isEqualTo(BenchStep.COARSE);
        enter("9000");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.ADD);
        assertThat(words.screen().before()).contains("doubt");
    }

    @Test
    void whatCannotBeIsRefusedHoweverOftenEnterComes() {
        model.enter();
        enter("440");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.WATER);
        assertThat(words.screen().message()).contains("Type it again");
        enter("21..5");
        assertThat(model.step()).isEqualTo(BenchStep.WATER);
        enter("21.5");
        assertThat(model.step()).isEqualTo(BenchStep.FINE);
        model.enter();
        assertThat(words.screen().message()).contains("Nothing is typed");
    }

    @Test
    void theSoakIsRunFromTheMomentItBeganAndRingsAtItsEnd() {
        toSoak("4900", "7350");
        clock.turn(Duration.ofSeconds(7 * 60 + 5));
        assertThat(words.screen().digits()).isEqualTo("7:55");
        assertThat(model.bowls().words(BenchBook.MIX)).contains("soaking, 8 min left");
        model.enter();
        assertThat(model.step()).isEqualTo(BenchStep.SOAK);
        assertThat(words.screen().message()).contains("7:55");
        assertThat(model.rings()).isFalse();
        clock.turn(Duration.ofSeconds(8 * 60 + 30));
        assertThat(model.rings()).isTrue();
        assertThat(words.screen().rings()).isTrue();
        assertThat(words.screen().digits()).isEqualTo("15:35");
        assertThat(model.bowls().words(BenchBook.MIX)).contains("soak is over");
        model.enter();
        assertThat(model.rings()).isFalse();
        assertThat(model.step()).isEqualTo(BenchStep.COVER);
        assertThat(words.screen().before()).contains("16 min");
        model.back();
        assertThat(words.screen().digits()).isEqualTo("16");
    }

    @Test
    void twoBowlsSoakEachByItsOwnClock() {
        toSoak("4900", "7350");
        clock.turn(Duration.ofMinutes(5));
        model.begin();
        assertThat(model.current().orElseThrow().number()).isEqualTo(2);
        toSoak("4902", "7348");
        assertThat(words.screen().digits()).isEqualTo("15:00");
        model.turnToNext();
        assertThat(model.current().orElseThrow().number()).isEqualTo(1);
        assertThat(words.screen().digits()).isEqualTo("10:00");
        clock.turn(Duration.ofMinutes(10));
        assertThat(words.screen().bowls()).extracting(BenchScreen.Chip::rings).containsExactly(true, false);
        toReading();
        enter("6.3");
        model.enter();
        model.turnToNext();
        assertThat(model.current().orElseThrow().number()).isEqualTo(2);
        clock.turn(Duration.ofMinutes(20));
        enter("15");
        assertThat(words.screen().message()).contains("30:00 min");
        model.enter();
        toReadingFromCover();
        enter("6.4");
        model.enter();
        assertThat(kept("K7-T1")).isPresent();
        assertThat(words.screen().message()).isEmpty();
        assertThat(kept("K7-T2")).isPresent();
    }

    private void toReadingFromCover() {
        model.enter();
        model.enter();
        enter("420");
        model.enter();
    }

    @Test
    void whatWasTypedOutlivesTheProgram() {
        toSoak("4905", "7350");
        model.turnToNext();
        type("1");
        String text = bench.desk.unsaved().find("bench/K7/1").orElseThrow();
        Bowl bowl = Bowl.parse("bench/K7/1", text).orElseThrow();
        assertThat(bowl.text()).isEqualTo(text);
        clock.turn(Duration.ofMinutes(6));
        BowlsModel later = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
        later.open();
        BenchScreen screen = new BenchWords(later).screen();
        assertThat(later.step()).isEqualTo(BenchStep.SOAK);
        assertThat(screen.digits()).isEqualTo("1");
        later.erase();
        assertThat(new BenchWords(later).screen().digits()).isEqualTo("9:00");
        later.erase();
        assertThat(later.step()).isEqualTo(BenchStep.FOAM);
        later.back();
        later.back();
        assertThat(new BenchWords(later).screen().digits()).isEqualTo("7350");
    }

    @Test
    void aDoubtfulTrialIsKeptOnlyWithTheWordThatItWasLookedAtAgain() {
        model.enter();
        enter("21");
        enter("5200");
        model.enter();
        enter("7350");
        model.enter();
        model.enter();
        clock.turn(Duration.ofMinutes(15));
        enter("15");
        toReadingFromCover();
        enter("6.4");
        model.enter();
        assertThat(kept("K7-T1")).isEmpty();
        assertThat(words.screen().message()).contains("1, then Enter");
        enter("1");
        assertThat(kept("K7-T1").orElseThrow().keptBecause()).isPresent();
    }

    @Test
    void aLeakVoidsTheTrialAndCanBeTakenBack() {
        toSoak("4900", "7350");
        clock.turn(Duration.ofMinutes(15));
        enter("15");
        toReadingFromCover();
        enter("6.4");
        enter("9");
        assertThat(words.screen().message()).contains("void");
        enter("9");
        assertThat(words.screen().message()).contains("No leak");
        enter("9");
        model.enter();
        assertThat(kept("K7-T1").orElseThrow().readings().leak()).isTrue();
    }

    @Test
    void aKeyThatBelongsNowhereSaysSo() {
        model.unknownKey();
        assertThat(words.screen().message()).contains("nothing");
        toSoak("4900", "7350");
        model.back();
        type("7");
        assertThat(model.step()).isEqualTo(BenchStep.FOAM);
        assertThat(words.screen().message()).contains("No number");
    }

    @Test
    void meterIsChosenByItsPlaceInTheList() {
        enter("7");
        assertThat(words.screen().message()).contains("from 1 to 2");
        assertThat(words.screen().how()).contains("1 = B-1").contains("2 = E-1").contains("R. Vane");
        model.erase();
        assertThat(model.step()).isEqualTo(BenchStep.METER);
    }

    @Test
    void aCodeOfASheetTurnsToTheBowlOfItsMix() {
        model.scan("4006381333931");
        assertThat(words.screen().message()).contains("to no mix");
        model.scan("PBMIX:K8");
        assertThat(words.screen().message()).contains("to no mix");
        toSoak("4900", "7350");
        model.scan("PBMIX:K7");
        assertThat(model.current().orElseThrow().number()).isEqualTo(1);
        bench.desk.unsaved().drop("bench/K7/1");
        model.scan("PBMIX:K7");
        assertThat(model.step()).isEqualTo(BenchStep.METER);
    }

    @Test
    void anotherDoubtfulNumberIsAskedAboutAnew() {
        model.enter();
        enter("21.5");
        enter("4800");
        enter("4700");
        assertThat(model.step()).isEqualTo(BenchStep.FINE);
        assertThat(words.screen().message()).contains("Enter again saves it");
    }

    @Test
    void eraseTakesBackOneDigitAtATime() {
        model.enter();
        type("215");
        model.erase();
        assertThat(words.screen().digits()).isEqualTo("21");
        type(".5");
        assertThat(words.screen().digits()).isEqualTo("21.5");
    }

    @Test
    void withoutAnOpenDeterminationNothingBegins() {
        LocalDate day = BenchBook.TODAY;
        bench.desk.unsaved().drop("bench/K7/1");
        bench.keep(BenchBook.determination(1, day), BenchBook.trial("K7-T1", 1, day, "6.4"));
        bench.keep(BenchBook.issue(1, 1, day, "0.4"));
        bench.desk.refresh();
        model.enter();
        assertThat(model.current()).isEmpty();
        assertThat(words.screen().message()).contains("new determination");
        bench.desk.selectNone();
        model.turnToNext();
        assertThat(words.screen().message()).contains("Choose a mix");
    }

    @Test
    void aBowlBegunByMistakeIsTakenOffTheBenchByNoughtAndTwoEnters() {
        model.begin();
        enter("0");
        assertThat(model.bowls().all()).hasSize(2);
        assertThat(words.screen().message()).contains("off the bench");
        model.enter();
        assertThat(model.bowls().all()).extracting(Bowl::number).containsExactly(1);
        assertThat(model.current().orElseThrow().number()).isEqualTo(1);
        enter("0");
        model.enter();
        assertThat(model.bowls().all()).isEmpty();
        assertThat(words.screen().title()).contains("No bowl");
    }
}

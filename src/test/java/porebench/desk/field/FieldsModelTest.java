package porebench.desk.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.Refused;
import porebench.evidence.paper.FieldList;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.SampleReadings;
import porebench.record.book.Draft;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/** The list of readings: four of two mixes that are kept for this, the last of them 40 days ago. Today is 25 November 2026. */
class FieldsModelTest {
    private FieldDesk made;
    private FieldsModel model;

    @BeforeEach
    void begin() {
        made = new FieldDesk();
        List<Draft> drafts = new ArrayList<>();
        drafts.add(at("a", "HG-107", LocalDateTime.of(2026, 11, 25, 8, 0)));
        drafts.add(at("b", "HG-108", LocalDateTime.of(2026, 11, 24, 8, 0)));
        drafts.add(at("c", "HG-107", LocalDateTime.of(2026, 10, 27, 0, 0)));
        drafts.add(at("d", "HG-107", LocalDateTime.of(2026, 10, 26, 23, 59)));
        assertThat(made.book.keep(drafts, "N. Orrin", "a day at the loads")).isEmpty();
        made.desk.refresh();
        model = made.model();
    }

    private static Draft at(String id, String mix, LocalDateTime moment) {
        return Draft.of(SampleReadings.plain(id, mix, "5.5").at(moment));
    }

    private List<String> ids() {
        return model.lines().stream()
                .map(FieldLine::id)
                .filter(id -> id.length() == 1)
                .toList();
    }

    @Test
    void thirtyDaysAreOnViewTheNewestFirst() {
        assertThat(model.first()).isEqualTo("2026-10-27");
        assertThat(model.last()).isEqualTo("2026-11-25");
        assertThat(ids()).containsExactly("a", "b", "c");
        assertThat(model.isLooking()).isFalse();
    }

    @Test
    void otherDaysAndOneMixAreShown() {
        model.typeFirst("2026-10-26");
        assertThat(ids()).containsExactly("a", "b", "c", "d");
        model.typeLast("2026-11-24");
        assertThat(ids()).containsExactly("b", "c", "d");
        model.typeMix(" HG-107 ");
        assertThat(ids()).containsExactly("c", "d");
        model.showMix(new MixId("HG-108"));
        assertThat(model.mix()).isEqualTo("HG-108");
        assertThat(ids()).containsExactly("b");
    }

    @Test
    void daysThatAreNoneAreSaidAndWhatWasOnViewStays() {
        model.lines();
        model.typeFirst("26 October");
        assertThat(model.problems()).extracting(Problem::code).containsExactly("form.not-a-date");
        assertThat(ids()).containsExactly("a", "b", "c");
        model.typeFirst("2026-11-26");
        assertThat(model.problems()).extracting(Problem::code).containsExactly("readings.days-turned");
        model.typeFirst("0026-11-25");
        assertThat(model.problems()).extracting(Problem::code).containsExactly("form.year-impossible");
        model.typeFirst("2026-11-25");
        assertThat(model.problems()).isEmpty();
        assertThat(ids()).containsExactly("a");
    }

    @Test
    void theGuardBandIsOffUntilSomebodyWantsItAndIsRemembered() {
        assertThat(model.isGuarded()).isFalse();
        model.guard(true);
        assertThat(made.model().isGuarded()).isTrue();
        model.guard(false);
        assertThat(made.model().isGuarded()).isFalse();
    }

    @Test
    void aReadingIsStruckForAReasonAndCountsAgain() {
        assertThat(Refused.by(out -> model.strike("nobody is chosen", out))).isEmpty();
        assertThat(model.versions()).isEmpty();
        model.choose(Optional.of("a"));
        assertThat(model.chosen().orElseThrow().isStruck()).isFalse();
        assertThat(Refused.by(out -> model.strike("the clamp leaked", out))).isEmpty();
        assertThat(model.chosen().orElseThrow().isStruck()).isTrue();
        assertThat(model.chosen().orElseThrow().isMarked()).isFalse();
        FieldReading struck =
                made.book.latest(FieldReading.class, "a").orElseThrow().value();
        assertThat(struck.struckBecause()).contains("the clamp leaked");
        assertThat(model.versions()).hasSize(2);
        assertThat(Refused.by(out -> model.restore("it held", out))).isEmpty();
        assertThat(made.book
                        .latest(FieldReading.class, "a")
                        .orElseThrow()
                        .value()
                        .counts())
                .isTrue();
        assertThat(made.book.history(FieldReading.class, "a")).hasSize(3);
    }

    /** HG-107 has G = 0.3 in force as the rail of the demo shows it: 5.5 - 0.3 = 5.2. HG-108 never had a factor. */
    @Test
    void aReadingIsCorrectedOrMarkedAndSaidSo() {
        FieldLine corrected = model.lines().stream()
                .filter(line -> line.id().equals("a"))
                .findFirst()
                .orElseThrow();
        assertThat(corrected.counted().orElseThrow().reportedPercent()).isEqualByComparingTo("5.2");
        assertThat(corrected.counted().orElseThrow().factorPercent()).isEqualByComparingTo("0.3");
        assertThat(corrected.then()).isEmpty();
        assertThat(corrected.isMarked()).isFalse();
        FieldLine marked = model.lines().stream()
                .filter(line -> line.id().equals("b"))
                .findFirst()
                .orElseThrow();
        assertThat(marked.isMarked()).isTrue();
        assertThat(marked.counted()).isEmpty();
        assertThat(model.words().verdict(marked)).isEqualTo("not corrected");
        assertThat(model.words().notes(marked)).singleElement().asString().contains("HG-108");
        model.choose(Optional.of("a"));
        assertThat(Refused.by(out -> model.strike("the clamp leaked", out))).isEmpty();
        FieldLine struck = model.chosen().orElseThrow();
        assertThat(struck.counted()).isEmpty();
        assertThat(model.words().verdict(struck)).isEqualTo("struck");
        assertThat(model.words().notes(struck)).containsExactly("the clamp leaked");
    }

    /** HG-107 wants 5.0 +- 1.5: of 6.8 the air is 6.5, on the limit; of 5.3 it is 5.0, and of 7.0 it is 6.7. */
    @Test
    void theGuardBandChangesTheVerdictNearALimitAndThereAlone() {
        List<Draft> drafts = List.of(
                Draft.of(SampleReadings.plain("e", "HG-107", "6.8").at(LocalDateTime.of(2026, 11, 25, 9, 0))),
                Draft.of(SampleReadings.plain("f", "HG-107", "5.3").at(LocalDateTime.of(2026, 11, 25, 9, 10))),
                Draft.of(SampleReadings.plain("g", "HG-107", "7.0").at(LocalDateTime.of(2026, 11, 25, 9, 20))));
        assertThat(made.book.keep(drafts, "N. Orrin", "more loads")).isEmpty();
        made.desk.refresh();
        assertThat(verdicts()).containsExactly("outside the limits", "within the limits", "within the limits");
        model.guard(true);
        assertThat(verdicts()).containsExactly("outside the limits", "within the limits", "too close to a limit");
    }

    private List<String> verdicts() {
        return model.lines().stream()
                .filter(line -> List.of("e", "f", "g").contains(line.id()))
                .map(model.words()::verdict)
                .toList();
    }

    @Test
    void whatWasSaidThenAndUnderWhichConditionsIsNamed() {
        FieldLine line = model.lines().stream()
                .filter(one -> one.id().equals("a"))
                .findFirst()
                .orElseThrow();
        FieldLine.Air then = new FieldLine.Air(
                1, new BigDecimal("0.4"), new BigDecimal("5.1"), Optional.empty(), "fails", "", Optional.empty());
        FieldLine.Air now = new FieldLine.Air(
                2,
                new BigDecimal("0.3"),
                new BigDecimal("5.2"),
                Optional.empty(),
                "none",
                "only with sand Alder",
                Optional.of(new SievedAirs.Spread(new BigDecimal("4.7"), new BigDecimal("8.1"))));
        FieldLine both = new FieldLine(
                line.version(), Optional.of(now), Optional.of(new FieldLine.Said(Optional.of(then))), List.of());
        assertThat(model.words().notes(both))
                .containsExactly(
                        "At the time: 5.1 % by revision 1, outside the limits.",
                        "Full mixture 4.7 %, mortar 8.1 %. Judged is the air of the sieved concrete, 5.2 %.",
                        "The factor holds: only with sand Alder.");
        assertThat(model.words().verdict(both)).isEqualTo("not judged");
        FieldLine marked = new FieldLine(
                line.version(), Optional.of(now), Optional.of(new FieldLine.Said(Optional.empty())), List.of());
        assertThat(model.words().notes(marked)).startsWith("At the time: not corrected.");
    }

    @Test
    void theListOnPaperSaysWhatIsOnView() {
        model.guard(true);
        model.typeMix("HG-107");
        FieldList list = model.list(model.lines(), Head.EMPTY);
        assertThat(model.isReady()).isTrue();
        assertThat(list.mix()).contains(new MixId("HG-107"));
        assertThat(list.guard().orElseThrow()).isEqualByComparingTo("2");
        assertThat(list.days()).isEqualTo(new FieldList.Days(LocalDate.of(2026, 10, 27), LocalDate.of(2026, 11, 25)));
        assertThat(list.lines()).hasSameSizeAs(model.lines());
        FieldList.Line line = list.lines().stream()
                .filter(one -> one.reading().recordId().equals("a"))
                .findFirst()
                .orElseThrow();
        assertThat(line.air().orElseThrow().reportedPercent()).isEqualByComparingTo("5.2");
        assertThat(line.words()).isEqualTo(model.words().verdict(model.lines().get(0)));
        model.typeFirst("never");
        assertThat(model.isReady()).isFalse();
    }

    /** Reading d is of the day before the days on view, a of the last one; a day that is on view already moves nothing. */
    @Test
    void aReadingThatIsLedToIsChosenAndItsDayComesOnView() {
        FieldReading old =
                made.book.latest(FieldReading.class, "d").orElseThrow().value();
        model.showReading(old);
        assertThat(model.first() + " to " + model.last()).isEqualTo("2026-10-26 to 2026-11-25");
        assertThat(model.mix()).isEqualTo("HG-107");
        assertThat(model.chosen().orElseThrow().id()).isEqualTo("d");
        assertThat(ids()).containsExactly("a", "c", "d");
        model.typeLast("2026-11-01");
        model.showReading(
                made.book.latest(FieldReading.class, "a").orElseThrow().value());
        assertThat(model.first() + " to " + model.last()).isEqualTo("2026-10-26 to 2026-11-25");
        assertThat(model.chosen().orElseThrow().id()).isEqualTo("a");
        model.typeFirst("never");
        model.showReading(old);
        assertThat(model.first()).isEqualTo("2026-10-26");
    }

    @Test
    void whatOneVersionSaysDifferentlyIsSaid() {
        FieldReading one = SampleReadings.plain("a", "HG-107", "5.5");
        FieldReading other = SampleReadings.plain("a", "HG-107", "5.6");
        assertThat(model.changes(one, other)).isEqualTo("gauge reading: 5.5, now 5.6");
        assertThat(model.changes(one, one)).isEmpty();
    }

    @Test
    void aCorrectionBeginsWithTheChosenReading() {
        model.correct();
        assertThat(model.entry().isNew()).isTrue();
        model.choose(Optional.of("b"));
        model.correct();
        assertThat(model.entry().base().orElseThrow().value().recordId()).isEqualTo("b");
    }

    @Test
    void withoutALabBookNothingIsOnView() {
        assertThat(model.summary()).contains("Struck: 0.");
        model.lines();
        made.desk.turnAway();
        assertThat(model.lines()).isEmpty();
        assertThat(model.summary()).isEqualTo("No lab book is open.");
        assertThat(model.isLooking()).isFalse();
    }
}

package porebench.desk.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.Refused;
import porebench.desk.TurnedClock;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.SampleReadings;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.FieldReadingColumns;
import porebench.record.id.MixId;

/** The form of a reading on the demo laboratory: mix HG-104 on meter B-1, whose scale ends at 10 %. */
class FieldEntryTest {
    private FieldDesk made;
    private FieldEntry entry;

    @BeforeEach
    void begin() {
        made = new FieldDesk();
        made.desk.select(new MixId("HG-104"));
        entry = made.model().entry();
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    private void typeAll() {
        entry.type(FieldReadingColumns.TRUCK, "12");
        entry.type(FieldReadingColumns.GAUGE, "5.4");
        entry.type(FieldReadingColumns.DENSITY, "2310");
        entry.type(FieldReadingColumns.TEMPERATURE, "19.5");
        entry.type(FieldReadingColumns.REMARKS, "at the pump");
    }

    private FieldGate.Held held() {
        return made.desk.answer(entry.gate().orElseThrow()).orElseThrow();
    }

    private List<Problem> save(String why) {
        return Refused.by(out -> entry.keep(held(), Optional.of("it was so"), why, out));
    }

    private FieldReading only() {
        return made.kept("HG-104").stream()
                .map(Version::value)
                .filter(reading -> reading.remarks().equals("at the pump"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aReadingIsKeptAsItWasTypedAndTheNextBeginsWithItsMixAndMeter() {
        assertThat(entry.draft().text(FieldReadingColumns.MIX)).isEqualTo("HG-104");
        entry.type(FieldReadingColumns.METER, "B-1");
        typeAll();
        assertThat(entry.problems()).isEmpty();
        assertThat(save("entered")).isEmpty();
        FieldReading kept = only();
        assertThat(kept.recordId()).isEqualTo("HG-104/20261125T0930-1");
        assertThat(kept.readAt()).isEqualTo(LocalDateTime.of(2026, 11, 25, 9, 30));
        assertThat(kept.gaugePercent()).hasToString("5.4");
        assertThat(kept.density().orElseThrow()).hasToString("2310 kg/m3");
        assertThat(kept.temperatureCelsius().orElseThrow()).hasToString("19.5");
        assertThat(kept.meterId().orElseThrow().text()).isEqualTo("B-1");
        assertThat(kept.truck()).isEqualTo("12");
        // Nothing was doubted: the reason is not kept.
        assertThat(kept.keptBecause()).isEmpty();
        assertThat(entry.history().isChanged()).isFalse();
        assertThat(entry.isNew()).isTrue();
        assertThat(entry.draft().text(FieldReadingColumns.METER)).isEqualTo("B-1");
        assertThat(entry.draft().text(FieldReadingColumns.TRUCK)).isEmpty();
        assertThat(entry.draft().text(FieldReadingColumns.GAUGE)).isEmpty();
    }

    @Test
    void twoReadingsOfOneMinuteHaveTwoNames() {
        typeAll();
        assertThat(save("entered")).isEmpty();
        entry.type(FieldReadingColumns.TRUCK, "13");
        entry.type(FieldReadingColumns.GAUGE, "6");
        assertThat(held().reading().recordId()).isEqualTo("HG-104/20261125T0930-2");
    }

    @Test
    void whatIsMissingIsSaidOnlyOnceSomebodyTriedToSave() {
        entry.type(FieldReadingColumns.TRUCK, "12");
        assertThat(entry.problems()).isEmpty();
        assertThat(entry.gate()).isEmpty();
        assertThat(entry.attempt()).extracting(Problem::field).containsExactly("gauge");
        assertThat(entry.problems()).extracting(Problem::field).containsExactly("gauge");
    }

    @Test
    void whatCannotBeIsSaidUnderItsField() {
        entry.type(FieldReadingColumns.METER, "B-1");
        entry.type(FieldReadingColumns.GAUGE, "10.1");
        assertThat(codes(entry.problems())).containsExactly("field.above-scale");
        entry.type(FieldReadingColumns.GAUGE, "ten");
        assertThat(entry.problems()).extracting(Problem::field).containsExactly("gauge");
        entry.type(FieldReadingColumns.GAUGE, "10");
        entry.type(FieldReadingColumns.DENSITY, "90");
        assertThat(codes(entry.problems())).containsExactly("field.density");
        assertThat(entry.reading()).isEmpty();
        entry.type(FieldReadingColumns.DENSITY, "");
        entry.type(FieldReadingColumns.READ_AT, "2026-11-26 09:30");
        assertThat(codes(entry.problems())).containsExactly("field.to-come");
        entry.type(FieldReadingColumns.READ_AT, "yesterday");
        assertThat(entry.problems()).extracting(Problem::field).containsExactly("readAt");
    }

    @Test
    void aMixThatNobodyKnowsIsSaidWhenTheFieldIsLeft() {
        entry.type(FieldReadingColumns.MIX, "HG-999");
        entry.type(FieldReadingColumns.GAUGE, "5");
        assertThat(entry.problems()).isEmpty();
        entry.leave(FieldReadingColumns.GAUGE);
        assertThat(codes(entry.problems())).containsExactly("import.unknown-mix");
        assertThat(entry.held().orElseThrow().errors()).hasSize(1);
        assertThat(entry.held().orElseThrow().doubts()).isEmpty();
        // Another stroke: what was looked up is of another reading.
        entry.type(FieldReadingColumns.MIX, "HG-99");
        assertThat(entry.held()).isEmpty();
    }

    @Test
    void unitsAreThoseOfTheScreenAndAUnitTypedGoesBesideItsNumber() {
        entry.type(FieldReadingColumns.DENSITY, "144 lb/ft3");
        entry.leave(FieldReadingColumns.DENSITY);
        assertThat(entry.draft().text(FieldReadingColumns.DENSITY)).isEqualTo("144");
        assertThat(entry.draft().unit(FieldReadingColumns.DENSITY)).isEqualTo("lb/ft3");
        entry.type(FieldReadingColumns.TEMPERATURE, "68");
        entry.chooseUnit(FieldReadingColumns.TEMPERATURE, "F");
        entry.type(FieldReadingColumns.GAUGE, "5");
        // (68 - 32) / 1.8 = 20.
        assertThat(entry.reading().orElseThrow().temperatureCelsius().orElseThrow())
                .isEqualByComparingTo("20");
    }

    @Test
    void theFirstThingTypedSetsTheClockAndATimeThatIsTypedStays() {
        TurnedClock clock = new TurnedClock();
        FieldDesk other = new FieldDesk(Locale.ENGLISH, clock);
        FieldEntry form = other.model().entry();
        assertThat(form.draft().text(FieldReadingColumns.READ_AT)).isEqualTo("2026-03-04 09:30");
        clock.turn(Duration.ofMinutes(5));
        form.type(FieldReadingColumns.TRUCK, "1");
        assertThat(form.draft().text(FieldReadingColumns.READ_AT)).isEqualTo("2026-03-04 09:35");
        clock.turn(Duration.ofMinutes(5));
        form.type(FieldReadingColumns.TRUCK, "12");
        assertThat(form.draft().text(FieldReadingColumns.READ_AT)).isEqualTo("2026-03-04 09:35");
        form.clear();
        assertThat(form.draft().text(FieldReadingColumns.READ_AT)).isEqualTo("2026-03-04 09:40");
        form.type(FieldReadingColumns.READ_AT, "2026-03-04 08:00");
        assertThat(form.draft().text(FieldReadingColumns.READ_AT)).isEqualTo("2026-03-04 08:00");
    }

    private Version<FieldReading> imported() {
        FieldReading plain = SampleReadings.full("phone-1", "HG-104", "B-1")
                .standing()
                .keptFor(Optional.empty())
                .at(LocalDateTime.of(2026, 11, 24, 10, 5, 37));
        assertThat(made.book.keep(List.of(Draft.of(plain)), "N. Orrin", "imported"))
                .isEmpty();
        made.desk.refresh();
        return made.book.latest(FieldReading.class, "phone-1").orElseThrow();
    }

    @Test
    void aCorrectionKeepsTheSecondsOfATimeThatNobodyChanged() {
        entry.correct(imported());
        assertThat(entry.isNew()).isFalse();
        entry.type(FieldReadingColumns.GAUGE, "6.3");
        assertThat(save("read wrongly")).isEmpty();
        List<Version<FieldReading>> all = made.book.history(FieldReading.class, "phone-1");
        assertThat(all).hasSize(2);
        assertThat(all.get(1).value().readAt()).isEqualTo(LocalDateTime.of(2026, 11, 24, 10, 5, 37));
        assertThat(all.get(1).value().gaugePercent()).hasToString("6.3");
        assertThat(all.get(0).value().gaugePercent()).hasToString("6.20");
        assertThat(all.get(1).stamp().why()).isEqualTo("read wrongly");
        assertThat(entry.isNew()).isTrue();
    }

    @Test
    void aTimeThatIsCorrectedIsTheOneTyped() {
        entry.correct(imported());
        entry.type(FieldReadingColumns.READ_AT, "2026-11-24 10:06");
        assertThat(entry.reading().orElseThrow().readAt()).isEqualTo(LocalDateTime.of(2026, 11, 24, 10, 6));
    }

    @Test
    void aCorrectionThatIsGivenUpLeavesTheFormOfANewReadingAndCanBeTakenBack() {
        entry.correct(imported());
        entry.type(FieldReadingColumns.GAUGE, "6.3");
        entry.clear();
        assertThat(entry.isNew()).isTrue();
        assertThat(entry.draft().text(FieldReadingColumns.GAUGE)).isEmpty();
        entry.history().undo();
        assertThat(entry.draft().text(FieldReadingColumns.GAUGE)).isEqualTo("6.3");
        assertThat(entry.isNew()).isFalse();
        entry.drop();
        assertThat(entry.isNew()).isTrue();
        assertThat(entry.history().isChanged()).isFalse();
    }

    @Test
    void whatIsTypedOutlivesThePage() {
        entry.type(FieldReadingColumns.TRUCK, "77");
        FieldEntry again = made.model().entry();
        assertThat(again.draft().text(FieldReadingColumns.TRUCK)).isEqualTo("77");
        again.drop();
        assertThat(made.model().entry().draft().text(FieldReadingColumns.TRUCK)).isEmpty();
    }

    @Test
    void theMetersToChooseAreThoseInServiceAndNone() {
        List<String> all = entry.choices(FieldReadingColumns.METER);
        assertThat(all).startsWith("").contains("B-1");
        assertThat(entry.choiceWords(FieldReadingColumns.METER, "")).isEqualTo("not a meter of ours");
        assertThat(entry.choiceWords(FieldReadingColumns.METER, "B-1")).isEqualTo("B-1, Type B");
        entry.type(FieldReadingColumns.METER, "Z-9");
        assertThat(entry.choices(FieldReadingColumns.METER)).contains("Z-9");
        assertThat(entry.choiceWords(FieldReadingColumns.METER, "Z-9")).isEqualTo("Z-9");
    }

    /** HG-104 has G = 0.2 in force as the rail of the demo shows it: 5.4 - 0.2 = 5.2. */
    @Test
    void whatTheReadingComesToIsKnownWhenAFieldIsLeft() {
        typeAll();
        assertThat(entry.held()).isEmpty();
        entry.leave(FieldReadingColumns.REMARKS);
        FieldLine.Air air = entry.held().orElseThrow().air().orElseThrow();
        assertThat(air.factorPercent()).isEqualByComparingTo("0.2");
        assertThat(air.reportedPercent()).isEqualByComparingTo("5.2");
        assertThat(entry.held().orElseThrow().problems()).isEmpty();
        // HG-108 never had a factor: it would be kept and not corrected.
        entry.type(FieldReadingColumns.MIX, "HG-108");
        entry.leave(FieldReadingColumns.MIX);
        assertThat(entry.held().orElseThrow().air()).isEmpty();
        assertThat(codes(entry.held().orElseThrow().marks())).containsExactly("field.no-factor");
    }

    @Test
    void aDoubtfulTimeIsKeptOnlyForAReasonWhichACorrectionKeeps() {
        typeAll();
        entry.type(FieldReadingColumns.READ_AT, "2026-11-25 10:10");
        FieldGate.Held held = held();
        assertThat(codes(held.doubts())).containsExactly("field.clock");
        assertThat(held.errors()).isEmpty();
        assertThat(entry.wantsReason(held)).isTrue();
        assertThat(save("entered")).isEmpty();
        assertThat(only().keptBecause()).contains("it was so");
        entry.correct(made.book.latest(FieldReading.class, only().recordId()).orElseThrow());
        entry.type(FieldReadingColumns.GAUGE, "5.5");
        assertThat(entry.wantsReason(held())).isFalse();
        assertThat(Refused.by(out -> entry.keep(held(), Optional.empty(), "read wrongly", out)))
                .isEmpty();
        assertThat(only().keptBecause()).contains("it was so");
        assertThat(only().gaugePercent()).hasToString("5.5");
    }

    @Test
    void aSecondReadingOfOneLoadIsRefused() {
        typeAll();
        assertThat(save("entered")).isEmpty();
        typeAll();
        assertThat(codes(held().errors())).containsExactly("field.twice");
    }

    @Test
    void aNewFormWithoutAnythingTypedLooksNothingUp() {
        entry.look();
        assertThat(entry.held()).isEmpty();
        entry.type(FieldReadingColumns.MIX, "");
        assertThat(FieldNames.meanwhile(entry.draft())).isEqualTo("?/20261125T0930");
    }
}

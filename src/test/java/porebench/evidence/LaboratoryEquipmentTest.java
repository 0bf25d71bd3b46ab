package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.budget.Origin;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.SampleEquipment;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** The sample pieces are used from 2026-01-15 on; one that is calibrated was so on that day, for a year. */
class LaboratoryEquipmentTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 15);
    private static final LocalDate DUE = LocalDate.of(2027, 1, 15);
    private static final EquipmentKind BALANCE = EquipmentKind.BALANCE;
    private static final Equipment PIECE = SampleEquipment.equipment("BAL-1", BALANCE, "0.1", "0.2");

    private static LaboratoryEquipment.Limit limit(LocalDate day, Equipment... pieces) {
        return LaboratoryEquipment.ofFile(List.of(pieces)).limit(BALANCE, day, 1.0, Origin.LABORATORY);
    }

    private static LaboratoryEquipment.Limit known(double number) {
        return new LaboratoryEquipment.Limit(number, Origin.EQUIPMENT, false);
    }

    private static LaboratoryEquipment.Limit assumed(double number) {
        return new LaboratoryEquipment.Limit(number, Origin.ASSUMED, true);
    }

    private static LaboratoryEquipment.Piece versions(Equipment... versions) {
        List<Version<Equipment>> history = new ArrayList<>();
        Arrays.stream(versions)
                .map(value -> new Version<>(value, history.size() + 1, new Stamp("R. Vale", Instant.EPOCH, "test")))
                .forEach(history::add);
        return LaboratoryEquipment.Piece.of(history);
    }

    private static List<String> limits(LaboratoryEquipment.Piece piece) {
        return piece.calibrations().stream()
                .map(made -> made.on() + " " + made.limit())
                .toList();
    }

    @Test
    void aCalibrationHoldsFromItsDayToTheDayItIsDue() {
        assertThat(limit(FIRST, PIECE)).isEqualTo(known(0.2));
        assertThat(limit(DUE, PIECE)).isEqualTo(known(0.2));
        assertThat(limit(DUE.plusDays(1), PIECE)).isEqualTo(assumed(1.0));
    }

    /** An overdue piece that was worse than the usual figure stays as bad as it was. */
    @Test
    void wherePiecesAreWantingTheLargerOfTheirLimitsAndTheUsualFigureStands() {
        Equipment coarse = SampleEquipment.equipment("BAL-2", BALANCE, "5", "5");
        Equipment plain = SampleEquipment.uncalibrated("BAL-3", BALANCE, "0.1");
        assertThat(limit(DUE.plusDays(1), coarse)).isEqualTo(assumed(5.0));
        assertThat(limit(FIRST, plain)).isEqualTo(assumed(1.0));
        assertThat(limit(FIRST, PIECE, plain)).isEqualTo(assumed(1.0));
        assertThat(limit(FIRST, coarse, plain)).isEqualTo(assumed(5.0));
    }

    @Test
    void ofSeveralTheLargestLimitStandsForAll() {
        Equipment other = SampleEquipment.equipment("BAL-2", BALANCE, "0.1", "0.7");
        assertThat(limit(FIRST, PIECE, other)).isEqualTo(known(0.7));
        assertThat(limit(FIRST, other, PIECE)).isEqualTo(known(0.7));
    }

    @Test
    void aPieceOfAnotherKindOrNotInUseSaysNothing() {
        LaboratoryEquipment.Limit usual = new LaboratoryEquipment.Limit(1.0, Origin.LABORATORY, false);
        assertThat(limit(FIRST)).isEqualTo(usual);
        assertThat(limit(FIRST.minusDays(1), PIECE)).isEqualTo(usual);
        assertThat(limit(FIRST, SampleEquipment.equipment("CYL-1", EquipmentKind.CYLINDER, "1", "0.9")))
                .isEqualTo(usual);
        Equipment gone = SampleEquipment.lastUsedOn(PIECE, FIRST);
        assertThat(limit(FIRST, gone)).isEqualTo(known(0.2));
        assertThat(limit(FIRST.plusDays(1), gone)).isEqualTo(usual);
    }

    @Test
    void anEarlierVersionSaysWhatHeldOnEarlierDays() {
        LaboratoryEquipment.Piece piece =
                versions(PIECE, SampleEquipment.calibrated(PIECE, FIRST.plusMonths(6), "0.4"));
        LaboratoryEquipment all = new LaboratoryEquipment(List.of(piece));
        assertThat(all.limit(BALANCE, FIRST.plusMonths(6).minusDays(1), 1.0, Origin.ASSUMED))
                .isEqualTo(known(0.2));
        assertThat(all.limit(BALANCE, FIRST.plusMonths(6), 1.0, Origin.ASSUMED)).isEqualTo(known(0.4));
    }

    /** A limit, or a year, that was mistyped and corrected must not come back. */
    @Test
    void aSlipThatWasCorrectedSaysNothingAnyMore() {
        assertThat(limits(versions(PIECE, SampleEquipment.calibrated(PIECE, FIRST, "0.3"))))
                .containsExactly("2026-01-15 0.3");
        Equipment mistyped = SampleEquipment.calibrated(PIECE, FIRST.plusYears(1), "0.9");
        assertThat(limits(versions(PIECE, mistyped, SampleEquipment.calibrated(PIECE, FIRST.plusMonths(1), "0.9"))))
                .containsExactly("2026-02-15 0.9", "2026-01-15 0.2");
        assertThat(limits(versions(PIECE, SampleEquipment.uncalibrated("BAL-1", BALANCE, "0.1"))))
                .isEmpty();
        Equipment asCylinder = SampleEquipment.equipment("BAL-1", EquipmentKind.CYLINDER, "0.1", "5");
        assertThat(limits(versions(asCylinder, SampleEquipment.calibrated(PIECE, FIRST.plusDays(1), "0.3"))))
                .containsExactly("2026-01-16 0.3");
    }

    @Test
    void onePieceMadeAllWhereItWasTheOnlyOneOnEachDay() {
        Equipment gone = SampleEquipment.lastUsedOn(PIECE, FIRST);
        Equipment come =
                SampleEquipment.usedFrom(SampleEquipment.equipment("BAL-2", BALANCE, "0.1", "0.2"), FIRST.plusDays(1));
        LaboratoryEquipment all = LaboratoryEquipment.ofFile(List.of(gone, come));
        assertThat(all.isOne(BALANCE, List.of(FIRST, FIRST))).contains(true);
        assertThat(all.isOne(BALANCE, List.of(FIRST, FIRST.plusDays(1)))).contains(false);
        assertThat(all.isOne(BALANCE, List.of(FIRST.plusDays(1), FIRST.plusDays(9))))
                .contains(true);
        assertThat(all.isOne(BALANCE, List.of(FIRST, FIRST.minusDays(1)))).contains(false);
        assertThat(all.isOne(BALANCE, List.of(FIRST.minusDays(1)))).isEmpty();
        assertThat(all.isOne(EquipmentKind.CYLINDER, List.of(FIRST))).isEmpty();
        Equipment beside = SampleEquipment.equipment("BAL-3", BALANCE, "0.1", "0.2");
        assertThat(LaboratoryEquipment.ofFile(List.of(PIECE, beside)).isOne(BALANCE, List.of(FIRST, FIRST)))
                .contains(false);
    }

    /** Due on 2027-01-15, with 14 days' notice from 2027-01-01 on. */
    @Test
    void aPieceIsDueSoonOverdueOrOutOfUse() {
        LaboratoryEquipment.Piece piece = versions(PIECE);
        assertThat(piece.stateOn(FIRST.minusDays(1), 14)).isEqualTo(EquipmentState.OUT_OF_USE);
        assertThat(piece.stateOn(LocalDate.of(2026, 12, 31), 14)).isEqualTo(EquipmentState.CALIBRATED);
        assertThat(piece.stateOn(LocalDate.of(2027, 1, 1), 14)).isEqualTo(EquipmentState.DUE);
        assertThat(piece.stateOn(DUE, 14)).isEqualTo(EquipmentState.DUE);
        assertThat(piece.stateOn(DUE.plusDays(1), 14)).isEqualTo(EquipmentState.OVERDUE);
        assertThat(versions(SampleEquipment.lastUsedOn(PIECE, DUE)).stateOn(DUE.plusDays(1), 14))
                .isEqualTo(EquipmentState.OUT_OF_USE);
        assertThat(versions(SampleEquipment.uncalibrated("BAL-3", BALANCE, "0.1"))
                        .stateOn(FIRST, 14))
                .isEqualTo(EquipmentState.NOT_CALIBRATED);
    }
}

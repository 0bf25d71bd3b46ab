package porebench.record;

import java.time.LocalDate;
import java.util.Optional;
import porebench.record.id.EquipmentId;

/** Pieces of equipment for tests. */
public final class SampleEquipment {
    private SampleEquipment() {}

    /** A piece that was calibrated on 2026-01-15 for a year and is used from that day on. */
    public static Equipment equipment(String id, EquipmentKind kind, String division, String limit) {
        LocalDate day = LocalDate.of(2026, 1, 15);
        return new Equipment(
                new EquipmentId(id),
                kind,
                "",
                Samples.number(division),
                Optional.of(new Equipment.Calibration(day, Samples.number(limit), day.plusYears(1), "")),
                day,
                Optional.empty(),
                "");
    }

    /** A piece without a calibration, used from 2026-01-15 on. */
    public static Equipment uncalibrated(String id, EquipmentKind kind, String division) {
        return new Equipment(
                new EquipmentId(id),
                kind,
                "",
                Samples.number(division),
                Optional.empty(),
                LocalDate.of(2026, 1, 15),
                Optional.empty(),
                "");
    }

    /** The same piece, used from another day on. */
    public static Equipment usedFrom(Equipment piece, LocalDate day) {
        return new Equipment(
                piece.id(), piece.type(), "", piece.division(), piece.calibration(), day, piece.usedUntil(), "");
    }

    /** The same piece, given away after a day. */
    public static Equipment lastUsedOn(Equipment piece, LocalDate day) {
        return new Equipment(
                piece.id(),
                piece.type(),
                "",
                piece.division(),
                piece.calibration(),
                piece.usedFrom(),
                Optional.of(day),
                "");
    }

    /** The same piece, calibrated on another day for a year. */
    public static Equipment calibrated(Equipment piece, LocalDate day, String limit) {
        return new Equipment(
                piece.id(),
                piece.type(),
                "",
                piece.division(),
                Optional.of(new Equipment.Calibration(day, Samples.number(limit), day.plusYears(1), "")),
                piece.usedFrom(),
                piece.usedUntil(),
                "");
    }
}

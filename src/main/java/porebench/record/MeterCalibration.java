package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.meter.BowlFills;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.Symbolic;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/**
 * A calibration of a meter as measured: its bowl, its dial or column, or several of them on one day.
 *
 * <p>Without any measurement it is a note that the meter was repaired, taken to a new project or came into doubt: from that
 * day it wants a calibration.
 *
 * @param id its name
 * @param meterId the meter
 * @param meterType the type of the meter
 * @param calibratedOn the day it was made
 * @param by who made it, may be empty
 * @param reason why it was made
 * @param elevationMetres where it was made, in m above sea level; of a column check its own elevation
 * @param bowl the weighings of the bowl; empty when its volume was not found that day
 * @param dial the dial check of a Type B meter; empty when the dial was not checked
 * @param column the column check of a Type A meter; empty when the column was not checked
 * @param remarks anything else, may be empty
 */
public record MeterCalibration(
        CalibrationId id,
        MeterId meterId,
        MeterType meterType,
        LocalDate calibratedOn,
        String by,
        Reason reason,
        Optional<BigDecimal> elevationMetres,
        Optional<BowlFills> bowl,
        Optional<DialCheck> dial,
        Optional<ColumnCheck> column,
        String remarks)
        implements Kept {
    /** Why a meter is calibrated. */
    public enum Reason implements Symbolic {
        /** The interval has run out. */
        ROUTINE,
        /** It was repaired or knocked. */
        REPAIR,
        /** A new project begins. */
        PROJECT,
        /** A new season begins. */
        SEASON,
        /** Its readings are not believed. */
        DOUBT;

        /** Returns whether the reason by itself, with nothing measured, is worth a note. */
        public boolean isWorthANote() {
            return this == REPAIR || this == PROJECT || this == DOUBT;
        }
    }

    /**
     * Makes a calibration.
     *
     * @throws IllegalArgumentException if a dial check is not of a Type B or a column check not of a Type A meter, if the
     *     elevation is not that of the column check, or if nothing was measured and the reason is not worth a note
     */
    public MeterCalibration {
        require(dial.isEmpty() || meterType == MeterType.B, "meterType must be B where a dial was checked", meterType);
        require(column.isEmpty() || meterType == MeterType.A, "meterType must be A where a column was read", meterType);
        require(
                column.isEmpty() || elevationMetres.equals(column.map(ColumnCheck::elevationMetres)),
                "elevationMetres must be that of the column check",
                elevationMetres);
        require(
                bowl.isPresent() || dial.isPresent() || column.isPresent() || reason.isWorthANote(),
                "reason must be repair, project or doubt where nothing was measured",
                reason);
    }

    private static void require(boolean rule, String what, Object is) {
        if (!rule) {
            throw new IllegalArgumentException(what + ", but is " + is);
        }
    }

    /** Returns whether nothing was measured: the meter was repaired, taken to a new project or came into doubt. */
    public boolean isNote() {
        return bowl.isEmpty() && !checksMeter();
    }

    /** Returns whether dial or column were checked. */
    public boolean checksMeter() {
        return dial.isPresent() || column.isPresent();
    }

    @Override
    public RecordKind kind() {
        return RecordKind.METER_CALIBRATION;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

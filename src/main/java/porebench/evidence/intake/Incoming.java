package porebench.evidence.intake;

import java.util.Comparator;
import porebench.method.Place;
import porebench.record.Kept;

/**
 * A record read from a file, on its way into a lab book.
 *
 * <p>A trial whose determination has the name of its mix, and a factor issue that rests on version 0, leave it to the lab
 * book to say which determination or version that is.
 *
 * @param place where it stands
 * @param value the record
 * @param simulated whether its file says that it comes from a training book, of a record that does not say so itself
 */
public record Incoming(Place place, Kept value, boolean simulated) {
    /** Orders records so that each comes behind those it may refer to. */
    static final Comparator<Incoming> IN_ORDER = Comparator.comparing(
                    (Incoming one) -> one.value().kind())
            .thenComparing(CalibrationIntake::day)
            .thenComparingInt(CustodyIntake::number);

    /** Makes a record of which the file says no such thing. */
    public Incoming(Place place, Kept value) {
        this(place, value, false);
    }

    /** Returns whether a file may correct what the lab book holds under its name; others a person corrects, with a reason. */
    boolean mayChange() {
        return switch (value.kind()) {
            case METER_CALIBRATION,
                    TRIAL,
                    FACTOR_ISSUE,
                    CARD_PRINT,
                    CARD_STEP,
                    STUDY,
                    SHEET_PHOTO,
                    FACTOR_PROPOSAL,
                    CHANGE_DECISION -> false;
            default -> true;
        };
    }
}

package porebench.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.budget.Origin;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.book.Records;
import porebench.record.book.Version;

/**
 * The equipment of a laboratory, and how far it may be wrong on a day.
 *
 * <p>Which piece measured a trial is not recorded: of all pieces of a kind in use the largest limit stands. A version states
 * the newest calibration of its piece, so that an earlier version that names a later day, or the same, was a slip and says
 * nothing any more; nor does one of another kind.
 *
 * @param pieces every piece, in the order of their ids
 */
public record LaboratoryEquipment(List<Piece> pieces) {
    /** Nothing is known of the equipment. */
    public static final LaboratoryEquipment NONE = new LaboratoryEquipment(List.of());

    public LaboratoryEquipment {
        pieces = List.copyOf(pieces);
    }

    /**
     * One piece.
     *
     * @param newest what its newest version states
     * @param calibrations those that stand, the newest first
     */
    public record Piece(Equipment newest, List<Equipment.Calibration> calibrations) {
        public Piece {
            calibrations = List.copyOf(calibrations);
        }

        /** Gathers what the versions of a piece say, the first one first. */
        static Piece of(List<Version<Equipment>> versions) {
            Equipment newest = versions.get(versions.size() - 1).value();
            List<Equipment.Calibration> standing = new ArrayList<>();
            LocalDate earliest = LocalDate.MAX;
            for (int i = versions.size() - 1; i >= 0; i--) {
                Equipment then = versions.get(i).value();
                if (then.calibration().isEmpty()) {
                    // It was not calibrated when that was written: what is older was taken back.
                    break;
                }
                Equipment.Calibration made = then.calibration().get();
                if (then.type() == newest.type() && made.on().isBefore(earliest)) {
                    standing.add(made);
                    earliest = made.on();
                }
            }
            return new Piece(newest, standing);
        }

        /** Returns the newest calibration made by a day, whether or not it still holds then. */
        public Optional<Equipment.Calibration> calibrationBy(LocalDate day) {
            return calibrations.stream().filter(made -> !made.on().isAfter(day)).findFirst();
        }

        /**
         * Returns how it stands with the piece on a day.
         *
         * @param noticeDays how many days before it runs out a calibration is due
         */
        public EquipmentState stateOn(LocalDate day, int noticeDays) {
            if (!newest.isUsedOn(day)) {
                return EquipmentState.OUT_OF_USE;
            }
            return calibrationBy(day)
                    .map(made -> day.isAfter(made.dueOn())
                            ? EquipmentState.OVERDUE
                            : day.isBefore(made.dueOn().minusDays(noticeDays))
                                    ? EquipmentState.CALIBRATED
                                    : EquipmentState.DUE)
                    .orElse(EquipmentState.NOT_CALIBRATED);
        }

        /** Returns whether a calibration holds on a day. */
        public boolean isCalibratedOn(LocalDate day) {
            return calibrationBy(day).filter(made -> !day.isAfter(made.dueOn())).isPresent();
        }
    }

    /**
     * How far what measured something may be wrong.
     *
     * @param number in the unit of the kind
     * @param origin where it was taken from
     * @param isWanting whether a piece in use had no calibration that holds, so that the profile's figure had to stand in
     */
    public record Limit(double number, Origin origin, boolean isWanting) {}

    /** Reads the equipment with its history out of a lab book. */
    public static LaboratoryEquipment of(Records book) {
        return new LaboratoryEquipment(book.latest(Equipment.class).stream()
                .map(newest -> newest.number() == 1
                        ? List.of(newest)
                        : book.history(Equipment.class, newest.value().recordId()))
                .map(Piece::of)
                .toList());
    }

    /** Takes pieces of which nothing earlier is known. */
    public static LaboratoryEquipment ofFile(List<Equipment> pieces) {
        return new LaboratoryEquipment(pieces.stream()
                .map(piece -> new Piece(piece, piece.calibration().stream().toList()))
                .toList());
    }

    /** Returns the pieces of a kind that are in use on a day. */
    public List<Piece> inUse(EquipmentKind kind, LocalDate day) {
        return pieces.stream()
                .filter(piece -> piece.newest().type() == kind)
                .filter(piece -> piece.newest().isUsedOn(day))
                .toList();
    }

    /**
     * Returns how far a kind may be wrong on a day: the largest limit of the pieces in use where each has a calibration that
     * holds; the larger of that and the usual figure, assumed, where one has none; the usual figure where none is in use.
     *
     * @param usual the figure of the profile, in the unit of the kind
     * @param usualOrigin where that was taken from
     */
    public Limit limit(EquipmentKind kind, LocalDate day, double usual, Origin usualOrigin) {
        List<Piece> used = inUse(kind, day);
        double largest = used.stream()
                .flatMap(piece -> piece.calibrationBy(day).stream())
                .mapToDouble(made -> made.limit().doubleValue())
                .max()
                .orElse(0);
        if (used.isEmpty()) {
            return new Limit(usual, usualOrigin, false);
        }
        return used.stream().allMatch(piece -> piece.isCalibratedOn(day))
                ? new Limit(largest, Origin.EQUIPMENT, false)
                : new Limit(Math.max(largest, usual), Origin.ASSUMED, true);
    }

    /**
     * Returns whether one piece made all of some measurements.
     *
     * @param days the days of the measurements
     * @return empty when no piece of the kind was in use on any of the days, so that nothing is known
     */
    public Optional<Boolean> isOne(EquipmentKind kind, List<LocalDate> days) {
        List<List<Piece>> used = days.stream().map(day -> inUse(kind, day)).toList();
        if (used.stream().allMatch(List::isEmpty)) {
            return Optional.empty();
        }
        return Optional.of(used.get(0).size() == 1 && used.stream().distinct().count() == 1);
    }
}

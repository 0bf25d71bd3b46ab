package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.LaboratoryEquipment;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.quantity.Require;
import porebench.record.id.EquipmentId;

/**
 * A piece of the laboratory's equipment: a balance, a measuring cylinder, a thermometer or a marked vessel.
 *
 * <p>A new calibration is a new version; the versions before say what held on earlier days ({@link LaboratoryEquipment}).
 *
 * @param id the laboratory's name for it
 * @param type what it measures with, which fixes the unit of its figures
 * @param description make or serial number, may be empty
 * @param division its division, or the last digit it shows, in the unit of its kind, greater than 0
 * @param calibration its newest calibration; empty while it has none
 * @param usedFrom the first day on which it is used
 * @param usedUntil the last day on which it is used; empty while it is in use
 * @param remarks anything else, may be empty
 */
public record Equipment(
        EquipmentId id,
        EquipmentKind type,
        String description,
        BigDecimal division,
        Optional<Calibration> calibration,
        LocalDate usedFrom,
        Optional<LocalDate> usedUntil,
        String remarks)
        implements Kept {
    public Equipment {
        Require.positive("division", division.doubleValue());
    }

    /**
     * How far a piece may be wrong, and how long that is vouched for.
     *
     * @param on the day of the calibration
     * @param limit how far it may be wrong to either side, as the calibration or certificate states, in the unit of its kind,
     *     greater than 0
     * @param dueOn the last day on which the calibration holds
     * @param certificate number of the certificate or who calibrated, may be empty
     */
    public record Calibration(LocalDate on, BigDecimal limit, LocalDate dueOn, String certificate) {
        public Calibration {
            Require.positive("limit", limit.doubleValue());
        }
    }

    /**
     * Returns what is wrong or doubtful about it, under the fields of its form.
     *
     * @param today the day on which it is to be kept
     */
    public List<Problem> check(LocalDate today) {
        List<Problem> problems = check();
        calibration
                .flatMap(made -> CalibrationDay.check("calibratedOn", made.on(), today))
                .ifPresent(problems::add);
        return problems;
    }

    /** Returns what is wrong or doubtful about it on any day, under the fields of its form. */
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        checkYear("calibratedOn", calibration.map(Calibration::on), problems);
        checkYear("dueOn", calibration.map(Calibration::dueOn), problems);
        checkYear("usedFrom", Optional.of(usedFrom), problems);
        checkYear("usedUntil", usedUntil, problems);
        usedUntil
                .filter(until -> until.isBefore(usedFrom))
                .ifPresent(until -> problems.add(
                        Problem.error("usedUntil", "equipment.until-before-from", id.text(), until, usedFrom)));
        calibration.ifPresent(made -> check(made, problems));
        return problems;
    }

    private void checkYear(String field, Optional<LocalDate> day, List<Problem> problems) {
        day.filter(known -> !Limit.YEAR.holds(known.getYear()))
                .ifPresent(known -> problems.add(Problem.error(
                        field,
                        "equipment.year-impossible",
                        id.text(),
                        known,
                        Limit.YEAR.lowInclusive(),
                        Limit.YEAR.highInclusive())));
    }

    private void check(Calibration made, List<Problem> problems) {
        if (!made.dueOn().isAfter(made.on())) {
            problems.add(Problem.error("dueOn", "equipment.due-before-calibrated", id.text(), made.dueOn(), made.on()));
        }
        if (made.limit().add(made.limit()).compareTo(division) < 0) {
            problems.add(Problem.warning(
                    "limit", "equipment.limit-below-division", id.text(), made.limit(), type.unit(), division));
        }
    }

    /** Returns whether it is used on a day. */
    public boolean isUsedOn(LocalDate day) {
        return !day.isBefore(usedFrom) && usedUntil.filter(day::isAfter).isEmpty();
    }

    @Override
    public RecordKind kind() {
        return RecordKind.EQUIPMENT;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

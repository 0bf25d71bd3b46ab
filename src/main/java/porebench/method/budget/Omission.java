package porebench.method.budget;

import porebench.method.Problem;

/** Something that is not in a budget because nothing is known of it; it is not taken as 0, it is said. */
public enum Omission {
    /** The dial was never checked against known air. */
    DIAL_NEVER_CHECKED("budget.dial-never-checked"),
    /** A reading lies beyond the points at which the dial was checked. */
    DIAL_BEYOND_POINTS("budget.dial-beyond-points"),
    /** The bowl was never weighed: the volume is as stated, and only its last digit is in the budget. */
    BOWL_NEVER_WEIGHED("budget.bowl-never-weighed"),
    /** The bowl was filled once: the scatter of fills is not known. */
    BOWL_ONE_FILL("budget.bowl-one-fill"),
    /** The buoyancy of the air was left in the weighings of the bowl. */
    BOWL_BUOYANCY("budget.bowl-buoyancy"),
    /** Type A: nothing is kept of the uncertainty of the column's calibration. */
    COLUMN("budget.column"),
    /** The masses of the sample were not written down in every trial. */
    SAMPLE_NOT_STATED("budget.sample-not-stated"),
    /** One trial: its scatter is that of the profile, not its own. */
    ONE_TRIAL("budget.one-trial"),
    /** All trials gave the same factor: what scatter they have is less than the division shows. */
    NO_SCATTER("budget.no-scatter"),
    /** Trials were made on several meters, whose calibrations count as one. */
    SEVERAL_METERS("budget.several-meters"),
    /** No determinations were spread over enough days, operators or meters to tell how the factor differs between them. */
    OCCASIONS("budget.occasions"),
    /** A cylinder in use had no calibration that held: the larger of its limit and the profile's figure stands in. */
    CYLINDER_NOT_CALIBRATED("budget.cylinder-not-calibrated"),
    /** The same for a balance. */
    BALANCE_NOT_CALIBRATED("budget.balance-not-calibrated"),
    /** The same for a vessel with marks in shares of the bowl. */
    VESSEL_NOT_CALIBRATED("budget.vessel-not-calibrated"),
    /** The dial of the meter in the field was never checked, or is not known here. */
    FIELD_DIAL("budget.field-dial");

    private final String code;

    Omission(String code) {
        this.code = code;
    }

    /** Returns this as a doubt, to be said in words. */
    public Problem asProblem() {
        return Problem.warning("budget", code);
    }
}

package porebench.method;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.quantity.Symbolic;
import porebench.quantity.Typed;

/**
 * The figures that every profile states, each with the values it may have.
 *
 * <p>A number has closed bounds in the unit named beside it; a choice has its words; days of the year are a text.
 */
public enum FigureName implements Symbolic {
    /** Step of the reported factor, in % air. */
    FACTOR_STEP("% air", "0.01", "1"),
    /** Tie rule of the reported factor. */
    FACTOR_TIES(List.of("even", "away")),
    /** Step of the reported air content, in % air. */
    AIR_STEP("% air", "0.01", "1"),
    /** Tie rule of the reported air content. */
    AIR_TIES(List.of("even", "away")),
    /** What is compared with {@link #HIGH_AIR_ABOVE}: the gauge reading, the air content, or nothing ever. */
    HIGH_AIR_LOOKS_AT(List.of("reading", "air", "never")),
    /** Above this value, in % air, the report goes to half a scale division. */
    HIGH_AIR_ABOVE("% air", "0", "100"),
    /** Whether the rounded factor is carried forward into the air content, or the unrounded one. */
    CARRY_ROUNDED_FACTOR(List.of("yes", "no")),
    /** From this factor on, in % air, a check by the volumetric method is advised. */
    ADVISE_VOLUMETRIC_FROM("% air", "0.1", "10"),
    /** Factors of dense aggregate are usually below this, in % air. */
    USUAL_FACTOR_BELOW("% air", "0.1", "10"),
    /** Least factor that can be issued, in % air; a lower one is refused, whoever takes it on. */
    FACTOR_LOW("% air", "-1", "0"),
    /** Largest factor that can be issued, in % air; a higher one is refused, whoever takes it on. */
    FACTOR_HIGH("% air", "0.5", "10"),
    /** Whether a second person approves each factor. */
    SECOND_PERSON(List.of("yes", "no")),
    /** Whether somebody issues a factor, or it is drafted, checked and put in force, and by how many people. */
    FACTOR_STEPS(List.of("one", "checked", "three")),
    /** Least volume of the measuring bowl, in litres. */
    LEAST_BOWL("L", "0.5", "50"),
    /** Tolerance of a weighed sample mass, in % of the target. */
    MASS_TOLERANCE("%", "0.01", "20"),
    /** Tolerance of the soak time, in minutes. */
    SOAK_TOLERANCE("min", "0", "120"),
    /** How far the withdrawn water may lie from the target air, in % of the bowl. */
    WITHDRAWAL_TOLERANCE("% air", "0.1", "10"),
    /** Top of the gauge scale when the meter states none, in % air. */
    SCALE_TOP("% air", "1", "100"),
    /** Standard deviation of repeat trials by one operator, in % air. */
    REPEATABILITY("% air", "0.001", "5"),
    /** Standard deviation of readings of one load by several operators, each on a meter of their own, in % air. */
    FIELD_SCATTER("% air", "0.01", "5"),
    /** Trials a determination should have at least. */
    LEAST_TRIALS("trials", "1", "20"),
    /** Half-width that the 95 % interval of the mean factor should have at most, in % air. */
    HALF_WIDTH("% air", "0.001", "1"),
    /** Months after which a factor is due for a new test. */
    RECHECK_MONTHS("months", "1", "120"),
    /** Days before that date from which the factor is shown as due. */
    RECHECK_NOTICE_DAYS("days", "0", "365"),
    /** New lots of one of its sources after which a factor is due for a new test; 0 does not ask. */
    RECHECK_LOTS("lots", "0", "1000"),
    /** Tonnes of aggregate after which a factor is due for a new test; 0 does not ask. */
    RECHECK_TONNES("t", "0", "10000000"),
    /** Production days after which a factor is due for a new test; 0 does not ask. */
    RECHECK_PRODUCTION_DAYS("days", "0", "3650"),
    /** From this share of the lots, tonnes or production days on, in %, a factor is shown as due. */
    RECHECK_NOTICE_SHARE("%", "1", "100"),
    /** The days of the year on which a season begins, and with it a factor from before is due; see {@link Seasons}. */
    RECHECK_SEASONS("days of the year"),
    /** How far the proportions of the aggregates may drift before a mix counts as changed; 0 is any change. */
    PROPORTION_TOLERANCE("% of the aggregate", "0", "50"),
    /** Tolerance on the target air of a load, in % air, where a mix states none. */
    AIR_TOLERANCE("% air", "0.1", "10"),
    /** Least diameter of the measuring bowl, divided by its height. */
    BOWL_SHAPE_LOW("of the height", "0.1", "10"),
    /** Largest diameter of the measuring bowl, divided by its height. */
    BOWL_SHAPE_HIGH("of the height", "0.1", "10"),
    /** How far a Type B dial may lie from the true air at a check point, in % air. */
    DIAL_TOLERANCE("% air", "0.01", "2"),
    /** How far the hand may move in 90 s at the initial pressure line, in marks of the dial there. */
    LEAK_MARKS("marks", "0", "10"),
    /** Largest expansion D of a Type A meter, in % air. */
    EXPANSION_LIMIT("% air", "0", "2"),
    /** How far up or down a Type A meter may be moved before it is calibrated anew, in m. */
    ELEVATION_LIMIT("m", "1", "2000"),
    /** By how much the implied chamber volume may differ between two calibrations, in %. */
    CHAMBER_DRIFT("%", "0.1", "20"),
    /** Months after which dial or column are due for calibration. */
    CALIBRATION_MONTHS("months", "1", "120"),
    /** Months after which the bowl volume is due for calibration. */
    BOWL_MONTHS("months", "1", "120"),
    /** Days before that date from which a calibration is shown as due. */
    CALIBRATION_NOTICE_DAYS("days", "0", "365"),
    /** Whether a meter is calibrated before each project. */
    CALIBRATE_EACH_PROJECT(List.of("yes", "no")),
    /** How far the measuring cylinder of the water may be wrong, in mL. */
    CYLINDER_LIMIT("mL", "0.01", "50"),
    /** How far the balance may be wrong, in g. */
    BALANCE_LIMIT("g", "0.001", "100"),
    /** How far the marks of a vessel graduated in % of the bowl may be wrong, in % of the bowl. */
    VESSEL_LIMIT("% of the bowl", "0.001", "1"),
    /** Whether trials and dial checks measure water with one cylinder, one balance or one vessel, each of its kind. */
    ONE_MEASURE(List.of("yes", "no"));

    private final String unit;

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives an immutable list
    private final List<String> words;

    private final BigDecimal lowInclusive;
    private final BigDecimal highInclusive;

    FigureName(String unit, String lowInclusive, String highInclusive) {
        this(unit, List.of(), new BigDecimal(lowInclusive), new BigDecimal(highInclusive));
    }

    /** A text that has a check of its own. */
    FigureName(String unit) {
        this(unit, List.of(), BigDecimal.ZERO, BigDecimal.ZERO);
    }

    FigureName(List<String> words) {
        this("", words, BigDecimal.ZERO, BigDecimal.ZERO);
    }

    FigureName(String unit, List<String> words, BigDecimal lowInclusive, BigDecimal highInclusive) {
        this.unit = unit;
        this.words = words;
        this.lowInclusive = lowInclusive;
        this.highInclusive = highInclusive;
    }

    /** Returns the unit of a number, empty for a choice. */
    public String unit() {
        return unit;
    }

    /** Returns the words of a choice, empty for a number. */
    public List<String> words() {
        return words;
    }

    /** Returns whether it is days of the year, and neither a number nor a choice. */
    public boolean isDays() {
        return this == RECHECK_SEASONS;
    }

    /** Returns whether a sheet of an own profile may be without it, as those from before it was known are. */
    public boolean mayBeAbsent() {
        return List.of(
                        FACTOR_STEPS,
                        RECHECK_LOTS,
                        RECHECK_TONNES,
                        RECHECK_PRODUCTION_DAYS,
                        RECHECK_NOTICE_SHARE,
                        RECHECK_SEASONS,
                        PROPORTION_TOLERANCE)
                .contains(this);
    }

    private boolean whole() {
        return List.of("trials", "months", "days", "lots").contains(unit);
    }

    /** Returns the figure with this key, if there is one. */
    public static Optional<FigureName> ofKey(String key) {
        return List.of(values()).stream()
                .filter(name -> name.symbol().equals(key))
                .findFirst();
    }

    /** Returns the problem, if there is one, with a value for this figure. */
    public Optional<Problem> check(String value) {
        if (!words.isEmpty()) {
            return words.contains(value)
                    ? Optional.empty()
                    : Optional.of(
                            Problem.error(symbol(), "profile.not-a-choice", symbol(), value, String.join(", ", words))
                                    .of(Problem.Kind.NOT_A_CHOICE));
        }
        if (isDays()) {
            return Seasons.parse(value).isPresent()
                    ? Optional.empty()
                    : Optional.of(Problem.error(symbol(), "profile.no-days", symbol(), value, Seasons.EXAMPLE)
                            .of(Problem.Kind.OUT_OF_RANGE));
        }
        Optional<BigDecimal> number = Typed.parseNumber(value);
        boolean fits = number.isPresent()
                && number.get().compareTo(lowInclusive) >= 0
                && number.get().compareTo(highInclusive) <= 0
                && (!whole() || number.get().stripTrailingZeros().scale() <= 0);
        return fits
                ? Optional.empty()
                : Optional.of(Problem.error(
                                symbol(), "profile.out-of-range", symbol(), value, lowInclusive, highInclusive, unit)
                        .of(Problem.Kind.OUT_OF_RANGE));
    }
}

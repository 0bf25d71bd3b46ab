package porebench.desk.trial;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;

/** The fields of the entry form, in the order of the bench. */
enum TrialField {
    METER("meter"),
    ELEVATION("elevation"),
    FINE("fine"),
    COARSE("coarse"),
    SOAK("soak"),
    WATER("waterTemperature"),
    WITHDRAWN("withdrawn"),
    WITHDRAWN_UNIT("withdrawnUnit"),
    GAUGE("gauge"),
    H1("h1"),
    H2("h2"),
    LEAK("leak"),
    REMARKS("remarks"),
    ID("trialId"),
    TESTED_AT("testedAt"),
    OPERATOR("operator"),
    MASS_UNIT("massUnit"),
    WATER_UNIT("waterUnit");

    private final String problemField;

    TrialField(String problemField) {
        this.problemField = problemField;
    }

    /** Returns the field by which a problem names it, also the name of its component. */
    String problemField() {
        return problemField;
    }

    /** Returns the field that a problem names, if something measured stands in it or the day, on which the meter depends. */
    static Optional<TrialField> measured(String problemField) {
        return EnumSet.range(METER, H2).stream()
                .filter(field -> field.problemField.equals(problemField))
                .findFirst()
                .or(() -> TESTED_AT.problemField.equals(problemField) ? Optional.of(TESTED_AT) : Optional.empty());
    }

    /** Returns the key of its name in the bundle. */
    String nameKey() {
        return "name." + name().toLowerCase(Locale.ROOT);
    }
}

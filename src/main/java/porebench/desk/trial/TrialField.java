package porebench.desk.trial;

import java.util.Locale;

/** The fields of the entry form, in the order of the bench. */
enum TrialField {
    METER("meter"),
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

    /** Returns the key of its name in the bundle. */
    String nameKey() {
        return "name." + name().toLowerCase(Locale.ROOT);
    }
}

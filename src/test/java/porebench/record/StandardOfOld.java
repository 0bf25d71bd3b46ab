package porebench.record;

import java.util.Map;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.profile.Profiles;

/** The standard profile with the figures that it had when the first lab books of the tests were written. */
final class StandardOfOld {
    private static final Map<FigureName, Figure> OF_OLD = Map.of(
            FigureName.ADVISE_VOLUMETRIC_FROM,
            new Figure("0.8", "Kansas KT-18: volumetric test at least once at 0.8 % or more", Mark.SEEN),
            FigureName.BOWL_SHAPE_LOW,
            new Figure("0.75", "JIS A 1128: diameter 0.75 to 1.25 of the height; used here too", Mark.SEEN),
            FigureName.BOWL_SHAPE_HIGH,
            new Figure("1.25", "JIS A 1128: diameter 0.75 to 1.25 of the height; used here too", Mark.SEEN),
            FigureName.LEAK_MARKS,
            new Figure(
                    "0.5", "A state checklist for T 152 of 2001: at most half an initial-line mark in 90 s", Mark.SEEN),
            FigureName.BOWL_MONTHS,
            new Figure("12", "Iowa I.M. 318: yearly", Mark.SEEN));

    private StandardOfOld() {}

    /** Returns it as a laboratory's own profile. */
    static Profile copyAs(String title) {
        Profile own = Profiles.standard().copyAs("own", title);
        for (Map.Entry<FigureName, Figure> then : OF_OLD.entrySet()) {
            own = own.with(then.getKey(), then.getValue());
        }
        return own;
    }
}

package porebench.evidence;

import java.util.List;
import java.util.Map;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.record.Production;
import porebench.record.SourceMeasurement;
import porebench.record.id.SourceId;

/**
 * What was reported of a mix beside its trials, as far as the rules of its profile for rechecking ask for it.
 *
 * @param production what was made of it; empty where no rule counts that
 * @param measured what was measured of its sources; empty where no rule counts lots
 */
public record Reported(List<Production> production, Map<SourceId, List<SourceMeasurement>> measured) {
    /** Nothing, or nothing that a rule asks for. */
    public static final Reported NONE = new Reported(List.of(), Map.of());

    public Reported {
        production = List.copyOf(production);
        measured = Map.copyOf(measured);
    }

    /** Returns whether a profile has a rule that counts production. */
    static boolean countsProduction(Profile profile) {
        return profile.number(FigureName.RECHECK_TONNES) > 0 || profile.count(FigureName.RECHECK_PRODUCTION_DAYS) > 0;
    }

    /** Returns whether a profile has a rule that counts lots. */
    static boolean countsLots(Profile profile) {
        return profile.count(FigureName.RECHECK_LOTS) > 0;
    }
}

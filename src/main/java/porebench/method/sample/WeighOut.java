package porebench.method.sample;

import java.util.List;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.quantity.Mass;
import porebench.quantity.Require;

/**
 * The weigh-out list: what to weigh for each trial, within what limits, and what to fetch for all of them.
 *
 * @param lines one line an aggregate, in the order of the mix design
 * @param trials the number of trials, at least 1
 * @param sparePercent what is fetched beyond the trials, in % of their sum
 */
public record WeighOut(List<Line> lines, int trials, double sparePercent) {
    public WeighOut {
        lines = List.copyOf(lines);
    }

    /**
     * One aggregate to weigh.
     *
     * @param name what the mix design calls it
     * @param source its source
     * @param role fine or coarse
     * @param each the mass for one trial, in the moisture state on the bench
     * @param lowest the least mass within the tolerance
     * @param highest the greatest mass within the tolerance
     * @param total the mass to fetch from the pile for all trials with the spare: before sieving, so that the stone held on
     *     37.5 mm is in it where the concrete is wet-sieved
     */
    public record Line(String name, String source, Role role, Mass each, Mass lowest, Mass highest, Mass total) {}

    /**
     * Lists what to weigh.
     *
     * @param sample the correction sample
     * @param trials how many trials, at least 1
     * @param sparePercent spare material, in %, at least 0
     * @param profile whose mass tolerance holds
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static WeighOut of(CorrectionSample sample, int trials, double sparePercent, Profile profile) {
        Require.atLeast("trials", trials, 1);
        Require.atLeastZero("sparePercent", sparePercent);
        double tolerance = profile.number(FigureName.MASS_TOLERANCE) / 100;
        List<Line> lines = sample.components().stream()
                .map(component -> new Line(
                        component.name(),
                        component.source(),
                        component.role(),
                        component.mass(),
                        component.mass().times(1 - tolerance),
                        component.mass().times(1 + tolerance),
                        component.fetched().times(trials * (1 + sparePercent / 100))))
                .toList();
        return new WeighOut(lines, trials, sparePercent);
    }
}

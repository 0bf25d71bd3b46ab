package porebench.method.air;

import java.util.ArrayList;
import java.util.List;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.quantity.Volume;

/**
 * The air of the full mixture and of its mortar, from the air of the wet-sieved concrete.
 *
 * <p>At = 100 As Vc / (100 Vt - As Va) and Am = 100 As Vc / (100 Vm + As (Vc - Vm)), airs in % and air-free volumes in one
 * unit: Vc of the concrete passing 37.5 mm, Vt of the full mixture, Va of the stone held on 37.5 mm, Vm of the mortar.
 *
 * <p>Source: ASTM C231, calculation clauses (recalled, and derived from first principles). Differences from the source:
 * none.
 *
 * @param fullMixturePercent air of the full mixture, in %
 * @param mortarPercent air of the mortar, in %
 */
public record SievedAir(double fullMixturePercent, double mortarPercent) {
    /** Vt may differ from Vc + Va by this share of Vt before it is called a contradiction. */
    private static final double VOLUMES_AGREE_WITHIN = 0.001;

    /**
     * Computes both airs.
     *
     * @param sieved air of the wet-sieved concrete, in %, from 0 up to but not 100
     * @param passing Vc, greater than 0
     * @param total Vt, equal to Vc + Va within 0.1 %
     * @param held Va, at least 0
     * @param mortar Vm, greater than 0 and at most Vc
     * @return both airs, or what is wrong
     */
    public static Answer<SievedAir> of(double sieved, Volume passing, Volume total, Volume held, Volume mortar) {
        List<Problem> problems = check(sieved, passing, total, held, mortar);
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        double vc = passing.cubicMetres();
        double vm = mortar.cubicMetres();
        double full = 100 * sieved * vc / (100 * total.cubicMetres() - sieved * held.cubicMetres());
        double ofMortar = 100 * sieved * vc / (100 * vm + sieved * (vc - vm));
        return Answer.of(new SievedAir(full, ofMortar), List.of());
    }

    private static List<Problem> check(double sieved, Volume passing, Volume total, Volume held, Volume mortar) {
        List<Problem> problems = new ArrayList<>();
        if (!(sieved >= 0 && sieved < 100)) {
            problems.add(Problem.error("air", "air.sieved-out-of-range", sieved));
        }
        checkPositive(problems, "vc", "Vc", passing);
        checkPositive(problems, "vt", "Vt", total);
        checkPositive(problems, "vm", "Vm", mortar);
        if (held.cubicMetres() < 0) {
            problems.add(Problem.error("va", "air.volume-negative", "Va", held.cubicMetres()));
        }
        if (problems.isEmpty()) {
            double gap = total.cubicMetres() - passing.cubicMetres() - held.cubicMetres();
            if (Math.abs(gap) > VOLUMES_AGREE_WITHIN * total.cubicMetres()) {
                problems.add(Problem.error(
                        "vt",
                        "air.volumes-contradict",
                        total.cubicMetres(),
                        passing.cubicMetres(),
                        held.cubicMetres()));
            }
            if (mortar.cubicMetres() > passing.cubicMetres() * (1 + VOLUMES_AGREE_WITHIN)) {
                problems.add(
                        Problem.error("vm", "air.mortar-above-passing", mortar.cubicMetres(), passing.cubicMetres()));
            }
        }
        return problems;
    }

    private static void checkPositive(List<Problem> problems, String field, String symbol, Volume volume) {
        if (volume.cubicMetres() <= 0) {
            problems.add(Problem.error(field, "air.volume-not-positive", symbol, volume.cubicMetres()));
        }
    }
}

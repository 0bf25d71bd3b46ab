package porebench.method.sample;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import porebench.method.Role;
import porebench.quantity.Volume;

/**
 * The air-free volumes of a wet-sieved concrete, from the absolute volumes of its mix design: what spreads the air measured in the
 * sieved concrete over the full mixture and over the mortar.
 *
 * <p>The mortar is all but the coarse aggregate, with the free water that this brings. Source: ASTM C231, calculation clauses
 * (recalled).
 *
 * @param passing Vc, of the concrete passing 37.5 mm
 * @param total Vt, of the full mixture
 * @param held Va, of the stone held on 37.5 mm
 * @param mortar Vm, of the mortar
 */
public record SievedVolumes(Volume passing, Volume total, Volume held, Volume mortar) {
    /**
     * Returns the volumes of a batch.
     *
     * @return empty where the concrete is not wet-sieved, where the design lists no cement or no water, or where a relative density
     *     or an absorption that is needed is not known
     */
    public static Optional<SievedVolumes> of(Batch batch) {
        Predicate<Role> isListed = role -> batch.constituents().stream().anyMatch(one -> one.role() == role);
        if (!batch.wetSieved() || !Stream.of(Role.CEMENT, Role.WATER).allMatch(isListed)) {
            return Optional.empty();
        }
        List<Materials> all = batch.constituents().stream().map(Materials::new).toList();
        double free = sum(all, one -> one.freeWaterInBatchKilograms() / Materials.WATER_KILOGRAMS_PER_CUBIC_METRE);
        double total = sum(all, Materials::absoluteCubicMetres) + free;
        double held = sum(all, one -> one.absoluteCubicMetres() * (1 - one.passingShare()));
        double stone = batch.constituents().stream()
                .filter(one -> one.role() == Role.COARSE)
                .mapToDouble(one -> new Materials(one).absoluteCubicMetres())
                .sum();
        double mortar = total - stone;
        return Double.isFinite(total) && mortar > 0
                ? Optional.of(new SievedVolumes(
                        new Volume(total - held), new Volume(total), new Volume(held), new Volume(mortar)))
                : Optional.empty();
    }

    private static double sum(List<Materials> all, ToDoubleFunction<Materials> of) {
        return all.stream().mapToDouble(of).sum();
    }
}

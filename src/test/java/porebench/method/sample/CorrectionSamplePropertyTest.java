package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** What must hold for any mix; each case is drawn from a seed that its name shows. */
class CorrectionSamplePropertyTest {
    private static final double RELATIVE = 1e-9;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** A mix with two sands and two stones in any states, its volume computed from its constituents. */
    private static Batch mix(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MixLine> lines = new ArrayList<>();
        lines.add(MixLine.cement(number(random, 200, 450) + " kg").dense(number(random, 2.9, 3.2)));
        lines.add(MixLine.water(number(random, 120, 200) + " kg"));
        for (int i = 0; i < 4; i++) {
            Role role = i < 2 ? Role.FINE : Role.COARSE;
            MixLine line = MixLine.of(role, role.symbol() + i, number(random, 150, 600) + " kg")
                    .in(MoistureState.values()[random.nextInt(3)])
                    .dense(number(random, 2.3, 2.9))
                    .absorbing(number(random, 0, 4))
                    .moist(number(random, 0, 9));
            lines.add(role == Role.COARSE ? line.retained(number(random, 0, 60)) : line);
        }
        return MixLine.fromConstituents(number(random, 0, 9), lines.toArray(MixLine[]::new))
                .withWetSieved(random.nextBoolean());
    }

    private static String number(SplittableRandom random, double low, double high) {
        return String.format(Locale.ROOT, "%.3f", random.nextDouble(low, high));
    }

    private static Volume bowl(long seed) {
        return Volume.of(5 + seed % 7 * 0.731, VolumeUnit.LITRE);
    }

    private static CorrectionSample sample(Batch batch, Volume bowl) {
        return CorrectionSample.of(batch, bowl).value().orElseThrow();
    }

    private static Batch with(Batch batch, List<Constituent> constituents, BatchVolume volume) {
        return new Batch(constituents, volume, batch.targetAirPercent(), batch.wetSieved());
    }

    private static Constituent with(Constituent c, Typed<Mass> mass) {
        return new Constituent(
                c.name(),
                c.role(),
                c.sourceId(),
                mass,
                c.state(),
                c.absorptionPercent(),
                c.moisturePercent(),
                c.relativeDensity(),
                c.retainedPercent());
    }

    private static void isTheSame(CorrectionSample one, CorrectionSample other) {
        assertThat(one.fine().kilograms()).isCloseTo(other.fine().kilograms(), relative(other.fine()));
        assertThat(one.coarse().kilograms()).isCloseTo(other.coarse().kilograms(), relative(other.coarse()));
        double litres = other.inundation().orElseThrow().in(VolumeUnit.LITRE);
        assertThat(one.inundation().orElseThrow().in(VolumeUnit.LITRE)).isCloseTo(litres, offset(RELATIVE));
    }

    private static org.assertj.core.data.Offset<Double> relative(Mass mass) {
        return offset(RELATIVE * mass.kilograms());
    }

    /** Twice the batch in twice the volume is the same concrete. */
    @ParameterizedTest
    @MethodSource("seeds")
    void doesNotDependOnTheSizeOfTheBatch(long seed) {
        Batch batch = mix(seed);
        BigDecimal size = BigDecimal.valueOf(0.3 + seed % 5);
        List<Constituent> larger = batch.constituents().stream()
                .map(c -> with(
                        c,
                        new Typed<>(c.mass().number().multiply(size), c.mass().unit())))
                .toList();
        CorrectionSample plain = sample(batch, bowl(seed));
        isTheSame(sample(with(batch, larger, batch.volume()), bowl(seed)), plain);
        double cubicMetres = plain.batchVolume().cubicMetres();
        double largerVolume = sample(with(batch, larger, batch.volume()), bowl(seed))
                .batchVolume()
                .cubicMetres();
        assertThat(largerVolume).isCloseTo(cubicMetres * size.doubleValue(), offset(RELATIVE * largerVolume));
    }

    /** The sample grows as the bowl does, and so do its waters. */
    @ParameterizedTest
    @MethodSource("seeds")
    void growsWithTheBowl(long seed) {
        Batch batch = mix(seed);
        CorrectionSample one = sample(batch, bowl(seed));
        CorrectionSample two = sample(batch, bowl(seed).times(2));
        assertThat(two.fine().kilograms()).isCloseTo(2 * one.fine().kilograms(), relative(two.fine()));
        assertThat(two.coarse().kilograms()).isCloseTo(2 * one.coarse().kilograms(), relative(two.coarse()));
        assertThat(two.inundation().orElseThrow().cubicMetres())
                .isCloseTo(2 * one.inundation().orElseThrow().cubicMetres(), offset(1e-12));
        assertThat(two.withdrawal().cubicMetres())
                .isCloseTo(2 * one.withdrawal().cubicMetres(), offset(1e-15));
    }

    /** Pounds and kilograms are the same masses. */
    @ParameterizedTest
    @MethodSource("seeds")
    void doesNotDependOnTheUnitOfTheMasses(long seed) {
        Batch batch = mix(seed);
        for (MassUnit unit : MassUnit.values()) {
            List<Constituent> inUnit = batch.constituents().stream()
                    .map(c -> with(c, in(unit, c.mass().value())))
                    .toList();
            isTheSame(sample(with(batch, inUnit, batch.volume()), bowl(seed)), sample(batch, bowl(seed)));
        }
    }

    private static Typed<Mass> in(MassUnit unit, Mass mass) {
        return new Typed<>(BigDecimal.valueOf(mass.in(unit)), unit);
    }

    /** The order of the constituents does not matter but for the order of the list. */
    @ParameterizedTest
    @MethodSource("seeds")
    void doesNotDependOnTheOrderOfTheConstituents(long seed) {
        Batch batch = mix(seed);
        List<Constituent> shuffled = new ArrayList<>(batch.constituents());
        Collections.shuffle(shuffled, new Random(seed));
        isTheSame(sample(with(batch, shuffled, batch.volume()), bowl(seed)), sample(batch, bowl(seed)));
    }

    /** A volume stated as it is computed changes nothing: neither the masses nor what is said. */
    @ParameterizedTest
    @MethodSource("seeds")
    void givesTheSameForTheComputedVolumeStated(long seed) {
        Batch batch = mix(seed).withWetSieved(false);
        Volume volume = sample(batch, bowl(seed)).batchVolume();
        BatchVolume stated =
                new BatchVolume.Stated(new Typed<>(BigDecimal.valueOf(volume.cubicMetres()), VolumeUnit.CUBIC_METRE));
        Batch same = with(batch, batch.constituents(), stated);
        isTheSame(sample(same, bowl(seed)), sample(batch, bowl(seed)));
        assertThat(CorrectionSample.of(same, bowl(seed)).problems())
                .isEqualTo(CorrectionSample.of(batch, bowl(seed)).problems());
    }

    /** The dry stone in the bowl is that of the concrete, however wet it is on the bench. */
    @ParameterizedTest
    @MethodSource("seeds")
    void keepsTheDryStoneWhateverTheMoistureOnTheBench(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        MixLine sand = MixLine.fine("700 kg").dense("2.6").absorbing("1.3");
        MixLine stone = MixLine.coarse("1100 kg").dense("2.7").absorbing("0.6").in(MoistureState.OVEN_DRY);
        CorrectionSample ssd = sample(MixLine.stated("1 m3", "5", sand, stone), bowl(seed));
        CorrectionSample wet = sample(
                MixLine.stated("1 m3", "5", sand.moist(number(random, 0, 9)), stone.moist(number(random, 0, 4))),
                bowl(seed));
        for (int i = 0; i < 2; i++) {
            assertThat(wet.components().get(i).ovenDryKilograms().orElseThrow())
                    .isCloseTo(ssd.components().get(i).ovenDryKilograms().orElseThrow(), offset(1e-9));
        }
        // Water in the bowl, free and added, is the same; what is weighed as stone more is added as water less.
        double weighed = wet.fine()
                .plus(wet.coarse())
                .minus(ssd.fine())
                .minus(ssd.coarse())
                .kilograms();
        double added = 1000
                * (wet.inundation().orElseThrow().cubicMetres()
                        - ssd.inundation().orElseThrow().cubicMetres());
        assertThat(weighed + added).isCloseTo(0, offset(1e-9));
    }

    /** The weigh-out list adds up: lines to the sample, totals to the trials with the spare. */
    @ParameterizedTest
    @MethodSource("seeds")
    void weighsOutWhatTheSampleHolds(long seed) {
        CorrectionSample sample = sample(mix(seed), bowl(seed));
        int trials = 1 + (int) (seed % 6);
        WeighOut list = WeighOut.of(sample, trials, seed, porebench.method.profile.Profiles.standard());
        double each =
                list.lines().stream().mapToDouble(l -> l.each().kilograms()).sum();
        double total =
                list.lines().stream().mapToDouble(l -> l.total().kilograms()).sum();
        assertThat(each).isCloseTo(sample.fine().plus(sample.coarse()).kilograms(), offset(1e-9));
        double fromThePile = sample.components().stream()
                .mapToDouble(c -> c.mass().kilograms() / c.passingShare())
                .sum();
        assertThat(total).isCloseTo(fromThePile * trials * (1 + seed / 100.0), offset(1e-9));
        assertThat(BigDecimal.valueOf(list.sparePercent())
                        .setScale(0, RoundingMode.UNNECESSARY)
                        .longValue())
                .isEqualTo(seed);
    }
}

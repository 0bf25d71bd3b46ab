package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.Said;
import porebench.method.sample.CorrectionSample.Component;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Correction samples worked by pencil. */
class CorrectionSampleHandTest {
    private static final Volume BOWL = Volume.of(7, VolumeUnit.LITRE);

    private static CorrectionSample sample(Batch batch) {
        return CorrectionSample.of(batch, BOWL).value().orElseThrow();
    }

    /** What a material is on the bench, for a bowl of 10 L that holds the whole batch. */
    private static Component component(MixLine line) {
        return CorrectionSample.of(MixLine.stated("10 L", "5", line), new Volume(0.01))
                .value()
                .orElseThrow()
                .components()
                .get(0);
    }

    /**
     * 10 kg stated in each state, absorption 2 %, total moisture 5 % (or SSD on the bench, where no moisture is given).
     *
     * <pre>
     * SSD:      oven-dry 10 / 1.02 = 9.803922   on the bench 9.803922 x 1.05 = 10.294118   SSD bench: 10
     * oven-dry: oven-dry 10                     on the bench 10.50                          SSD bench: 10.20
     * stock:    oven-dry 10 / 1.05 = 9.523810   on the bench 10, as it was stated
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({
        "SSD,      2, 5, 10.294118, 9.803922",
        "SSD,      2,  , 10,      9.803922",
        "OVEN_DRY, 2, 5, 10.50,      10",
        "OVEN_DRY, 2,  , 10.20,      10",
        "OVEN_DRY,  , 5, 10.50,      10",
        "STOCK,    2, 5, 10,      9.523810",
        "STOCK,     , 5, 10,      9.523810",
        "STOCK,    2, 0, 10,      10",
        "SSD,      2, 0, 9.803922,  9.803922",
        "SSD,      2, 2, 10,      9.803922"
    })
    void bringsAMassToTheMoistureOnTheBench(
            MoistureState state, String absorption, String moisture, double bench, double ovenDry) {
        MixLine line = MixLine.fine("10 kg").in(state).dense("2.6");
        line = absorption == null ? line : line.absorbing(absorption);
        line = moisture == null ? line : line.moist(moisture);
        Component component = component(line);
        assertThat(component.mass().kilograms()).isCloseTo(bench, offset(0.0000005));
        assertThat(component.ovenDryKilograms().orElseThrow()).isCloseTo(ovenDry, offset(0.0000005));
    }

    /** An SSD mass weighed SSD needs no absorption; only its oven-dry mass is then not known. */
    @Test
    void takesAnSsdMassAsItIsWithoutAnAbsorption() {
        Component component = component(MixLine.fine("10 kg").dense("2.6"));
        assertThat(component.mass().kilograms()).isEqualTo(10);
        assertThat(component.ovenDryKilograms()).isEmpty();
    }

    /**
     * Two sands and two stones, 1 m3, 7 L bowl, all SSD: each times 7 / 1000.
     *
     * <pre>
     * 500 -> 3.500, 250 -> 1.750, fine 5.250; 700 -> 4.900, 350 -> 2.450, coarse 7.350 kg
     * a third of 7 L is 2.3333 L; 6 % of 7 L is 420 mL
     * particles: 500 / 2500 + 250 / 2500 + 700 / 2800 + 350 / 2800 = 0.2 + 0.1 + 0.25 + 0.125 = 0.675 m3 a m3
     * water to inundate: 7 x (1 - 0.675) = 2.275 L
     * </pre>
     */
    @Test
    void givesEachSourceItsMassAndTheBowlItsWaters() {
        CorrectionSample sample = sample(MixLine.stated(
                "1 m3",
                "6",
                MixLine.fine("500 kg").named("river sand").dense("2.5"),
                MixLine.cement("350 kg").dense("3.15"),
                MixLine.fine("250 kg").named("blend sand").dense("2.5").from("S-2"),
                MixLine.coarse("700 kg").named("20 mm").dense("2.8"),
                MixLine.coarse("350 kg").named("10 mm").dense("2.8")));
        assertThat(sample.components().stream().map(Component::name))
                .containsExactly("river sand", "blend sand", "20 mm", "10 mm");
        assertThat(sample.components().stream().map(Component::source))
                .containsExactly("river sand", "S-2", "20 mm", "10 mm");
        assertThat(sample.components().stream().map(Component::role))
                .containsExactly(Role.FINE, Role.FINE, Role.COARSE, Role.COARSE);
        assertThat(sample.components().stream()
                        .map(c -> c.mass().kilograms())
                        .mapToDouble(Double::doubleValue)
                        .toArray())
                .containsExactly(new double[] {3.5, 1.75, 4.9, 2.45}, offset(1e-12));
        assertThat(sample.fine().kilograms()).isCloseTo(5.25, offset(1e-12));
        assertThat(sample.coarse().kilograms()).isCloseTo(7.35, offset(1e-12));
        assertThat(sample.bowl()).isEqualTo(BOWL);
        assertThat(sample.batchVolume()).isEqualTo(new Volume(1));
        assertThat(sample.oneThird().in(VolumeUnit.LITRE)).isCloseTo(7.0 / 3, offset(1e-12));
        assertThat(sample.withdrawal().in(VolumeUnit.MILLILITRE)).isCloseTo(420, offset(1e-9));
        assertThat(sample.inundation().orElseThrow().in(VolumeUnit.LITRE)).isCloseTo(2.275, offset(1e-12));
        // A third would be 2.333 L: 0.058 L of it would run over.
        assertThat(sample.isThirdTooMuch()).isTrue();
        assertThat(sample.firstWater()).isEqualTo(sample.inundation().orElseThrow());
    }

    /**
     * A third of 9 L is 3 L. Of 1 m3 the particles take what their mass is at a relative density of 2.5.
     *
     * <pre>
     * 1500 kg: 0.6 m3, room for 9 x 0.4 = 3.6 L: the third fits
     * 1700 kg: 0.68 m3, room for 9 x 0.32 = 2.88 L: less than the third
     * 1700 kg, 980.3922 / 1000 of it dry, at 5 % over 2 %: free water 1666.6667 x 0.03 = 50 kg, 9 x 0.27 = 2.43 L
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({"1500 kg, , 3, false", "1700 kg, , 2.88, true", "1700 kg, 5, 2.43, true"})
    void startsWithAThirdOrWithWhatFits(String mass, String moisture, double litres, boolean tooMuch) {
        MixLine line = MixLine.fine(mass).dense("2.5").absorbing("2");
        line = moisture == null ? line : line.moist(moisture);
        CorrectionSample sample = CorrectionSample.of(MixLine.stated("1 m3", "5", line), new Volume(0.009))
                .value()
                .orElseThrow();
        assertThat(sample.firstWater().in(VolumeUnit.LITRE)).isCloseTo(litres, offset(1e-9));
        assertThat(sample.isThirdTooMuch()).isEqualTo(tooMuch);
        assertThat(sample.oneThird().in(VolumeUnit.LITRE)).isCloseTo(3, offset(1e-12));
    }

    /**
     * The bowl is full whatever the moisture on the bench: particles, their free water and the water added make 7 L.
     *
     * <pre>
     * 1000 kg SSD of 2.5, absorption 2 %: 0.4 m3 of particles, oven-dry 980.3922 kg
     * bench at 5 %: free water 980.3922 x 0.03 = 29.4118 kg -> 7 x (1 - 0.4 - 0.0294118) = 3.994118 L
     * bench at 0 %: the pores take up 980.3922 x 0.02 = 19.6078 kg -> 7 x (0.6 + 0.0196078) = 4.337255 L
     * bench SSD: 7 x 0.6 = 4.2 L
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({"5, 3.994118", "0, 4.337255", ", 4.2", "2, 4.2"})
    void addsTheWaterThatTheAggregateDoesNotBring(String moisture, double litres) {
        MixLine line = MixLine.fine("1000 kg").dense("2.5").absorbing("2");
        line = moisture == null ? line : line.moist(moisture);
        assertThat(sample(MixLine.stated("1 m3", "5", line))
                        .inundation()
                        .orElseThrow()
                        .in(VolumeUnit.LITRE))
                .isCloseTo(litres, offset(0.000001));
    }

    /**
     * Relative density stands on the basis of the mass: 1000 kg oven-dry of oven-dry 2.5 are 0.4 m3, and the same particles
     * stated SSD are 1020 kg of 2.55, again 0.4 m3; as stocked at 5 % they are 1050 kg, of SSD 2.55.
     */
    @ParameterizedTest
    @CsvSource({"OVEN_DRY, 1000 kg, 2.5", "SSD, 1020 kg, 2.55", "STOCK, 1050 kg, 2.55"})
    void takesTheRelativeDensityOnTheBasisOfTheMass(MoistureState state, String mass, String density) {
        MixLine line =
                MixLine.fine(mass).in(state).dense(density).absorbing("2").moist("5");
        CorrectionSample sample = sample(MixLine.stated("1 m3", "5", line));
        assertThat(sample.fine().kilograms()).isCloseTo(7.35, offset(1e-9));
        // 7 x (1 - 0.4 - 0.03) = 3.99 L
        assertThat(sample.inundation().orElseThrow().in(VolumeUnit.LITRE)).isCloseTo(3.99, offset(1e-9));
    }

    /** Without a relative density the waters that need none are still told. */
    @Test
    void doesNotKnowTheWaterToInundateWithoutARelativeDensity() {
        CorrectionSample sample = sample(MixLine.stated(
                "1 m3", "5", MixLine.fine("700 kg"), MixLine.coarse("1000 kg").dense("2.7")));
        assertThat(sample.inundation()).isEmpty();
        assertThat(sample.firstWater()).isEqualTo(sample.oneThird());
        assertThat(sample.isThirdTooMuch()).isFalse();
        assertThat(sample.withdrawal().in(VolumeUnit.MILLILITRE)).isCloseTo(350, offset(1e-9));
    }

    /**
     * Volume from the constituents.
     *
     * <pre>
     * 315 kg cement of 3.15 is 0.1, 170 kg water 0.17, 750 kg sand of 2.5 is 0.3, 1064 kg stone of 2.8 is 0.38 m3
     * sum 0.95 m3; with 5 % air 0.95 / 0.95 = 1 m3; with no air 0.95 m3; sand for 7 L: 5.25 kg, and 5.526316 kg
     * </pre>
     */
    @Test
    void addsTheAirToTheAbsoluteVolumes() {
        CorrectionSample sample = sample(MixLine.fromConstituents("5", plain()));
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(1, offset(1e-12));
        assertThat(sample.fine().kilograms()).isCloseTo(5.25, offset(1e-12));
        CorrectionSample airless = sample(MixLine.fromConstituents("0", plain()));
        assertThat(airless.batchVolume().cubicMetres()).isCloseTo(0.95, offset(1e-12));
        assertThat(airless.fine().kilograms()).isCloseTo(5.526316, offset(0.0000005));
        assertThat(airless.withdrawal().cubicMetres()).isZero();
    }

    private static MixLine[] plain() {
        return new MixLine[] {
            MixLine.cement("315 kg").dense("3.15"),
            MixLine.water("170 kg"),
            MixLine.fine("750 kg").dense("2.5"),
            MixLine.coarse("1064 kg").dense("2.8")
        };
    }

    /**
     * The free water of a stock mass is mixing water: 795 kg of sand at 6 % over 1 % absorption.
     *
     * <pre>
     * oven-dry 795 / 1.06 = 750; SSD 757.5 of 2.525 is 0.3 m3; free water 37.5 kg is 0.0375 m3
     * with 132.5 kg water the batch is the one above: 0.1 + 0.1325 + 0.3 + 0.0375 + 0.38 = 0.95, with air 1 m3
     * </pre>
     */
    @Test
    void countsTheFreeWaterOfAStockMassToTheBatch() {
        CorrectionSample sample = sample(MixLine.fromConstituents(
                "5",
                MixLine.cement("315 kg").dense("3.15"),
                MixLine.water("132.5 kg"),
                MixLine.fine("795 kg")
                        .in(MoistureState.STOCK)
                        .absorbing("1")
                        .moist("6")
                        .dense("2.525"),
                MixLine.coarse("1064 kg").dense("2.8")));
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(1, offset(1e-12));
        assertThat(sample.fine().kilograms()).isCloseTo(5.565, offset(1e-12));
    }

    /** A state or moisture has no meaning for anything but aggregate: the cement counts as it is. */
    @Test
    void takesWhatIsNoAggregateAsItIs() {
        CorrectionSample sample = sample(MixLine.fromConstituents(
                "5",
                MixLine.cement("315 kg")
                        .dense("3.15")
                        .in(MoistureState.OVEN_DRY)
                        .absorbing("3")
                        .moist("7"),
                MixLine.water("170 kg"),
                MixLine.fine("750 kg").dense("2.5"),
                MixLine.coarse("1064 kg").dense("2.8")));
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(1, offset(1e-12));
    }

    /**
     * From a measured density: 315 + 170 + 750 + 1064 = 2299 kg at 2420 kg/m3 are 0.95 m3; sand 750 x 0.007 / 0.95 = 5.526316
     * kg. Oven-dry sand of 750 kg with 2 % absorption is 765 kg in the concrete: 2314 kg, at 2314 kg/m3 1 m3.
     */
    @Test
    void dividesTheMassOfTheBatchByAMeasuredDensity() {
        CorrectionSample sample = sample(MixLine.measured("2420 kg/m3", "5", plainWithoutDensities("750 kg")));
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(0.95, offset(1e-12));
        assertThat(sample.fine().kilograms()).isCloseTo(5.526316, offset(0.0000005));
        MixLine[] dry = plainWithoutDensities("750 kg");
        dry[2] = dry[2].in(MoistureState.OVEN_DRY).absorbing("2");
        assertThat(sample(MixLine.measured("2314 kg/m3", "5", dry))
                        .batchVolume()
                        .cubicMetres())
                .isCloseTo(1, offset(1e-12));
    }

    private static MixLine[] plainWithoutDensities(String sand) {
        return new MixLine[] {
            MixLine.cement("315 kg"), MixLine.water("170 kg"), MixLine.fine(sand), MixLine.coarse("1064 kg")
        };
    }

    /**
     * Wet-sieved: stone over 37.5 mm left out, B' = Vc / (1 - As/100).
     *
     * <pre>
     * 0.1 cement + 0.17 water + 0.3 sand + 0.38 stone, a quarter of the stone held: 0.095 m3
     * Vc = 0.95 - 0.095 = 0.855; with 5 % air of the sieved concrete B' = 0.855 / 0.95 = 0.9 m3
     * sand 750 x 0.007 / 0.9 = 5.833333; stone passing 1064 x 0.75 = 798, x 0.007 / 0.9 = 6.206667 kg
     * particles in the bowl: 7 x (0.3 + 0.285) / 0.9 = 4.55, water to inundate 2.45 L
     * </pre>
     */
    @Test
    void standsForTheSievedConcreteWhenItIsWetSieved() {
        MixLine[] lines = plain();
        lines[3] = lines[3].retained("25");
        CorrectionSample sample = sample(MixLine.stated("1 m3", "5", lines).withWetSieved(true));
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(0.9, offset(1e-12));
        assertThat(sample.fine().kilograms()).isCloseTo(5.833333, offset(0.0000005));
        assertThat(sample.coarse().kilograms()).isCloseTo(6.206667, offset(0.0000005));
        assertThat(sample.inundation().orElseThrow().in(VolumeUnit.LITRE)).isCloseTo(2.45, offset(1e-9));
        assertThat(sample.withdrawal().in(VolumeUnit.MILLILITRE)).isCloseTo(350, offset(1e-9));
        // From the pile: sand as it is, stone 6.206667 / 0.75 = 8.275556 kg.
        assertThat(sample.components().stream()
                        .mapToDouble(c -> c.fetched().kilograms())
                        .toArray())
                .containsExactly(new double[] {5.833333, 8.275556}, offset(0.0000005));
    }

    /** Nothing of a stone that is all held on 37.5 mm goes into the bowl, so none is fetched. */
    @Test
    void fetchesNothingOfAStoneThatIsAllSievedOut() {
        MixLine[] lines = plain();
        lines[3] = lines[3].retained("100");
        CorrectionSample sample = sample(MixLine.stated("1 m3", "5", lines).withWetSieved(true));
        assertThat(sample.components().get(1).fetched().kilograms()).isZero();
    }

    /** Water on the stone that is sieved out stays in the concrete that passes. */
    @Test
    void keepsTheFreeWaterOfTheStoneThatIsSievedOut() {
        // SSD 1000 of 2.5: 0.4 m3, half held; stock at 3 % over 1 %: oven-dry 1000 / 1.01, free water 0.02 x that.
        MixLine stone = MixLine.coarse("1019.80198 kg")
                .in(MoistureState.STOCK)
                .absorbing("1")
                .moist("3")
                .dense("2.5")
                .retained("50");
        CorrectionSample sample = sample(MixLine.fromConstituents("0", stone).withWetSieved(true));
        // 0.2 m3 of stone and 0.01980198 m3 of water
        assertThat(sample.batchVolume().cubicMetres()).isCloseTo(0.21980198, offset(1e-8));
    }

    /** Stone held on 37.5 mm stays in the sample as long as nobody says that the concrete is sieved. */
    @Test
    void leavesNothingOutWithoutWetSieving() {
        MixLine[] lines = plain();
        lines[3] = lines[3].retained("25");
        Batch batch = MixLine.stated("1 m3", "5", lines);
        assertThat(sample(batch).coarse().kilograms()).isCloseTo(7.448, offset(1e-12));
        assertThat(Said.codes(CorrectionSample.of(batch, BOWL).problems())).contains("mix.consider-wet-sieving");
    }

    @Test
    void refusesABowlThatIsNotGreaterThanZero() {
        Batch batch = MixLine.stated("1 m3", "5", plain());
        assertThat(CorrectionSample.of(batch, new Volume(0)).value()).isEqualTo(Optional.empty());
        assertThat(Said.codes(CorrectionSample.of(batch, new Volume(0)).problems()))
                .containsExactly(
                        "mix.absorption-missing-no-oven-dry",
                        "mix.absorption-missing-no-oven-dry",
                        "sample.bowl-not-positive");
        assertThat(Said.codes(CorrectionSample.of(batch, new Volume(-1)).problems()))
                .contains("sample.bowl-not-positive");
        // A bowl of 1e-16 L, of 100,000 m3: from 0.5 to 50 L it can be.
        for (double litres : new double[] {1e-16, 0.499, 50.01, 1e8}) {
            assertThat(Said.codes(CorrectionSample.of(batch, Volume.of(litres, VolumeUnit.LITRE))
                            .problems()))
                    .contains("sample.bowl-impossible");
        }
        assertThat(CorrectionSample.of(batch, Volume.of(0.5, VolumeUnit.LITRE)).value())
                .isPresent();
        assertThat(CorrectionSample.of(batch, Volume.of(50, VolumeUnit.LITRE)).value())
                .isPresent();
    }

    /**
     * 2600 kg of sand of 2.6 in 1 m3 fill the bowl: no room for water. The cement's relative density is missing, so the batch
     * itself cannot be added up; what is known is 1 m3 and fits.
     */
    @Test
    void refusesAggregateThatFillsTheBowl() {
        MixLine cement = MixLine.cement("300 kg");
        Batch full = MixLine.stated("1 m3", "5", cement, MixLine.fine("2600 kg").dense("2.6"));
        assertThat(Said.text(Said.one(CorrectionSample.of(full, BOWL).problems(), "sample.aggregate-exceeds-bowl")))
                .startsWith("The aggregate of the sample takes 7 L, more than the bowl of 7 L.");
        Batch fits = MixLine.stated("1 m3", "5", cement, MixLine.fine("2599 kg").dense("2.6"));
        assertThat(CorrectionSample.of(fits, BOWL).value()).isPresent();
    }

    /** 2000 kg SSD of 2.5 leave 0.2 m3; at 12 % over 1 % they bring 2000 / 1.01 x 0.11 = 217.8 kg of free water. */
    @Test
    void saysWhenTheAggregateBringsMoreWaterThanTheBowlHasRoomFor() {
        Batch wet = MixLine.stated(
                "1 m3", "5", MixLine.fine("2000 kg").dense("2.5").absorbing("1").moist("12"));
        assertThat(sample(wet).inundation()).contains(new Volume(0));
        assertThat(Said.text(Said.one(CorrectionSample.of(wet, BOWL).problems(), "sample.too-wet-for-bowl")))
                .isEqualTo("The aggregate brings 1.525 L of free water, but the bowl has room for 1.4 L. Let the "
                        + "aggregate drain first.");
        Batch drained = MixLine.stated(
                "1 m3", "5", MixLine.fine("2000 kg").dense("2.5").absorbing("1").moist("11"));
        assertThat(Said.codes(CorrectionSample.of(drained, BOWL).problems())).doesNotContain("sample.too-wet-for-bowl");
    }

    @Test
    void keepsItsComponentsWhenTheListItWasGivenChanges() {
        CorrectionSample sample = sample(MixLine.stated("1 m3", "5", plain()));
        assertThat(sample.components()).isInstanceOf(List.class).isUnmodifiable();
    }
}

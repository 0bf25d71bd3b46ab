package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Against mixes worked in print. */
class CorrectionSampleReferenceTest {
    private static final Volume SEVEN_LITRES = Volume.of(7, VolumeUnit.LITRE);

    private static CorrectionSample sample(Batch batch, Volume bowl) {
        return CorrectionSample.of(batch, bowl).value().orElseThrow();
    }

    private static Role role(String symbol) {
        return Arrays.stream(Role.values())
                .filter(role -> role.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    private static MixLine[] navedtra() {
        return ReferenceFile.read("absolute-volumes.csv").rows().stream()
                .map(row -> MixLine.of(role(row.text("role")), row.text("constituent"), row.text("mass_lb") + " lb")
                        .dense(row.text("relative_density")))
                .toArray(MixLine[]::new);
    }

    /** NAVEDTRA 14070/14071, Engineering Aid, chapter 17 (seen): the absolute volume of each constituent. */
    @Test
    void givesTheAbsoluteVolumesOfAManual() {
        List<ReferenceFile.Row> rows =
                ReferenceFile.read("absolute-volumes.csv").rows();
        MixLine[] lines = navedtra();
        for (int i = 0; i < lines.length; i++) {
            double feet =
                    new Volume(new Materials(lines[i].constituent()).absoluteCubicMetres()).in(VolumeUnit.CUBIC_FOOT);
            double printed = rows.get(i).number("printed_ft3");
            assertThat(feet).as(lines[i].constituent().name()).isCloseTo(printed, offset(0.005 + 0.0005 * printed));
        }
    }

    /** The same: with 5 % air the constituents make the cubic yard they were worked for, 27 ft3 within the rounding. */
    @Test
    void addsUpTheCubicYardOfAManual() {
        CorrectionSample sample =
                sample(MixLine.fromConstituents("5", navedtra()), Volume.of(0.250, VolumeUnit.CUBIC_FOOT));
        assertThat(sample.batchVolume().in(VolumeUnit.CUBIC_FOOT)).isCloseTo(27, offset(0.02));
    }

    /** Derived from the same mix, not printed: 1152 x 0.250 / 27 = 10.667 lb and 1735 x 0.250 / 27 = 16.065 lb. */
    @Test
    void givesTheMassesOfAManualsMixForAQuarterFoot() {
        CorrectionSample sample =
                sample(MixLine.stated("27 ft3", "5", navedtra()), Volume.of(0.250, VolumeUnit.CUBIC_FOOT));
        assertThat(sample.fine().in(MassUnit.POUND)).isCloseTo(10.667, offset(0.0005));
        assertThat(sample.coarse().in(MassUnit.POUND)).isCloseTo(16.065, offset(0.0005));
    }

    /** ACI 211.1-91 example 1 and a PCA metric example (recalled): oven-dry masses brought to the stock's moisture. */
    @Test
    void bringsOvenDryMassesToTheMoistureOfPrintedExamples() {
        for (ReferenceFile.Row row : ReferenceFile.read("dry-to-wet.csv").rows()) {
            MassUnit unit = row.text("unit").equals("lb") ? MassUnit.POUND : MassUnit.KILOGRAM;
            Materials coarse = moist(Role.COARSE, "coarse", row);
            Materials fine = moist(Role.FINE, "fine", row);
            assertThat(new Mass(coarse.benchKilograms()).in(unit))
                    .as(row.text("example"))
                    .isCloseTo(row.number("coarse_wet"), offset(0.5));
            assertThat(new Mass(fine.benchKilograms()).in(unit))
                    .as(row.text("example"))
                    .isCloseTo(row.number("fine_wet"), offset(0.5));
            double freeWater = new Mass(coarse.freeWaterKilograms() + fine.freeWaterKilograms()).in(unit);
            assertThat(row.number("water_before") - freeWater)
                    .as(row.text("example"))
                    .isCloseTo(row.number("water_after"), offset(0.5));
        }
    }

    private static Materials moist(Role role, String start, ReferenceFile.Row row) {
        return new Materials(MixLine.of(role, start, row.text(start + "_dry") + " " + row.text("unit"))
                .in(MoistureState.OVEN_DRY)
                .absorbing(row.text(start + "_absorption"))
                .moist(row.text(start + "_moisture"))
                .constituent());
    }

    /** Concrete Construction, "What yield can do for you" (seen): 8 yd3 are 216 ft3; 1 % air is 0.27 ft3 a yard. */
    @Test
    void readsAYieldInYards() {
        ReferenceFile.Row row = ReferenceFile.read("yield-yards.csv").rows().get(0);
        CorrectionSample sample = sample(
                MixLine.stated(row.text("yards") + " yd3", row.text("air_pct"), MixLine.fine("1152 lb")),
                Volume.of(0.01, VolumeUnit.CUBIC_YARD));
        assertThat(sample.batchVolume().in(VolumeUnit.CUBIC_FOOT)).isCloseTo(row.number("feet"), offset(1e-9));
        assertThat(100 * sample.withdrawal().in(VolumeUnit.CUBIC_FOOT))
                .isCloseTo(row.number("air_feet_a_yard"), offset(1e-9));
    }

    /**
     * One formula in four standards: C231 (S/B) Fb (recalled), JIS A 1128 (VC/VB) mf' (seen), EN 12350-7 V0 rho p with p the
     * share of the fresh concrete's mass (recalled), GB/T 50080 (V/1000) ms' per cubic metre (recalled).
     */
    @Test
    void agreesWithTheFormulasOfFourStandards() {
        double sand = 757;
        double all = 2400.3;
        double bowl = 0.007;
        double fineMass = sample(
                        MixLine.stated("0.5 m3", "4.5", MixLine.fine("378.5 kg"), MixLine.coarse("568 kg")),
                        SEVEN_LITRES)
                .fine()
                .kilograms();
        Density density = new Density(all / 1);
        double byShareOfMass = bowl * density.kilogramsPerCubicMetre() * (sand / all);
        double perCubicMetre = 7.0 / 1000 * sand;
        assertThat(fineMass).isCloseTo(byShareOfMass, offset(1e-12));
        assertThat(fineMass).isCloseTo(perCubicMetre, offset(1e-12));
    }
}

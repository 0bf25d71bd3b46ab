package porebench.command.bench;

import java.util.function.Function;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.method.Texts;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;

/** How the correction sample of a mix is said: what to weigh and which waters go with it. */
public final class SampleReport {
    private final Texts words;
    private final NumberText shown;
    private final MixDesign mix;
    private final MassUnit unit;

    private SampleReport(Machine here, MixDesign mix) {
        this.words = here.words();
        this.shown = new NumberText(here.locale());
        this.mix = mix;
        this.unit = unit(mix);
    }

    /** Returns what is to be said of a sample and of what to weigh out for it. */
    public static Report of(
            Machine here, MixDesign mix, boolean wetSieved, CorrectionSample sample, WeighOut weighOut) {
        SampleReport report = new SampleReport(here, mix);
        return report.waters(report.weighing(wetSieved, weighOut), sample.isThirdTooMuch(), wetSieved)
                .report(sample);
    }

    private ReportLayout<CorrectionSample> weighing(boolean wetSieved, WeighOut weighOut) {
        ReportLayout<CorrectionSample.Component> component = new ReportLayout<CorrectionSample.Component>(words, shown)
                .text("source", CorrectionSample.Component::source)
                .text("name", CorrectionSample.Component::name)
                .text("role", one -> one.role().symbol())
                .number("kilograms", one -> one.mass().kilograms())
                .field((json, one) -> json.number("ovenDryKilograms", one.ovenDryKilograms()));
        return new ReportLayout<CorrectionSample>(words, shown)
                .text("mixId", any -> mix.id().text())
                .field((json, any) -> mix.plant().ifPresent(plant -> json.text("plant", plant)))
                .flag("wetSieved", any -> wetSieved)
                .number("bowlLitres", sample -> sample.bowl().in(VolumeUnit.LITRE))
                .number("fineKilograms", sample -> sample.fine().kilograms())
                .number("coarseKilograms", sample -> sample.coarse().kilograms())
                .field((json, sample) -> json.list("components", sample.components(), component::json))
                .number("batchVolumeCubicMetres", sample -> sample.batchVolume().cubicMetres())
                .number("oneThirdLitres", sample -> sample.oneThird().in(VolumeUnit.LITRE))
                .number("startWaterLitres", sample -> sample.firstWater().in(VolumeUnit.LITRE))
                .number("inundationWaterLitres", sample -> inundation(sample, VolumeUnit.LITRE))
                .number("withdrawMillilitres", sample -> sample.withdrawal().in(VolumeUnit.MILLILITRE))
                .whole("trials", any -> weighOut.trials())
                .number("sparePercent", any -> weighOut.sparePercent())
                .line(any -> words.get(
                        wetSieved ? "sample.title-wet-sieved" : "sample.title",
                        mix.id().text(),
                        mix.title()))
                .gap()
                .list("weighOut", any -> weighOut.lines(), lines(weighOut))
                .gap();
    }

    private ReportLayout<CorrectionSample> waters(
            ReportLayout<CorrectionSample> layout, boolean isThirdTooMuch, boolean wetSieved) {
        layout.number("sample.fine", sample -> sample.fine().in(unit), shown.fixed(3))
                .in(unit.symbol())
                .number("sample.coarse", sample -> sample.coarse().in(unit), shown.fixed(3))
                .in(unit.symbol())
                .number(
                        "sample.batch-volume",
                        sample -> sample.batchVolume().in(VolumeUnit.CUBIC_METRE),
                        shown.fixed(4))
                .in(VolumeUnit.CUBIC_METRE.symbol())
                .number("sample.bowl", sample -> sample.bowl().in(VolumeUnit.LITRE), shown.fixed(3))
                .in(VolumeUnit.LITRE.symbol())
                .number(
                        isThirdTooMuch ? "sample.less-than-third" : "sample.one-third",
                        sample -> sample.firstWater().in(VolumeUnit.LITRE),
                        shown.fixed(2))
                .in(VolumeUnit.LITRE.symbol())
                .number("sample.inundation", sample -> inundation(sample, VolumeUnit.LITRE), shown.fixed(2))
                .in(VolumeUnit.LITRE.symbol())
                .number("sample.withdraw", sample -> sample.withdrawal().in(VolumeUnit.MILLILITRE), shown.fixed(0))
                .in(VolumeUnit.MILLILITRE.symbol());
        if (isThirdTooMuch) {
            layout.gap()
                    .line(sample -> words.get(
                            "sample.third-runs-over",
                            shown.fixed(sample.oneThird().in(VolumeUnit.LITRE), 2)));
        }
        return wetSieved ? layout.gap().line(any -> words.get("sample.fetch-before-sieving")) : layout;
    }

    /** Returns the water to inundate with; not a number where it is not known. */
    private static double inundation(CorrectionSample sample, VolumeUnit in) {
        return sample.inundation().map(water -> water.in(in)).orElse(Double.NaN);
    }

    /** Returns how the lines of a list are said; only people read the role again. */
    private ReportLayout<WeighOut.Line> lines(WeighOut weighOut) {
        ReportLayout<WeighOut.Line> layout = new ReportLayout<WeighOut.Line>(words, shown)
                .text("source", "sample.source", WeighOut.Line::source)
                .text("name", "sample.material", WeighOut.Line::name)
                .cell("sample.role", line -> words.get("role." + line.role().symbol()));
        mass(layout, "eachKilograms", "sample.each", WeighOut.Line::each);
        mass(layout, "lowestKilograms", "sample.lowest", WeighOut.Line::lowest);
        mass(layout, "highestKilograms", "sample.highest", WeighOut.Line::highest);
        layout.number("totalKilograms", line -> line.total().kilograms());
        return weighOut.trials() > 1 || weighOut.sparePercent() > 0
                ? layout.number(
                        "sample.total",
                        line -> line.total().in(unit),
                        shown.fixed(3),
                        Integer.toString(weighOut.trials()),
                        shown.sixDigits(weighOut.sparePercent()),
                        unit.symbol())
                : layout;
    }

    private void mass(
            ReportLayout<WeighOut.Line> layout, String name, String head, Function<WeighOut.Line, Mass> mass) {
        layout.number(name, line -> mass.apply(line).kilograms())
                .number(head, line -> mass.apply(line).in(unit), shown.fixed(3), unit.symbol());
    }

    /** Returns kilograms for a mix in kilograms or grams, pounds for one in pounds or ounces. */
    private static MassUnit unit(MixDesign mix) {
        boolean pounds = mix.aggregates().stream()
                .map(Constituent::mass)
                .anyMatch(mass -> mass.unit() == MassUnit.POUND || mass.unit() == MassUnit.OUNCE);
        return pounds ? MassUnit.POUND : MassUnit.KILOGRAM;
    }
}

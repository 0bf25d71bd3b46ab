package porebench.command.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;

/** The correction sample of a mix: what to weigh and which waters go with it. */
public final class SampleReport implements Report {
    private final Texts words;
    private final NumberText shown;
    private final MixDesign mix;
    private final boolean wetSieved;
    private final CorrectionSample sample;
    private final WeighOut weighOut;

    public SampleReport(Machine here, MixDesign mix, boolean wetSieved, CorrectionSample sample, WeighOut weighOut) {
        this.words = here.words();
        this.shown = new NumberText(here.locale());
        this.mix = mix;
        this.wetSieved = wetSieved;
        this.sample = sample;
        this.weighOut = weighOut;
    }

    @Override
    public void json(JsonFields json) {
        json.text("mixId", mix.id().text());
        json.flag("wetSieved", wetSieved);
        json.number("bowlLitres", sample.bowl().in(VolumeUnit.LITRE));
        json.number("fineKilograms", sample.fine().kilograms());
        json.number("coarseKilograms", sample.coarse().kilograms());
        json.list("components", sample.components(), (fields, component) -> {
            fields.text("source", component.source());
            fields.text("name", component.name());
            fields.text("role", component.role().symbol());
            fields.number("kilograms", component.mass().kilograms());
            fields.number("ovenDryKilograms", component.ovenDryKilograms());
        });
        json.number("batchVolumeCubicMetres", sample.batchVolume().cubicMetres());
        json.number("oneThirdLitres", sample.oneThird().in(VolumeUnit.LITRE));
        json.number("startWaterLitres", sample.firstWater().in(VolumeUnit.LITRE));
        json.number(
                "inundationWaterLitres",
                sample.inundation().map(water -> BigDecimal.valueOf(water.in(VolumeUnit.LITRE))));
        json.number("withdrawMillilitres", sample.withdrawal().in(VolumeUnit.MILLILITRE));
        json.whole("trials", weighOut.trials());
        json.number("sparePercent", weighOut.sparePercent());
        json.list("weighOut", weighOut.lines(), (fields, line) -> {
            fields.text("source", line.source());
            fields.text("name", line.name());
            fields.number("eachKilograms", line.each().kilograms());
            fields.number("lowestKilograms", line.lowest().kilograms());
            fields.number("highestKilograms", line.highest().kilograms());
            fields.number("totalKilograms", line.total().kilograms());
        });
    }

    @Override
    public void text(TextPage page) {
        page.line(words.get(
                wetSieved ? "sample.title-wet-sieved" : "sample.title", mix.id().text(), mix.title()));
        page.gap();
        MassUnit unit = unit();
        weighOut(page, unit);
        page.gap();
        page.row(words.get("sample.fine"), mass(sample.fine(), unit), unit.symbol());
        page.row(words.get("sample.coarse"), mass(sample.coarse(), unit), unit.symbol());
        volume(page, "sample.batch-volume", sample.batchVolume(), VolumeUnit.CUBIC_METRE, 4);
        volume(page, "sample.bowl", sample.bowl(), VolumeUnit.LITRE, 3);
        volume(
                page,
                sample.isThirdTooMuch() ? "sample.less-than-third" : "sample.one-third",
                sample.firstWater(),
                VolumeUnit.LITRE,
                2);
        sample.inundation()
                .ifPresentOrElse(
                        water -> volume(page, "sample.inundation", water, VolumeUnit.LITRE, 2),
                        () -> page.row(words.get("sample.inundation"), NumberText.NONE, VolumeUnit.LITRE.symbol()));
        volume(page, "sample.withdraw", sample.withdrawal(), VolumeUnit.MILLILITRE, 0);
        if (sample.isThirdTooMuch()) {
            page.gap();
            page.line(words.get(
                    "sample.third-runs-over", shown.fixed(sample.oneThird().in(VolumeUnit.LITRE), 2)));
        }
        if (wetSieved) {
            page.gap();
            page.line(words.get("sample.fetch-before-sieving"));
        }
    }

    private void weighOut(TextPage page, MassUnit unit) {
        boolean fetches = weighOut.trials() > 1 || weighOut.sparePercent() > 0;
        List<String> heads = new ArrayList<>(List.of(
                words.get("sample.source"),
                words.get("sample.material"),
                words.get("sample.role"),
                words.get("sample.each", unit.symbol()),
                words.get("sample.lowest", unit.symbol()),
                words.get("sample.highest", unit.symbol())));
        if (fetches) {
            heads.add(words.get(
                    "sample.total",
                    Integer.toString(weighOut.trials()),
                    shown.sixDigits(weighOut.sparePercent()),
                    unit.symbol()));
        }
        List<List<String>> rows = new ArrayList<>();
        for (WeighOut.Line line : weighOut.lines()) {
            List<String> row = new ArrayList<>(List.of(
                    line.source(),
                    line.name(),
                    words.get("role." + line.role().symbol()),
                    mass(line.each(), unit),
                    mass(line.lowest(), unit),
                    mass(line.highest(), unit)));
            if (fetches) {
                row.add(mass(line.total(), unit));
            }
            rows.add(row);
        }
        page.table(heads, rows);
    }

    /** Returns kilograms for a mix in kilograms or grams, pounds for one in pounds or ounces. */
    private MassUnit unit() {
        boolean pounds = mix.aggregates().stream()
                .map(Constituent::mass)
                .anyMatch(mass -> mass.unit() == MassUnit.POUND || mass.unit() == MassUnit.OUNCE);
        return pounds ? MassUnit.POUND : MassUnit.KILOGRAM;
    }

    private String mass(Mass mass, MassUnit unit) {
        return shown.fixed(mass.in(unit), 3);
    }

    private void volume(TextPage page, String key, Volume volume, VolumeUnit unit, int decimals) {
        page.row(words.get(key), shown.fixed(volume.in(unit), decimals), unit.symbol());
    }
}

package porebench.command.bench;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Outcome;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Answer;
import porebench.method.meter.BowlVolume;
import porebench.quantity.DensityUnit;
import porebench.quantity.Mass;
import porebench.quantity.Temperature;
import porebench.quantity.VolumeUnit;

/** {@code bowl}: the volume of a measuring bowl from its weighings with water. */
@Command(name = "bowl")
public final class BowlCommand extends OneCommand {
    @Option(names = "--empty", required = true, paramLabel = "<mass>")
    private Mass empty;

    @Option(names = "--plate", required = true, paramLabel = "<mass>")
    private Mass plate;

    @Option(names = "--full", required = true, paramLabel = "<mass>")
    private Mass full;

    @Option(names = "--water-temp", required = true, paramLabel = "<temperature>")
    private Temperature water;

    public BowlCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected Outcome carryOut() {
        Answer<BowlVolume> answer = BowlVolume.of(empty, plate, full, water);
        return answer.value().isPresent()
                ? Outcome.done(new BowlReport(answer.value().get()), answer.problems())
                : Outcome.refused(answer.problems());
    }

    private final class BowlReport implements Report {
        private final BowlVolume bowl;

        BowlReport(BowlVolume bowl) {
            this.bowl = bowl;
        }

        @Override
        public void json(JsonFields json) {
            json.number("bowlLitres", bowl.volume().in(VolumeUnit.LITRE));
            json.number("waterDensity", bowl.waterDensity().kilogramsPerCubicMetre());
        }

        @Override
        public void text(TextPage page) {
            String name = words().get("bowl.volume");
            page.row(name, shown().fixed(bowl.volume().in(VolumeUnit.LITRE), 4), VolumeUnit.LITRE.symbol());
            page.row(name, shown().fixed(bowl.volume().in(VolumeUnit.CUBIC_FOOT), 5), VolumeUnit.CUBIC_FOOT.symbol());
            page.row(
                    words().get("bowl.water-density"),
                    shown().fixed(bowl.waterDensity().kilogramsPerCubicMetre(), 2),
                    DensityUnit.KILOGRAM_PER_CUBIC_METRE.symbol());
        }
    }
}

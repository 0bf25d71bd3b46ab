package porebench.command.bench;

import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.method.meter.BowlVolume;
import porebench.quantity.DensityUnit;
import porebench.quantity.Mass;
import porebench.quantity.Temperature;
import porebench.quantity.Volume;
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
    protected CommandOutcome carryOut() {
        return CommandOutcome.of(
                BowlVolume.of(empty, plate, full, water),
                volumes(this.<BowlVolume>laidOut(), shown(), BowlVolume::volume)
                        .number(
                                "waterDensity",
                                "bowl.water-density",
                                bowl -> bowl.waterDensity().kilogramsPerCubicMetre(),
                                shown().fixed(2))
                        .in(DensityUnit.KILOGRAM_PER_CUBIC_METRE.symbol()));
    }

    /** Adds the volume of a bowl, in both units for people. */
    static <T> ReportLayout<T> volumes(ReportLayout<T> layout, NumberText shown, Function<T, Volume> bowl) {
        return layout.number("bowlLitres", "bowl.volume", of -> bowl.apply(of).in(VolumeUnit.LITRE), shown.fixed(4))
                .in(VolumeUnit.LITRE.symbol())
                .number("bowl.volume", of -> bowl.apply(of).in(VolumeUnit.CUBIC_FOOT), shown.fixed(5))
                .in(VolumeUnit.CUBIC_FOOT.symbol());
    }
}

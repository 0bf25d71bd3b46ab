package porebench.command.bench;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.ProfileOption;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.evidence.intake.Sheet;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/** {@code meter}: how a meter stood on a day, from a file of calibrations. */
@Command(name = "meter")
public final class MeterCommand extends OneCommand {
    private static final double LARGEST_BOWL_LITRES = 1000;

    /** Stands in where a file weighs no bowl and checks no dial: nothing is computed from it. */
    private static final Typed<Volume> NO_BOWL = Typed.of("1", VolumeUnit.LITRE);

    @Option(names = "--calibration", required = true, paramLabel = "<file>")
    private Path file;

    @Option(names = "--meter-id", required = true, paramLabel = "<id>")
    private MeterId meterId;

    @Option(names = "--at", paramLabel = "<date>")
    private @Nullable LocalDate at;

    @Mixin
    private final ProfileOption rules = new ProfileOption();

    @Option(names = "--bowl", paramLabel = "<volume>")
    private @Nullable Volume bowl;

    @Mixin
    private final MeterDivision division = new MeterDivision();

    public MeterCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        Profile profile = rules.profile(problems);
        checkOptions(problems);
        Sheet<MeterCalibration> sheet = ports().sheets().get().calibrations(file);
        problems.addAll(sheet.problems());
        List<MeterCalibration> own = sheet.values().stream()
                .filter(calibration -> calibration.meterId().equals(meterId))
                .sorted(Comparator.comparing(MeterCalibration::calibratedOn).thenComparing(MeterCalibration::id))
                .toList();
        if (own.isEmpty() && !Problem.anyError(sheet.problems())) {
            problems.add(Problem.error("meterId", "command.meter-not-in-file", meterId.text(), file.toString()));
        }
        dialWithoutBowl(own).ifPresent(problems::add);
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        LocalDate day = at == null ? here().today() : at;
        MeterStory story = story(own, profile);
        for (JudgedCalibration one : story.calibrations()) {
            if (!one.calibration().value().calibratedOn().isAfter(day)) {
                one.problems().stream().filter(Problem::isError).forEach(problems::add);
            }
        }
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        problems.addAll(doubts(story, day));
        return CommandOutcome.done(new MeterReport(here(), story, day, bowlOn(story, day)), problems);
    }

    private void checkOptions(List<Problem> problems) {
        division.check(problems);
        if (bowl != null && !(bowl.cubicMetres() > 0 && bowl.in(VolumeUnit.LITRE) <= LARGEST_BOWL_LITRES)) {
            problems.add(
                    Problem.error("bowl", "command.bowl-out-of-range", bowl.in(VolumeUnit.LITRE), LARGEST_BOWL_LITRES));
        }
    }

    /** Returns the problem that a dial was checked before any volume of the bowl is known. */
    private Optional<Problem> dialWithoutBowl(List<MeterCalibration> own) {
        if (bowl != null) {
            return Optional.empty();
        }
        for (MeterCalibration calibration : own) {
            if (calibration.bowl().isPresent()) {
                return Optional.empty();
            }
            if (calibration.dial().isPresent()) {
                return Optional.of(Problem.error(
                        "bowl", "command.bowl-missing", calibration.id().text()));
            }
        }
        return Optional.empty();
    }

    private MeterStory story(List<MeterCalibration> own, Profile profile) {
        MeterType type = own.get(own.size() - 1).meterType();
        Typed<Volume> stated =
                bowl == null ? NO_BOWL : new Typed<>(BigDecimal.valueOf(bowl.in(VolumeUnit.LITRE)), VolumeUnit.LITRE);
        Meter meter = new Meter(meterId, type, "", stated, division.percent(), BigDecimal.valueOf(100), true, "");
        Stamp stamp = new Stamp(here().user(), here().clock().instant(), file.toString());
        return MeterStory.of(
                new Version<>(meter, 1, stamp),
                own.stream().map(one -> new Version<>(one, 1, stamp)).toList(),
                profile);
    }

    /** What is said of the volume in a register is for a meter that is in one. */
    private List<Problem> doubts(MeterStory story, LocalDate day) {
        return story.toLookAtOn(day).stream()
                .filter(problem -> bowl != null || !problem.field().equals("bowl"))
                .toList();
    }

    private Optional<Volume> bowlOn(MeterStory story, LocalDate day) {
        return story.bowlCalibrationOn(day).isPresent() || bowl != null
                ? Optional.of(story.bowlOn(day))
                : Optional.empty();
    }
}

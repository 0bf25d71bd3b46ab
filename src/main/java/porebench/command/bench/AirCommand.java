package porebench.command.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.ProfileOption;
import porebench.command.reply.ReportLayout;
import porebench.evidence.MeterScale;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.SourceText;
import porebench.method.Ties;
import porebench.method.air.AirContent;
import porebench.method.air.SievedAir;
import porebench.quantity.Volume;

/** {@code air}: air content from a reading and a factor, or the airs of a wet-sieved mixture. */
@Command(name = "air")
public final class AirCommand extends OneCommand {
    @ArgGroup(multiplicity = "1")
    private Question question = new Question();

    public AirCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    /** One of the two things that can be asked. */
    static final class Question {
        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable OfReading reading;

        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable OfFullMixture fullMixture;
    }

    static final class OfReading {
        @Option(names = "--reading", required = true, paramLabel = "<percent>")
        private BigDecimal reading;

        @Option(names = "--factor", required = true, paramLabel = "<percent>")
        private BigDecimal factor;

        @Option(names = "--profile", paramLabel = "<id>")
        private @Nullable String profile;

        @Option(names = "--division", paramLabel = "<percent>")
        private @Nullable BigDecimal division;
    }

    static final class OfFullMixture {
        @Option(names = "--full-mixture", required = true)
        private boolean asked;

        @Option(names = "--air", required = true, paramLabel = "<percent>")
        private BigDecimal air;

        @Option(names = "--vc", required = true, paramLabel = "<volume>")
        private Volume passing;

        @Option(names = "--vt", required = true, paramLabel = "<volume>")
        private Volume total;

        @Option(names = "--va", required = true, paramLabel = "<volume>")
        private Volume held;

        @Option(names = "--vm", required = true, paramLabel = "<volume>")
        private Volume mortar;
    }

    @Override
    protected CommandOutcome carryOut() {
        if (question.reading != null) {
            return ofReading(question.reading);
        }
        if (question.fullMixture != null) {
            return ofFullMixture(question.fullMixture);
        }
        throw new IllegalStateException("picocli fills one of the two groups");
    }

    private CommandOutcome ofReading(OfReading asked) {
        List<Problem> problems = new ArrayList<>();
        Profile profile = ProfileOption.find(Optional.ofNullable(asked.profile), problems);
        BigDecimal division =
                asked.division == null ? BigDecimal.valueOf(MeterScale.USUAL_DIVISION_PERCENT) : asked.division;
        Answer<AirContent> answer = AirContent.of(asked.reading, asked.factor, division, profile);
        problems.addAll(answer.problems());
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        ReportLayout<AirContent> layout = this.<AirContent>laidOut()
                .cell("air.reading", air -> shown().exact(asked.reading))
                .in(unit())
                .cell("air.factor", air -> shown().exact(asked.factor))
                .in(unit())
                .exact("airPercent", "air.air", AirContent::percent)
                .in(unit())
                .exact("reportedAirPercent", "air.reported", AirContent::reported)
                .in(unit())
                .text("rule", air -> rule(air, profile))
                .line(air -> rule(air, profile));
        return CommandOutcome.done(layout.report(answer.value().orElseThrow()), problems);
    }

    private String unit() {
        return words().get("unit.air");
    }

    private String rule(AirContent air, Profile profile) {
        String ties = air.rule().ties() == Ties.TO_EVEN ? "air.ties-even" : "air.ties-away";
        return words().get(
                        "air.rule",
                        shown().exact(air.rule().step()),
                        words().get(ties),
                        SourceText.in(here().locale()).say(air.rule().clause()),
                        profile.title());
    }

    private CommandOutcome ofFullMixture(OfFullMixture asked) {
        return CommandOutcome.of(
                SievedAir.of(asked.air.doubleValue(), asked.passing, asked.total, asked.held, asked.mortar),
                this.<SievedAir>laidOut()
                        .number(
                                "fullMixturePercent",
                                "air.full-mixture",
                                SievedAir::fullMixturePercent,
                                shown().fixed(2))
                        .in(unit())
                        .number("mortarPercent", "air.mortar", SievedAir::mortarPercent, shown().fixed(2))
                        .in(unit()));
    }
}

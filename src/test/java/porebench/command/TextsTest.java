package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import porebench.evidence.FactorState;
import porebench.evidence.custody.CardStanding;
import porebench.evidence.paper.CardCheck;
import porebench.method.Role;
import porebench.method.air.AirVerdict;
import porebench.method.budget.BudgetPart;
import porebench.method.budget.Capability;
import porebench.method.budget.Origin;
import porebench.method.meter.MeterState;
import porebench.record.CardStep;
import porebench.record.FactorProposal;
import porebench.record.MeterCalibration;
import porebench.record.RecordKind;
import porebench.statistics.Judged;
import porebench.statistics.control.RunRule;

/** Every text is used, and every text used is there. */
class TextsTest {
    private static final Path SOURCES = Path.of("src/main/java/porebench/command");

    @TempDir
    Path folder;

    private static String sources() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file, StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    private static Set<String> keys(String bundle) {
        return ResourceBundle.getBundle(bundle, Locale.ROOT).keySet();
    }

    @Test
    void everyAnswerUsesTextsThatAreThere() throws IOException {
        Set<String> keys = keys("porebench.command.command");
        Set<String> used = new HashSet<>();
        for (RecordKind kind : RecordKind.values()) {
            used.add("kind." + kind.symbol());
        }
        for (FactorProposal.Step step : FactorProposal.Step.values()) {
            used.add("issue.step." + step.symbol());
        }
        for (CardCheck.Verdict verdict : CardCheck.Verdict.values()) {
            used.add("cardcheck." + verdict.symbol());
        }
        Stream.of(AirVerdict.values()).forEach(verdict -> used.add("readings.is." + verdict.symbol()));
        Stream.of(CardStanding.values()).forEach(standing -> used.add("recall.is." + standing.symbol()));
        Stream.of(CardStep.Act.values()).forEach(act -> used.add("recall.act." + act.symbol()));
        for (FactorState state : FactorState.values()) {
            used.add("state." + state.symbol().replace(' ', '-'));
        }
        Stream.of(MeterState.values())
                .forEach(state -> used.add("calibration." + state.words().replace(' ', '-')));
        Stream.of(MeterCalibration.Reason.values()).forEach(reason -> used.add("reason." + reason.symbol()));
        Stream.of(RunRule.values()).forEach(rule -> used.add("rule." + rule.symbol()));
        Stream.of(BudgetPart.values()).forEach(part -> used.add("part." + part.symbol()));
        Stream.of(Origin.values()).forEach(origin -> used.add("origin." + origin.symbol()));
        Stream.of(Capability.Standing.values()).forEach(standing -> used.add("capability." + standing.symbol()));
        Stream.of(Role.values()).filter(Role::isAggregate).forEach(role -> used.add("role." + role.symbol()));
        Stream.of(Judged.Reason.values())
                .flatMap(reason -> Stream.of("stats." + reason.symbol(), "interlab." + reason.symbol()))
                .forEach(used::add);
        String families =
                "problem|usage|unit|sample|factor|air|bowl|meter|simulate|stats|sets|chart|interlab|budget|issue|card|cards|cardcheck|page|photo|register|import"
                        + "|export|restore|backup|failed|verify|demo|anova|source|variance|gauge|components|crossed|compare|risk|forecast|plan|group|recall|readings|holds";
        Matcher literals =
                Pattern.compile("\"((?:" + families + ")\\.[a-z0-9-]+)\"").matcher(sources());
        Set<String> problems = keys("porebench.method.problems");
        while (literals.find()) {
            if (!problems.contains(literals.group(1))) {
                used.add(literals.group(1));
            }
        }
        assertThat(used).hasSizeGreaterThan(60).isEqualTo(keys);
    }

    @Test
    void everyProblemOfTheCommandLineHasItsText() throws IOException {
        Set<String> used = new HashSet<>();
        Matcher literals = Pattern.compile("\"(command\\.[a-z0-9-]+)\"").matcher(sources());
        while (literals.find()) {
            used.add(literals.group(1));
        }
        assertThat(used)
                .isEqualTo(Set.copyOf(keys("porebench.method.problems").stream()
                        .filter(key -> key.startsWith("command."))
                        .toList()));
    }

    @Test
    void everyCommandAndOptionIsExplainedAndEveryExplanationIsShown() {
        CommandLine root = new Terminal(folder).commandLine();
        Set<String> own = new HashSet<>();
        for (CommandLine command : root.getSubcommands().values()) {
            String name = command.getCommandName();
            assertThat(command.getCommandSpec().usageMessage().header())
                    .as("header of %s", name)
                    .isNotEmpty();
            for (ArgSpec argument : command.getCommandSpec().args()) {
                assertThat(String.join("", argument.description()))
                        .as("%s of %s", argument, name)
                        .isNotBlank();
                own.add("porebench." + name + "."
                        + (argument instanceof OptionSpec option
                                ? option.longestName().substring(2)
                                : argument.descriptionKey()));
            }
        }
        assertThat(keys("porebench.command.help").stream()
                        .filter(key -> key.startsWith("porebench.") && !key.contains(".usage.")))
                .hasSizeGreaterThan(25)
                .allSatisfy(key -> assertThat(own).contains(key));
    }
}

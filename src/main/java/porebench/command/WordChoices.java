package porebench.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import porebench.command.study.ChartKind;
import porebench.evidence.intake.SheetStyle;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.method.simulate.Fault;
import porebench.port.Paper;
import porebench.quantity.MassUnit;
import porebench.record.CardStep;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.statistics.control.RunRule;

/** Which words an option may have that takes one of a few: what it is read by, and what is offered to complete it. */
final class WordChoices {
    private static final Choice<Paper> CARDS = new Choice<>(
            Paper.class, List.of(Paper.A6, Paper.CARD_4X6, Paper.HALF_LETTER, Paper.WALLET), Paper::symbol);
    private static final Choice<Paper> SHEETS =
            new Choice<>(Paper.class, List.of(Paper.A4, Paper.LETTER), Paper::symbol);

    /** A register, a plan and a list of cards or readings are no cards. */
    private static final Set<String> ON_SHEETS = Set.of("register", "plan", "field-sheet", "recall", "readings");

    private static final List<Choice<?>> ALL = List.of(
            CARDS,
            of(MassUnit.class, MassUnit::symbol),
            of(ComparisonVerdict.class, ComparisonVerdict::symbol),
            of(MeterType.class, MeterType::name),
            of(CardStep.Act.class, CardStep.Act::symbol),
            of(Fault.class, Fault::symbol),
            of(PaperLanguage.class, PaperLanguage::symbol),
            of(CardLook.Sheet.class, CardLook.Sheet::symbol),
            of(SheetStyle.Apart.class, SheetStyle.Apart::symbol),
            of(SheetStyle.Decimal.class, SheetStyle.Decimal::symbol),
            of(ChartKind.class, ChartKind::symbol),
            of(RunRule.class, RunRule::symbol),
            of(CompletionCommand.Shell.class, CompletionCommand.Shell::symbol));

    private WordChoices() {}

    /** Lets a command line read these words, letter case not mattering, and refuse others in the person's language. */
    static void register(CommandLine line, Texts words) {
        ALL.forEach(choice -> choice.register(line, words));
        ON_SHEETS.stream()
                .flatMap(name -> Optional.ofNullable(line.getSubcommands().get(name)).stream())
                .forEach(command -> SHEETS.register(command, words));
    }

    /** Returns the words that an option of a command may have; empty where it takes something else. */
    static Optional<List<String>> of(String command, Class<?> type) {
        return (type == Paper.class && ON_SHEETS.contains(command) ? Stream.<Choice<?>>of(SHEETS) : ALL.stream())
                .filter(choice -> choice.type() == type)
                .findFirst()
                .map(Choice::words);
    }

    private static <T extends Enum<T>> Choice<T> of(Class<T> type, Function<T, String> word) {
        return new Choice<>(type, Arrays.asList(type.getEnumConstants()), word);
    }

    private record Choice<T>(Class<T> type, List<T> allowed, Function<T, String> word) {
        List<String> words() {
            return allowed.stream().map(word).toList();
        }

        void register(CommandLine line, Texts texts) {
            ITypeConverter<T> reading = text -> allowed.stream()
                    .filter(one -> word.apply(one).equalsIgnoreCase(text.strip()))
                    .findFirst()
                    .orElseThrow(() ->
                            new TypeConversionException(texts.get("usage.choice", text, String.join(", ", words()))));
            line.registerConverter(type, reading);
        }
    }
}

package porebench.command.book;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.WhereTo;
import porebench.evidence.custody.CardChoice;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.CardBatch;
import porebench.port.CardHandout;
import porebench.port.Paper;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/** {@code cards}: the factor cards of many mixes as one PDF file. */
@Command(name = "cards")
public final class CardsCommand extends BookCommand {
    @Option(names = "--mix-id", paramLabel = "<id>")
    private List<MixId> mixIds = new ArrayList<>();

    @Option(names = "--plant", paramLabel = "<plant>")
    private @Nullable String plant;

    @Option(names = "--recall")
    private boolean recall;

    @Option(names = "--leave-out")
    private boolean leaveOut;

    @Option(names = "--on-one")
    private boolean onOne;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A6;

    @Mixin
    private final CardLanguages languages = new CardLanguages();

    @Option(names = "--sheet", paramLabel = "<sheet>")
    private CardLook.@Nullable Sheet sheet;

    @Option(names = "--per-sheet", paramLabel = "<n>")
    private @Nullable Integer perSheet;

    @Option(names = "--chart")
    private boolean chart;

    @Mixin
    private final Keeper who = new Keeper();

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public CardsCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        languages.problem().ifPresent(problems::add);
        if (perSheet != null && sheet == null) {
            problems.add(Problem.error("per-sheet", "cards.no-sheet"));
        } else if (perSheet != null && perSheet < 1) {
            problems.add(Problem.error("per-sheet", "command.not-positive", "--per-sheet", perSheet));
        }
        if (!problems.isEmpty()) {
            return CommandOutcome.refused(problems);
        }
        CardLook look = new CardLook(
                paper.card().orElseThrow(),
                languages.chosen(here()),
                Optional.ofNullable(sheet),
                perSheet == null ? CardLook.ALL : perSheet,
                chart);
        CardChoice choice = new CardChoice(mixIds, Optional.ofNullable(plant), recall);
        try (LabBook book = open()) {
            Answer<List<CardHandout.Handed>> answer = new CardBatch(
                            book, ports().press().get(), here().locale())
                    .toFile(
                            new CardBatch.Wish(
                                    choice,
                                    leaveOut,
                                    onOne,
                                    look,
                                    here().now(),
                                    who.name(here()),
                                    words().get("cards.why")),
                            whereTo.file(out),
                            here().progress());
            return marked(book, CommandOutcome.of(answer, said(look)));
        }
    }

    private ReportLayout<List<CardHandout.Handed>> said(CardLook look) {
        String path = whereTo.file(out).path().toString();
        return this.<List<CardHandout.Handed>>laidOut()
                .text("path", all -> path)
                .whole("cardsMade", List::size)
                .text("paper", all -> look.size().symbol())
                .text(
                        "language",
                        all -> look.languages().stream()
                                .map(PaperLanguage::symbol)
                                .collect(Collectors.joining("+")))
                .field((json, all) ->
                        json.whole("plantCards", Optional.of(papers(all)).filter(any -> onOne)))
                .alone((page, all) -> page.line(
                        onOne
                                ? words().get(
                                                "cards.written-plant",
                                                String.valueOf(plant),
                                                all.size(),
                                                papers(all),
                                                path)
                                : words().get("cards.written", all.size(), path)))
                .list("cards", all -> all, card());
    }

    /** Returns how many papers the cards are on. */
    private static int papers(List<CardHandout.Handed> all) {
        return (int)
                all.stream().map(handed -> handed.print().paper()).distinct().count();
    }

    private ReportLayout<CardHandout.Handed> card() {
        return this.<CardHandout.Handed>laidOut()
                .text("card", "cards.card", handed -> handed.print().recordId())
                .text("mixId", handed -> handed.card().mixId().text())
                .whole("revision", handed -> handed.print().revision())
                .whole("number", handed -> handed.print().number())
                .exact(
                        "factorPercent",
                        "cards.factor",
                        handed -> handed.card().issue().factorPercent())
                .in("unit.air")
                .text(
                        "recheckBy",
                        "cards.until",
                        handed -> handed.card().lastDay().toString())
                .text("state", handed -> handed.card().state().symbol());
    }
}

package porebench.command.book;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.WhereTo;
import porebench.evidence.Evidence;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardActs;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.paper.RecallList;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.Paper;
import porebench.record.CardHolder;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.Laboratory;
import porebench.record.PlantMark;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** {@code recall}: which cards are out, who holds them, which have to come back; and what happened to a card. */
@Command(name = "recall")
public final class RecallCommand extends BookCommand {
    @Option(names = "--mix-id", paramLabel = "<id>")
    private @Nullable MixId mixId;

    @Option(names = "--holder", paramLabel = "<holder>")
    private @Nullable String holder;

    @Option(names = "--card", paramLabel = "<name>")
    private List<String> cards = new ArrayList<>();

    @Option(names = "--done", paramLabel = "<act>")
    private CardStep.@Nullable Act done;

    @Option(names = "--by", paramLabel = "<name>")
    private String by = "";

    @Option(names = "--at", paramLabel = "<time>")
    private @Nullable LocalDateTime at;

    @Option(names = "--remark", paramLabel = "<text>")
    private String remark = "";

    @Option(names = "--all")
    private boolean all;

    @Option(names = "--out", paramLabel = "<file>")
    private @Nullable Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A4;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public RecallCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        Optional<CardHolder> named = Optional.ofNullable(holder).flatMap(CardHolder::parse);
        if (holder != null && named.isEmpty()) {
            return CommandOutcome.refused(Problem.error("holder", "custody.not-a-holder", holder));
        }
        if ((done == null) != cards.isEmpty()) {
            return CommandOutcome.refused(Problem.error("card", "custody.card-and-act"));
        }
        Optional<Problem> wrong = wrongOut();
        if (wrong.isPresent()) {
            return CommandOutcome.refused(wrong.get());
        }
        try (LabBook book = open()) {
            LocalDateTime now = here().now();
            Optional<Custody> custody = custody(book, done == null && at != null ? at : now);
            if (custody.isEmpty()) {
                return CommandOutcome.refused(
                        Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), String.valueOf(mixId)));
            }
            return marked(
                    book, done == null ? listed(book, custody.get(), named) : acted(book, custody.get(), done, named));
        }
    }

    private Optional<Custody> custody(LabBook book, LocalDateTime moment) {
        Optional<List<RegisterRow>> ofMix = Optional.ofNullable(mixId)
                .map(one -> Evidence.of(book, one).stream()
                        .map(evidence -> RegisterRow.of(evidence, moment))
                        .toList());
        if (ofMix.isPresent() && (ofMix.get().isEmpty() || !isOnPlantsCard(book))) {
            return ofMix.filter(rows -> !rows.isEmpty()).map(rows -> Custody.of(book, rows, moment));
        }
        List<RegisterRow> rows = LaboratoryStanding.of(book, here().progress()).rows(moment);
        return Optional.of(Custody.ofLaboratory(book, rows, moment));
    }

    /** Returns whether one of the named cards is a row of a plant's card: what happens to it happens to cards of other mixes. */
    private boolean isOnPlantsCard(LabBook book) {
        return book.latest(CardPrint.class, cards).values().stream()
                .anyMatch(print -> PlantMark.of(print.value()).isPresent());
    }

    /** A list is written alone, and as PDF. */
    private Optional<Problem> wrongOut() {
        if (out == null) {
            return Optional.empty();
        }
        if (done != null) {
            return Optional.of(Problem.error("out", "custody.list-and-act"));
        }
        return String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT).endsWith(".pdf")
                ? Optional.empty()
                : Optional.of(Problem.error("out", "custody.list-ending", out.toString()));
    }

    /** Writes the list where that is wanted: of one holder all cards, else those that have to come back, or all where all are asked for. */
    private void write(LabBook book, Path file, Custody custody, Optional<CardHolder> named) {
        RecallList list = RecallList.of(
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                custody,
                all || named.isPresent() ? RecallList.Which.OUT : RecallList.Which.TO_COME_BACK,
                named,
                book.head());
        ports().press().get().write(list, paper, here().locale(), whereTo.file(file));
        acted();
    }

    private CommandOutcome listed(LabBook book, Custody custody, Optional<CardHolder> named) {
        List<HeldCard> shown = named.map(custody::heldBy).orElseGet(custody::out);
        if (out != null) {
            write(book, out, custody, named);
        }
        return CommandOutcome.done(
                this.<Custody>laidOut()
                        .text(
                                "at",
                                one -> one.at().truncatedTo(ChronoUnit.MINUTES).toString())
                        .whole("cardsOut", any -> shown.size())
                        .whole("toComeBack", any -> back(shown))
                        .field((json, any) ->
                                json.text("file", Optional.ofNullable(out).map(Path::toString)))
                        .alone((page, any) -> page.line(words().get("recall.out", shown.size(), back(shown))))
                        .list("cards", any -> shown, card())
                        .report(custody),
                List.of());
    }

    private static int back(List<HeldCard> cards) {
        return (int) cards.stream().filter(HeldCard::isToComeBack).count();
    }

    private CommandOutcome acted(LabBook book, Custody custody, CardStep.Act act, Optional<CardHolder> named) {
        LocalDateTime moment = Optional.ofNullable(at).orElse(custody.at().truncatedTo(ChronoUnit.MINUTES));
        String who = by.isBlank() ? here().user() : by.strip();
        Answer<List<CardStep>> answer = new CardActs(act, named, moment, who, remark).steps(custody, cards);
        if (answer.value().isEmpty()) {
            return CommandOutcome.refused(answer.problems());
        }
        List<CardStep> steps = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(book.keep(
                steps.stream().map(Draft::of).toList(),
                who,
                remark.isBlank() ? words().get("recall.why") : remark.strip()));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        acted();
        ReportLayout<CardStep> kept = this.<CardStep>laidOut()
                .text("card", "recall.card", CardStep::cardId)
                .whole("step", CardStep::number)
                .text("done", step -> step.act().symbol())
                .cell(
                        "recall.done",
                        step -> words().get("recall.act." + step.act().symbol()))
                .text(
                        "holder",
                        "recall.holder",
                        step -> step.holder().map(CardHolder::text).orElse(""))
                .text("at", "recall.at", step -> step.at().toString())
                .text("by", "recall.by", CardStep::by)
                .text("remark", CardStep::remark);
        return CommandOutcome.done(
                this.<List<CardStep>>laidOut().list("steps", all -> all, kept).report(steps), problems);
    }

    private ReportLayout<HeldCard> card() {
        return this.<HeldCard>laidOut()
                .text("card", "recall.card", card -> card.print().recordId())
                .text("mixId", card -> card.print().mixId().text())
                .whole("revision", card -> card.print().revision())
                .whole("number", card -> card.print().number())
                .field((json, card) -> json.number("factorPercent", card.factorPercent()))
                .text("place", card -> card.place().where().symbol())
                .field((json, card) -> json.text("holder", card.place().holder().map(CardHolder::text)))
                .cell(
                        "recall.holder",
                        card -> card.place().holder().map(CardHolder::text).orElse("?"))
                .text("state", card -> card.standing().symbol())
                .cell(
                        "recall.state",
                        card -> words().get("recall.is." + card.standing().symbol()))
                .field((json, card) -> json.text("since", card.since().map(LocalDateTime::toString)))
                .cell(
                        "recall.since",
                        card -> card.since().map(LocalDateTime::toString).orElse(""))
                .flag("toComeBack", HeldCard::isToComeBack);
    }
}

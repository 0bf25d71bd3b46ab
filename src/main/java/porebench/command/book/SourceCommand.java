package porebench.command.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.evidence.EvidenceReader;
import porebench.evidence.source.SourceTouch;
import porebench.evidence.source.TouchedMix;
import porebench.method.Problem;
import porebench.record.CardHolder;
import porebench.record.FactorIssue;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Wording;
import porebench.record.id.SourceId;
import porebench.record.source.SourceGate;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/** {@code source}: what a source touches, and its change to another stone. */
@Command(name = "source")
public final class SourceCommand extends BookCommand {
    @Option(names = "--source-id", required = true, paramLabel = "<id>")
    private SourceId sourceId;

    @ArgGroup(exclusive = false)
    private @Nullable Change change;

    /** The change that is declared; without one, what the source touches is told. */
    static final class Change {
        @Option(names = "--changed", required = true, paramLabel = "<date>")
        private LocalDate on;

        @Option(names = "--reason", required = true, paramLabel = "<text>")
        private String reason;

        @Option(names = "--by", paramLabel = "<name>")
        private String by = "";

        @Option(names = "--ledge", paramLabel = "<text>")
        private @Nullable String ledge;

        /** Returns the source as it is from then on. */
        Source of(Source before) {
            return before.worked(ledge == null ? before.ledge() : ledge.strip())
                    .as(
                            Optional.of(SourceStep.CHANGED),
                            Optional.of(on),
                            Optional.of(reason.strip()).filter(text -> !text.isEmpty()));
        }
    }

    public SourceCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            Optional<SourceStory> story = SourceStory.of(book, sourceId);
            CommandOutcome outcome = story.isEmpty()
                    ? CommandOutcome.refused(
                            Problem.error("sourceId", "book.not-there", RecordKind.SOURCE.word(), sourceId.text()))
                    : change == null
                            ? CommandOutcome.done(
                                    said(Optional.empty()).report(touch(book, Optional.empty())), List.of())
                            : change(book, story.get(), change);
            return marked(book, outcome);
        }
    }

    private SourceTouch touch(LabBook book, Optional<SourceTouch.Wish> wish) {
        EvidenceReader reader = EvidenceReader.asking(book);
        return SourceTouch.of(book, reader::readEach, sourceId, wish, here().now())
                .orElseThrow();
    }

    private CommandOutcome change(LabBook book, SourceStory story, Change wish) {
        Source before = story.newest().value();
        Source next = wish.of(before);
        List<Problem> problems = new ArrayList<>(SourceGate.check(story, next, here().today()));
        problems.addAll(Wording.checkCorrection(before, next));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        SourceTouch touch = touch(book, SourceTouch.Wish.of(next));
        String by = wish.by.isBlank() ? here().user() : wish.by.strip();
        problems.addAll(book.keep(List.of(Draft.correcting(story.newest(), next)), by, wish.reason.strip()));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        CalledBack.named(SourceTouch.out(touch.madeUntrue())).ifPresent(problems::add);
        acted();
        return CommandOutcome.done(said(Optional.of(next)).report(touch), problems);
    }

    private ReportLayout<SourceTouch> said(Optional<Source> kept) {
        ReportLayout<SourcePeriod> periods = this.<SourcePeriod>laidOut()
                .whole("number", "source.period", SourcePeriod::number)
                .field((json, period) -> json.date("from", period.from()))
                .cell("source.from", period -> or(period.from()))
                .text("place", period -> period.newest().value().place())
                .text("ledge", "source.ledge", period -> period.newest().value().ledge())
                .field((json, period) ->
                        json.number("relativeDensity", period.newest().value().relativeDensity()))
                .cell("source.density", period -> number(period.newest().value().relativeDensity()))
                .field((json, period) ->
                        json.number("absorptionPercent", period.newest().value().absorptionPercent()))
                .cell(
                        "source.absorption",
                        period -> number(period.newest().value().absorptionPercent()))
                .text(
                        "declaredBy",
                        "source.by",
                        period -> period.begun().stamp().who())
                .text("declaredAt", period -> period.begun().stamp().at().toString())
                .text("reason", "source.reason", SourcePeriod::why);
        ReportLayout<TouchedMix> mixes = this.<TouchedMix>laidOut()
                .text("mixId", "register.mix", mix -> mix.mixId().text())
                .text("title", TouchedMix::title)
                .field((json, mix) -> json.number("factorPercent", mix.inForce().map(FactorIssue::factorPercent)))
                .cell("register.factor", mix -> number(mix.inForce().map(FactorIssue::factorPercent)))
                .field((json, mix) -> json.whole("revision", mix.inForce().map(FactorIssue::revision)))
                .cell("register.revision", mix -> or(mix.inForce().map(FactorIssue::revision)))
                .field((json, mix) -> json.date("inForceFrom", mix.inForce().map(FactorIssue::inForceFrom)))
                .field((json, mix) -> json.date("recheckBy", mix.inForce().map(FactorIssue::recheckBy)))
                .field((json, mix) -> json.text("state", mix.state().symbol()))
                .cell("register.state", mix -> stateWords(mix.state().symbol()))
                .field((json, mix) -> json.text("stateThen", mix.then().symbol()))
                .cell("source.then", mix -> stateWords(mix.then().symbol()))
                .flag("becomesUntrue", TouchedMix::becomesUntrue)
                .whole("cardsOut", "source.cards", TouchedMix::cardsOut)
                .field((json, mix) -> json.texts(
                        "holders",
                        mix.out().stream()
                                .map(card -> card.place()
                                        .holder()
                                        .map(CardHolder::text)
                                        .orElse("?"))
                                .distinct()
                                .toList()))
                .whole("cardFiles", "source.files", TouchedMix::cardFiles)
                .whole("trials", "register.trials", TouchedMix::trials);
        return this.<SourceTouch>laidOut()
                .text("sourceId", touch -> sourceId.text())
                .text("name", touch -> touch.story().newest().value().name())
                .field((json, touch) -> json.date("changedOn", kept.flatMap(Source::changedOn)))
                .whole("version", touch -> touch.story().newest().number() + (kept.isPresent() ? 1 : 0))
                .text("on", touch -> touch.looked().toString())
                .line(touch -> kept.isPresent()
                        ? words().get(
                                        "source.changed",
                                        sourceId.text(),
                                        kept.flatMap(Source::changedOn)
                                                .orElseThrow()
                                                .toString(),
                                        Integer.toString(touch.madeUntrue().size()),
                                        Integer.toString(SourceTouch.cardsOut(touch.madeUntrue())))
                        : touch.mixes().isEmpty()
                                ? words().get("source.unused", sourceId.text())
                                : words().get(
                                                "source.touches",
                                                sourceId.text(),
                                                Integer.toString(touch.mixes().size()),
                                                Integer.toString(SourceTouch.cardsOut(touch.mixes()))))
                .whole("mixesTouched", touch -> touch.mixes().size())
                .whole("factorsMadeUntrue", touch -> touch.madeUntrue().size())
                .whole("cardsOut", touch -> SourceTouch.cardsOut(touch.mixes()))
                .gap()
                .list("periods", touch -> touch.story().periods(), periods)
                .field((json, touch) -> json.list("mixes", touch.mixes(), mixes::json))
                .alone((page, touch) -> {
                    if (!touch.mixes().isEmpty()) {
                        page.gap();
                        mixes.table(page, touch.mixes());
                    }
                });
    }

    private String stateWords(String symbol) {
        return words().get("state." + symbol.replace(' ', '-'));
    }

    private String number(Optional<BigDecimal> number) {
        return number.map(shown()::exact).orElse(NumberText.NONE);
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse(NumberText.NONE);
    }
}

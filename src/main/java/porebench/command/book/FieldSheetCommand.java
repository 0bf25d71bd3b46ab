package porebench.command.book;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.WhereTo;
import porebench.method.Answer;
import porebench.port.CardHandout;
import porebench.port.FieldHandout;
import porebench.port.Paper;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/** {@code field-sheet}: the sheet on which a crew writes its readings, with the factor filled in. */
@Command(name = "field-sheet")
public final class FieldSheetCommand extends BookCommand {
    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--paper", paramLabel = "<size>")
    private Paper paper = Paper.A4;

    @Mixin
    private final Keeper who = new Keeper();

    @Option(names = "--marked")
    private boolean marked;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public FieldSheetCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            CardHandout.Wish wish = new CardHandout.Wish(
                    mixId,
                    Optional.empty(),
                    paper,
                    marked,
                    here().now(),
                    who.name(here()),
                    words().get("page.sheet-why"));
            Answer<CardHandout.Handed> answer =
                    new FieldHandout(book, ports().press().get(), here().locale()).sheet(wish, whereTo.file(out));
            return marked(book, CommandOutcome.of(answer, said()));
        }
    }

    private ReportLayout<CardHandout.Handed> said() {
        return this.<CardHandout.Handed>laidOut()
                .text("path", handed -> whereTo.file(out).path().toString())
                .text("mixId", handed -> handed.card().mixId().text())
                .whole("revision", handed -> handed.card().issue().revision())
                .whole("number", handed -> handed.print().number())
                .text("state", handed -> handed.card().state().symbol())
                .flag("marked", handed -> handed.card().isMarked())
                .line(handed -> words().get(
                                "page.sheet-written", whereTo.file(out).path().toString()));
    }
}

package porebench.command.book;

import java.nio.file.Path;
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
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.CardHandout;
import porebench.port.FieldHandout;
import porebench.port.Paper;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/** {@code page}: the card of a mix as a page for a phone. */
@Command(name = "page")
public final class PageCommand extends BookCommand {
    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--language", paramLabel = "<language>")
    private @Nullable String language;

    @Mixin
    private final Keeper who = new Keeper();

    @Option(names = "--marked")
    private boolean marked;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public PageCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        Locale first = language == null ? here().locale() : Locale.forLanguageTag(language);
        if (language != null && !FieldHandout.LANGUAGES.contains(first.getLanguage())) {
            return CommandOutcome.refused(
                    Problem.error("language", "page.no-language", language, String.join(", ", FieldHandout.LANGUAGES)));
        }
        try (LabBook book = open()) {
            CardHandout.Wish wish = new CardHandout.Wish(
                    mixId, Optional.empty(), Paper.A6, marked, here().now(), who.name(here()), words().get("page.why"));
            Answer<CardHandout.Handed> answer =
                    new FieldHandout(book, ports().press().get(), first).phone(wish, whereTo.file(out));
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
                .line(handed ->
                        words().get("page.written", whereTo.file(out).path().toString()))
                .line(handed -> words().get("page.how"));
    }
}

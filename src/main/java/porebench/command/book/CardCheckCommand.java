package porebench.command.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardCheck;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;

/** {@code card-check}: whether the text of a card is what this laboratory put on it. */
@Command(name = "card-check")
public final class CardCheckCommand extends BookCommand {
    @ArgGroup(exclusive = true, multiplicity = "1")
    private @Nullable From from;

    static final class From {
        @Option(names = "--text", required = true, paramLabel = "<file>|-")
        private @Nullable String text;

        @Option(names = "--picture", required = true, paramLabel = "<file>")
        private @Nullable Path picture;
    }

    public CardCheckCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        Answer<String> text = text();
        if (text.value().isEmpty()) {
            return CommandOutcome.refused(text.problems());
        }
        try (LabBook book = open()) {
            CardCheck check = CardCheck.of(book, text.value().get(), here().now());
            CommandOutcome outcome = new CommandOutcome(
                    Problem.anyError(check.problems()), Optional.of(said().report(check)), check.problems());
            return marked(book, outcome);
        }
    }

    private Answer<String> text() {
        From known = Objects.requireNonNull(from);
        if (known.picture != null) {
            Answer<List<String>> read = ports().press().get().codes(known.picture);
            // Of several codes in one picture the one of a card is meant; a text without a code is said to have none.
            return read.value()
                    .map(texts -> Answer.of(
                            texts.stream()
                                    .filter(CardCheck::isSealed)
                                    .findFirst()
                                    .orElse(texts.get(0)),
                            List.<Problem>of()))
                    .orElseGet(() -> Answer.refused(read.problems()));
        }
        return typed(Objects.requireNonNull(known.text));
    }

    private Answer<String> typed(String name) {
        Answer<byte[]> bytes = bytes(name);
        if (bytes.value().isEmpty()) {
            return Answer.refused(bytes.problems());
        }
        byte[] read = bytes.value().get();
        if (read.length > CardCheck.LONGEST) {
            return Answer.refused(List.of(Problem.error("text", "cardcheck.too-long", CardCheck.LONGEST)));
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(read))
                    .toString();
            return CardCheck.unusable(text)
                    .map(problem -> Answer.<String>refused(List.of(problem)))
                    .orElseGet(() -> Answer.of(text, List.of()));
        } catch (CharacterCodingException other) {
            return Answer.refused(List.of(Problem.error("text", "cardcheck.not-utf-8", name)));
        }
    }

    private Answer<byte[]> bytes(String name) {
        try {
            if (name.equals("-")) {
                return Answer.of(System.in.readNBytes(CardCheck.LONGEST + 1), List.of());
            }
            try (InputStream stream = Files.newInputStream(here().folder().resolve(name))) {
                return Answer.of(stream.readNBytes(CardCheck.LONGEST + 1), List.of());
            }
        } catch (InvalidPathException unusable) {
            return Answer.refused(List.of(Problem.error("text", "csv.file-unreadable", name, unusable.getReason())));
        } catch (NoSuchFileException absent) {
            return Answer.refused(List.of(Problem.error("text", "csv.file-missing", name)));
        } catch (IOException failure) {
            return Answer.refused(
                    List.of(Problem.error("text", "csv.file-unreadable", name, String.valueOf(failure.getMessage()))));
        }
    }

    private ReportLayout<CardCheck> said() {
        return this.<CardCheck>laidOut()
                .text("verdict", check -> check.verdict().symbol())
                .line(check -> words().get("cardcheck." + check.verdict().symbol()))
                .field((json, check) -> json.text(
                        "mixId", check.issue().map(issue -> issue.mixId().text())))
                .field((json, check) -> json.whole("revision", check.issue().map(FactorIssue::revision)))
                .field((json, check) ->
                        json.number("factorPercent", check.issue().map(FactorIssue::factorPercent)))
                .field((json, check) -> json.text("state", check.state().map(CardState::symbol)))
                .whole("copies", CardCheck::copies)
                .field((json, check) -> json.list("others", check.others(), (part, issue) -> other().json(part, issue)))
                .alone((page, check) -> check.issue().ifPresent(issue -> {
                    page.row(words().get("cardcheck.card"), issue.recordId(), "");
                    page.row(words().get("card.factor"), shown().exact(issue.factorPercent()), words().get("unit.air"));
                    check.others().forEach(other -> {
                        page.row(words().get("cardcheck.card"), other.recordId(), "");
                        page.row(
                                words().get("card.factor"),
                                shown().exact(other.factorPercent()),
                                words().get("unit.air"));
                    });
                    page.row(words().get("cardcheck.copies"), Integer.toString(check.copies()), "");
                }));
    }

    /** The other rows of a plant's card. */
    private ReportLayout<FactorIssue> other() {
        return this.<FactorIssue>laidOut()
                .text("mixId", issue -> issue.mixId().text())
                .whole("revision", FactorIssue::revision)
                .field((json, issue) -> json.number("factorPercent", Optional.of(issue.factorPercent())));
    }
}

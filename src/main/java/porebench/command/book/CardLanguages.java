package porebench.command.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import porebench.command.reply.Machine;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Problem;

/** {@code --language}: in which language a card is, apart from that of the program; two stand side by side. */
final class CardLanguages {
    @Option(names = "--language", paramLabel = "<language>", split = "\\+")
    private List<PaperLanguage> languages = new ArrayList<>();

    /** Returns the languages; that of the program where none is given. */
    List<PaperLanguage> chosen(Machine here) {
        return languages.isEmpty() ? List.of(PaperLanguage.of(here.locale())) : List.copyOf(languages);
    }

    /** Returns what is wrong with the languages: a card has one, or two different ones. */
    Optional<Problem> problem() {
        boolean isRight = languages.size() <= 2 && languages.stream().distinct().count() == languages.size();
        return isRight ? Optional.empty() : Optional.of(Problem.error("language", "cards.languages"));
    }
}

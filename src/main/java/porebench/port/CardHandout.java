package porebench.port;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import porebench.evidence.Evidence;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.record.CardPrint;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * Lets a factor card leave, for window and command line alike: looked up anew in the lab book, held against the gate of
 * {@link CardState}, laid out, recorded, and only then released. What could not be recorded does not leave; what was recorded
 * and then could not leave is recorded as that.
 */
public final class CardHandout {
    /** Somebody else may print the same revision meanwhile; the next number is then tried, this often. */
    private static final int TRIES = 5;

    private final LabBook book;
    private final Press press;
    private final Locale locale;

    /**
     * Sets up the way out of a lab book.
     *
     * @param locale the language of the card
     */
    public CardHandout(LabBook book, Press press, Locale locale) {
        this.book = book;
        this.press = press;
        this.locale = locale;
    }

    /**
     * What is wanted.
     *
     * @param mixId the mix
     * @param revision the revision; empty for the one in force, or the newest when a marked copy is wanted and none is
     * @param paper the paper
     * @param marked whether a copy with its state across it is wanted where the card may not leave otherwise
     * @param moment the day and time it is, by the laboratory's clock
     * @param who who lets it leave
     * @param why the reason kept with the record
     */
    public record Wish(
            MixId mixId,
            Optional<Integer> revision,
            Paper paper,
            boolean marked,
            LocalDateTime moment,
            String who,
            String why) {
        /** Returns this wish on other paper. */
        public Wish on(Paper other) {
            return new Wish(mixId, revision, other, marked, moment, who, why);
        }
    }

    /**
     * What left.
     *
     * @param card the card
     * @param prints the record of each copy, the first one first
     */
    public record Handed(FactorCard card, List<CardPrint> prints) {
        public Handed {
            prints = List.copyOf(prints);
        }

        /** A card of which one copy left. */
        public Handed(FactorCard card, CardPrint print) {
            this(card, List.of(print));
        }

        /** Returns the record of the first copy. */
        public CardPrint print() {
            return prints.get(0);
        }
    }

    /** Writes a card to a file; the answer has no value when nothing was written. */
    public Answer<Handed> toFile(Wish wish, OutputFile file) {
        return toFile(
                wish, wish.paper().symbol(), file, (card, profile) -> press.ready(card, wish.paper(), locale, file));
    }

    /** Writes a card to a file with a look of its own, whatever paper is wished for. */
    public Answer<Handed> toFile(Wish wish, CardLook look, OutputFile file) {
        return toFile(
                wish, look.form(), file, (card, profile) -> press.ready(List.of(card), look, file, Progress.UNHEARD));
    }

    /**
     * Writes a card to a file in another form.
     *
     * @param form what is recorded as its paper
     * @param making makes it ready
     */
    Answer<Handed> toFile(Wish wish, String form, OutputFile file, BiFunction<FactorCard, Profile, Waiting> making) {
        Answer<CardGate.Allowed> allowed = card(wish);
        if (allowed.value().isEmpty()) {
            return Answer.refused(allowed.problems());
        }
        CardGate.Allowed known = allowed.value().get();
        try (Waiting waiting = making.apply(known.card(), known.profile())) {
            String destination = CardPrint.toFile(file.path(), known.card().isMarked());
            return let(wish, form, Answer.of(known.card(), allowed.problems()), destination, waiting);
        }
    }

    /** Asks for a printer and prints a card; neither value nor problems when the person thought better of it. */
    public Optional<Answer<Handed>> toPrinter(Wish wish) {
        return toPrinter(
                wish, wish.paper().symbol(), (card, profile) -> press.readyForPrinter(card, wish.paper(), locale));
    }

    /** Asks for a printer and prints a card with a look of its own, whatever paper is wished for. */
    public Optional<Answer<Handed>> toPrinter(Wish wish, CardLook look) {
        return toPrinter(wish, look.form(), (card, profile) -> press.readyForPrinter(card, look));
    }

    /** Asks for a printer and prints a card in another form, as {@link #toFile(Wish, String, OutputFile, BiFunction)}. */
    Optional<Answer<Handed>> toPrinter(
            Wish wish, String form, BiFunction<FactorCard, Profile, Optional<Waiting>> making) {
        Answer<CardGate.Allowed> allowed = card(wish);
        if (allowed.value().isEmpty()) {
            return Optional.of(Answer.refused(allowed.problems()));
        }
        CardGate.Allowed known = allowed.value().get();
        return making.apply(known.card(), known.profile()).map(ready -> {
            try (Waiting waiting = ready) {
                String destination = CardPrint.toPrinter(known.card().isMarked());
                return let(wish, form, Answer.of(known.card(), allowed.problems()), destination, waiting);
            }
        });
    }

    private Answer<CardGate.Allowed> card(Wish wish) {
        return Evidence.of(book, wish.mixId())
                .map(evidence -> new CardGate(book).card(evidence, wish.revision(), wish.marked(), wish.moment()))
                .orElseGet(() -> Answer.refused(List.of(CardGate.notThere(wish.mixId()))));
    }

    private Answer<Handed> let(
            Wish wish, String form, Answer<FactorCard> allowed, String destination, Waiting waiting) {
        FactorCard card = allowed.value().orElseThrow();
        List<Problem> refused = List.of();
        for (int attempt = 0; attempt < TRIES; attempt++) {
            int first = nextNumber(card);
            List<CardPrint> prints = IntStream.range(first, first + waiting.copies())
                    .mapToObj(number -> new CardPrint(
                            card.mixId(),
                            card.issue().revision(),
                            number,
                            form,
                            destination,
                            Optional.of(wish.moment().truncatedTo(ChronoUnit.MINUTES))))
                    .toList();
            refused = book.keep(prints.stream().map(Draft::of).toList(), wish.who(), wish.why());
            if (refused.isEmpty()) {
                return release(wish, Answer.of(new Handed(card, prints), allowed.problems()), waiting);
            }
        }
        List<Problem> problems = new ArrayList<>(refused);
        problems.add(Problem.error("out", "card.not-recorded", destination));
        return Answer.refused(problems);
    }

    private Answer<Handed> release(Wish wish, Answer<Handed> handed, Waiting waiting) {
        try {
            waiting.release();
            return handed;
        } catch (RuntimeException failure) {
            return Answer.refused(notReleased(wish, handed.value().orElseThrow(), words(failure, locale)));
        }
    }

    /** Corrects the record of a card that did not leave after all; returns what is to be said. */
    private List<Problem> notReleased(Wish wish, Handed handed, String failure) {
        List<Problem> problems = new ArrayList<>();
        try {
            List<Draft> corrected = handed.prints().stream()
                    .map(print -> Draft.correcting(
                            book.latest(CardPrint.class, print.recordId()).orElseThrow(), print.notReleased()))
                    .toList();
            problems.addAll(book.keep(corrected, wish.who(), failure));
        } catch (RuntimeException alsoFailed) {
            problems.add(
                    Problem.error("out", "card.not-corrected", handed.print().recordId(), words(alsoFailed, locale)));
        }
        String code = problems.isEmpty() ? "card.not-released" : "card.not-released-but-recorded";
        problems.add(0, Problem.error("out", code, handed.print().recordId(), failure));
        return problems;
    }

    /** Returns what is to be said of a failure. */
    static String words(RuntimeException failure, Locale locale) {
        if (failure instanceof Spoken spoken) {
            return spoken.say(locale);
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }

    private int nextNumber(FactorCard card) {
        return book.latestOf(Belonging.PRINTS_OF_MIX, card.mixId().text()).stream()
                        .map(Version::value)
                        .filter(print -> print.revision() == card.issue().revision())
                        .mapToInt(CardPrint::number)
                        .max()
                        .orElse(0)
                + 1;
    }
}

package porebench.port;

import java.util.List;
import java.util.Locale;
import porebench.evidence.paper.FieldSheet;
import porebench.evidence.paper.PhonePage;
import porebench.method.Answer;
import porebench.record.book.LabBook;

/**
 * Lets what a crew takes to the field beside a card leave, through the gate of {@link CardHandout}: a phone page or a field sheet. It is recorded as a
 * card's file is, since the same number leaves on it.
 */
public final class FieldHandout {
    /** What stands as the paper of a phone page. */
    public static final String PHONE = "phone";

    /** What stands before the size of a field sheet's paper. */
    public static final String SHEET = "field sheet";

    /** The languages of a phone page, by their ISO 639-1 code. */
    public static final List<String> LANGUAGES = List.of("en", "es", "fr", "de");

    private final CardHandout cards;
    private final Press press;
    private final Locale locale;

    /**
     * Sets up the way out of a lab book.
     *
     * @param locale the language in which it is first shown
     */
    public FieldHandout(LabBook book, Press press, Locale locale) {
        this.cards = new CardHandout(book, press, locale);
        this.press = press;
        this.locale = locale;
    }

    /** Writes a phone page to a file; the answer has no value when nothing was written. */
    public Answer<CardHandout.Handed> phone(CardHandout.Wish wish, OutputFile file) {
        return cards.toFile(
                wish, PHONE, file, (card, profile) -> press.readyPhone(PhonePage.of(card, profile), locale, file));
    }

    /** Writes a field sheet on A4 or letter to a PDF file; the answer has no value when nothing was written. */
    public Answer<CardHandout.Handed> sheet(CardHandout.Wish wish, OutputFile file) {
        return cards.toFile(
                wish,
                SHEET + " " + wish.paper().symbol(),
                file,
                (card, profile) -> press.ready(new FieldSheet(card), wish.paper(), locale, file));
    }
}

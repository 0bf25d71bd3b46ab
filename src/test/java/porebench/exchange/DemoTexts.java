package porebench.exchange;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import porebench.evidence.Evidence;
import porebench.evidence.paper.CardSeal;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** The text that a phone shows of a card of a lab book. */
public final class DemoTexts {
    private DemoTexts() {}

    /** Returns the text of a card in English, as it is made on a day. */
    public static String of(LabBook book, String mix, int revision, Clock clock) {
        FactorIssue issue = book.latest(FactorIssue.class, FactorIssue.idOf(new MixId(mix), revision))
                .orElseThrow()
                .value();
        FactorCard card = FactorCard.of(
                        Evidence.of(book, new MixId(mix)).orElseThrow(),
                        issue,
                        book.latest(Laboratory.class, Laboratory.ID).map(Version::value),
                        book.head(),
                        LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .sealedBy(CardSeal.of(book, issue));
        return CardText.of(card, CardWords.in(PaperLanguage.ENGLISH));
    }
}

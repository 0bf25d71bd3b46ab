package porebench.desk.custody;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.evidence.custody.CardStanding;
import porebench.evidence.custody.HeldCard;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoCards;
import porebench.method.Problem;
import porebench.print.PdfPress;
import porebench.record.CardHolder;
import porebench.record.CardPlace;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.PlantMark;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MixId;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/**
 * The cards of the demo laboratory on 25 November 2026, without a display. Out are, by card-steps.csv: one of HG-101 revision 1 (truck 7),
 * three of its revision 2 (trucks 12 and 4, plant Hollin), one each of HG-102 and HG-104 (crews), two of HG-107 (truck 4, T. Alder): 8 with 7
 * holders.
 */
class CardsModelTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private final LabBook book = new MemoryLabBook(DAY);
    private final List<Exception> failures = new ArrayList<>();

    private CardsModel model(Locale locale) {
        new DemoCards().fill(book);
        return empty(locale);
    }

    private CardsModel empty(Locale locale) {
        DeskModel desk = new DeskModel(
                new Tools(
                        new SqliteShelf(DAY),
                        new CsvSheets(),
                        new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                        Tasks.direct(),
                        new ScriptedAsker(),
                        DAY,
                        ZoneOffset.UTC,
                        locale),
                book);
        desk.setPerson("M. Quist");
        return new CardsModel(desk);
    }

    private CardsModel model() {
        return model(Locale.ENGLISH);
    }

    private static List<String> names(List<HeldCard> cards) {
        return cards.stream().map(card -> card.print().recordId()).toList();
    }

    private void keep(CardsModel model, CardStep.Act act) {
        model.keep(act, () -> {}, failures::add);
        assertThat(failures).isEmpty();
    }

    private static List<String> codes(CardsModel model) {
        return model.problems().stream().map(Problem::code).toList();
    }

    @Test
    void saysWhoHoldsWhatAndWhichHaveToComeBack() {
        CardsModel model = model();
        assertThat(model.sentence()).startsWith("Cards out: 8. Holders: 7. Choose");
        assertThat(model.alarmWords()).isEqualTo("Alarm: cards still out whose factor no longer holds: 1.");
        assertThat(model.rows()).hasSize(8);
        model.show(CardsModel.View.TO_COME_BACK);
        HeldCard old = model.rows().get(0);
        assertThat(names(model.rows())).containsExactly("HG-101/r1/2");
        assertThat(model.holderWords(old)).isEqualTo("truck 7");
        assertThat(model.placeWords(old)).isEqualTo("with the holder");
        assertThat(model.standingWords(old)).isEqualTo("replaced");
        assertThat(model.backWords(old)).isEqualTo("to come back");
        assertThat(model.sinceWords(old)).isEqualTo("2026-06-12 00:00");
        assertThat(model.lastWords(old)).isEqualTo("2025-12-04 07:50, M. Quist");
        model.show(CardsModel.View.ALL);
        assertThat(model.rows()).hasSize(10);
        HeldCard lost = model.rows().stream()
                .filter(card -> card.place().where() == CardPlace.Where.LOST)
                .findFirst()
                .orElseThrow();
        assertThat(model.remarkWords(lost)).startsWith("Left on the tailgate");
        assertThat(model.backWords(lost)).isEmpty();
        assertThat(model.sinceWords(lost)).isEmpty();
        assertThat(model.fileName()).isEqualTo("cards-out-2026-11-25");
    }

    @Test
    void aCardThatIsReturnedEndsTheAlarm() {
        CardsModel model = model();
        model.show(CardsModel.View.TO_COME_BACK);
        model.choose(List.of("HG-101/r1/2"));
        model.remark("found behind the seat");
        keep(model, CardStep.Act.RETURNED);
        assertThat(codes(model)).isEmpty();
        assertThat(model.told()).isEqualTo("Returned: 1.");
        assertThat(model.remark()).isEmpty();
        assertThat(model.rows()).isEmpty();
        assertThat(model.alarmWords()).isEmpty();
        CardStep kept =
                book.latest(CardStep.class, "HG-101/r1/2/s2").orElseThrow().value();
        assertThat(kept.at()).isEqualTo(LocalDateTime.of(2026, 11, 25, 9, 0));
        assertThat(kept.by()).isEqualTo("M. Quist");
        assertThat(kept.remark()).isEqualTo("found behind the seat");
    }

    @Test
    void manyCardsGoBackAndOutAgainAtOnce() {
        CardsModel model = model();
        List<String> two = List.of("HG-101/r2/1", "HG-101/r2/2");
        model.choose(two);
        model.name("ignored: the cards say who had them");
        model.at("2026-11-24 16:00");
        keep(model, CardStep.Act.RETURNED);
        assertThat(model.told()).isEqualTo("Returned: 2.");
        assertThat(model.at()).isEmpty();
        model.show(CardsModel.View.ALL);
        model.choose(two);
        assertThat(model.can(CardStep.Act.HANDED_OUT)).isTrue();
        assertThat(model.can(CardStep.Act.ACKNOWLEDGED)).isFalse();
        model.kind(CardHolder.Kind.CREW);
        model.name("Paving North");
        keep(model, CardStep.Act.HANDED_OUT);
        assertThat(model.told()).isEqualTo("Handed out: 2.");
        assertThat(model.chosen())
                .allSatisfy(card -> assertThat(model.holderWords(card)).isEqualTo("crew Paving North"));
        assertThat(model.kind()).isEqualTo(CardHolder.Kind.CREW);
        assertThat(model.name()).isEqualTo("Paving North");
    }

    @Test
    void whatCannotBeIsRefusedAndNothingIsKept() {
        CardsModel model = model();
        long before = book.changeNumber();
        model.choose(List.of("HG-101/r2/1"));
        model.at("yesterday");
        keep(model, CardStep.Act.RETURNED);
        assertThat(codes(model)).containsExactly("custody.no-time");
        model.at("");
        keep(model, CardStep.Act.LOST);
        assertThat(codes(model)).containsExactly("custody.lost-without-remark");
        keep(model, CardStep.Act.HANDED_OUT);
        assertThat(codes(model)).containsExactly("custody.no-holder");
        model.name("9");
        keep(model, CardStep.Act.HANDED_OUT);
        assertThat(codes(model)).containsExactly("custody.handed-on-without-remark");
        model.at("2026-11-25 09:06");
        keep(model, CardStep.Act.RETURNED);
        assertThat(codes(model)).containsExactly("custody.to-come");
        assertThat(model.told()).isEmpty();
        assertThat(book.changeNumber()).isEqualTo(before);
    }

    @Test
    void aCardOfAnOldFactorGoesOnOnlyForAReasonThatIsKept() {
        CardsModel model = model();
        model.choose(List.of("HG-101/r1/1"));
        assertThat(model.chosen()).as("it is back, and not on view").isEmpty();
        assertThat(model.can(CardStep.Act.HANDED_OUT)).isFalse();
        model.show(CardsModel.View.ALL);
        assertThat(model.can(CardStep.Act.HANDED_OUT)).isTrue();
        model.name("12");
        keep(model, CardStep.Act.HANDED_OUT);
        assertThat(codes(model)).containsExactly("custody.factor-gone-without-remark");
        model.remark("taken by mistake");
        keep(model, CardStep.Act.HANDED_OUT);
        assertThat(codes(model)).containsExactly("custody.factor-gone");
        assertThat(model.told()).isEqualTo("Handed out: 1.");
        assertThat(model.alarmWords()).contains("longer holds: 2.");
    }

    @Test
    void whatSomebodyElseKeptMeanwhileIsNotOverwritten() {
        CardsModel model = model();
        model.choose(List.of("HG-101/r2/1"));
        assertThat(model.can(CardStep.Act.RETURNED)).isTrue();
        Books.keep(
                book,
                new CardStep(
                        new MixId("HG-101"),
                        2,
                        1,
                        2,
                        CardStep.Act.DESTROYED,
                        Optional.empty(),
                        LocalDateTime.of(2026, 11, 25, 8, 0),
                        "R. Vale",
                        ""));
        keep(model, CardStep.Act.RETURNED);
        assertThat(model.problems()).isNotEmpty();
        assertThat(model.told()).isEmpty();
        assertThat(book.latest(CardStep.class, "HG-101/r2/1/s2")
                        .orElseThrow()
                        .value()
                        .act())
                .isEqualTo(CardStep.Act.DESTROYED);
    }

    @Test
    void theListIsOfWhatIsOnViewOrOfOneHolder() {
        CardsModel model = model();
        model.choose(List.of("HG-101/r2/2", "HG-107/r1/1"));
        assertThat(model.holderOfChosen()).isEqualTo(CardHolder.parse("truck 4"));
        assertThat(model.carried(
                                CardHolder.parse("truck 4").orElseThrow(),
                                model.custody().orElseThrow(),
                                book.head())
                        .cards())
                .isEqualTo(2);
        assertThat(model.list(model.custody().orElseThrow(), book.head()).cards())
                .isEqualTo(8);
        model.show(CardsModel.View.TO_COME_BACK);
        assertThat(model.list(model.custody().orElseThrow(), book.head()).cards())
                .isEqualTo(1);
        model.show(CardsModel.View.ALL);
        model.choose(List.of("HG-101/r2/2", "HG-101/r2/1"));
        assertThat(model.holderOfChosen()).as("two trucks").isEmpty();
        model.choose(List.of("HG-102/r1/1"));
        assertThat(model.holderOfChosen()).as("lost").isEmpty();
        model.choose(List.of());
        assertThat(model.holderOfChosen()).isEmpty();
        for (CardStep.Act act : CardStep.Act.values()) {
            assertThat(model.can(act)).isFalse();
        }
    }

    @Test
    void aCardOfWhichNobodySaidToWhomItWentIsCounted() {
        CardsModel without = empty(Locale.ENGLISH);
        assertThat(without.sentence()).startsWith("No card has left yet.");
        CardsModel model = model();
        Books.keep(
                book,
                new CardPrint(
                        new MixId("HG-104"),
                        1,
                        2,
                        "a6",
                        CardPrint.PRINTER,
                        Optional.of(LocalDateTime.of(2026, 11, 20, 8, 0))));
        model.desk().refresh();
        assertThat(model.sentence()).startsWith("Cards out: 9. Holders: 7; the holder of 1 cards is not recorded");
        model.choose(List.of("HG-104/r1/2"));
        HeldCard card = model.chosen().get(0);
        assertThat(model.holderWords(card)).isEmpty();
        assertThat(model.placeWords(card)).isEqualTo("printed, holder not recorded");
        assertThat(model.lastWords(card)).isEqualTo("2026-11-20 08:00");
        assertThat(model.remarkWords(card)).isEmpty();
        assertThat(model.can(CardStep.Act.RETURNED)).isTrue();
        assertThat(model.can(CardStep.Act.ACKNOWLEDGED)).isFalse();
    }

    @Test
    void everyPlaceAndStandingHasItsWordsInBothLanguages() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.forLanguageTag("es-ES"))) {
            CardsModel model = empty(locale);
            assertThat(Arrays.stream(CardStanding.values())
                            .map(standing -> model.texts().get("is." + standing.symbol())))
                    .doesNotHaveDuplicates();
            assertThat(Arrays.stream(CardPlace.Where.values())
                            .map(where -> model.texts().get("place." + where.symbol())))
                    .doesNotHaveDuplicates();
        }
        CardHolder plant = CardHolder.parse("plant Hollin").orElseThrow();
        assertThat(empty(Locale.forLanguageTag("es-ES")).words(plant)).isEqualTo("planta Hollin");
    }

    /** HG-101 and HG-104 on one paper: handed out by the name of one of them, both are with the truck. */
    @Test
    void aPlantsCardGoesOutAndComesBackAsOnePaper() {
        String paper = new PlantMark("Hollin", 371, 1).onto("A6");
        new DemoCards().fill(book);
        Books.keep(
                book,
                new CardPrint(new MixId("HG-101"), 2, 9, paper, CardPrint.PRINTER),
                new CardPrint(new MixId("HG-104"), 1, 9, paper, CardPrint.PRINTER));
        CardsModel model = empty(Locale.ENGLISH);
        HeldCard fresh = card(model, "HG-101/r2/9");
        assertThat(model.remarkWords(fresh)).isEqualTo("on card 371 of plant Hollin, page 1");
        model.choose(List.of("HG-101/r2/9"));
        model.name("12");
        keep(model, CardStep.Act.HANDED_OUT);
        assertThat(model.problems()).isEmpty();
        assertThat(model.told()).isEqualTo("Handed out: 2.");
        HeldCard other = card(model, "HG-104/r1/9");
        assertThat(model.holderWords(other)).isEqualTo("truck 12");
        assertThat(model.remarkWords(other)).isEqualTo("card 371 page 1 of plant Hollin");
        model.choose(List.of("HG-104/r1/9"));
        keep(model, CardStep.Act.RETURNED);
        assertThat(model.told()).isEqualTo("Returned: 2.");
    }

    private static HeldCard card(CardsModel model, String name) {
        model.show(CardsModel.View.ALL);
        return model.rows().stream()
                .filter(one -> one.print().recordId().equals(name))
                .findFirst()
                .orElseThrow();
    }
}

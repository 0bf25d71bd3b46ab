package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.evidence.custody.CardChoice;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.port.CardBatch;
import porebench.record.id.MixId;

/** What is wanted of the cards of many mixes, on three mixes of two plants. */
class CardsModelTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 29, 12, 0);

    private final DeskModel desk = RegisterModelsTest.desk(Locale.ENGLISH);
    private final List<RegisterRow> all = List.of(
            row("M-1", "North", FactorState.IN_FORCE),
            row("M-2", "north ", FactorState.LAPSED),
            row("M-3", "", FactorState.RECHECK_DUE));

    private static RegisterRow row(String mix, String plant, FactorState state) {
        return new RegisterRow(
                new MixId(mix),
                "Title",
                plant,
                state,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of());
    }

    private CardsModel model(List<RegisterRow> onView) {
        return new CardsModel(RecordPage.texts(desk), all, onView);
    }

    @Test
    void beginsWithTheMixesOnViewInTheirOrderOnA6InTheLanguageOfTheWindow() {
        CardsModel model = model(List.of(all.get(2), all.get(0)));
        CardBatch.Wish wish = model.wish(NOON, "Ada");
        assertThat(wish.choice()).isEqualTo(CardChoice.of(List.of(new MixId("M-3"), new MixId("M-1"))));
        assertThat(wish.look()).isEqualTo(CardLook.of(CardSize.A6, PaperLanguage.ENGLISH));
        assertThat(wish.leaveOut()).isFalse();
        assertThat(wish.moment()).isEqualTo(NOON);
        assertThat(wish.who()).isEqualTo("Ada");
        assertThat(wish.why()).isEqualTo("Cards of many mixes, from the register");
        assertThat(model.said()).isEqualTo("Cards to be made: 2.");
        assertThat(model.isAny()).isTrue();
        assertThat(model(List.of()).isAny()).isFalse();
    }

    @Test
    void choosesAllInForceThoseOfARecallOrOfAPlant() {
        CardsModel model = model(List.of());
        assertThat(model.whichOnes()).containsExactly(CardsModel.Which.values());
        model.take(CardsModel.Which.IN_FORCE);
        assertThat(model.isAny()).isTrue();
        assertThat(model.wish(NOON, "").choice()).isEqualTo(CardChoice.IN_FORCE);
        assertThat(model.said()).isEqualTo("Cards to be made: 2.");
        model.take(CardsModel.Which.RECALL);
        assertThat(model.wish(NOON, "").choice()).isEqualTo(new CardChoice(List.of(), Optional.empty(), true));
        assertThat(model.said()).contains("looked up");
        model.take(CardsModel.Which.PLANT);
        assertThat(model.which()).isEqualTo(CardsModel.Which.PLANT);
        assertThat(model.plants()).containsExactly("North", "north");
        model.takePlant("north");
        assertThat(model.wish(NOON, "").choice()).isEqualTo(new CardChoice(List.of(), Optional.of("north"), false));
    }

    @Test
    void withoutAPlantNoneIsOffered() {
        CardsModel model = new CardsModel(RecordPage.texts(desk), List.of(all.get(2)), List.of());
        assertThat(model.plants()).isEmpty();
        assertThat(model.whichOnes()).doesNotContain(CardsModel.Which.PLANT).hasSize(3);
    }

    /** M-1 and M-2 are of plant North, however it is written; M-2 has lapsed. */
    @Test
    void saysBeforehandThatSomeMayNotHaveACard() {
        CardsModel model = model(List.of());
        model.take(CardsModel.Which.PLANT);
        model.takePlant("North");
        assertThat(model.said()).startsWith("With a factor that may be used: 1 of 2 mixes.");
        model.leaveOut(true);
        assertThat(model.said()).startsWith("Cards to be made: 1 of 2 mixes.");
        assertThat(model.wish(NOON, "").leaveOut()).isTrue();
    }

    @Test
    void aSecondLanguageIsAnotherOne() {
        CardsModel model = model(all);
        assertThat(model.seconds()).hasSize(5).contains(Optional.empty()).doesNotContain(Optional.of(model.first()));
        model.takeSecond(Optional.of(PaperLanguage.GERMAN));
        assertThat(model.look().languages()).containsExactly(PaperLanguage.ENGLISH, PaperLanguage.GERMAN);
        model.take(PaperLanguage.GERMAN);
        assertThat(model.second()).isEmpty();
        model.takeSecond(Optional.of(PaperLanguage.GERMAN));
        assertThat(model.look().languages()).containsExactly(PaperLanguage.GERMAN);
    }

    @Test
    void howManyLieOnASheetCountsOnASheetOnly() {
        CardsModel model = model(all);
        model.take(CardSize.WALLET);
        model.takePerSheet(3);
        assertThat(model.isOnSheets()).isFalse();
        assertThat(model.look()).isEqualTo(CardLook.of(CardSize.WALLET, PaperLanguage.ENGLISH));
        model.takeSheet(Optional.of(CardLook.Sheet.LETTER));
        assertThat(model.isOnSheets()).isTrue();
        assertThat(model.look().perSheet()).isEqualTo(3);
        assertThat(model.look().sheet()).contains(CardLook.Sheet.LETTER);
        assertThat(model.look().size()).isEqualTo(CardSize.WALLET);
    }

    /** M-1 and M-2 are of plant North; M-2 has lapsed. */
    @Test
    void onePlantMayHaveItsMixesOnOneCard() {
        CardsModel model = model(all);
        model.onOne(true);
        assertThat(model.isOnOne()).isFalse();
        assertThat(model.wish(NOON, "").onOne()).isFalse();
        assertThat(model.said()).startsWith("With a factor that may be used: 2 of 3 mixes.");
        model.take(CardsModel.Which.PLANT);
        model.takePlant("North");
        assertThat(model.wish(NOON, "").onOne()).isTrue();
        assertThat(model.said())
                .isEqualTo(
                        "With a factor that may be used: 1 of 2 mixes. No card is made unless the others are left out:"
                                + " they then stand on it as without a factor.");
        model.leaveOut(true);
        assertThat(model.said())
                .isEqualTo(
                        "Rows on the card of the plant: 2, of them with a factor that may be used: 1. The others stand"
                                + " on it as without a factor.");
        CardsModel good = new CardsModel(RecordPage.texts(desk), List.of(all.get(0)), List.of());
        good.take(CardsModel.Which.PLANT);
        good.onOne(true);
        assertThat(good.said()).startsWith("Rows on the card of the plant: 1.");
        good.onOne(false);
        assertThat(good.said()).isEqualTo("Cards to be made: 1.");
    }

    @Test
    void aChartIsOnTheBacksOnlyWhereItIsWanted() {
        CardsModel model = model(all);
        assertThat(model.look().chart()).isFalse();
        model.chart(true);
        assertThat(model.wish(NOON, "").look().chart()).isTrue();
    }
}

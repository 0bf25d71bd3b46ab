package porebench.print;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.evidence.custody.CardStanding;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.paper.RecallList;
import porebench.record.CardHolder;
import porebench.record.CardPlace;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.Laboratory;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/** Lists of cards out of invented laboratories. */
public final class Recalls {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 28, 14, 30);

    private Recalls() {}

    /** Returns the cards that have to come back, with four holders and one that nobody was named for. */
    public static RecallList usual(int cards) {
        return of(
                Calibrations.Laboratories.USUAL,
                cards,
                "Bridge deck 40, 20 mm granite",
                "",
                RecallList.Which.TO_COME_BACK);
    }

    public static RecallList everythingLong(int cards) {
        return of(Calibrations.Laboratories.LONG, cards, Cards.LONG_TITLE, Cards.LONG_TITLE, RecallList.Which.OUT);
    }

    public static RecallList training() {
        return of(Calibrations.Laboratories.TRAINING, 40, "Kerb 30", "", RecallList.Which.TO_COME_BACK);
    }

    public static RecallList empty() {
        return of(Calibrations.Laboratories.USUAL, 0, "", "", RecallList.Which.TO_COME_BACK);
    }

    /** Returns what one truck carries. */
    public static RecallList ofTruck() {
        return RecallList.of(
                Optional.of(Calibrations.Laboratories.USUAL),
                custody(9, "Bridge deck 40, 20 mm granite", ""),
                RecallList.Which.OUT,
                CardHolder.parse("truck 12"),
                Head.of("3f2a91c077de0b1c", 1_234));
    }

    private static RecallList of(
            Laboratory laboratory, int cards, String title, String remark, RecallList.Which which) {
        return RecallList.of(
                Optional.of(laboratory),
                custody(cards, title, remark),
                which,
                Optional.empty(),
                Head.of("3f2a91c077de0b1c", 1_234));
    }

    private static Custody custody(int cards, String title, String remark) {
        return new Custody(
                NOW,
                IntStream.range(0, cards)
                        .mapToObj(number -> card(number, title, remark))
                        .toList());
    }

    private static HeldCard card(int number, String title, String remark) {
        MixId mix = new MixId("HG-" + (101 + number));
        CardPrint print = new CardPrint(mix, 1, 1, "a6", CardPrint.PRINTER, Optional.of(NOW.minusDays(300)));
        String name = remark.isBlank() ? "12" : remark;
        List<Optional<CardHolder>> holders = List.of(
                Optional.of(new CardHolder(CardHolder.Kind.TRUCK, name)),
                Optional.of(new CardHolder(CardHolder.Kind.CREW, "Paving North")),
                Optional.of(new CardHolder(CardHolder.Kind.PLANT, "Hollin")),
                Optional.of(new CardHolder(CardHolder.Kind.PERSON, "T. Alder")),
                Optional.empty());
        Optional<CardHolder> holder = holders.get(number % holders.size());
        List<CardStep> steps = new ArrayList<>();
        if (holder.isPresent()) {
            steps.add(step(mix, 1, CardStep.Act.HANDED_OUT, holder, remark));
        }
        if (number % 3 == 1) {
            steps.add(step(mix, 2, CardStep.Act.ACKNOWLEDGED, Optional.empty(), ""));
        }
        CardStanding standing = CardStanding.values()[3 + number % 6];
        return new HeldCard(
                print,
                steps,
                CardPlace.after(steps),
                standing,
                Optional.of(NOW.minusDays(number)),
                title,
                Optional.of(new BigDecimal("0.3")));
    }

    private static CardStep step(MixId mix, int number, CardStep.Act act, Optional<CardHolder> holder, String remark) {
        return new CardStep(mix, 1, 1, number, act, holder, NOW.minusDays(200 - number), "M. Quist", remark);
    }
}

package porebench.print;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.SievedAirs;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.MixLine;

/** A wet-sieved mix whose volumes are 0.95 m3 in all, 0.095 held on 37.5 mm and 0.57 of mortar, and its card. */
public final class SievedCards {
    public static final Batch BATCH = MixLine.stated(
                    "1 m3",
                    "6",
                    MixLine.cement("315 kg").dense("3.15"),
                    MixLine.water("170 kg"),
                    MixLine.fine("750 kg").dense("2.5"),
                    MixLine.coarse("1064 kg").dense("2.8").retained("25"))
            .withWetSieved(true);

    private SievedCards() {}

    /** Returns what the readings mean with a G of 0.3 % where 4.5 to 7.5 % of air pass. */
    public static Optional<SievedAirs> airs() {
        FactorCard card = Cards.card("0.3", "6.0", "1.5", "0.1", "10");
        return SievedAirs.of(BATCH, new BigDecimal("0.3"), new BigDecimal("0.1"), card.window(), Profiles.standard());
    }

    /** Returns a card with what its readings mean for full mixture and mortar. */
    public static FactorCard spread(FactorCard card) {
        return Cards.wetSieved(card).spreading(airs());
    }
}

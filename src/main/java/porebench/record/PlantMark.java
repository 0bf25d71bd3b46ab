package porebench.record;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.quantity.Require;

/**
 * The sheet of paper on which the cards of several mixes of a plant stand as rows: each mix has a card print of its own, and what they are
 * on together stands behind the paper of each print.
 *
 * @param plant the plant
 * @param card which card of the lab book: how many entries it had when the card was made
 * @param page which of its pages, from 1; each is a card to hold
 */
public record PlantMark(String plant, long card, int page) {
    private static final Pattern FORM =
            Pattern.compile(".+?, card ([1-9]\\d{0,17}) page ([1-9]\\d{0,8}) of plant (.+)", Pattern.DOTALL);

    public PlantMark {
        plant = Require.notBlank("plant", plant).strip();
        Require.atLeast("page", page, 1);
    }

    /** Returns on which card of a plant a print is a row; empty where it is a card of its own. */
    public static Optional<PlantMark> of(CardPrint print) {
        Matcher matcher = FORM.matcher(print.paper());
        return matcher.matches() && !matcher.group(3).isBlank()
                ? Optional.of(new PlantMark(
                        matcher.group(3), Long.parseLong(matcher.group(1)), Integer.parseInt(matcher.group(2))))
                : Optional.empty();
    }

    /** Returns the paper of a print that is a row of this card. */
    public String onto(String paper) {
        return paper + ", " + said();
    }

    /** Returns its name as it is kept: {@code card 412 page 1 of plant North}. */
    public String said() {
        return "card " + card + " page " + page + " of plant " + plant;
    }

    /** Returns whether another page belongs to the same card: they are made, and handed out, together. */
    public boolean isWith(PlantMark other) {
        return card == other.card && plant.equals(other.plant);
    }
}

package porebench.evidence.paper;

import java.util.Optional;
import porebench.record.Laboratory;

/**
 * The sheet on which a crew writes its readings by hand, with the factor filled in.
 *
 * @param card the card of the mix, whose number and days it has
 */
public record FieldSheet(FactorCard card) implements Printed {
    @Override
    public Optional<Laboratory> laboratory() {
        return card.laboratory();
    }

    @Override
    public boolean isTraining() {
        return card.isTraining();
    }
}

package porebench.desk.field;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.record.id.MixId;

/**
 * Asks for the readings of some days, the newest first, with what is made of each.
 *
 * @param first the first day
 * @param last the last day
 * @param mix the mix; empty for those of all mixes
 * @param guard how many standard uncertainties wide a guard band is laid; empty for none
 */
record FieldAsked(LocalDate first, LocalDate last, Optional<MixId> mix, Optional<BigDecimal> guard)
        implements Question<List<FieldLine>> {
    @Override
    public List<FieldLine> answer(Reading seen) {
        return FieldRows.of(seen, this);
    }
}

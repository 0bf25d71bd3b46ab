package porebench.record.column;

import java.util.Optional;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** The type of a column that states the volume of a measuring bowl. */
final class BowlCell {
    static final CellType<Typed<Volume>> TYPE =
            CellType.quantity(VolumeUnit.values(), NumberRange.NOT_NEGATIVE).checked(BowlCell::impossible);

    private BowlCell() {}

    private static Optional<Problem> impossible(Typed<Volume> bowl) {
        return Limit.BOWL.holds(bowl.value().in(VolumeUnit.LITRE))
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "bowl", "csv.bowl-impossible", bowl, Limit.BOWL.lowInclusive(), Limit.BOWL.highInclusive()));
    }
}

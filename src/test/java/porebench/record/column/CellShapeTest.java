package porebench.record.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;

/** A column is asked to read, and what it asks for is its shape. */
class CellShapeTest {
    private static final NumberRange RANGE = NumberRange.of("1", "3");

    private static <V> CellShape shape(CellType<V> type) {
        return CellShape.of(Column.<String, V>any("x", type, text -> Optional.empty()));
    }

    private static CellShape of(CellShape.Kind kind, boolean isBlankRefused) {
        return new CellShape(kind, Optional.empty(), isBlankRefused, List.of());
    }

    @Test
    void everyTypeSaysWhatItIs() {
        assertThat(shape(CellType.text())).isEqualTo(of(CellShape.Kind.TEXT, false));
        assertThat(shape(CellType.said())).isEqualTo(of(CellShape.Kind.TEXT, true));
        assertThat(shape(CellType.word())).isEqualTo(of(CellShape.Kind.TEXT, true));
        assertThat(shape(CellType.yesNo())).isEqualTo(of(CellShape.Kind.YES_NO, true));
        assertThat(shape(CellType.day())).isEqualTo(of(CellShape.Kind.DAY, true));
        assertThat(shape(CellType.moment())).isEqualTo(of(CellShape.Kind.MOMENT, true));
        assertThat(shape(GroupColumns.MEMBERS.type())).isEqualTo(of(CellShape.Kind.SEVERAL, false));
    }

    @Test
    void aNumberHasItsBounds() {
        assertThat(shape(CellType.number(RANGE)))
                .isEqualTo(new CellShape(CellShape.Kind.NUMBER, Optional.of(RANGE), true, List.of()));
        assertThat(shape(CellType.whole(2)).kind()).isEqualTo(CellShape.Kind.WHOLE);
        assertThat(shape(CellType.whole(2)).range().orElseThrow().lowInclusive())
                .isEqualByComparingTo("2");
        CellType<Typed<Mass>> mass = CellType.quantity(MassUnit.values(), RANGE);
        assertThat(shape(mass).range()).contains(RANGE);
        assertThat(shape(mass.checked(any -> Optional.empty())).range()).contains(RANGE);
    }

    @Test
    void oneOfSomeWordsHasThem() {
        assertThat(shape(CellType.choice(MassUnit.values(), MassUnit::symbol)))
                .isEqualTo(
                        new CellShape(CellShape.Kind.CHOICE, Optional.empty(), true, List.of("kg", "g", "lb", "oz")));
    }

    /** The bounds of a division hang on the kind of equipment; while that says nothing, they are those of any kind. */
    @Test
    void whatAnotherColumnIsAskedForIsNotHeard() {
        CellShape division = CellShape.of(EquipmentColumns.DIVISION);
        assertThat(division.kind()).isEqualTo(CellShape.Kind.NUMBER);
        assertThat(division.range()).contains(NumberRange.of("0.0001", "1000"));
    }

    @Test
    void twoShapesTogetherHoldWhatEitherHolds() {
        CellShape one = new CellShape(CellShape.Kind.NUMBER, Optional.of(RANGE), true, List.of());
        CellShape other = new CellShape(CellShape.Kind.NUMBER, Optional.of(NumberRange.of("2", "9")), false, List.of());
        assertThat(one.or(other))
                .isEqualTo(
                        new CellShape(CellShape.Kind.NUMBER, Optional.of(NumberRange.of("1", "9")), false, List.of()));
        assertThat(one.or(of(CellShape.Kind.NUMBER, true)).range()).isEmpty();
    }

    @Test
    void aTypeThatAsksForNothingIsAProgrammersMistake() {
        CellType<BigDecimal> silent = new CellType<>() {
            @Override
            public void write(Column<?, BigDecimal> column, BigDecimal value, CellWriter to) {}

            @Override
            public Optional<BigDecimal> read(Column<?, BigDecimal> column, CellReader from) {
                return Optional.empty();
            }
        };
        assertThatThrownBy(() -> shape(silent))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("column must ask for something, but asks for nothing: x");
    }

    /** What comes in as a day and time is asked for as one, whatever a reader would make of a day alone. */
    @Test
    void theColumnsOfATrialAreWhatTheyAre() {
        assertThat(CellShape.of(TrialColumns.TESTED_AT).kind()).isEqualTo(CellShape.Kind.MOMENT);
        assertThat(CellShape.of(DeterminationColumns.ALL.ofField("openedOn").orElseThrow())
                        .kind())
                .isEqualTo(CellShape.Kind.DAY);
    }
}

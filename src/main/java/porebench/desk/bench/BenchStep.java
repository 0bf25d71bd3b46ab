package porebench.desk.bench;

import java.util.List;
import java.util.Optional;
import porebench.desk.Bowls;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/**
 * A step of a trial at the bench.
 *
 * <p>Source: the procedure for the aggregate correction factor of ASTM C231 and AASHTO T 152 (recalled), in our own words; of
 * Type B from the closed cover on, Illinois Modified AASHTO T 152, checklist in the print of 2009 (seen; written for concrete).
 */
enum BenchStep {
    METER,
    WATER(TrialColumns.WATER),
    FINE(TrialColumns.FINE),
    COARSE(TrialColumns.COARSE),
    ADD,
    FOAM,
    SOAK(TrialColumns.SOAK),
    COVER,
    FILL,
    ZERO,
    WITHDRAW(TrialColumns.WITHDRAWN),
    PUMP,
    READ(TrialColumns.GAUGE),
    H1(TrialColumns.H1),
    H2(TrialColumns.H2),
    RESULT;

    private static final List<BenchStep> ONLY_A = List.of(ZERO, H1, H2);
    private static final List<BenchStep> ONLY_B = List.of(WITHDRAW, READ);

    private final Optional<Column<Trial, ?>> column;

    BenchStep() {
        this.column = Optional.empty();
    }

    BenchStep(Column<Trial, ?> column) {
        this.column = Optional.of(column);
    }

    /** Returns what is read at it; empty where something is only done. */
    Optional<Column<Trial, ?>> column() {
        return column;
    }

    /** Returns the aggregate that it weighs. */
    Optional<Role> role() {
        return switch (this) {
            case FINE -> Optional.of(Role.FINE);
            case COARSE -> Optional.of(Role.COARSE);
            default -> Optional.empty();
        };
    }

    /** Returns the symbol under which a bowl is kept. */
    String symbol() {
        return this == SOAK ? Bowls.SOAK : name();
    }

    /** Returns the step of a symbol; the first one where there is none, as when another program wrote it. */
    static BenchStep of(String symbol) {
        return List.of(values()).stream()
                .filter(step -> step.symbol().equals(symbol))
                .findFirst()
                .orElse(METER);
    }

    /** Returns whether it belongs to a trial on a type of meter. */
    boolean isOf(MeterType type) {
        return !(type == MeterType.A ? ONLY_B : ONLY_A).contains(this);
    }

    /** Returns the step after it on a type of meter; the last one has itself. */
    BenchStep after(MeterType type) {
        return next(type, 1);
    }

    /** Returns the step before it on a type of meter; the first one has itself. */
    BenchStep before(MeterType type) {
        return next(type, -1);
    }

    private BenchStep next(MeterType type, int way) {
        int at = ordinal() + way;
        while (at >= 0 && at < values().length && !values()[at].isOf(type)) {
            at += way;
        }
        return at < 0 || at >= values().length ? this : values()[at];
    }
}

package porebench.record.column;

import java.util.List;
import java.util.Optional;

/**
 * A type for what a record has several of.
 *
 * @param part their columns
 * @param <P> the things
 */
record SeveralCells<P>(Part<P> part) implements CellType<List<P>> {
    @Override
    public void write(Column<?, List<P>> column, List<P> things, CellWriter to) {
        to.several(column, part, things);
    }

    @Override
    public Optional<List<P>> read(Column<?, List<P>> column, CellReader from) {
        return from.several(column, part);
    }

    @Override
    public Optional<Part<?>> partOf() {
        return Optional.of(part);
    }
}

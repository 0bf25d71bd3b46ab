package porebench.desk.table;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.swing.JScrollPane;
import porebench.desk.form.Days;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.Version;

/**
 * All versions of a record, the newest first: its number, when, who, why, and what it says differently from the one before.
 *
 * @param <T> the kind of record
 */
public final class VersionsTable<T extends Kept> {
    private final RowTable<Step<T>> table;
    private final JScrollPane scrolled;
    private final Texts texts;
    private final ZoneId zone;
    private final BiFunction<T, T, String> changes;
    private List<Version<T>> shown = List.of();

    /** A version and the one before it, of which the first has none. */
    private record Step<T extends Kept>(Version<T> version, Optional<Version<T>> before) {
        String number() {
            return Integer.toString(version.number());
        }

        String who() {
            return version.stamp().who();
        }

        String why() {
            return version.stamp().why();
        }
    }

    /**
     * Makes the table.
     *
     * @param name the component's name
     * @param isNarrow whether it stands beside something else: then one column has number, when and who, another the rest
     * @param changes says what the second of two versions says differently
     */
    public VersionsTable(String name, Locale locale, ZoneId zone, boolean isNarrow, BiFunction<T, T, String> changes) {
        this.texts = Texts.of("porebench.desk.table.table", locale);
        this.zone = zone;
        this.changes = changes;
        table = new RowTable<>(name, texts.get("versions"), isNarrow ? narrow() : wide());
        scrolled = table.scrolled();
    }

    private List<ShownColumn<Step<T>>> wide() {
        return List.of(
                new ShownColumn<>(texts.get("version.number"), 64, Step::number),
                new ShownColumn<>(texts.get("version.at"), 130, this::at),
                new ShownColumn<>(texts.get("version.who"), 130, Step::who),
                new ShownColumn<Step<T>>(texts.get("version.why"), 310, Step::why).wrapped(),
                new ShownColumn<>(texts.get("version.changed"), 310, this::changed).wrapped());
    }

    private List<ShownColumn<Step<T>>> narrow() {
        return List.of(
                new ShownColumn<Step<T>>(
                                texts.get("version.number"),
                                140,
                                step -> String.join("\n", step.number(), at(step), step.who()))
                        .wrapped(),
                new ShownColumn<Step<T>>(
                                texts.get("version.why"), 200, step -> (step.why() + "\n" + changed(step)).strip())
                        .wrapped());
    }

    private String at(Step<T> step) {
        return Days.show(step.version().stamp().at(), zone);
    }

    private String changed(Step<T> step) {
        return step.before()
                .map(before -> changes.apply(before.value(), step.version().value()))
                .orElseGet(() -> texts.get("version.first"));
    }

    /** Returns the table in its sideways scroll bar. */
    public JScrollPane component() {
        return scrolled;
    }

    /** Shows some versions, the newest first. */
    public void show(List<Version<T>> newestFirst) {
        if (newestFirst.equals(shown)) {
            return;
        }
        shown = newestFirst;
        List<Step<T>> steps = new ArrayList<>();
        for (int at = 0; at < newestFirst.size(); at++) {
            steps.add(new Step<>(
                    newestFirst.get(at), newestFirst.stream().skip(at + 1).findFirst()));
        }
        table.show(steps);
    }
}

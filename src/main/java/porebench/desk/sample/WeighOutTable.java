package porebench.desk.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JScrollPane;
import porebench.desk.form.Numbers;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.record.MixDesign;
import porebench.record.book.Version;

/** What to weigh: a line an aggregate, then all fine and all coarse. */
final class WeighOutTable {
    private static final int[] WIDTHS = {186, 96, 74, 96, 96, 96, 108, 154};
    private static final int FIRST_NUMBER = 3;

    private final Texts texts;
    private final Numbers numbers;
    private final RowTable<List<String>> table;
    private final JScrollPane scrolled;
    private List<String> headings = List.of();
    private List<List<String>> shown = List.of();
    private Optional<Version<MixDesign>> shownOf = Optional.empty();

    WeighOutTable(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
        head(MassUnit.KILOGRAM, Optional.empty());
        table = new RowTable<>(
                "weighOut",
                texts.get("section.weigh-out"),
                IntStream.range(0, WIDTHS.length).mapToObj(this::column).toList());
        scrolled = table.scrolled();
    }

    private ShownColumn<List<String>> column(int at) {
        ShownColumn<List<String>> column =
                new ShownColumn<List<String>>(() -> headings.get(at), WIDTHS[at], cells -> cells.get(at)).unsorted();
        return at >= FIRST_NUMBER ? column.number() : column;
    }

    JScrollPane component() {
        return scrolled;
    }

    /** Shows what to weigh; the lines of a mix of which it was known stay while it is not, without their figures. */
    void show(
            Optional<Version<MixDesign>> mix,
            Optional<CorrectionSample> sample,
            Optional<WeighOut> weighOut,
            MassUnit unit) {
        head(unit, weighOut);
        List<List<String>> lines = new ArrayList<>();
        if (sample.isPresent()) {
            MassText text = new MassText(numbers, unit);
            for (int index = 0; index < sample.get().components().size(); index++) {
                int at = index;
                lines.add(line(
                        sample.get().components().get(index),
                        weighOut.map(list -> list.lines().get(at)),
                        text));
            }
            all(Role.FINE, "all.fine", sample.get(), weighOut, text).ifPresent(lines::add);
            all(Role.COARSE, "all.coarse", sample.get(), weighOut, text).ifPresent(lines::add);
        }
        if (sample.isEmpty() && shownOf.equals(mix)) {
            shown.forEach(line -> lines.add(withoutFigures(line)));
        }
        shownOf = mix;
        shown = List.copyOf(lines);
        table.show(lines);
    }

    private List<String> withoutFigures(List<String> line) {
        return IntStream.range(0, line.size())
                .mapToObj(at -> at < FIRST_NUMBER ? line.get(at) : "")
                .toList();
    }

    private void head(MassUnit unit, Optional<WeighOut> weighOut) {
        String symbol = unit.symbol();
        headings = List.of(
                texts.get("heading.name"),
                texts.get("heading.source"),
                texts.get("heading.role"),
                texts.get("heading.each", symbol),
                texts.get("heading.lowest", symbol),
                texts.get("heading.highest", symbol),
                texts.get("heading.dry", symbol),
                weighOut.map(list -> texts.get("heading.total", symbol, list.trials()))
                        .orElseGet(() -> texts.get("heading.total.unknown", symbol)));
    }

    private List<String> line(CorrectionSample.Component component, Optional<WeighOut.Line> line, MassText text) {
        boolean hasSource = !component.source().equals(component.name());
        return List.of(
                component.name(),
                hasSource ? component.source() : "",
                texts.get(component.role() == Role.FINE ? "role.fine" : "role.coarse"),
                text.show(component.mass()),
                line.map(list -> text.showLowest(list.lowest())).orElse(""),
                line.map(list -> text.showHighest(list.highest())).orElse(""),
                component.ovenDryKilograms().isPresent()
                        ? text.show(new Mass(component.ovenDryKilograms().getAsDouble()))
                        : texts.get("unknown"),
                line.map(list -> text.show(list.total())).orElse(""));
    }

    private Optional<List<String>> all(
            Role role, String key, CorrectionSample sample, Optional<WeighOut> weighOut, MassText text) {
        if (sample.components().stream().noneMatch(component -> component.role() == role)) {
            return Optional.empty();
        }
        Mass each = role == Role.FINE ? sample.fine() : sample.coarse();
        Optional<Mass> total = weighOut.map(list -> list.lines().stream()
                .filter(line -> line.role() == role)
                .map(WeighOut.Line::total)
                .reduce(new Mass(0), Mass::plus));
        return Optional.of(List.of(
                texts.get(key),
                "",
                "",
                text.show(each),
                "",
                "",
                "",
                total.map(text::show).orElse("")));
    }
}

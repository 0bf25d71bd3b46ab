package porebench.exchange.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.KeptReadings;
import porebench.evidence.study.ValueRow;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.ValueTable;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.KeptStudy;

/** The readings of a study's rows, and what keeps them from being one, each fault at its cell. */
final class StudyRows {
    private final RowGroup group;
    private final List<String> layers;
    private final Map<Integer, HeadedRow> byLine = new LinkedHashMap<>();
    private final List<Sheet.Row<ValueRow>> rows = new ArrayList<>();

    StudyRows(RowGroup group, List<String> layers) {
        this.group = group;
        this.layers = layers;
    }

    /** Returns the readings that could be read. */
    List<KeptStudy.Reading> readings() {
        for (int layer = 0; layer < layers.size(); layer++) {
            String column = StudyFormat.nameColumn(layer);
            if (!group.first().has(column)) {
                group.stating(StudyFormat.LAYERS)
                        .error(StudyFormat.LAYERS, "study.column-of-layer", layers.get(layer), column);
            }
        }
        group.rows().forEach(this::read);
        return KeptReadings.readings(sheet());
    }

    private void read(HeadedRow entry) {
        Map<String, String> names = new LinkedHashMap<>();
        for (int layer = 0; layer < layers.size(); layer++) {
            String name = layers.get(layer);
            entry.word(StudyFormat.nameColumn(layer)).ifPresent(word -> names.put(name, word));
        }
        if (!layers.isEmpty()) {
            checkBeyond(entry);
        }
        Optional<BigDecimal> value = entry.number(StudyFormat.VALUE, ValueTable.ANY);
        if (entry.isGood() && value.isPresent()) {
            byLine.put(entry.line(), entry);
            rows.add(new Sheet.Row<>(entry.line(), new ValueRow(names, value.get())));
        }
    }

    /** A name beside a reading that no layer is for would be lost. */
    private void checkBeyond(HeadedRow entry) {
        for (int layer = layers.size(); layer < KeptStudy.MOST_LAYERS; layer++) {
            String column = StudyFormat.nameColumn(layer);
            entry.optionalWord(column)
                    .ifPresent(name -> entry.error(
                            column, "study.name-beyond-layers", column, Findings.quoted(name), layers.size()));
        }
    }

    private Sheet<ValueRow> sheet() {
        return new Sheet<>("", rows, List.of());
    }

    /** Notes what keeps the readings, all of which could be read, from being a study of a kind. */
    void check(KeptStudy.Layout layout) {
        for (Problem problem : KeptReadings.check(layout, sheet())) {
            if (problem.isError()) {
                int layer = layers.indexOf(problem.field());
                int line = problem.place().flatMap(Place::line).orElse(0);
                byLine.getOrDefault(line, group.first())
                        .error(layer < 0 ? StudyFormat.VALUE : StudyFormat.nameColumn(layer), problem);
            }
        }
    }
}

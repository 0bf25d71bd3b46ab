package porebench.evidence.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.KeptStudy;

/** A study on its way between the sheet it was read from and the lab book, and the one gate before the latter. */
public final class KeptReadings {
    private KeptReadings() {}

    /**
     * Returns what is wrong or doubtful about the rows of a sheet as a study: what keeps it from being made keeps it from being
     * kept.
     */
    public static List<Problem> check(KeptStudy.Layout layout, Sheet<ValueRow> sheet) {
        return switch (layout) {
            case OPERATORS -> CrossedReadings.of(sheet).problems();
            case LAYERS -> LayeredReadings.of(sheet).problems();
            case LABORATORIES -> LaboratoryLevels.check(sheet);
        };
    }

    /** Returns the names of the layers of a sheet that has rows, from left to right. */
    public static List<String> layers(Sheet<ValueRow> sheet) {
        return List.copyOf(sheet.rows().get(0).value().factors().keySet());
    }

    /** Returns the rows of a sheet as they are kept. */
    public static List<KeptStudy.Reading> readings(Sheet<ValueRow> sheet) {
        return sheet.values().stream()
                .map(row -> new KeptStudy.Reading(List.copyOf(row.factors().values()), row.number()))
                .toList();
    }

    /** Returns a kept study as the sheet it was read from. It goes by the name of the study, and its rows stand on no line. */
    public static Sheet<ValueRow> sheet(KeptStudy study) {
        List<Sheet.Row<ValueRow>> rows = new ArrayList<>();
        for (KeptStudy.Reading reading : study.readings()) {
            Map<String, String> names = new LinkedHashMap<>();
            for (int layer = 0; layer < study.layers().size(); layer++) {
                names.put(study.layers().get(layer), reading.names().get(layer));
            }
            rows.add(new Sheet.Row<>(0, new ValueRow(names, reading.value())));
        }
        return new Sheet<>(study.id().text(), rows, List.of());
    }
}

package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import porebench.record.id.StudyId;

/** Invented studies. */
public final class SampleStudies {
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private SampleStudies() {}

    /** Makes a study of rows, each its names and its value with blanks between. */
    public static KeptStudy of(String id, KeptStudy.Layout layout, List<String> layers, String... rows) {
        return new KeptStudy(
                new StudyId(id),
                layout,
                "",
                DAY,
                "R. Vale",
                "",
                layers,
                Arrays.stream(rows).map(SampleStudies::reading).toList(),
                "");
    }

    public static KeptStudy.Reading reading(String row) {
        List<String> cells = List.of(row.split(" "));
        return new KeptStudy.Reading(cells.subList(0, cells.size() - 1), new BigDecimal(cells.get(cells.size() - 1)));
    }

    /** Two operators who read two samples twice, by a scale of 0.05. */
    public static KeptStudy operators(String id) {
        return of(
                id,
                KeptStudy.Layout.OPERATORS,
                KeptStudy.Layout.OPERATORS.columns(),
                "Ada x 1 5.40",
                "Ada x 2 5.35",
                "Ada y 1 6.10",
                "Ada y 2 6.05",
                "Bo x 1 5.45",
                "Bo x 2 5.40",
                "Bo y 1 6.20",
                "Bo y 2 6.10");
    }

    public static KeptStudy layers(String id) {
        return of(
                id,
                KeptStudy.Layout.LAYERS,
                List.of("day", "meter"),
                "d1 B-1 0.40",
                "d1 B-1 0.45",
                "d1 B-2 0.50",
                "d2 B-1 0.30",
                "d2 B-1 0.40");
    }

    public static KeptStudy laboratories(String id) {
        return of(
                id,
                KeptStudy.Layout.LABORATORIES,
                KeptStudy.Layout.LABORATORIES.columns(),
                "North low 0.40",
                "North low 0.50",
                "South low 0.40",
                "South low 0.60",
                "East low 0.50",
                "East low 0.40");
    }

    /** A study with everything filled, six layers, and every text awkward. */
    public static KeptStudy full(String id, String line, String note) {
        return new KeptStudy(
                new StudyId(id),
                KeptStudy.Layout.LAYERS,
                line,
                LocalDate.of(2024, 2, 29),
                line,
                line,
                List.of(line, "two;%3B|", "three", "vier", "=5", "6"),
                List.of(
                        new KeptStudy.Reading(List.of(line, "1", "-", "é", "=1+1", "x"), new BigDecimal("-0.500")),
                        new KeptStudy.Reading(List.of("1", "1", "1", "1", "1", "1"), new BigDecimal("1E+1")),
                        new KeptStudy.Reading(List.of("1", "1", "1", "1", "1", "1"), new BigDecimal("10.00"))),
                note);
    }

    /** A study of layers with very many readings. */
    public static KeptStudy large(String id, int readings) {
        List<KeptStudy.Reading> all = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            all.add(new KeptStudy.Reading(
                    List.of("day " + i / 100, "operator " + i / 10 % 10, "meter " + i % 2),
                    BigDecimal.valueOf(i % 7, 2)));
        }
        return new KeptStudy(
                new StudyId(id),
                KeptStudy.Layout.LAYERS,
                "",
                DAY,
                "R. Vale",
                "",
                List.of("day", "operator", "meter"),
                all,
                "");
    }
}

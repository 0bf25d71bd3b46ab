package porebench.desk.overtime;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import porebench.evidence.FactorHistory.HistoryChange;
import porebench.method.Texts;

/** Says what changed between two points. */
final class ChangeWords {
    private final Texts texts;

    ChangeWords(Texts texts) {
        this.texts = texts;
    }

    /** Says some changes in a few words, such as {@code B-1, B-2 calibrated}. */
    String of(List<HistoryChange> changes) {
        Map<HistoryChange.Of, String> ids = new EnumMap<>(HistoryChange.Of.class);
        for (HistoryChange change : changes) {
            ids.merge(
                    change.of(),
                    change.id(),
                    (all, one) -> List.of(all.split(", ", -1)).contains(one) ? all : all + ", " + one);
        }
        return ids.entrySet().stream()
                .map(each -> texts.get(key(each.getKey()), each.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String key(HistoryChange.Of of) {
        return switch (of) {
            case SOURCE -> "change.source";
            case MIX -> "change.mix";
            case CALIBRATION -> "change.calibration";
            case REPAIR -> "change.repair";
            case METHOD -> "change.method";
        };
    }
}

package porebench.desk.register;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The factor register: every mix in service, all of them or those that need attention. */
final class RegisterModel {
    private final DeskModel desk;
    private final Texts texts;
    private boolean onlyAttention;
    private Optional<MixId> chosen = Optional.empty();

    RegisterModel(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
    }

    /** Returns whether somebody should look at a mix: its factor does not simply hold, or something is missing. */
    static boolean needsAttention(RegisterRow row) {
        return row.state() != FactorState.IN_FORCE || !row.missing().isEmpty();
    }

    void showOnlyAttention(boolean only) {
        onlyAttention = only;
    }

    /** Returns the lines on view. */
    List<RegisterRow> rows() {
        return desk.rows().stream()
                .filter(row -> !onlyAttention || needsAttention(row))
                .toList();
    }

    void choose(MixId mixId) {
        chosen = Optional.of(mixId);
    }

    /** Returns the chosen line, or the first one while the chosen one is not on view. */
    Optional<RegisterRow> chosen() {
        return rows().stream()
                .filter(row -> chosen.filter(row.mixId()::equals).isPresent())
                .findFirst()
                .or(() -> rows().stream().findFirst());
    }

    String stateWords(FactorState state) {
        return texts.get("state." + state.symbol().replace(' ', '-'));
    }

    /** Returns how many mixes there are in each state, in words. */
    String summary() {
        List<RegisterRow> all = desk.rows();
        String states = Arrays.stream(FactorState.values())
                .filter(state -> all.stream().anyMatch(row -> row.state() == state))
                .map(state -> texts.get(
                        "register.count",
                        Long.toString(
                                all.stream().filter(row -> row.state() == state).count()),
                        stateWords(state)))
                .collect(Collectors.joining(", "));
        return all.isEmpty()
                ? texts.get("register.empty")
                : texts.get("register.summary", Integer.toString(all.size()), states);
    }

    /** Returns what is missing for a mix, as sentences. */
    String missingWords(RegisterRow row) {
        return row.missing().isEmpty()
                ? texts.get("register.complete")
                : row.missing().stream().map(desk.tools().problemText()::say).collect(Collectors.joining("  "));
    }
}

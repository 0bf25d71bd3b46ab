package porebench.port;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.paper.RegisterList;
import porebench.record.column.CellShape.Kind;
import porebench.record.column.StatedColumn;

/** The factor register as figures, to be written as CSV: the same lines as on paper, a mix a row. */
public final class RegisterTable {
    private static final StatedColumn STATE = StatedColumn.filled(Kind.CHOICE, "state")
            .oneOf(Arrays.stream(FactorState.values()).map(FactorState::symbol).toList());

    private static final ListColumns<Of> COLUMNS = new ListColumns<Of>()
            .filled("mix_id", of -> of.row().mixId().text())
            .text("mix_title", of -> of.row().title())
            .text("plant", of -> of.row().plant())
            .column(STATE, of -> of.row().state().symbol())
            .percent("factor_pct_air", of -> of.row().factorPercent())
            .any(Kind.WHOLE, "revision", of -> of.row().revision())
            .any(Kind.DAY, "in_force_from", of -> of.row().inForceFrom())
            .any(Kind.DAY, "recheck_by", of -> of.row().recheckBy())
            .count("counted_trials", of -> of.row().countedTrials())
            .several(
                    "meters",
                    of -> of.row().trials().meters().stream()
                            .map(meter -> meter.text())
                            .toList())
            .any(Kind.DAY, "first_trial_on", of -> of.row().trials().firstOn())
            .any(Kind.DAY, "last_trial_on", of -> of.row().trials().lastOn())
            .any(Kind.DAY, "without_factor_since", of -> of.row().uncoveredSince())
            .several("missing", of -> of.line().missing())
            .text("in_force_at", of -> of.row().terms().atText())
            .text("conditions", of -> of.row().terms().conditions())
            .text(
                    "group_id",
                    of -> or(of.row().group().map(ground -> ground.group().text())))
            .text(
                    "tested_mix_id",
                    of -> or(of.row().group().map(ground -> ground.testedMix().text())))
            .percent("expanded_u_pct", of -> of.row().uncertainty().expandedPercent())
            .number(
                    StatedColumn.any(Kind.NUMBER, "coverage_factor"),
                    of -> of.row().uncertainty().coverageFactor())
            .several("due", of -> of.line().due())
            .count("cards_to_come_back", Of::cardsToComeBack);

    private RegisterTable() {}

    private record Of(RegisterList.Line line, int cardsToComeBack) {
        RegisterRow row() {
            return line.row();
        }
    }

    /** Returns its columns, as they are in a book that is not for training. */
    public static List<StatedColumn> columns() {
        return COLUMNS.stated();
    }

    /** Returns the figures of a list; numbers have a decimal point, dates are written 2026-03-31. Of a training book every row says so. */
    public static DataTable of(RegisterList list) {
        DataTable table = COLUMNS.table(list.lines().stream()
                .map(line -> new Of(line, list.alarms().of(line.row().mixId()).size()))
                .toList());
        return list.isTraining() ? table.simulated() : table;
    }

    private static String or(Optional<String> text) {
        return text.orElse("");
    }
}

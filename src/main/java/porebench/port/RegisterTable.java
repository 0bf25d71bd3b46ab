package porebench.port;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.RegisterList;

/** The factor register as figures, to be written as CSV: the same lines as on paper, a mix a row. */
public final class RegisterTable {
    private static final String BETWEEN = "; ";

    private static final List<String> HEADING = List.of(
            "mix_id",
            "mix_title",
            "plant",
            "state",
            "factor_pct_air",
            "revision",
            "in_force_from",
            "recheck_by",
            "counted_trials",
            "meters",
            "first_trial_on",
            "last_trial_on",
            "without_factor_since",
            "missing",
            "in_force_at",
            "conditions",
            "group_id",
            "tested_mix_id",
            "expanded_u_pct",
            "coverage_factor",
            "due",
            "cards_to_come_back");

    private RegisterTable() {}

    /** Returns the figures of a list; numbers have a decimal point, dates are written 2026-03-31. Of a training book every row says so. */
    public static DataTable of(RegisterList list) {
        DataTable table = new DataTable(
                HEADING, list.lines().stream().map(line -> cells(line, list)).toList());
        return list.isTraining() ? table.simulated() : table;
    }

    private static List<String> cells(RegisterList.Line line, RegisterList list) {
        var row = line.row();
        return List.of(
                row.mixId().text(),
                row.title(),
                row.plant(),
                row.state().symbol(),
                or(row.factorPercent().map(BigDecimal::toPlainString)),
                or(row.revision()),
                or(row.inForceFrom()),
                or(row.recheckBy()),
                Integer.toString(row.countedTrials()),
                String.join(
                        BETWEEN,
                        row.trials().meters().stream()
                                .map(meter -> meter.text())
                                .toList()),
                or(row.trials().firstOn()),
                or(row.trials().lastOn()),
                or(row.uncoveredSince()),
                String.join(BETWEEN, line.missing()),
                row.terms().atText(),
                row.terms().conditions(),
                or(row.group().map(ground -> ground.group().text())),
                or(row.group().map(ground -> ground.testedMix().text())),
                or(row.uncertainty().expandedPercent().map(BigDecimal::toPlainString)),
                or(row.uncertainty().coverageFactor().map(BigDecimal::toPlainString)),
                String.join(BETWEEN, line.due()),
                Integer.toString(list.alarms().of(row.mixId()).size()));
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }
}

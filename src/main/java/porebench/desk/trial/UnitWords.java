package porebench.desk.trial;

import porebench.method.trial.Withdrawal;

/** Units of withdrawn water as people write them. */
final class UnitWords {
    private UnitWords() {}

    static String of(Withdrawal.Unit unit) {
        return unit == Withdrawal.Unit.PERCENT ? "%" : unit.symbol();
    }
}

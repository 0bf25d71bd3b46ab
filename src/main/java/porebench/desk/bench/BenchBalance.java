package porebench.desk.bench;

import porebench.desk.Bowl;
import porebench.desk.trial.TrialGate;
import porebench.method.Texts;
import porebench.quantity.MassUnit;

/** What the balance says, taken into the mass that is weighed now. */
final class BenchBalance {
    private final BowlsModel model;
    private final TrialGate gate;
    private final Texts texts;

    BenchBalance(BowlsModel model) {
        this.model = model;
        this.gate = model.gate();
        this.texts = model.texts();
    }

    /** Takes a line; Enter then takes the mass like one that was typed. What is no mass at rest is refused in words. */
    void weighed(BalanceReading reading) {
        String line = reading.line();
        if (reading.kind() != BalanceReading.Kind.MASS) {
            boolean isMoving = reading.kind() == BalanceReading.Kind.NOT_AT_REST;
            model.tell(texts.get(isMoving ? "balance.not-at-rest" : "balance.no-mass", line), true);
        } else if (!model.isReady() || model.step().role().isEmpty()) {
            model.tell(texts.get("balance.nowhere", line), false);
        } else {
            MassUnit unit = gate.massUnit();
            reading.in(unit)
                    .ifPresentOrElse(
                            digits ->
                                    model.fill(model.desk().tools().numbers().show(digits), texts.get("balance.taken")),
                            () -> model.tell(texts.get("balance.other-unit", line, unit.symbol()), true));
        }
    }

    /** Takes a line that the balance typed as a keyboard, with Enter at its end: the mass is taken as if a hand had typed it. */
    void typed(BalanceReading reading) {
        model.wipe();
        weighed(reading);
        if (!model.current().map(Bowl::typed).orElse("").isEmpty()) {
            model.enter();
        }
    }

    /** Says that the balance cannot be heard. */
    void deaf(String place) {
        model.tell(texts.get("balance.failed", place), true);
    }
}

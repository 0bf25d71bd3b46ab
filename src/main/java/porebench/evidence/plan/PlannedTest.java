package porebench.evidence.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.evidence.FactorState;
import porebench.method.Problem;
import porebench.method.sample.WeighOut;
import porebench.quantity.Symbolic;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * One mix on a plan.
 *
 * @param mixId the mix
 * @param title its title
 * @param plant the plant that makes it, may be empty
 * @param need why it is to be tested
 * @param state how it stands with its factor on the last day of the plan
 * @param uncoveredSince the first day without a factor that might be used; empty while there is one, and where there never was
 * @param recheckBy the last day of the factor in force; empty when none is
 * @param cardsOut how many cards of its newest factor were handed out on paper
 * @param determination the open determination that the trials go on with; empty where they begin a new one
 * @param trials how many trials are planned, at least 1
 * @param meter the meter; empty where the laboratory has none that can be trusted
 * @param weighOut what to weigh and to fetch; empty where the sample cannot be worked out
 * @param due why its laboratory's rules ask for it beside the day on its card, the most pressing reason first
 * @param doubts what a person should look at before the test
 * @param place the day, who makes it, and how it came on the plan
 * @param risk how many of its loads are likely judged wrongly
 */
public record PlannedTest(
        MixId mixId,
        String title,
        String plant,
        Need need,
        FactorState state,
        Optional<LocalDate> uncoveredSince,
        Optional<LocalDate> recheckBy,
        int cardsOut,
        Optional<DeterminationId> determination,
        int trials,
        Optional<MeterId> meter,
        Optional<WeighOut> weighOut,
        List<Problem> due,
        List<Problem> doubts,
        Place place,
        LoadsAtRisk risk) {
    public PlannedTest {
        due = List.copyOf(due);
        doubts = List.copyOf(doubts);
    }

    /** How a mix came on a plan. */
    public enum Placing implements Symbolic {
        /** It asks for a test, and no plan is kept of these days. */
        PROPOSED,
        /** It has become one of the most pressing since the plan was kept. */
        NEW,
        /** It asked for a test when the plan was kept. */
        KEPT,
        /** A person put it there. */
        BY_HAND,
        /** A person left it out. */
        LEFT_OUT
    }

    /**
     * Where a mix stands on a plan.
     *
     * @param day the day of the test
     * @param who who makes it, may be blank
     * @param placing how it came there
     * @param remark what a person says of it; why, where it is left out
     */
    public record Place(LocalDate day, String who, Placing placing, String remark) {
        /** Returns whether it is tested. */
        public boolean isTested() {
            return placing != Placing.LEFT_OUT;
        }
    }
}

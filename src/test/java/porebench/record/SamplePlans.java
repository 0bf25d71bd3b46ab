package porebench.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Plans of a week. */
public final class SamplePlans {
    private SamplePlans() {}

    /** Returns a test of a mix that asked for it, as a person arranged it. */
    public static TestPlan.Row row(String mix, LocalDate day) {
        return new TestPlan.Row(new MixId(mix), day, "", Optional.empty(), Optional.empty(), TestPlan.Mark.ASKED, "");
    }

    /** Returns a test with all that it may state. */
    public static TestPlan.Row row(
            String mix, LocalDate day, String who, int trials, String meter, TestPlan.Mark mark, String remark) {
        return new TestPlan.Row(
                new MixId(mix), day, who, Optional.of(trials), Optional.of(new MeterId(meter)), mark, remark);
    }

    public static TestPlan plan(LocalDate from, TestPlan.Row... rows) {
        return new TestPlan(from, List.of(rows));
    }
}

package porebench.evidence.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.method.ProblemText;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;
import porebench.record.TestPlan;
import porebench.record.book.Version;

/**
 * The tests of a week on paper, with room to write who makes each, where nobody is planned, and when it was done.
 *
 * @param laboratory whose it is; empty when the lab book does not say
 * @param plan the tests
 * @param arranged who arranged it; empty where it is as proposed, or not kept as it is printed
 * @param said what is said of each test in words, in the order of the tests
 * @param massUnit the unit of the masses on the sheet
 */
public record PlanSheet(
        Optional<Laboratory> laboratory, WeekPlan plan, Optional<Arranged> arranged, List<Said> said, MassUnit massUnit)
        implements Printed {
    /**
     * Who arranged a plan.
     *
     * @param by the person
     * @param version the number of the version
     */
    public record Arranged(String by, int version) {
        /** Returns who arranged a plan that is kept. */
        public static Arranged of(Version<TestPlan> kept) {
            return new Arranged(kept.stamp().who(), kept.number());
        }
    }

    /**
     * What is said of a test.
     *
     * @param need why it is made
     * @param risk how many loads are likely judged wrongly
     * @param doubts what is doubtful about it
     */
    public record Said(String need, String risk, List<String> doubts) {
        public Said {
            doubts = List.copyOf(doubts);
        }

        private static Said of(PlannedTest test, PlanText text, ProblemText words) {
            return new Said(
                    text.say(test.need()),
                    text.say(test.risk()),
                    Stream.concat(test.due().stream(), test.doubts().stream())
                            .map(words::say)
                            .toList());
        }
    }

    public PlanSheet {
        said = List.copyOf(said);
        if (said.size() != plan.tests().size()) {
            throw new IllegalArgumentException(
                    "said must be as many as tests, " + plan.tests().size() + ", but is " + said.size());
        }
    }

    /** Returns the sheet of a plan, what is said of its tests in words. */
    public static PlanSheet of(
            Optional<Laboratory> laboratory,
            WeekPlan plan,
            Optional<Arranged> arranged,
            PlanText text,
            ProblemText words,
            MassUnit massUnit) {
        return new PlanSheet(
                laboratory,
                plan,
                arranged,
                plan.tests().stream().map(test -> Said.of(test, text, words)).toList(),
                massUnit);
    }
}

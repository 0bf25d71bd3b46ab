package porebench.desk.variability;

import java.util.List;
import porebench.record.id.TrialId;

/**
 * One question about the trials of a determination, answered.
 *
 * @param name a stable name, for tests
 * @param title the question
 * @param answer the answer, in one sentence or two
 * @param isAlarm whether the answer is something to look into
 * @param reasons what the answer rests on, a paragraph each
 * @param tests the tests made, or why they were not
 * @param named the trials that the answer names, to be looked at and perhaps struck
 */
record Finding(
        String name,
        String title,
        String answer,
        boolean isAlarm,
        List<String> reasons,
        List<TestLine> tests,
        List<TrialId> named) {
    Finding {
        reasons = List.copyOf(reasons);
        tests = List.copyOf(tests);
        named = List.copyOf(named);
    }

    /** Makes an answer that names no trial. */
    Finding(String name, String title, String answer, boolean isAlarm, List<String> reasons, List<TestLine> tests) {
        this(name, title, answer, isAlarm, reasons, tests, List.of());
    }

    /**
     * One test.
     *
     * @param test its name
     * @param statistic its statistic, or a dash
     * @param finding its p, or why there is none
     */
    record TestLine(String test, String statistic, String finding) {}
}

package porebench.desk.factor;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.method.Problem;
import porebench.record.FactorTerms;
import porebench.record.column.Column;
import porebench.record.column.FactorIssueColumns;

/**
 * What is decided in the form of the next revision.
 *
 * @param draft what was typed
 * @param chosen the determination; empty while none of that name is there
 * @param person who works here
 * @param takingOn who takes on which doubts, and why; empty when nobody does
 */
record TypedDecision(
        TypedDraft draft, Optional<JudgedDetermination> chosen, String person, Optional<TakingOn> takingOn) {

    /** Returns why there is no decision yet; empty when there is one. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        day(FactorIssueColumns.IN_FORCE_FROM, problems);
        day(FactorIssueColumns.RECHECK_BY, problems);
        time(problems);
        if (chosen.isEmpty()) {
            problems.add(Problem.error(
                    "determination", "issue.determination-unknown", draft.text(FactorModel.DETERMINATION)));
        }
        return problems;
    }

    /** Returns the decision; empty while its determination, its first day or its hour is not known. */
    Optional<Issuing.Decision> decision() {
        List<Problem> wrong = new ArrayList<>();
        Optional<LocalDate> from = day(FactorIssueColumns.IN_FORCE_FROM, wrong);
        Optional<LocalTime> at = time(wrong);
        if (chosen.isEmpty() || from.isEmpty() || !wrong.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Issuing.Decision(
                chosen.get().determination().value().id(),
                from.get(),
                day(FactorIssueColumns.RECHECK_BY, new ArrayList<>()),
                person,
                draft.text(FactorIssueColumns.APPROVED_BY),
                draft.text(FactorIssueColumns.REASON),
                takingOn,
                new FactorTerms(at, draft.text(FactorIssueColumns.CONDITIONS).strip(), ""),
                Optional.empty()));
    }

    private Optional<LocalDate> day(Column<?, LocalDate> column, List<Problem> problems) {
        Optional<LocalDate> day = Days.parse(draft.text(column));
        Optional<Problem> wrong = day.isEmpty()
                ? Optional.of(Problem.error(column.field(), "form.not-a-date", draft.text(column)))
                : day.flatMap(typed -> Days.checkYear(column.field(), typed));
        wrong.ifPresent(problems::add);
        return day.filter(any -> wrong.isEmpty());
    }

    private Optional<LocalTime> time(List<Problem> problems) {
        String typed = draft.text(FactorIssueColumns.IN_FORCE_AT);
        Optional<LocalTime> time = FactorTerms.time(typed);
        if (time.isEmpty() && !typed.isBlank()) {
            problems.add(Problem.error("inForceAt", "form.not-a-time", typed));
        }
        return time;
    }
}

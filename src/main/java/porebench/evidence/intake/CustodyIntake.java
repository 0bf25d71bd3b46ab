package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.evidence.custody.CardActs;
import porebench.evidence.custody.Custody;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardSteps;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/**
 * Holds what an import says of factor cards against what was said of them before, in the files and in the lab book, and a card that is
 * handed out against its factor, as command and window do. A factor that comes in the same files is judged by its revisions and days
 * alone: its evidence is not looked at before it is kept.
 */
final class CustodyIntake {
    private final LabBook book;
    private final BiFunction<RecordKind, String, Optional<Kept>> known;
    private final LocalDate today;
    private final Map<MixId, Optional<RegisterRow>> rows = new HashMap<>();

    /**
     * Begins an import.
     *
     * @param book what the lab book holds
     * @param known finds a record by its name, in the files or in the lab book
     */
    CustodyIntake(LabBook book, BiFunction<RecordKind, String, Optional<Kept>> known, LocalDate today) {
        this.book = book;
        this.known = known;
        this.today = today;
    }

    /** Returns the number by which the steps of a card follow one another; 0 of other records. */
    static int number(Incoming one) {
        return one.value() instanceof CardStep step ? step.number() : 0;
    }

    /** Returns what is wrong with a step of a card. One that is there already under its name is not held against itself. */
    List<Problem> check(CardStep step) {
        Optional<Kept> print = known.apply(RecordKind.CARD_PRINT, step.cardId());
        if (print.isEmpty()) {
            return List.of(Problem.error("id", "custody.unknown-card", step.recordId(), step.cardId()));
        }
        List<CardStep> before = new ArrayList<>();
        for (int number = 1; ; number++) {
            Optional<Kept> there = known.apply(RecordKind.CARD_STEP, step.cardId() + "/s" + number);
            if (there.isEmpty()) {
                break;
            }
            if (number == step.number()) {
                return List.of();
            }
            before.add((CardStep) there.get());
        }
        CardPrint card = (CardPrint) print.get();
        List<Problem> problems = new ArrayList<>(CardSteps.check(card, before, step, Moments.endOf(today)));
        if (step.act() == CardStep.Act.HANDED_OUT) {
            gone(card, before, step).ifPresent(problems::add);
        }
        return problems;
    }

    private Optional<Problem> gone(CardPrint print, List<CardStep> before, CardStep step) {
        LocalDateTime now = Moments.endOf(today);
        List<FactorIssue> issues = issues(print.mixId());
        return row(print, issues, now)
                .map(row -> Custody.of(List.of(row), List.of(print), before, issues, now))
                .flatMap(custody -> custody.cards().stream().findFirst())
                .flatMap(card -> CardActs.gone(card, step));
    }

    /** Returns the revisions of a mix, those in the files among them; they are numbered without a gap. */
    private List<FactorIssue> issues(MixId mix) {
        List<FactorIssue> issues = new ArrayList<>();
        for (int revision = 1; ; revision++) {
            Optional<Kept> there = known.apply(RecordKind.FACTOR_ISSUE, FactorIssue.idOf(mix, revision));
            if (there.isEmpty()) {
                return issues;
            }
            issues.add((FactorIssue) there.get());
        }
    }

    private Optional<RegisterRow> row(CardPrint print, List<FactorIssue> issues, LocalDateTime now) {
        String issue = FactorIssue.idOf(print.mixId(), print.revision());
        if (book.latest(FactorIssue.class, issue).isPresent()) {
            return rows.computeIfAbsent(
                    print.mixId(), mix -> Evidence.of(book, mix).map(evidence -> RegisterRow.of(evidence, now)));
        }
        return issues.stream()
                .filter(one -> one.revision() == print.revision())
                .findFirst()
                .map(this::byItsDays);
    }

    private RegisterRow byItsDays(FactorIssue issue) {
        boolean isLapsed = issue.recheckBy().isBefore(today);
        return new RegisterRow(
                issue.mixId(),
                "",
                "",
                isLapsed ? FactorState.LAPSED : FactorState.IN_FORCE,
                Optional.of(issue.factorPercent()),
                Optional.of(issue.revision()),
                Optional.of(issue.inForceFrom()),
                Optional.of(issue.recheckBy()),
                TrialsBehind.NONE,
                isLapsed ? Optional.of(issue.recheckBy().plusDays(1)) : Optional.empty(),
                List.of());
    }
}

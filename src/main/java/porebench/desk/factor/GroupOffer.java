package porebench.desk.factor;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.GroupSteps;
import porebench.evidence.issue.Issuing;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/** The group for which the selected mix is tested, and what is issued for all its members with the decision of the form. */
final class GroupOffer {
    private final DeskModel desk;

    GroupOffer(DeskModel desk) {
        this.desk = desk;
    }

    /** Returns the group for which the selected mix is tested; empty where it is for none, and while it is looked up. */
    Optional<FactorGroup> group() {
        return desk.selected()
                .flatMap(mix -> desk.answer(new TestedFor(mix)))
                .flatMap(found -> found)
                .map(Version::value);
    }

    /** Asks for the group for which a mix is tested. */
    private record TestedFor(MixId mix) implements Question<Optional<Version<FactorGroup>>> {
        @Override
        public Optional<Version<FactorGroup>> answer(Reading seen) {
            return seen.book().latestOf(Belonging.GROUPS_OF_MIX, mix.text()).stream()
                    .filter(group -> group.value().testedMix().equals(mix)
                            && !group.value().others().isEmpty())
                    .findFirst();
        }
    }

    /** Asks what would be issued for the group by a decision; uncertainties are worked out, which takes its time. */
    private record IssuedBy(MixId mix, Issuing.Decision decision) implements Question<Answer<GroupIssuing.Issued>> {
        @Override
        public Answer<GroupIssuing.Issued> answer(Reading seen) {
            return new TestedFor(mix)
                    .answer(seen)
                    .map(group -> new GroupIssuing(
                                    seen.standing()::each, seen.scatter(), group, decision.determinationId())
                            .issue(decision))
                    .orElseGet(() -> Answer.refused(List.of(Problem.error("group", "issue.group-gone"))));
        }
    }

    /** Asks what would be drafted for the group by a decision. */
    private record DraftedBy(MixId mix, Issuing.Decision decision, LocalDateTime now)
            implements Question<Answer<GroupSteps.Taken>> {
        @Override
        public Answer<GroupSteps.Taken> answer(Reading seen) {
            return new TestedFor(mix)
                    .answer(seen)
                    .map(group -> new GroupIssuing(
                                    seen.standing()::each, seen.scatter(), group, decision.determinationId())
                            .draft(decision, now))
                    .orElseGet(() -> Answer.refused(List.of(Problem.error("group", "issue.group-gone"))));
        }
    }

    /** Asks what would come of a step of the open drafts of a group. */
    private record SteppedBy(GroupId group, Function<GroupSteps, Answer<GroupSteps.Taken>> step)
            implements Question<Answer<List<Draft>>> {
        @Override
        public Answer<List<Draft>> answer(Reading seen) {
            return seen.book()
                    .latest(FactorGroup.class, group.text())
                    .map(known -> new GroupSteps(seen.standing()::each, known))
                    .map(steps -> stated(seen, steps))
                    .orElseGet(() -> Answer.refused(List.of(Problem.error("group", "issue.group-gone"))));
        }

        private Answer<List<Draft>> stated(Reading seen, GroupSteps steps) {
            Answer<GroupSteps.Taken> taken = step.apply(steps);
            return new Answer<>(taken.value().map(one -> steps.stated(one, seen.scatter())), taken.problems());
        }
    }

    /**
     * Decides what is drafted for the group with what the form says.
     *
     * @param then hears what would be drafted, or why nothing can be
     */
    void draft(Issuing.Decision decision, Consumer<Answer<GroupSteps.Taken>> then) {
        desk.ask(
                new DraftedBy(
                        desk.selected().orElseThrow(), decision, desk.tools().now()),
                then);
    }

    /** Takes a step of every open draft of a group; the outcome hears why none was taken. */
    static void step(
            DeskModel desk,
            GroupId group,
            Function<GroupSteps, Answer<GroupSteps.Taken>> step,
            String why,
            Outcome outcome) {
        desk.ask(new SteppedBy(group, step), answer -> {
            if (answer.value().isEmpty()) {
                outcome.take(answer.problems());
            } else {
                desk.keep(answer.value().get(), why, outcome);
            }
        });
    }

    /**
     * Decides about the group with what the form says.
     *
     * @param then hears what would be issued, or why nothing can be
     */
    void decide(Issuing.Decision decision, Consumer<Answer<GroupIssuing.Issued>> then) {
        desk.ask(new IssuedBy(desk.selected().orElseThrow(), decision), then);
    }

    /** Keeps what is issued or drafted for a group, all of it or nothing; the outcome hears why nothing was. */
    void keep(List<Draft> drafts, String why, Outcome outcome) {
        desk.keep(drafts, why.strip(), outcome);
    }
}

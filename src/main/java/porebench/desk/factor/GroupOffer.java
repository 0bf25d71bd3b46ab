package porebench.desk.factor;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.Issuing;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Version;
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

    /**
     * Decides about the group with what the form says.
     *
     * @param then hears what would be issued, or why nothing can be
     */
    void decide(Issuing.Decision decision, Consumer<Answer<GroupIssuing.Issued>> then) {
        desk.ask(new IssuedBy(desk.selected().orElseThrow(), decision), then);
    }

    /** Keeps what is issued for a group, all of it or nothing; the outcome hears why nothing was. */
    void keep(GroupIssuing.Issued issued, String why, Outcome outcome) {
        desk.keep(issued.issues().stream().map(Draft::of).toList(), why.strip(), outcome);
    }
}

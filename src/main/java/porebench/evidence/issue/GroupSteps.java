package porebench.evidence.issue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.OpenProposal;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.FactorProposal;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * The steps by which the drafts of a group's factor are checked and put in force: each of them through the one gate of
 * {@link Proposing}, all together or none. They are drafted by {@link GroupIssuing}.
 */
public final class GroupSteps {
    private final Version<FactorGroup> group;
    private final Map<MixId, Evidence> drafted = new LinkedHashMap<>();

    /**
     * Reads the members whose open draft is one of the group's factor.
     *
     * @param reader hands out everything known about some mixes, one after the other
     */
    public GroupSteps(BiConsumer<Collection<MixId>, Consumer<Evidence>> reader, Version<FactorGroup> group) {
        this.group = group;
        reader.accept(group.value().members(), this::know);
    }

    private void know(Evidence evidence) {
        OpenProposal.of(evidence)
                .filter(open -> open.value().isOf(group.value().id()))
                .ifPresent(open -> drafted.put(evidence.mix().value().id(), evidence));
    }

    /**
     * A step taken for several mixes.
     *
     * @param each the step of each, in the order of the group's members
     * @param leftOut the members for which none was drafted, each with why
     */
    public record Taken(List<Proposing.Taken> each, List<GroupIssuing.LeftOut> leftOut) {
        public Taken {
            each = List.copyOf(each);
            leftOut = List.copyOf(leftOut);
        }

        /** Returns what is to be kept, together. */
        public List<Draft> drafts() {
            return each.stream().flatMap(one -> one.drafts().stream()).toList();
        }
    }

    /** Says that a person checked every open draft of the group and found it right. */
    public Answer<Taken> check(String who, String remark, LocalDateTime now) {
        return step(evidence -> Proposing.check(evidence, who, remark, now));
    }

    /** Puts every open draft of the group in force. */
    public Answer<Taken> putInForce(String who, String remark, LocalDateTime now) {
        return step(evidence -> Proposing.putInForce(evidence, who, remark, now));
    }

    /** Sends back every open draft of the group that was not sent back already. */
    public Answer<Taken> sendBack(String who, String why, LocalDateTime now) {
        drafted.values()
                .removeIf(evidence -> drafted.size() > 1
                        && OpenProposal.of(evidence).orElseThrow().value().step() == FactorProposal.Step.SENT_BACK);
        return step(evidence -> Proposing.sendBack(evidence, who, why, now));
    }

    /** Gives up every open draft of the group. */
    public Answer<Taken> drop(String who, String why, LocalDateTime now) {
        return step(evidence -> Proposing.drop(evidence, who, why, now));
    }

    private Answer<Taken> step(Function<Evidence, Answer<Proposing.Taken>> each) {
        if (drafted.isEmpty()) {
            return Answer.refused(List.of(Problem.error(
                    "step", "proposal.none-of-group", group.value().id().text())));
        }
        List<Proposing.Taken> taken = new ArrayList<>();
        Map<MixId, List<Problem>> found = new LinkedHashMap<>();
        drafted.forEach((mix, evidence) -> {
            Answer<Proposing.Taken> answer = each.apply(evidence);
            found.put(mix, answer.problems());
            answer.value().ifPresent(taken::add);
        });
        List<Problem> problems = List.copyOf(GroupIssuing.together(found));
        return taken.size() < drafted.size()
                ? Answer.refused(problems)
                : Answer.of(new Taken(taken, List.of()), problems);
    }

    /** Returns what is to be kept of a step, every revision with its uncertainty: see {@link IssueUncertainty}. */
    public List<Draft> stated(Taken taken, LaboratoryScatter scatter) {
        return taken.each().stream()
                .flatMap(one -> IssueUncertainty.stated(evidence(one), scatter, one.drafts()).stream())
                .toList();
    }

    private Evidence evidence(Proposing.Taken taken) {
        Evidence known = drafted.get(taken.proposal().mixId());
        if (known == null) {
            throw new IllegalArgumentException("step must be of a draft of the group, but is of "
                    + taken.proposal().mixId().text());
        }
        return known;
    }
}

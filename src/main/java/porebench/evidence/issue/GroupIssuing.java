package porebench.evidence.issue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.Lent;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.GroupGround;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * Hands out a factor for a group of mixes: found on the tested mix, it becomes a revision of every member that is within the
 * tolerance, through the one gate of {@link Issuing}. All of them are kept together or none.
 */
public final class GroupIssuing {
    private final Version<FactorGroup> group;
    private final DeterminationId basis;
    private final LaboratoryScatter scatter;
    private final Map<MixId, Evidence> known = new HashMap<>();

    /**
     * Reads what is needed to decide.
     *
     * @param reader hands out everything known about some mixes, one after the other
     * @param scatter how trials scatter in the laboratory, for whether the trials are enough
     * @param basis the determination of the tested mix
     */
    public GroupIssuing(
            BiConsumer<Collection<MixId>, Consumer<Evidence>> reader,
            LaboratoryScatter scatter,
            Version<FactorGroup> group,
            DeterminationId basis) {
        this.group = group;
        this.basis = basis;
        this.scatter = scatter;
        reader.accept(
                group.value().members(),
                evidence -> known.put(evidence.mix().value().id(), evidence));
    }

    /**
     * What is handed out.
     *
     * @param issues the revisions, in the order of the group's members
     * @param leftOut the members that get none, each with why
     */
    public record Issued(List<FactorIssue> issues, List<LeftOut> leftOut) {
        public Issued {
            issues = List.copyOf(issues);
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * A member that gets no revision: it is not like the tested mix.
     *
     * @param mixId the member
     * @param why why not
     */
    public record LeftOut(MixId mixId, List<Problem> why) {
        public LeftOut {
            why = List.copyOf(why);
        }
    }

    private Optional<Evidence> tested() {
        return Optional.ofNullable(known.get(group.value().testedMix()));
    }

    private Optional<JudgedDetermination> judged() {
        return tested().flatMap(evidence -> evidence.determination(basis)
                .filter(judged -> judged.determination()
                        .value()
                        .mixId()
                        .equals(group.value().testedMix()))
                .filter(judged -> judged.summary().isPresent()));
    }

    /** Returns every doubt about issuing for the group that is not settled, each once. */
    public List<IssueDoubt> doubts() {
        Set<IssueDoubt> doubts = new LinkedHashSet<>();
        if (judged().isPresent()) {
            deciding(new ArrayList<>()).forEach(evidence -> doubts.addAll(Issuing.doubts(evidence, scatter, basis)));
        }
        return List.copyOf(doubts);
    }

    /** Returns the members that get no revision, each with why. */
    public List<LeftOut> leftOut() {
        List<LeftOut> left = new ArrayList<>();
        if (judged().isPresent()) {
            deciding(left);
        }
        return left;
    }

    /**
     * Makes the revisions of the members. The tested mix gets one, too, unless its factor in the lab book rests on the same trials.
     *
     * @param decision as for one mix; its determination is that of the tested mix
     * @return the revisions, with every doubt, taken on; or why there can be none
     */
    public Answer<Issued> issue(Issuing.Decision decision) {
        Answer<Each<FactorIssue>> made = each(evidence -> with(
                Issuing.issue(evidence, scatter, decision),
                issue -> ofGroup(IssueUncertainty.stated(evidence, scatter, issue))));
        return with(made, each -> new Issued(each.made(), each.left()));
    }

    /**
     * Drafts the revisions of the members, where the profile has factors drafted, checked and put in force by several people.
     *
     * @param decision as for one mix; its determination is that of the tested mix
     * @param now the day and time, by the laboratory's clock
     * @return the drafts, with every doubt, taken on; or why there can be none
     */
    public Answer<GroupSteps.Taken> draft(Issuing.Decision decision, LocalDateTime now) {
        Answer<Each<Proposing.Taken>> made = each(evidence -> with(
                Proposing.draft(evidence, scatter, decision, now),
                taken -> new Proposing.Taken(
                        taken.proposal().on(taken.proposal().grounds().of(ground())), taken.before(), taken.issue())));
        return with(made, each -> new GroupSteps.Taken(each.made(), each.left()));
    }

    private Optional<GroupGround> ground() {
        return Optional.of(new GroupGround(
                group.value().id(), group.number(), group.value().testedMix()));
    }

    private FactorIssue ofGroup(FactorIssue issue) {
        return issue.on(issue.grounds().of(ground()));
    }

    /** What is made of the members, and who is left out. */
    private record Each<T>(List<T> made, List<LeftOut> left) {}

    private static <S, T> Answer<T> with(Answer<S> answer, Function<S, T> then) {
        return new Answer<>(answer.value().map(then), answer.problems());
    }

    private <T> Answer<Each<T>> each(Function<Evidence, Answer<T>> make) {
        if (judged().isEmpty()) {
            return Answer.refused(List.of(Problem.error("determination", "issue.no-trial-counts", basis.text())));
        }
        List<LeftOut> left = new ArrayList<>();
        List<Evidence> deciding = deciding(left);
        Set<Problem> problems = new LinkedHashSet<>();
        left.forEach(one -> one.why().forEach(why -> problems.add(why.asWarning())));
        List<T> all = new ArrayList<>();
        Map<MixId, List<Problem>> found = new LinkedHashMap<>();
        for (Evidence evidence : deciding) {
            Answer<T> answer = make.apply(evidence);
            found.put(evidence.mix().value().id(), answer.problems());
            answer.value().ifPresent(all::add);
        }
        problems.addAll(together(found));
        if (found.keySet().stream().allMatch(group.value().testedMix()::equals)) {
            problems.add(Problem.error(
                    "members", "group.nobody-like", group.value().id().text()));
        }
        List<Problem> said = List.copyOf(problems);
        return Problem.anyError(said) || all.size() < deciding.size()
                ? Answer.refused(said)
                : Answer.of(new Each<>(all, left), said);
    }

    /** Returns what was found of several mixes: what holds for all of them once, the rest with the mix it is about. */
    static Set<Problem> together(Map<MixId, List<Problem>> found) {
        Set<Problem> together = new LinkedHashSet<>();
        found.forEach((mix, problems) -> problems.stream()
                .map(problem -> found.values().stream().allMatch(all -> all.contains(problem))
                        ? problem
                        : new Problem(
                                problem.severity(),
                                problem.kind(),
                                problem.field(),
                                "group.of-member",
                                List.of(mix.text(), problem),
                                Optional.empty()))
                .forEach(together::add));
        return together;
    }

    /** Returns what is known about each mix that gets a revision, those that get none being put aside with why. */
    private List<Evidence> deciding(List<LeftOut> left) {
        Evidence tested = tested().orElseThrow();
        List<Evidence> deciding = new ArrayList<>();
        if (isWanting(tested)) {
            deciding.add(tested);
        }
        for (MixId member : group.value().others()) {
            Optional<Evidence> own = Optional.ofNullable(known.get(member));
            if (own.isEmpty()) {
                left.add(new LeftOut(
                        member,
                        List.of(Problem.warning(
                                "members",
                                "group.unknown-mix",
                                group.value().id().text(),
                                member.text()))));
                continue;
            }
            Evidence with = Lent.to(own.get(), group, tested, basis);
            List<Problem> why = with.changesSince(judged().orElseThrow()).stream()
                    .flatMap(change -> change.drift().stream())
                    .toList();
            if (why.isEmpty()) {
                deciding.add(with);
            } else {
                left.add(new LeftOut(member, why));
            }
        }
        return deciding;
    }

    /** Returns whether the tested mix itself is without a factor from these trials as they stand. */
    private boolean isWanting(Evidence tested) {
        return tested.newestIssue()
                .filter(newest -> newest.isIssue()
                        && newest.determinationId().equals(basis)
                        && tested.evidenceChangesSince(newest).isEmpty())
                .isEmpty();
    }
}

package porebench.evidence;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.GroupGround;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;

/**
 * A determination of the mix that is tested for a group, on which a factor of a member rests.
 *
 * @param determination the determination
 * @param terms on which terms it holds for the member
 * @param counted the trials that count of the tested mix, by determination, as far as they were read
 * @param issues the revisions of the tested mix, the first one first
 */
public record Lent(
        JudgedDetermination determination,
        GroupTerms terms,
        List<CountedTrials> counted,
        List<Version<FactorIssue>> issues) {
    public Lent {
        counted = List.copyOf(counted);
        issues = List.copyOf(issues);
    }

    /** Returns the group for which a determination was lent to a mix; empty where it is the mix's own. */
    public static Optional<GroupGround> ground(Evidence evidence, JudgedDetermination judged) {
        return evidence.lent().stream()
                .filter(one -> one.determination().equals(judged))
                .findFirst()
                .map(one -> new GroupGround(
                        one.terms.group().value().id(),
                        one.terms.group().number(),
                        one.testedMix().id()));
    }

    /** Returns the trials that count of the mix that a determination is of, by determination. */
    static List<CountedTrials> countedBeside(Evidence evidence, JudgedDetermination judged) {
        return evidence.lent().stream()
                .filter(one -> one.determination().equals(judged))
                .findFirst()
                .map(Lent::counted)
                .orElseGet(evidence::counted);
    }

    /** Returns whether a revision rests on it, on these terms. */
    boolean bears(FactorIssue issue) {
        return issue.isLent()
                && id().equals(issue.determinationId())
                && issue.grounds()
                        .group()
                        .filter(ground ->
                                ground.group().equals(terms.group().value().id()))
                        .isPresent();
    }

    DeterminationId id() {
        return determination.determination().value().id();
    }

    /**
     * Returns what is known about a member, with a determination of the tested mix that a factor of its group is to rest on.
     *
     * @param tested everything known about the tested mix, which has the determination
     */
    public static Evidence to(Evidence member, Version<FactorGroup> group, Evidence tested, DeterminationId id) {
        GroupTerms terms = new GroupTerms(group, Optional.of(group.value()), tested.mix());
        Lent lent = new Lent(tested.determination(id).orElseThrow(), terms, tested.counted(), tested.issues());
        List<Lent> all = new ArrayList<>(List.of(lent));
        member.lent().stream().filter(other -> !other.id().equals(id)).forEach(all::add);
        Map<DeterminationId, Basis> made = new HashMap<>(member.made());
        Optional.ofNullable(tested.made().get(id)).ifPresent(basis -> made.put(id, basis.on(terms)));
        return new OtherEvidence(member).with(made, all);
    }

    /** Returns the determination of the mix tested for its group on which a revision rests; empty where it rests on its own. */
    public static Optional<Lent> of(Evidence evidence, FactorIssue issue) {
        return evidence.lent().stream().filter(one -> one.bears(issue)).findFirst();
    }

    /**
     * Returns that the factor of the tested mix was withdrawn, by the newest of its revisions from this determination that had begun
     * at a moment: it is not to be trusted on the others, either.
     */
    static Optional<Problem> withdrawn(Evidence evidence, FactorIssue issue, LocalDateTime moment) {
        return of(evidence, issue).flatMap(lent -> lent.withdrawn(moment));
    }

    private Optional<Problem> withdrawn(LocalDateTime moment) {
        return begun(moment, issue -> issue.determinationId().equals(id()))
                .filter(newest -> !newest.isIssue())
                .map(newest -> Problem.warning(
                        "factor",
                        "register.tested-withdrawn",
                        newest.mixId().text(),
                        newest.revision(),
                        newest.inForceFrom().toString()));
    }

    /** Returns that the tested mix has a factor from another determination at a moment: the group is due for it, too. */
    Optional<Problem> renewed(LocalDateTime moment) {
        return begun(moment, any -> true)
                .filter(newest -> newest.isIssue() && !newest.determinationId().equals(id()))
                .map(newest -> Problem.warning(
                        "factor",
                        "register.tested-anew",
                        newest.mixId().text(),
                        newest.revision(),
                        terms.group().value().id().text()));
    }

    /** Returns the first day of each withdrawal of the tested mix's factor from this determination that had begun at a moment. */
    Stream<LocalDate> withdrawals(LocalDateTime moment) {
        return issues.stream()
                .map(Version::value)
                .filter(issue -> !issue.begins().isAfter(moment))
                .map(FactorIssue::inForceFrom)
                .filter(day -> withdrawn(Moments.endOf(day)).isPresent());
    }

    private Optional<FactorIssue> begun(LocalDateTime moment, Predicate<FactorIssue> which) {
        return Moments.begunBy(
                issues.stream().filter(issue -> which.test(issue.value())).toList(), moment);
    }

    /** Returns the newest design of the tested mix. */
    public MixDesign testedMix() {
        return terms.testedNow().value();
    }
}

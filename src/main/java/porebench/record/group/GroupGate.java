package porebench.record.group;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.MixDesign;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.id.MixId;

/** What a group of mixes may be: the one rule for window, command line and files. */
public final class GroupGate {
    private GroupGate() {}

    /**
     * Returns what is wrong or doubtful about a group, under the fields of its form.
     *
     * <p>Who comes in must be like the tested mix. A member that was one before and drifted out since is a doubt only: the group can
     * still be changed.
     *
     * @param book what the lab book holds, with what comes in beside the group
     * @param before the version before; empty for a new group
     */
    public static List<Problem> check(Records book, FactorGroup group, Optional<FactorGroup> before) {
        List<Problem> problems = new ArrayList<>(group.check());
        problems.addAll(oldReason(group, before));
        before.filter(old -> !old.testedMix().equals(group.testedMix()))
                .ifPresent(old -> problems.add(Problem.error(
                        "testedMix",
                        "group.other-tested-mix",
                        group.id().text(),
                        old.testedMix().text(),
                        group.testedMix().text())));
        if (before.isEmpty() && group.others().isEmpty()) {
            problems.add(Problem.error("members", "group.no-members", group.id().text())
                    .of(Problem.Kind.NOT_YET));
        }
        Optional<MixDesign> tested = mix(book, group.testedMix());
        if (tested.isEmpty()) {
            problems.add(Problem.error(
                    "testedMix",
                    "group.unknown-mix",
                    group.id().text(),
                    group.testedMix().text()));
        }
        for (MixId member : group.members()) {
            elsewhere(book, group, member).ifPresent(problems::add);
            if (!member.equals(group.testedMix())) {
                tested.ifPresent(one -> problems.addAll(member(book, group, one, member, before)));
            }
        }
        return problems;
    }

    /** Returns that a group changes without a reason of its own: what asks no lab book. */
    public static List<Problem> oldReason(FactorGroup group, Optional<FactorGroup> before) {
        return before
                .filter(old -> !old.equals(group) && old.reason().equals(group.reason()))
                .map(old -> Problem.error(
                                "reason", "group.reason-old", group.id().text())
                        .of(Problem.Kind.NOT_YET))
                .stream()
                .toList();
    }

    private static List<Problem> member(
            Records book, FactorGroup group, MixDesign tested, MixId member, Optional<FactorGroup> before) {
        Optional<MixDesign> mix = mix(book, member);
        if (mix.isEmpty()) {
            return List.of(
                    Problem.error("members", "group.unknown-mix", group.id().text(), member.text()));
        }
        List<Problem> why =
                Likeness.of(mix.get(), tested, group.tolerancePercent()).why();
        boolean wasOne = before.filter(old -> old.has(member)).isPresent();
        return wasOne ? why.stream().map(Problem::asWarning).toList() : why;
    }

    /** Returns that a mix is in another group: it would have two factors. */
    private static Optional<Problem> elsewhere(Records book, FactorGroup group, MixId member) {
        return book.latestOf(Belonging.GROUPS_OF_MIX, member.text()).stream()
                .map(version -> version.value())
                .filter(other -> !other.id().equals(group.id()))
                .filter(other -> !other.others().isEmpty())
                .findFirst()
                .map(other -> Problem.error(
                        member.equals(group.testedMix()) ? "testedMix" : "members",
                        "group.member-elsewhere",
                        member.text(),
                        other.id().text()));
    }

    private static Optional<MixDesign> mix(Records book, MixId id) {
        return book.latest(MixDesign.class, id.text()).map(version -> version.value());
    }
}

package porebench.evidence.group;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.OpenProposal;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.book.Version;
import porebench.record.group.Likeness;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * A group as it stands: its members, each with its factor and how far it is from the tested mix. Only its mixes are read.
 *
 * @param group the group
 * @param members its members that the lab book has, in the order of the group
 * @param open the determination of the tested mix that a factor can be issued from: the open one, else that of its factor in force;
 *     empty while there is none
 */
public record GroupLook(Version<FactorGroup> group, List<Member> members, Optional<DeterminationId> open) {
    public GroupLook {
        members = List.copyOf(members);
    }

    /**
     * A member as it stands.
     *
     * @param mixId the mix
     * @param title its title
     * @param isTested whether it is the one that is tested
     * @param state how it stands with its factor
     * @param inForce the revision in force; empty where none is
     * @param likeness how far it is from the tested mix, both as they are now
     * @param why what makes its factor untrue
     * @param draft the draft of its next revision that is open
     */
    public record Member(
            MixId mixId,
            String title,
            boolean isTested,
            FactorState state,
            Optional<FactorIssue> inForce,
            Likeness likeness,
            List<Problem> why,
            Optional<FactorProposal> draft) {
        public Member {
            why = List.copyOf(why);
        }

        /** Returns what is the matter with it, and what its draft waits for, each once: a factor of the group says itself how the member drifted out. */
        public List<Problem> matters(FactorGroup group) {
            Stream<Problem> standing = hasGroupFactor(group)
                    ? why.stream()
                    : Stream.concat(likeness.why().stream().map(Problem::asWarning), why.stream());
            return Stream.concat(standing, draft.map(OpenProposal::due).stream())
                    .toList();
        }

        /** Returns whether its factor in force is that of a group. */
        public boolean hasGroupFactor(FactorGroup group) {
            return inForce.flatMap(issue -> issue.grounds().group())
                    .filter(ground -> ground.group().equals(group.id()))
                    .isPresent();
        }
    }

    /**
     * Looks at a group.
     *
     * @param reader hands out everything known about some mixes, one after the other
     * @param moment the moment of the question
     */
    public static GroupLook of(
            BiConsumer<Collection<MixId>, Consumer<Evidence>> reader,
            Version<FactorGroup> group,
            LocalDateTime moment) {
        FactorGroup value = group.value();
        Map<MixId, Evidence> read = new HashMap<>();
        reader.accept(
                value.members(), evidence -> read.put(evidence.mix().value().id(), evidence));
        Optional<Evidence> tested = Optional.ofNullable(read.get(value.testedMix()));
        List<Member> members = new ArrayList<>();
        for (MixId mix : value.members()) {
            Optional.ofNullable(read.get(mix))
                    .flatMap(own -> tested.map(one -> member(value, own, one, moment)))
                    .ifPresent(members::add);
        }
        return new GroupLook(group, members, tested.flatMap(one -> basis(one, moment)));
    }

    private static Member member(FactorGroup group, Evidence own, Evidence tested, LocalDateTime moment) {
        Optional<FactorIssue> inForce = own.inForceAt(moment);
        return new Member(
                own.mix().value().id(),
                own.mix().value().title(),
                own == tested,
                own.stateAt(moment),
                inForce,
                Likeness.of(own.mix().value(), tested.mix().value(), group.tolerancePercent()),
                inForce.map(issue -> own.whyUntrue(issue, moment.toLocalDate())).orElse(List.of()),
                OpenProposal.of(own).map(Version::value));
    }

    /** Returns the determination of the tested mix that a factor of its group is issued from unless a person says another. */
    public static Optional<DeterminationId> basis(Evidence tested, LocalDateTime moment) {
        return tested.openDetermination()
                .filter(open -> open.summary().isPresent())
                .map(open -> open.determination().value().id())
                .or(() -> tested.inForceAt(moment)
                        .filter(issue -> !issue.isLent())
                        .map(FactorIssue::determinationId));
    }
}

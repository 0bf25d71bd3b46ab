package porebench.evidence;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FactorGroup;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.group.Likeness;

/**
 * On which terms a determination of a group's tested mix holds for a member: it is a member today, and within today's tolerance of
 * the tested mix, both as that was tested and as it is now.
 *
 * @param group the group as it is now
 * @param then the group as it was when the factor was issued; empty when the lab book does not have that version
 * @param testedNow the design of the tested mix as it is now
 */
public record GroupTerms(Version<FactorGroup> group, Optional<FactorGroup> then, Version<MixDesign> testedNow) {
    /**
     * A reason why a member drifted out of its group.
     *
     * @param why the reason, to be said in words
     * @param begun when the version was kept that made it so
     */
    record Drift(Problem why, Instant begun) {}

    /**
     * Returns why a member drifted out; empty while it has not.
     *
     * @param tested the design of the mix that was tested, as it was tested
     */
    List<Drift> drifts(Version<MixDesign> member, MixDesign tested) {
        String name = member.value().id().text();
        FactorGroup now = group.value();
        if (!now.has(member.value().id())) {
            return List.of(new Drift(
                    Problem.warning("mix", "register.no-member", name, now.id().text(), group.number()),
                    group.stamp().at()));
        }
        BigDecimal tolerance = now.tolerancePercent();
        Likeness asTested = Likeness.of(member.value(), tested, tolerance);
        boolean isAsTested = !asTested.isLike();
        Likeness found = isAsTested ? asTested : Likeness.of(member.value(), testedNow.value(), tolerance);
        MixDesign against = isAsTested ? tested : testedNow.value();
        List<Instant> begun = new ArrayList<>(List.of(member.stamp().at()));
        if (!isAsTested) {
            begun.add(testedNow.stamp().at());
        }
        boolean isByTolerance = then.map(FactorGroup::tolerancePercent)
                .filter(before -> Likeness.of(member.value(), against, before).isLike())
                .isPresent();
        if (isByTolerance) {
            begun.add(group.stamp().at());
        }
        return found.why().stream()
                .map(why -> new Drift(
                        Problem.warning(
                                "mix", "register.drifted", name, now.id().text(), why.asWarning()),
                        Collections.max(begun)))
                .toList();
    }
}

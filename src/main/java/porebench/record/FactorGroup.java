package porebench.record;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import porebench.method.Problem;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;

/**
 * Mixes of like proportions that take one factor: it is found on one of them, the mix that is tested.
 *
 * @param id its name
 * @param title name for people, may be empty
 * @param testedMix the mix that is tested for all
 * @param tolerancePercent how far a member may be from the tested mix: in percentage points of each source's share of the aggregate,
 *     and in % of the aggregate in a cubic metre of concrete
 * @param members the mixes that take its factor, the tested one among them
 * @param reason why they may, or why the group changed
 */
public record FactorGroup(
        GroupId id, String title, MixId testedMix, BigDecimal tolerancePercent, List<MixId> members, String reason)
        implements Kept {
    public FactorGroup {
        members = List.copyOf(members);
    }

    /** Returns whether a mix is a member, as the tested one always is. */
    public boolean has(MixId mix) {
        return mix.equals(testedMix) || members.contains(mix);
    }

    /** Returns the members that are not tested themselves, in their order. */
    public List<MixId> others() {
        return members.stream().filter(mix -> !mix.equals(testedMix)).toList();
    }

    /** Returns the same group with the tested mix named among its members, first. */
    public FactorGroup naming() {
        if (members.contains(testedMix)) {
            return this;
        }
        List<MixId> all = new ArrayList<>(List.of(testedMix));
        all.addAll(members);
        return new FactorGroup(id, title, testedMix, tolerancePercent, all, reason);
    }

    /** Returns the same group with another title and reason. */
    public FactorGroup said(String otherTitle, String otherReason) {
        return new FactorGroup(id, otherTitle, testedMix, tolerancePercent, members, otherReason);
    }

    /** Returns what is wrong with it by itself, under the fields of its form: a member that stands in it twice. */
    public List<Problem> check() {
        HashSet<MixId> seen = new HashSet<>();
        return members.stream()
                .filter(member -> !seen.add(member))
                .distinct()
                .map(member -> Problem.error("members", "group.member-twice", member.text()))
                .toList();
    }

    @Override
    public RecordKind kind() {
        return RecordKind.FACTOR_GROUP;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}

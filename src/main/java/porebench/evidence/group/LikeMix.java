package porebench.evidence.group;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.record.FactorGroup;
import porebench.record.MixDesign;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.group.Likeness;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * A mix of like proportions, which might be in one group with another. Only the mixes of one of its sources are read.
 *
 * @param mixId the mix
 * @param title its title
 * @param likeness how far it is from the other
 * @param group the group it is in already; empty where it is in none
 */
public record LikeMix(MixId mixId, String title, Likeness likeness, Optional<GroupId> group) {
    /**
     * Returns the mixes that are like one, the nearest first.
     *
     * @param book what the lab book holds
     * @param mix the mix that is tested
     * @param tolerancePercent how far the others may be, as {@link Likeness} measures it
     */
    public static List<LikeMix> of(Records book, MixDesign mix, BigDecimal tolerancePercent) {
        Optional<SourceId> any = mix.sources().stream().sorted().findFirst();
        return any.map(source -> book.latestOf(Belonging.MIXES_OF_SOURCE, source.text())).orElse(List.of()).stream()
                .map(Version::value)
                .filter(other -> !other.id().equals(mix.id()))
                .map(other -> like(book, other, Likeness.of(other, mix, tolerancePercent)))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(
                                (LikeMix one) -> one.likeness().apart())
                        .thenComparing(LikeMix::mixId))
                .toList();
    }

    private static Optional<LikeMix> like(Records book, MixDesign other, Likeness likeness) {
        return Optional.of(likeness)
                .filter(Likeness::isLike)
                .map(like -> new LikeMix(other.id(), other.title(), like, groupOf(book, other.id())));
    }

    private static Optional<GroupId> groupOf(Records book, MixId mix) {
        return book.latestOf(Belonging.GROUPS_OF_MIX, mix.text()).stream()
                .map(Version::value)
                .filter(group -> !group.others().isEmpty())
                .map(FactorGroup::id)
                .findFirst();
    }
}

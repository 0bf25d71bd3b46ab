package porebench.evidence;

import java.util.List;
import java.util.Map;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.source.SourceStory;

/**
 * Evidence as it would be with something that is not kept.
 *
 * @param known what is kept
 */
record OtherEvidence(Evidence known) {
    /** Returns it with another story of a source. */
    Evidence with(SourceStory story) {
        return of(
                known.mix(),
                known.stones().stream()
                        .map(one -> one.id().equals(story.id()) ? story : one)
                        .toList(),
                Basis.with(known.bases(), story),
                Basis.with(known.made(), story),
                known.lent());
    }

    /** Returns it with another design of its mix. */
    Evidence with(MixDesign design) {
        return of(
                new Version<>(design, known.mix().number(), known.mix().stamp()),
                known.stones(),
                known.bases(),
                known.made(),
                known.lent());
    }

    /** Returns it with other determinations lent by the mixes tested for its groups. */
    Evidence with(Map<DeterminationId, Basis> made, List<Lent> lent) {
        return of(known.mix(), known.stones(), known.bases(), made, lent);
    }

    /** Returns it with other revisions, and sources that were told otherwise. */
    Evidence as(List<Version<FactorIssue>> issues, List<SourceStory> stones, Map<Integer, Basis> bases) {
        return of(known.mix(), stones, bases, known.made(), known.lent(), issues);
    }

    private Evidence of(
            Version<MixDesign> mix,
            List<SourceStory> stones,
            Map<Integer, Basis> bases,
            Map<DeterminationId, Basis> made,
            List<Lent> lent) {
        return of(mix, stones, bases, made, lent, known.issues());
    }

    private Evidence of(
            Version<MixDesign> mix,
            List<SourceStory> stones,
            Map<Integer, Basis> bases,
            Map<DeterminationId, Basis> made,
            List<Lent> lent,
            List<Version<FactorIssue>> issues) {
        return new Evidence(
                mix,
                known.profile(),
                stones,
                known.meters(),
                known.stories(),
                known.equipment(),
                known.determinations(),
                issues,
                known.proposals(),
                bases,
                made,
                known.firstKept(),
                lent,
                known.decisions(),
                known.reported(),
                known.rechecks());
    }
}

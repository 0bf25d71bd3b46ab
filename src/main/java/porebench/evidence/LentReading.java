package porebench.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.Determination;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.GroupGround;
import porebench.record.MixDesign;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;

/** Reads the determinations that mixes tested for a group lend to its members, each once. */
final class LentReading {
    private final EvidenceReader reader;
    private final Records book;
    private final Map<List<?>, Optional<Lent>> known = new HashMap<>();

    LentReading(EvidenceReader reader, Records book) {
        this.reader = reader;
        this.book = book;
    }

    /** Takes over what another one has read. */
    void know(LentReading other) {
        known.putAll(other.known);
    }

    /** Returns the determinations of mixes tested for a group on which some revisions rest, by revision. */
    Map<Integer, Lent> of(List<Version<FactorIssue>> issued) {
        Map<Integer, Lent> lent = new LinkedHashMap<>();
        issued.stream()
                .map(Version::value)
                .filter(issue -> issue.isIssue() && issue.isLent())
                .forEach(issue -> lent(
                                issue.determinationId(), issue.grounds().group().orElseThrow())
                        .ifPresent(one -> lent.put(issue.revision(), one)));
        return lent;
    }

    /**
     * Returns the determinations on which drafts that are open rest, and after them those on which revisions rest. A revision that a
     * draft becomes states its uncertainty, so that those have the trials that count of the tested mix with them.
     */
    List<Lent> with(List<Version<FactorProposal>> proposed, Collection<Lent> issued) {
        List<Lent> all = new ArrayList<>();
        proposed.stream()
                .map(Version::value)
                .filter(proposal -> proposal.isOpen() && proposal.isLent())
                .forEach(proposal -> counting(
                                proposal.determinationId(),
                                proposal.grounds().group().orElseThrow())
                        .ifPresent(all::add));
        all.addAll(issued);
        return all;
    }

    private Optional<Lent> counting(DeterminationId id, GroupGround ground) {
        List<?> key = List.of(id, ground, "counting");
        if (!known.containsKey(key)) {
            // Two mixes might each have a draft found on the other.
            known.put(key, Optional.empty());
            known.put(
                    key,
                    lent(id, ground)
                            .map(lent -> new Lent(
                                    lent.determination(),
                                    lent.terms(),
                                    reader.counted(lent.terms().testedNow(), this),
                                    lent.issues())));
        }
        return known.getOrDefault(key, Optional.empty());
    }

    private Optional<Lent> lent(DeterminationId id, GroupGround ground) {
        List<?> key = List.of(id, ground);
        if (!known.containsKey(key)) {
            known.put(key, read(id, ground));
        }
        return known.getOrDefault(key, Optional.empty());
    }

    private Optional<Lent> read(DeterminationId id, GroupGround ground) {
        String tested = ground.testedMix().text();
        return book.latest(MixDesign.class, tested)
                .flatMap(now -> terms(ground, now)
                        .flatMap(terms -> book.latest(Determination.class, id.text())
                                .filter(one -> one.value().mixId().equals(ground.testedMix()))
                                .map(one -> new Lent(
                                        reader.judge(
                                                one,
                                                now,
                                                reader.profile(now),
                                                book.latestOf(Belonging.TRIALS_OF_DETERMINATION, id.text())),
                                        terms,
                                        List.of(),
                                        book.latestOf(Belonging.ISSUES_OF_MIX, tested).stream()
                                                .sorted(EvidenceReader.BY_REVISION)
                                                .toList()))));
    }

    /** Returns the terms of a group, as it was and as it is. */
    Optional<GroupTerms> terms(GroupGround ground, Version<MixDesign> testedNow) {
        return book.latest(FactorGroup.class, ground.group().text())
                .map(group -> new GroupTerms(
                        group, reader.then(FactorGroup.class, ground.group().text(), ground.version()), testedNow));
    }
}

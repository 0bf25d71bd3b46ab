package porebench.desk.register;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.evidence.Evidence;
import porebench.evidence.SourceFactors;
import porebench.method.Answer;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** The register of sources. */
final class SourcesModel extends RecordModel<Source, SourceDraft> {
    private static final int DECIMALS = 2;

    private Optional<Known> known = Optional.empty();

    SourcesModel(DeskModel desk, Texts texts) {
        super(desk, texts, Source.class, SourceDraft.BLANK);
        follow();
    }

    @Override
    SourceDraft blank() {
        return SourceDraft.BLANK;
    }

    @Override
    SourceDraft draftOf(Source source) {
        return new SourceDraft(
                source.id().text(),
                source.name(),
                source.role(),
                source.place(),
                source.ledge(),
                shown(source.relativeDensity()),
                shown(source.absorptionPercent()),
                source.remarks());
    }

    String shown(Optional<BigDecimal> number) {
        Numbers numbers = desk().tools().numbers();
        return number.map(numbers::show).orElse("");
    }

    @Override
    Answer<Source> read(SourceDraft draft) {
        List<Problem> problems = new ArrayList<>();
        TypedNumber typed = new TypedNumber(desk().tools().numbers(), problems);
        typed.requireText("id", texts().get("source.id.plain"), draft.id());
        typed.requireText("name", texts().get("source.name.plain"), draft.name());
        Optional<BigDecimal> density = typed.optional(
                "relativeDensity",
                texts().get("source.relativeDensity.plain"),
                draft.relativeDensity(),
                Limit.RELATIVE_DENSITY);
        Optional<BigDecimal> absorption = typed.optional(
                "absorption", texts().get("source.absorption.plain"), draft.absorption(), Limit.ABSORPTION);
        if (isNew()
                && rows().stream()
                        .anyMatch(
                                row -> row.value().recordId().equals(draft.id().strip()))) {
            problems.add(Problem.error(
                    "id",
                    "book.already-there",
                    texts().get("source.word"),
                    draft.id().strip()));
        }
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        return Answer.of(
                new Source(
                        new SourceId(draft.id()),
                        draft.name().strip(),
                        draft.role(),
                        draft.place().strip(),
                        draft.ledge().strip(),
                        density,
                        absorption,
                        draft.remarks().strip()),
                problems);
    }

    @Override
    Map<String, String> said(Source source) {
        Map<String, String> said = new LinkedHashMap<>();
        said.put(texts().get("source.name.plain"), source.name());
        said.put(texts().get("source.role.plain"), roleWords(source.role()));
        said.put(texts().get("source.place.plain"), source.place());
        said.put(texts().get("source.ledge.plain"), source.ledge());
        said.put(texts().get("source.relativeDensity.plain"), shown(source.relativeDensity()));
        said.put(texts().get("source.absorption.plain"), shown(source.absorptionPercent()));
        said.put(texts().get("source.remarks.plain"), source.remarks());
        return said;
    }

    String roleWords(Role role) {
        return texts().get("role." + role.symbol());
    }

    /** Returns the mixes that use the source on view. */
    List<MixDesign> mixesUsing() {
        return base().map(version -> mixesUsing(version.value().id())).orElse(List.of());
    }

    private List<MixDesign> mixesUsing(SourceId id) {
        return desk().everything().stream()
                .map(evidence -> evidence.mix().value())
                .filter(mix -> mix.sources().contains(id))
                .toList();
    }

    /** Returns the factors of a source; they are found once for a state of the lab book, not at each letter typed. */
    private Optional<SourceFactors> factors(SourceId id) {
        if (known.filter(found -> found.id().equals(id) && found.mixes() == desk().everything())
                .isEmpty()) {
            known = Optional.of(new Known(id, desk().everything(), SourceFactors.of(desk().everything(), id)));
        }
        return known.flatMap(Known::factors);
    }

    /** What was found in a state of the lab book. */
    private record Known(SourceId id, List<Evidence> mixes, Optional<SourceFactors> factors) {}

    /** Says what factors the mixes with the source on view have, and where most further ones lie; empty when none has any. */
    Optional<String> factors() {
        Numbers numbers = desk().tools().numbers();
        return base().flatMap(version -> factors(version.value().id()))
                .map(found -> found.range()
                        .map(range -> texts().get(
                                        "source.range",
                                        Integer.toString(found.seen().count()),
                                        numbers.show(found.seen().low(), DECIMALS),
                                        numbers.show(found.seen().high(), DECIMALS),
                                        numbers.show(range.low(), DECIMALS),
                                        numbers.show(range.high(), DECIMALS)))
                        .orElseGet(() -> texts().get(
                                        "source.factors",
                                        Integer.toString(found.seen().count()),
                                        numbers.show(found.seen().low(), DECIMALS),
                                        numbers.show(found.seen().high(), DECIMALS),
                                        Integer.toString(SourceFactors.FEWEST))));
    }

    /** Returns the mixes whose factor would no longer hold if the draft were saved: it makes another stone of it. */
    List<MixId> factorsMadeUntrue() {
        Optional<Source> changed = read(draft()).value();
        boolean sameStone =
                base().isEmpty() || changed.isEmpty() || base().get().value().isSameStoneAs(changed.get());
        return sameStone
                ? List.of()
                : mixesUsing().stream()
                        .map(MixDesign::id)
                        .filter(this::hasFactor)
                        .toList();
    }

    private boolean hasFactor(MixId mix) {
        return desk().rows().stream()
                .anyMatch(row -> row.mixId().equals(mix) && row.factorPercent().isPresent());
    }

    @Override
    Optional<String> effects() {
        List<MixId> untrue = factorsMadeUntrue();
        return untrue.isEmpty()
                ? Optional.empty()
                : Optional.of(texts().get(
                                "source.effects",
                                base().orElseThrow().value().id().text(),
                                String.join(
                                        ", ", untrue.stream().map(MixId::text).toList())));
    }
}

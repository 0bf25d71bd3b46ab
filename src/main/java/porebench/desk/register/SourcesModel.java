package porebench.desk.register;

import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Evidence;
import porebench.evidence.SourceFactors;
import porebench.method.Digits;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.column.Column;
import porebench.record.column.SourceColumns;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** The register of sources. */
final class SourcesModel extends RecordModel<Source> {
    static final TypedDraft BLANK = TypedDraft.BLANK.with(SourceColumns.ROLE, Role.COARSE.symbol());

    private static final int DECIMALS = Digits.AIR;

    SourcesModel(DeskModel desk, Texts texts) {
        super(desk, texts, Source.class, SourceColumns.ALL, "source", () -> BLANK);
        follow();
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return texts().get("role." + symbol);
    }

    /** A person who types a source knows how it is called. */
    @Override
    void requireMore(DraftReader reader) {
        reader.require(SourceColumns.NAME);
    }

    /** Says which mixes use the source on view, and what factors they have. */
    @Override
    String note() {
        if (isNew()) {
            return "";
        }
        List<String> mixes = mixesUsing().stream().map(mix -> mix.id().text()).toList();
        return mixes.isEmpty()
                ? texts().get("source.unused")
                : texts().get("source.used", String.join(", ", mixes))
                        + factors().map(said -> " " + said).orElse("");
    }

    /** Returns the mixes that use the source on view. */
    List<MixDesign> mixesUsing() {
        return known().map(Known::mixes).orElse(List.of());
    }

    @Override
    List<MixId> usedBy() {
        return isNew() ? List.of() : mixesUsing().stream().map(MixDesign::id).toList();
    }

    private Optional<Known> known() {
        return base().flatMap(
                        version -> desk().answer(new MixesOf(version.value().id())));
    }

    /**
     * What was found of a source.
     *
     * @param mixes the mixes that use it
     * @param factors what factors they have; empty when none has any
     */
    private record Known(List<MixDesign> mixes, Optional<SourceFactors> factors) {}

    /** Asks for the mixes of a source. */
    private record MixesOf(SourceId id) implements Question<Known> {
        @Override
        public Known answer(Reading seen) {
            List<Evidence> mixes = seen.standing().ofSource(id);
            return new Known(
                    mixes.stream().map(evidence -> evidence.mix().value()).toList(), SourceFactors.of(mixes, id));
        }
    }

    /** Says what factors the mixes with the source on view have, and where most further ones lie; empty when none has any. */
    Optional<String> factors() {
        Numbers numbers = desk().tools().numbers();
        return known().flatMap(Known::factors)
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

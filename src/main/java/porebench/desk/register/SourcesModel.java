package porebench.desk.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.chart.source.StoneFigures;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Days;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.evidence.SourceFactors;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.custody.Holders;
import porebench.evidence.source.SourceTouch;
import porebench.evidence.source.SourceTrial;
import porebench.evidence.source.TouchedMix;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.SourceStep;
import porebench.record.book.Belonging;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.SourceColumns;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.source.MeasuredStone;
import porebench.record.source.SourceGate;
import porebench.record.source.SourceStory;

/** The register of sources. */
final class SourcesModel extends RecordModel<Source> {
    private static final List<Column<Source, ?>> FIGURES = List.of(
            SourceColumns.PLACE,
            SourceColumns.LEDGE,
            SourceColumns.RELATIVE_DENSITY,
            SourceColumns.ABSORPTION,
            SourceColumns.RETAINED);

    private static final List<Column<Source, ?>> IN_FORM = List.of(
            SourceColumns.ID,
            SourceColumns.NAME,
            SourceColumns.PRODUCER,
            SourceColumns.PRODUCT,
            SourceColumns.SIZE,
            SourceColumns.ROLE,
            SourceColumns.PLACE,
            SourceColumns.LEDGE,
            SourceColumns.RELATIVE_DENSITY,
            SourceColumns.ABSORPTION,
            SourceColumns.RETAINED,
            SourceColumns.REMARKS,
            SourceColumns.STEP,
            SourceColumns.CHANGED_ON,
            SourceColumns.REASON);

    static final TypedDraft BLANK = TypedDraft.BLANK.with(SourceColumns.ROLE, Role.COARSE.symbol());

    private static final int DECIMALS = Digits.AIR;

    private List<MixId> asked = List.of();

    SourcesModel(DeskModel desk, Texts texts) {
        super(desk, texts, Source.class, SourceColumns.ALL, "source", () -> BLANK);
        follow();
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return column == SourceColumns.STEP
                ? texts().get("source.act." + (symbol.isEmpty() ? "none" : symbol))
                : texts().get("role." + symbol);
    }

    /** A person who types a source knows how it is called. */
    @Override
    void requireMore(DraftReader reader) {
        reader.require(SourceColumns.NAME);
    }

    /** Says how many mixes use the source on view, how many trials they have, and what factors. */
    @Override
    String note() {
        return touch().map(found -> found.mixes().isEmpty()
                        ? texts().get("source.unused")
                        : texts().get(
                                                "source.used",
                                                Integer.toString(found.mixes().size()),
                                                Integer.toString(found.trials()))
                                + factors().map(said -> " " + said).orElse(""))
                .orElse("");
    }

    /** Says what factors the mixes with the source on view have, and where most further ones lie; empty when none has any. */
    Optional<String> factors() {
        Numbers numbers = desk().tools().numbers();
        return touch().flatMap(SourceTouch::factors)
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

    /** Returns what the source touches, and what its draft would do to that; empty while it is looked up, and of a new source. */
    Optional<SourceTouch> touch() {
        return base().flatMap(
                        version -> desk().answer(new TouchOf(version.value().id(), wish())))
                .flatMap(found -> found);
    }

    /** Says what the draft would do to what rests on the source; empty while it is looked up. */
    String touchWords() {
        return touch().map(found -> {
                    if (found.mixes().isEmpty()) {
                        return texts().get("source.touch.nobody");
                    }
                    String day = Days.show(found.looked());
                    return switch (wish().map(SourceTouch.Wish::step)
                            .map(SourceStep::name)
                            .orElse("")) {
                        case "CHANGED" ->
                            texts().get(
                                                    "source.touch.changed",
                                                    day,
                                                    Integer.toString(
                                                            found.madeUntrue().size()),
                                                    Integer.toString(SourceTouch.cardsOut(found.madeUntrue())))
                                    + held(found.madeUntrue());
                        case "WITHDRAWN" ->
                            texts().get(
                                            "source.touch.withdrawn",
                                            Integer.toString(found.madeTrue().size()));
                        case "CORRECTED" -> corrected(found);
                        default -> texts().get("source.touch.now");
                    };
                })
                .orElse("");
    }

    /** Says who holds the cards of some mixes; nothing where none is out. */
    private String held(List<TouchedMix> mixes) {
        List<HeldCard> out = SourceTouch.out(mixes);
        return out.isEmpty()
                ? ""
                : " "
                        + texts().get(
                                        "source.holders",
                                        desk().tools().problemText().say(Holders.named(out)));
    }

    private String corrected(SourceTouch found) {
        int others = found.madeTrue().size() + found.madeUntrue().size();
        return others == 0
                ? texts().get("source.touch.corrected")
                : texts().get("source.touch.moved", Integer.toString(others));
    }

    /** Returns the step that is typed, as far as factors hang on it. */
    private Optional<SourceTouch.Wish> wish() {
        Optional<LocalDate> day = Days.parse(draft().text(SourceColumns.CHANGED_ON));
        return act().filter(step -> step != SourceStep.CHANGED || day.isPresent())
                .map(step -> new SourceTouch.Wish(step, step == SourceStep.WITHDRAWN ? Optional.empty() : day));
    }

    /** Returns what the draft is; empty where none is chosen. */
    Optional<SourceStep> act() {
        String symbol = draft().text(SourceColumns.STEP);
        return Stream.of(SourceStep.values())
                .filter(step -> step.symbol().equals(symbol))
                .findFirst();
    }

    /** Asks what a source touches; how its figures are typed does not matter for that. */
    private record TouchOf(SourceId id, Optional<SourceTouch.Wish> wish) implements Question<Optional<SourceTouch>> {
        @Override
        public Optional<SourceTouch> answer(Reading seen) {
            return SourceTouch.of(seen.book(), seen.standing()::each, id, wish, seen.moment());
        }
    }

    /** Returns the trials made with the source on view, the newest first; empty while they are looked up, and of a new source. */
    Optional<List<SourceTrial>> trials() {
        return base().flatMap(
                        version -> desk().answer(new TrialsOf(version.value().id())));
    }

    /** Asks for the trials made with a source. */
    private record TrialsOf(SourceId id) implements Question<List<SourceTrial>> {
        @Override
        public List<SourceTrial> answer(Reading seen) {
            return SourceTrial.of(seen.book(), seen.standing()::each, id);
        }
    }

    /** Returns what was measured of the source on view, the earliest first; none while it is looked up. */
    List<MeasuredStone> measured() {
        return story().flatMap(
                        story -> desk().answer(new MeasurementsOf(story.id())).map(all -> MeasuredStone.of(story, all)))
                .orElse(List.of());
    }

    /** Asks what was measured of a source. */
    private record MeasurementsOf(SourceId id) implements Question<List<Version<SourceMeasurement>>> {
        @Override
        public List<Version<SourceMeasurement>> answer(Reading seen) {
            return seen.book().latestOf(Belonging.MEASUREMENTS_OF_SOURCE, id.text());
        }
    }

    /** Returns what was measured of one figure beside the one in use; empty where nothing was. */
    Optional<StoneFigures> figures(StoneFigures.Figure figure) {
        List<MeasuredStone> measured = measured();
        return story().map(story -> StonePlots.of(
                        figure,
                        story,
                        measured,
                        desk().tools().today(),
                        desk().tools().zone()))
                .filter(found -> !found.measured().isEmpty());
    }

    /** Returns what the source was up to the version on view; empty of a new one and while it is looked up. */
    Optional<SourceStory> story() {
        int newest = base().map(Version::number).orElse(0);
        List<Version<Source>> all = new ArrayList<>(versions());
        all.removeIf(version -> version.number() > newest);
        Collections.reverse(all);
        return all.isEmpty() ? Optional.empty() : Optional.of(SourceStory.of(all));
    }

    @Override
    List<Problem> lookAt(Source source) {
        return isNew()
                ? List.of()
                : story().map(story ->
                                SourceGate.check(story, source, desk().tools().today()))
                        .orElse(List.of());
    }

    @Override
    Optional<String> reasonTyped() {
        return Optional.of(draft().text(SourceColumns.REASON).strip()).filter(text -> !text.isEmpty());
    }

    /** A new version says anew what it is. */
    @Override
    TypedDraft asTyped(TypedDraft kept) {
        return kept.with(SourceColumns.STEP, "")
                .with(SourceColumns.CHANGED_ON, "")
                .with(SourceColumns.REASON, "");
    }

    @Override
    List<Column<Source, ?>> inForm() {
        return IN_FORM;
    }

    /** A step is of a version that follows another; its day and reason belong to a step. */
    @Override
    public boolean isFixed(Column<?, ?> column) {
        if (column == SourceColumns.STEP) {
            return isNew();
        }
        if (column == SourceColumns.CHANGED_ON) {
            return !isNew()
                    && act().filter(step -> step != SourceStep.WITHDRAWN).isEmpty();
        }
        return column == SourceColumns.REASON ? act().isEmpty() : super.isFixed(column);
    }

    @Override
    public List<String> choices(Column<?, ?> column) {
        return column == SourceColumns.STEP
                ? Stream.concat(Stream.of(""), column.type().choices().stream()).toList()
                : super.choices(column);
    }

    @Override
    public String beside(Column<?, ?> column, TypedDraft draft) {
        return column == SourceColumns.CHANGED_ON ? texts().get("equipment.date-pattern") : super.beside(column, draft);
    }

    /** Taking a change back brings back what the stone before it was described by. */
    @Override
    public void type(Column<?, ?> column, String text) {
        Optional<Source> before = column == SourceColumns.STEP && text.equals(SourceStep.WITHDRAWN.symbol())
                ? story().flatMap(SourceGate::beforeTheLastChange)
                : Optional.empty();
        if (before.isPresent()) {
            TypedDraft earlier = draftOf(before.get());
            TypedDraft back = draft().with(SourceColumns.STEP, text).with(SourceColumns.CHANGED_ON, "");
            for (Column<Source, ?> figure : FIGURES) {
                back = back.with(figure, earlier.text(figure));
            }
            update(step(column), back);
        } else {
            super.type(column, text);
        }
    }

    @Override
    List<String> changes(Source before, Source after) {
        List<String> said = new ArrayList<>();
        after.step()
                .ifPresent(step -> said.add(after.changedOn()
                        .map(day -> texts().get("source.act-on." + step.symbol(), Days.show(day)))
                        .orElseGet(() -> texts().get("source.act." + step.symbol()))));
        said.addAll(super.changes(before, after));
        return said;
    }

    @Override
    Optional<String> effects() {
        return touch().filter(found -> !found.madeUntrue().isEmpty()).map(found -> {
            List<TouchedMix> untrue = found.madeUntrue();
            asked = untrue.stream().map(TouchedMix::mixId).toList();
            return texts().get(
                                    "source.effects",
                                    found.story().id().text(),
                                    Days.show(found.looked()),
                                    Integer.toString(untrue.size()),
                                    Integer.toString(SourceTouch.cardsOut(untrue)))
                    + held(untrue);
        });
    }

    /** Returns the mixes of which {@link #effects} said last that what is kept makes their factors untrue. */
    List<MixId> saidUntrue() {
        return asked;
    }
}

package porebench.desk.register;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.evidence.MeterStory;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.meter.MeterState;
import porebench.method.profile.Profiles;
import porebench.quantity.Unit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.column.Column;
import porebench.record.column.MeterColumns;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** The register of meters. */
final class MetersModel extends RecordModel<Meter> {
    private static final int DECIMALS = 4;

    private Map<MeterId, MeterStory> stories = Map.of();

    MetersModel(DeskModel desk, Texts texts) {
        super(desk, texts, Meter.class, MeterColumns.ALL, "meter", () -> blank(desk));
        follow();
        readStories();
        desk.onChange(this::readStories);
    }

    private void readStories() {
        stories = desk().meters().stream()
                .collect(Collectors.toMap(story -> story.meter().value().id(), story -> story));
    }

    /** Returns whether a meter may be trusted today. */
    MeterState state(Meter meter) {
        return Optional.ofNullable(stories.get(meter.id()))
                .map(story -> story.stateOn(desk().tools().today()))
                .orElse(MeterState.NEVER);
    }

    String stateWords(Meter meter) {
        boolean isInPart = Optional.ofNullable(stories.get(meter.id()))
                .filter(story -> story.isCalibratedInPartOn(desk().tools().today()))
                .isPresent();
        return texts().get("meter.state." + (isInPart ? "PART" : state(meter).name()));
    }

    /** Returns the last day on which a meter's calibration holds, blank while it has none. */
    String nextDueWords(Meter meter) {
        return Optional.ofNullable(stories.get(meter.id()))
                .flatMap(MeterStory::nextDue)
                .map(Days::show)
                .orElse("");
    }

    private static TypedDraft blank(DeskModel desk) {
        return TypedDraft.BLANK
                .with(MeterColumns.TYPE, MeterType.B.name())
                .withUnit(MeterColumns.BOWL, desk.units().bowlVolume().symbol())
                .with(MeterColumns.IN_SERVICE, true);
    }

    /** Says which mixes were tested on the meter on view. */
    @Override
    Optional<Column<?, ?>> turned() {
        return Optional.of(MeterColumns.BOWL);
    }

    /** A bowl kept in litres stands in cubic feet on a US screen, and the other way; what it was kept in is not changed by that. */
    @Override
    TypedDraft inShownUnit(Column<?, ?> column, Meter meter, TypedDraft kept) {
        VolumeUnit unit = desk().units().bowlVolume();
        String shown = desk().tools().numbers().show(meter.bowl(), unit, DECIMALS);
        return isLitres(meter.bowl().unit()) == (unit == VolumeUnit.LITRE)
                ? kept
                : kept.with(column, shown).withUnit(column, unit.symbol());
    }

    private static boolean isLitres(Unit<Volume> unit) {
        return unit == VolumeUnit.LITRE || unit == VolumeUnit.MILLILITRE || unit == VolumeUnit.CUBIC_METRE;
    }

    @Override
    String note() {
        if (isNew()) {
            return "";
        }
        List<MixId> mixes = usedBy();
        return mixes.isEmpty()
                ? texts().get("meter.note")
                : texts().get("meter.note") + " " + texts().get("meter.used", mixes.size());
    }

    @Override
    List<MixId> usedBy() {
        return base().flatMap(
                        version -> desk().answer(new MixesOn(version.value().id())))
                .orElse(List.of());
    }

    /** Asks for the mixes with trials on a meter. */
    private record MixesOn(MeterId meter) implements Question<List<MixId>> {
        @Override
        public List<MixId> answer(Reading seen) {
            return seen.book().mixesOn(meter);
        }
    }

    @Override
    List<Problem> lookAt(Meter meter) {
        double litres = VolumeUnit.LITRE.in(meter.bowl().value());
        double least = Profiles.standard().number(FigureName.LEAST_BOWL);
        return litres < least
                ? List.of(Problem.warning(
                        "bowl",
                        "trial.bowl-small",
                        litres,
                        least,
                        Profiles.standard().title()))
                : List.of();
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return texts().get("meter.type." + symbol);
    }

    /** Returns a bowl volume in the unit system that is shown. */
    String bowlWords(Meter meter) {
        VolumeUnit unit = desk().units().bowlVolume();
        return desk().tools().numbers().show(meter.bowl(), unit, DECIMALS) + " " + unit.symbol();
    }
}

package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.form.DraftModel;
import porebench.desk.form.FileNames;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.UnitSystem;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedTrial;
import porebench.evidence.paper.TrialSheet;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.sample.Batch;
import porebench.method.sample.Constituent;
import porebench.port.Paper;
import porebench.quantity.MassUnit;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.id.MeterId;

/** What is chosen for the correction sample of the selected mix, and what follows from it; nothing of it is kept. */
final class SampleModel extends DraftModel {
    private static final String USUAL_SPARE_PERCENT = "10";

    private final DeskModel desk;
    private Optional<Version<MixDesign>> mix = Optional.empty();
    private List<Column<SampleReading, BigDecimal>> moistures = List.of();
    private UnitSystem units;
    private Optional<Paper> chosenPaper = Optional.empty();
    private Optional<SampleReading> reading = Optional.empty();

    SampleModel(DeskModel desk) {
        super(
                Texts.of("porebench.desk.sample.sample", desk.tools().locale()),
                "form.",
                in(
                        desk.units(),
                        TypedDraft.BLANK
                                .with(SampleFields.METER_TYPE, MeterType.B.name())
                                .with(SampleFields.SPARE, USUAL_SPARE_PERCENT)));
        this.desk = desk;
        this.units = desk.units();
        history().onChange(this::read);
        followDesk();
    }

    /** Follows the selected mix, its corrections and the units. */
    void followDesk() {
        Optional<Version<MixDesign>> selected = desk.evidence().map(Evidence::mix);
        if (!selected.equals(mix)) {
            boolean isSameMix = selected.map(version -> version.value().id())
                    .equals(mix.map(version -> version.value().id()));
            mix = selected;
            moistures = IntStream.range(0, aggregates().size())
                    .mapToObj(SampleFields::moisture)
                    .toList();
            desk.evidence().ifPresent(evidence -> history().restart(begin(evidence, isSameMix)));
        }
        if (units != desk.units()) {
            units = desk.units();
            history().update(texts().get("step.units"), in(units, draft()));
        }
        read();
    }

    /** Returns a draft shown in other units; a bowl volume that is typed keeps its own. */
    private static TypedDraft in(UnitSystem units, TypedDraft draft) {
        TypedDraft shown = draft.with(SampleFields.MASS_UNIT, units.benchMass().symbol());
        return draft.text(SampleFields.BOWL).isBlank()
                ? shown.withUnit(SampleFields.BOWL, units.bowlVolume().symbol())
                : shown;
    }

    /** Returns the draft for another mix, each aggregate in the moisture of its design. */
    private TypedDraft begin(Evidence evidence, boolean isSameMix) {
        TypedDraft before = draft().without(SampleFields.MOISTURE);
        if (before.text(SampleFields.TRIALS).isEmpty()) {
            String least = Integer.toString(evidence.profile().count(FigureName.LEAST_TRIALS));
            before = before.with(SampleFields.TRIALS, least);
        }
        boolean hasBowl = !before.text(SampleFields.METER).isEmpty()
                || !before.text(SampleFields.BOWL).isBlank();
        return isSameMix || hasBowl
                ? before
                : before.with(
                        SampleFields.METER,
                        likelyMeter(evidence).map(MeterId::text).orElse(""));
    }

    /** Returns the meter of the newest trial of the mix, or the laboratory's only one. */
    private Optional<MeterId> likelyMeter(Evidence evidence) {
        List<JudgedTrial> trials = evidence.determinations().stream()
                .flatMap(determination -> determination.trials().stream())
                .toList();
        if (!trials.isEmpty()) {
            MeterId last = trials.get(trials.size() - 1).trial().value().meterId();
            return Optional.of(last).filter(evidence.meters()::containsKey);
        }
        List<Meter> inService = meters(evidence, "");
        return inService.size() == 1 ? Optional.of(inService.get(0).id()) : Optional.empty();
    }

    private void read() {
        reading = desk.evidence()
                .filter(evidence -> Optional.of(evidence.mix()).equals(mix))
                .map(evidence -> new SampleReading(
                        evidence, meters(), this, moistures, desk.tools().numbers()));
    }

    // The form.

    @Override
    public String key(Column<?, ?> column) {
        return aggregate(column).isPresent() ? "form.moisture" : super.key(column);
    }

    /** Returns the aggregate whose moisture stands in a column. */
    private Optional<Constituent> aggregate(Column<?, ?> column) {
        int index = moistures.indexOf(column);
        return index < 0 ? Optional.empty() : Optional.of(aggregates().get(index));
    }

    /** Returns the columns of today's moisture, one an aggregate of the mix; others once the mix or its design is another. */
    List<Column<SampleReading, BigDecimal>> moistures() {
        return moistures;
    }

    private List<Constituent> aggregates() {
        return mix.map(version -> version.value().aggregates()).orElse(List.of());
    }

    @Override
    public String label(Column<?, ?> column) {
        return aggregate(column)
                .map(known -> known.sourceId()
                        .map(source -> texts().get(key(column), known.name(), source))
                        .orElse(known.name()))
                .orElseGet(() -> super.label(column));
    }

    @Override
    public String words(Column<?, ?> column) {
        return texts().get(
                        key(column) + ".plain",
                        aggregate(column).map(Constituent::name).orElse(""));
    }

    @Override
    public String step(Column<?, ?> column) {
        return texts().get(
                        key(column) + ".step",
                        aggregate(column).map(Constituent::name).orElse(""));
    }

    /** Returns the moisture by the design, which an empty field means. */
    @Override
    public String hint(Column<?, ?> column) {
        return aggregate(column)
                .map(known -> known.moisturePercent()
                        .map(percent -> texts().get(
                                        "moisture.designed",
                                        desk.tools().numbers().show(percent) + " %"))
                        .orElseGet(() -> texts().get("moisture.designed.ssd")))
                .orElse("");
    }

    @Override
    public boolean isChosen(Column<?, ?> column) {
        return column == SampleFields.METER || super.isChosen(column);
    }

    /** Returns what there is to choose from; of meters first none, for a bowl volume that is typed. */
    @Override
    public List<String> choices(Column<?, ?> column) {
        return column == SampleFields.METER
                ? Stream.concat(Stream.of(""), meters().stream().map(Meter::recordId))
                        .toList()
                : super.choices(column);
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        if (column == SampleFields.METER_TYPE) {
            return texts().get("type." + symbol);
        }
        return column == SampleFields.METER ? meterWords(symbol) : symbol;
    }

    private String meterWords(String id) {
        return meters().stream()
                .filter(meter -> meter.recordId().equals(id))
                .findFirst()
                .map(known -> texts().get(
                                "meter.line",
                                id,
                                known.type().name(),
                                bowlWords(known) + " "
                                        + desk.units().bowlVolume().symbol()))
                .orElseGet(() -> texts().get("meter.none"));
    }

    private String bowlWords(Meter known) {
        return desk.tools().numbers().show(known.bowl(), desk.units().bowlVolume(), 4);
    }

    /** Returns what a field shows: the bowl of a chosen meter as the register has it. */
    @Override
    public String shown(Column<?, ?> column) {
        Optional<Meter> meter = meter();
        if (column == SampleFields.METER) {
            return meter.map(Meter::recordId).orElse("");
        }
        return meter.filter(any -> column == SampleFields.BOWL)
                .map(this::bowlWords)
                .orElseGet(() -> super.shown(column));
    }

    @Override
    public String shownUnit(Column<?, ?> column) {
        return meter().map(known -> desk.units().bowlVolume().symbol()).orElseGet(() -> super.shownUnit(column));
    }

    @Override
    public boolean isFixed(Column<?, ?> column) {
        return column == SampleFields.BOWL && meter().isPresent();
    }

    private Optional<Meter> meter() {
        return reading.flatMap(SampleReading::meter);
    }

    /** Returns the unit in which masses are shown. */
    MassUnit massUnit() {
        String symbol = draft().text(SampleFields.MASS_UNIT);
        return Arrays.stream(MassUnit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    /** Returns the mix the sample is for; empty when none is selected. */
    Optional<Version<MixDesign>> mix() {
        return mix;
    }

    /** Returns what follows from the draft; empty when no mix is selected. */
    Optional<SampleReading> reading() {
        return reading;
    }

    /** Returns the problems a person should see. */
    List<Problem> problems() {
        return reading.map(SampleReading::problems).orElse(List.of());
    }

    /** Returns the meters to choose from: those in service, and the one chosen. */
    List<Meter> meters() {
        return desk.evidence()
                .map(evidence -> meters(evidence, draft().text(SampleFields.METER)))
                .orElse(List.of());
    }

    private List<Meter> meters(Evidence evidence, String chosen) {
        return evidence.metersOn(desk.tools().today()).stream()
                .filter(meter -> meter.inService() || meter.recordId().equals(chosen))
                .toList();
    }

    /** Returns whether any aggregate is weighed by another moisture than the mix design's. */
    boolean hasMoistureOfToday() {
        return moistures.stream().anyMatch(column -> !draft().text(column).isBlank());
    }

    /** Says in a line what the masses follow from. */
    String settings() {
        String bowl = meter().isPresent()
                ? meterWords(draft().text(SampleFields.METER))
                : draft().text(SampleFields.BOWL).isBlank()
                        ? texts().get("meter.none")
                        : texts().get(
                                        "settings.bowl",
                                        draft().text(SampleFields.BOWL).strip() + " " + draft().unit(SampleFields.BOWL),
                                        choiceWords(SampleFields.METER_TYPE, draft().text(SampleFields.METER_TYPE)));
        return texts().get(
                        "settings.said",
                        bowl,
                        draft().text(SampleFields.TRIALS).strip(),
                        draft().text(SampleFields.SPARE).strip(),
                        massUnit().symbol(),
                        texts().get(hasMoistureOfToday() ? "settings.moisture.today" : "settings.moisture.designed"));
    }

    // The sheet.

    /** Returns the paper for the sheet: the one chosen, or what goes with the units. */
    Paper paper() {
        return chosenPaper.orElse(units.sheet());
    }

    void choosePaper(Paper paper) {
        chosenPaper = Optional.of(paper);
    }

    /** Returns the trial sheet; empty while something forbids it. */
    Optional<TrialSheet> sheet() {
        if (mix.isEmpty() || reading.isEmpty()) {
            return Optional.empty();
        }
        SampleReading now = reading.get();
        return now.sample()
                .flatMap(sample -> now.weighOut()
                        .map(weighOut -> new TrialSheet(
                                desk.laboratory(),
                                withMoistureOfToday(mix.get().value()),
                                sample,
                                weighOut,
                                now.meterType(),
                                now.meter(),
                                massUnit(),
                                desk.evidence().orElseThrow().profile())));
    }

    /** The sheet shows the mix as it is weighed today; its sample is computed already and is not computed from this. */
    private MixDesign withMoistureOfToday(MixDesign designed) {
        List<Constituent> constituents = new ArrayList<>();
        int aggregate = 0;
        for (Constituent constituent : designed.batch().constituents()) {
            Optional<BigDecimal> today = constituent.role().isAggregate()
                    ? desk.tools().numbers().parse(draft().text(moistures.get(aggregate++)))
                    : Optional.empty();
            constituents.add(today.isPresent() ? withMoisture(constituent, today) : constituent);
        }
        Batch batch = designed.batch();
        return new MixDesign(
                designed.id(),
                designed.title(),
                new Batch(constituents, batch.volume(), batch.targetAirPercent(), batch.wetSieved()),
                designed.soakMinutes(),
                designed.airTolerancePercent(),
                designed.profileId(),
                designed.remarks(),
                designed.plant());
    }

    private static Constituent withMoisture(Constituent designed, Optional<BigDecimal> moisture) {
        return new Constituent(
                designed.name(),
                designed.role(),
                designed.sourceId(),
                designed.mass(),
                designed.state(),
                designed.absorptionPercent(),
                moisture,
                designed.relativeDensity(),
                designed.retainedPercent());
    }

    /** Returns a name for the sheet's file that every file system takes. */
    String sheetFileName() {
        String id = mix.map(version -> version.value().id().text()).orElse("");
        return FileNames.dated(
                texts().get("sheet.file", FileNames.part(id)), desk.tools().today());
    }
}

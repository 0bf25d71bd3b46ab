package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.form.History;
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
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/** What is chosen for the correction sample of the selected mix, and what follows from it; nothing of it is kept. */
final class SampleModel {
    private static final String USUAL_SPARE_PERCENT = "10";

    private final DeskModel desk;
    private final Texts texts;
    private final History<SampleDraft> history;
    private Optional<Version<MixDesign>> mix = Optional.empty();
    private UnitSystem units;
    private Optional<Paper> chosenPaper = Optional.empty();
    private Optional<SampleReading> reading = Optional.empty();

    SampleModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.sample.sample", desk.tools().locale());
        this.units = desk.units();
        this.history = new History<>(SampleDraft.begin(units, "", USUAL_SPARE_PERCENT));
        history.onChange(this::read);
        followDesk();
    }

    /** Follows the selected mix, its corrections and the units. */
    void followDesk() {
        Optional<Version<MixDesign>> selected = desk.evidence().map(Evidence::mix);
        if (!selected.equals(mix)) {
            boolean isSameMix = selected.map(version -> version.value().id())
                    .equals(mix.map(version -> version.value().id()));
            mix = selected;
            desk.evidence().ifPresent(evidence -> history.restart(begin(evidence, isSameMix)));
        }
        if (units != desk.units()) {
            units = desk.units();
            history.update(texts.get("step.units"), draft().in(units));
        }
        read();
    }

    private SampleDraft begin(Evidence evidence, boolean isSameMix) {
        SampleDraft before = draft();
        if (before.trials().isEmpty()) {
            String least = Integer.toString(evidence.profile().count(FigureName.LEAST_TRIALS));
            before = before.withTrials(least);
        }
        if (!isSameMix && before.meter().isEmpty() && before.bowl().isBlank()) {
            before = before.withMeter(likelyMeter(evidence));
        }
        int count = evidence.mix().value().aggregates().size();
        return before.forAggregates(count);
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
        List<Meter> inService = meters(evidence, Optional.empty());
        return inService.size() == 1 ? Optional.of(inService.get(0).id()) : Optional.empty();
    }

    private void read() {
        reading = desk.evidence()
                .filter(evidence -> Optional.of(evidence.mix()).equals(mix))
                .map(evidence -> SampleReader.read(
                        evidence, meters(), draft(), desk.tools().numbers(), texts));
    }

    Texts texts() {
        return texts;
    }

    History<SampleDraft> history() {
        return history;
    }

    SampleDraft draft() {
        return history.draft();
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
                .map(evidence -> meters(evidence, draft().meter()))
                .orElse(List.of());
    }

    private List<Meter> meters(Evidence evidence, Optional<MeterId> chosen) {
        return evidence.metersOn(desk.tools().today()).stream()
                .filter(meter -> meter.inService() || chosen.equals(Optional.of(meter.id())))
                .toList();
    }

    // What is chosen and typed.

    void chooseMeter(Optional<MeterId> meter) {
        history.update(texts.get("step.meter"), draft().withMeter(meter));
    }

    void typeBowl(String text) {
        history.update(texts.get("step.bowl"), draft().withBowl(text));
    }

    void chooseBowlUnit(VolumeUnit unit) {
        history.update(texts.get("step.bowl-unit"), draft().withBowlUnit(unit));
    }

    void chooseMeterType(MeterType type) {
        history.update(texts.get("step.meter-type"), draft().withMeterType(type));
    }

    void typeTrials(String text) {
        history.update(texts.get("step.trials"), draft().withTrials(text));
    }

    void typeSpare(String text) {
        history.update(texts.get("step.spare"), draft().withSpare(text));
    }

    void chooseMassUnit(MassUnit unit) {
        history.update(texts.get("step.mass-unit"), draft().withMassUnit(unit));
    }

    void typeMoisture(int aggregate, String text) {
        String name = mix.orElseThrow().value().aggregates().get(aggregate).name();
        history.update(texts.get("step.moisture", name), draft().withMoisture(aggregate, text));
    }

    /** Returns whether any aggregate is weighed by another moisture than the mix design's. */
    boolean hasMoistureOfToday() {
        return draft().moistures().stream().anyMatch(typed -> !typed.isBlank());
    }

    // The sheet.

    /** Returns the paper for the sheet: the one chosen, or what goes with the units. */
    Paper paper() {
        return chosenPaper.orElse(units == UnitSystem.US ? Paper.LETTER : Paper.A4);
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
                                draft().massUnit(),
                                desk.evidence().orElseThrow().profile())));
    }

    /** The sheet shows the mix as it is weighed today; its sample is computed already and is not computed from this. */
    private MixDesign withMoistureOfToday(MixDesign designed) {
        List<Constituent> constituents = new ArrayList<>();
        int aggregate = 0;
        for (Constituent constituent : designed.batch().constituents()) {
            Optional<BigDecimal> today = constituent.role().isAggregate()
                    ? desk.tools().numbers().parse(draft().moistures().get(aggregate++))
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
                designed.remarks());
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
        return texts.get("sheet.file", id.replaceAll("[^\\p{L}\\p{N}._-]+", "-"));
    }
}

package porebench.desk.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.chart.forecast.ForecastCheck;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Numbers;
import porebench.evidence.forecast.ForecastTrials;
import porebench.evidence.forecast.LaboratoryForecast;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.forecast.Forecast;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.SourceAir;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.book.LabBook;
import porebench.record.book.Version;

/**
 * What the trials of the laboratory let expect of the draft of a mix design: nothing of it is kept.
 *
 * <p>The trials are read when a person asks for it; from then on the forecast follows what is typed. Once the lab book has changed
 * it is shown no longer, and asked for again.
 */
final class ForecastModel {
    /** Of so many trials the determination would be: as many as most methods ask for at least. */
    static final int TRIALS = 3;

    private static final int DECIMALS = 2;
    private static final int MASS_DECIMALS = 3;

    private final MixModel mix;
    private final DeskModel desk;
    private final Texts texts;
    private final Numbers numbers;
    private Optional<Known> known = Optional.empty();

    /** What was read, and when. */
    private record Known(LabBook book, long upTo, Answer<LaboratoryForecast> laboratory) {}

    /** Reads the trials of all mixes. */
    record OfAllTrials() implements Question<Answer<LaboratoryForecast>> {
        @Override
        public Answer<LaboratoryForecast> answer(Reading seen) {
            return ForecastTrials.of(seen.standing());
        }
    }

    /**
     * What a source adds, in words.
     *
     * @param source its name
     * @param mass what of it would be weighed for the bowl
     * @param poreAir its pore air in mL/kg; a dash where it is not told apart
     * @param uncertainty the standard uncertainty of that
     * @param part what it adds, in % air
     * @param apart whether it is told apart from the others
     */
    record Line(String source, String mass, String poreAir, String uncertainty, String part, String apart) {}

    /**
     * What is shown.
     *
     * @param headline the forecast in a sentence, or why there is none
     * @param against what the change to the design as it is kept would do; may be empty
     * @param isForecast whether there is a forecast
     * @param lines one a source, with what would be weighed of it; none while the draft is wrong
     * @param problems why there is no forecast, or why it is doubtful
     */
    record Shown(String headline, String against, boolean isForecast, List<Line> lines, List<Problem> problems) {}

    ForecastModel(MixModel mix) {
        this.mix = mix;
        this.desk = mix.desk();
        this.texts = mix.texts();
        this.numbers = desk.tools().numbers();
    }

    /** Returns the unit and the bowl that masses are shown for. */
    String massHeading() {
        MassUnit unit = desk.units().benchMass();
        VolumeUnit volume = desk.units().bowlVolume();
        return texts.get(
                "forecast.mass",
                unit.symbol(),
                numbers.show(BatchFigures.NOMINAL_BOWL.in(volume), volume == VolumeUnit.LITRE ? 0 : MASS_DECIMALS) + " "
                        + volume.symbol());
    }

    /** Reads the trials of the laboratory, and tells when that is done. */
    void ask(Runnable then) {
        LabBook book = desk.book();
        long upTo = desk.standing().upTo();
        desk.ask(new OfAllTrials(), laboratory -> {
            known = Optional.of(new Known(book, upTo, laboratory));
            then.run();
        });
    }

    /** Returns every determination beside what the other mixes say of it; empty while there is no forecast of the lab book as it stands. */
    Optional<ForecastCheck> check() {
        return known.filter(this::isOfToday)
                .flatMap(one -> one.laboratory().value())
                .map(laboratory -> {
                    List<ForecastCheck.Point> points = new ArrayList<>();
                    for (PoreAir.Compared one : laboratory.compared()) {
                        one.forecastPercent()
                                .ifPresent(forecast -> points.add(new ForecastCheck.Point(
                                        one.mix(), one.determination(), forecast, one.measuredPercent())));
                    }
                    return new ForecastCheck(points, laboratory.compared().size() - points.size(), desk.isTraining());
                });
    }

    private boolean isOfToday(Known one) {
        return one.book() == desk.book() && one.upTo() == desk.standing().upTo();
    }

    /** Returns what is to be shown of the draft as it stands. */
    Shown shown() {
        if (known.isEmpty()) {
            return without(texts.get("forecast.not-asked"), List.of());
        }
        if (!isOfToday(known.get())) {
            return without(texts.get("forecast.stale"), List.of());
        }
        Answer<LaboratoryForecast> laboratory = known.get().laboratory();
        if (laboratory.value().isEmpty()) {
            return without(texts.get("forecast.none"), laboratory.problems());
        }
        Optional<MixDesign> draft = mix.reading().mix();
        return draft.isEmpty()
                ? without(texts.get("forecast.draft-wrong"), List.of())
                : shown(laboratory.value().get(), draft.get());
    }

    /** Returns what is shown while there is no forecast: what would be weighed of the draft all the same. */
    private Shown without(String headline, List<Problem> problems) {
        List<Line> lines = mix.reading()
                .mix()
                .map(draft -> lines(Optional.empty(), draft, Optional.empty()))
                .orElseGet(this::linesToCome);
        return new Shown(headline, "", false, lines, problems);
    }

    /** Returns the sources of the kept design without a figure, so that nothing below moves while the draft cannot be read. */
    private List<Line> linesToCome() {
        String unknown = texts.get("figure.unknown");
        return mix
                .base()
                .map(kept -> lines(Optional.empty(), kept.value(), Optional.empty()))
                .orElse(List.of())
                .stream()
                .map(line -> new Line(line.source(), unknown, unknown, unknown, unknown, unknown))
                .toList();
    }

    private Shown shown(LaboratoryForecast laboratory, MixDesign draft) {
        Answer<Forecast> forecast = laboratory.of(draft, BatchFigures.NOMINAL_BOWL, TRIALS);
        return forecast.value()
                .map(found -> new Shown(
                        texts.get(
                                "forecast.headline",
                                percent(found.percent()),
                                Integer.toString(TRIALS),
                                percent(found.lowPercent()),
                                percent(found.highPercent())),
                        against(laboratory, draft, found),
                        true,
                        lines(Optional.of(laboratory), draft, Optional.of(found)),
                        forecast.problems()))
                .orElseGet(() -> without(texts.get("forecast.none"), forecast.problems()));
    }

    private String percent(double percent) {
        return numbers.show(percent, DECIMALS);
    }

    /** Returns what the change makes of the forecast of the design as it is kept. */
    private String against(LaboratoryForecast laboratory, MixDesign draft, Forecast found) {
        return mix.base()
                .map(Version::value)
                .filter(kept -> !kept.hasSameAggregatesAs(draft))
                .flatMap(kept ->
                        laboratory.of(kept, BatchFigures.NOMINAL_BOWL, TRIALS).value())
                .map(kept -> texts.get("forecast.against", percent(kept.percent()), percent(found.percent())))
                .orElse("");
    }

    private List<Line> lines(Optional<LaboratoryForecast> laboratory, MixDesign draft, Optional<Forecast> found) {
        MassUnit unit = desk.units().benchMass();
        List<Line> lines = new ArrayList<>();
        CorrectionSample.of(draft.batch(), BatchFigures.NOMINAL_BOWL)
                .value()
                .ifPresent(sample -> sample.components().forEach(component -> {
                    Optional<SourceAir> air = laboratory.flatMap(known -> known.source(component.source()));
                    lines.add(new Line(
                            component.source(),
                            numbers.show(component.mass().in(unit), unit == MassUnit.GRAM ? 0 : DECIMALS),
                            air.map(SourceAir::millilitresPerKilogram)
                                    .filter(one -> one.isPresent())
                                    .map(one -> percent(one.getAsDouble()))
                                    .orElseGet(() -> texts.get("figure.unknown")),
                            air.map(SourceAir::standardError)
                                    .filter(one -> one.isPresent())
                                    .map(one -> percent(one.getAsDouble()))
                                    .orElseGet(() -> texts.get("figure.unknown")),
                            found.flatMap(one -> Optional.ofNullable(one.parts().get(component.source())))
                                    .map(this::percent)
                                    .orElseGet(() -> texts.get("figure.unknown")),
                            laboratory.isEmpty()
                                    ? texts.get("figure.unknown")
                                    : texts.get(
                                            air.filter(SourceAir::isSeparable).isPresent()
                                                    ? "forecast.apart"
                                                    : "forecast.not-apart")));
                }));
        return lines;
    }
}

package porebench.desk.register;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.chart.source.StoneFigures;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.source.MeasuredStone;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/** What the plots of a source show. */
final class StonePlots {
    private StonePlots() {}

    /** Returns one figure of a source over time, as measured and in use. */
    static StoneFigures of(
            StoneFigures.Figure figure, SourceStory story, List<MeasuredStone> all, LocalDate today, ZoneId zone) {
        List<StoneFigures.Measured> measured = all.stream()
                .flatMap(one ->
                        of(figure, one.measurement().value()).map(value -> measured(figure, one, value)).stream())
                .toList();
        LocalDate first =
                measured.stream().map(StoneFigures.Measured::on).findFirst().orElse(today);
        List<StoneFigures.Step> inUse = story.periods().stream()
                .flatMap(period -> of(figure, period.newest().value()).stream()
                        .map(value -> new StoneFigures.Step(
                                from(period, first, zone),
                                value.doubleValue(),
                                period.newest().value().ledge())))
                .toList();
        LocalDate until = Stream.concat(inUse.stream().map(StoneFigures.Step::from), Stream.of(today))
                .max(LocalDate::compareTo)
                .orElse(today);
        return new StoneFigures(figure, measured, inUse, until);
    }

    /** Returns from when on a stone is drawn: its first day, of the first stone not later than what was measured first. */
    private static LocalDate from(SourcePeriod period, LocalDate first, ZoneId zone) {
        LocalDate from = period.from()
                .orElseGet(() -> period.begun().stamp().at().atZone(zone).toLocalDate());
        return period.number() == 1 && from.isAfter(first) ? first : from;
    }

    private static StoneFigures.Measured measured(StoneFigures.Figure figure, MeasuredStone one, BigDecimal value) {
        SourceMeasurement measurement = one.measurement().value();
        return new StoneFigures.Measured(
                measurement.id().text(),
                measurement.testedOn(),
                value.doubleValue(),
                value.toPlainString(),
                measurement.testedBy(),
                one.stone().newest().value().ledge(),
                one.doubts().stream().anyMatch(doubt -> doubt.field().equals(field(figure))));
    }

    private static String field(StoneFigures.Figure figure) {
        return switch (figure) {
            case RELATIVE_DENSITY -> "relativeDensity";
            case ABSORPTION -> "absorption";
            case RETAINED -> "retained";
        };
    }

    private static Optional<BigDecimal> of(StoneFigures.Figure figure, SourceMeasurement measured) {
        return switch (figure) {
            case RELATIVE_DENSITY -> measured.relativeDensity();
            case ABSORPTION -> measured.absorptionPercent();
            case RETAINED -> measured.retainedPercent();
        };
    }

    private static Optional<BigDecimal> of(StoneFigures.Figure figure, Source source) {
        return switch (figure) {
            case RELATIVE_DENSITY -> source.relativeDensity();
            case ABSORPTION -> source.absorptionPercent();
            case RETAINED -> source.retainedPercent();
        };
    }
}

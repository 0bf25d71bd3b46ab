package porebench.record.source;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.book.Version;

/**
 * A measurement of a source with the stone it belongs to, and what is doubtful about it beside the figures in use.
 *
 * @param measurement the measurement
 * @param stone the stone it belongs to
 * @param doubts that a figure lies far from the one in use
 */
public record MeasuredStone(Version<SourceMeasurement> measurement, SourcePeriod stone, List<Problem> doubts) {
    public MeasuredStone {
        doubts = List.copyOf(doubts);
    }

    /** Returns the measurements of a source with their stones, the earliest first. */
    public static List<MeasuredStone> of(SourceStory story, List<Version<SourceMeasurement>> all) {
        return all.stream()
                .sorted(Comparator.comparing(
                                (Version<SourceMeasurement> one) -> one.value().testedOn())
                        .thenComparing(one -> one.value().id()))
                .map(one -> of(story, one))
                .toList();
    }

    private static MeasuredStone of(SourceStory story, Version<SourceMeasurement> version) {
        SourceMeasurement measured = version.value();
        SourcePeriod stone = stone(story, measured);
        Source known = stone.newest().value();
        StoneLimits limits = StoneLimits.of(known.role());
        List<Problem> doubts = new ArrayList<>();
        if (StoneLimits.areFar(measured.relativeDensity(), known.relativeDensity(), limits.relativeDensity())) {
            doubts.add(Problem.warning(
                    "relativeDensity",
                    "measurement.far-density",
                    figures(measured, measured.relativeDensity(), known.relativeDensity(), limits.relativeDensity())));
        }
        if (StoneLimits.areFar(measured.absorptionPercent(), known.absorptionPercent(), limits.absorption())) {
            doubts.add(Problem.warning(
                    "absorption",
                    "measurement.far-absorption",
                    figures(measured, measured.absorptionPercent(), known.absorptionPercent(), limits.absorption())));
        }
        if (StoneLimits.areFar(measured.retainedPercent(), known.retainedPercent(), limits.retained())) {
            doubts.add(Problem.warning(
                    "retained",
                    "measurement.far-retained",
                    figures(measured, measured.retainedPercent(), known.retainedPercent(), limits.retained())));
        }
        return new MeasuredStone(version, stone, doubts);
    }

    /** Returns the one stone of the ledge or lot that is named, or else the one in use on the day of the measurement. */
    private static SourcePeriod stone(SourceStory story, SourceMeasurement measured) {
        String lot = measured.lot().strip();
        List<SourcePeriod> named = story.periods().stream()
                .filter(period -> !lot.isEmpty())
                .filter(period -> period.newest().value().ledge().strip().equalsIgnoreCase(lot))
                .toList();
        return named.size() == 1 ? named.get(0) : story.on(measured.testedOn());
    }

    private static Object[] figures(
            SourceMeasurement of, Optional<BigDecimal> measured, Optional<BigDecimal> known, BigDecimal limit) {
        return new Object[] {
            of.id().text(), of.testedOn().toString(), measured.orElseThrow(), known.orElseThrow(), limit
        };
    }
}

package porebench.record;

import java.time.LocalDate;
import java.util.Optional;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;

/** Steps of sources, and what was measured of them. */
public final class SampleSources {
    private SampleSources() {}

    /** Returns a source as a declared change: another stone since a day. */
    public static Source changed(Source source, LocalDate since) {
        return source.as(Optional.of(SourceStep.CHANGED), Optional.of(since), Optional.of("the old one is worked out"));
    }

    /** Returns a source as the correction of a typing mistake. */
    public static Source corrected(Source source) {
        return source.as(Optional.of(SourceStep.CORRECTED), Optional.empty(), Optional.of("mistyped"));
    }

    /** Returns a source as the withdrawal of its last change. */
    public static Source withdrawn(Source source) {
        return source.as(Optional.of(SourceStep.WITHDRAWN), Optional.empty(), Optional.of("it was another quarry"));
    }

    /** Returns a measurement of the relative density of a source. */
    public static SourceMeasurement measurement(String id, String source, LocalDate day, String density) {
        return measured(id, source, day, "", density);
    }

    /** Returns a measurement of a lot of a source. */
    public static SourceMeasurement measured(String id, String source, LocalDate day, String lot) {
        return measured(id, source, day, lot, "2.65");
    }

    private static SourceMeasurement measured(String id, String source, LocalDate day, String lot, String density) {
        return new SourceMeasurement(
                new MeasurementId(id),
                new SourceId(source),
                day,
                "R. Vale",
                lot,
                Samples.some(density),
                Optional.empty(),
                Optional.empty(),
                "");
    }
}

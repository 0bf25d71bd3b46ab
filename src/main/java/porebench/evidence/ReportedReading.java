package porebench.evidence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import porebench.method.Profile;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.SourceMeasurement;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** Reads what was reported of mixes beside their trials; what was measured of a source once. */
final class ReportedReading {
    private final Records book;
    private final Function<MixId, List<Version<Production>>> production;
    private final Map<SourceId, List<SourceMeasurement>> measured;

    private ReportedReading(
            Records book,
            Function<MixId, List<Version<Production>>> production,
            Map<SourceId, List<SourceMeasurement>> measured) {
        this.book = book;
        this.production = production;
        this.measured = measured;
    }

    /** Makes one that asks for the production of each mix when it is read. */
    static ReportedReading asking(Records book) {
        return new ReportedReading(
                book, mix -> book.latestOf(Belonging.PRODUCTION_OF_MIX, mix.text()), new HashMap<>());
    }

    /** Returns one that has the production of some mixes at hand, and shares what was measured of sources. */
    ReportedReading of(Function<MixId, List<Version<Production>>> read) {
        return new ReportedReading(book, read, measured);
    }

    /** Returns what was reported beside the trials, asked for only where a rule of the profile counts it. */
    Reported of(MixDesign mix, Profile profile) {
        if (!Reported.countsProduction(profile) && !Reported.countsLots(profile)) {
            return Reported.NONE;
        }
        Map<SourceId, List<SourceMeasurement>> ofSources = new HashMap<>();
        if (Reported.countsLots(profile)) {
            mix.sources().forEach(id -> ofSources.put(id, measured.computeIfAbsent(id, this::measured)));
        }
        return new Reported(
                Reported.countsProduction(profile)
                        ? production.apply(mix.id()).stream()
                                .map(Version::value)
                                .toList()
                        : List.of(),
                ofSources);
    }

    private List<SourceMeasurement> measured(SourceId id) {
        return book.latestOf(Belonging.MEASUREMENTS_OF_SOURCE, id.text()).stream()
                .map(Version::value)
                .toList();
    }
}

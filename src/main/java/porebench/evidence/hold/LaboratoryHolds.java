package porebench.evidence.hold;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.hold.Hold;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * Which factors of a laboratory are to be checked again, by field readings with a density beside them.
 *
 * @param remarks the remarks, by mix
 */
public record LaboratoryHolds(Map<MixId, HoldRemark> remarks) {
    /** Of no mix. */
    public static final LaboratoryHolds NONE = new LaboratoryHolds(Map.of());

    public LaboratoryHolds {
        remarks = Map.copyOf(remarks);
    }

    /**
     * Looks at the mixes whose factor may be used: their readings are read at one time, and evidence only of those mixes that have
     * as many pairs as anything is said from.
     *
     * @param rows how the mixes stand in the register at the moment
     * @param moment by the laboratory's clock
     */
    public static LaboratoryHolds of(
            Records book, LaboratoryStanding standing, Collection<RegisterRow> rows, LocalDateTime moment) {
        Map<MixId, LocalDateTime> since = new HashMap<>();
        rows.stream()
                .filter(row -> row.state().isUsable())
                .forEach(row -> row.inForceFrom().ifPresent(day -> since.put(row.mixId(), day.atStartOfDay())));
        Map<MixId, List<FieldReading>> readings = new TreeMap<>();
        book.latestOf(
                        Belonging.READINGS_OF_MIX,
                        since.keySet().stream().map(MixId::text).sorted().toList())
                .forEach(version -> {
                    FieldReading reading = version.value();
                    if (Optional.ofNullable(since.get(reading.mixId()))
                            .filter(from -> MixHold.isPaired(reading, from, moment))
                            .isPresent()) {
                        readings.computeIfAbsent(reading.mixId(), any -> new ArrayList<>())
                                .add(reading);
                    }
                });
        readings.values().removeIf(some -> some.size() < Hold.LEAST_PAIRS);
        Map<MixId, HoldRemark> remarks = new TreeMap<>();
        Map<String, List<Version<MixDesign>>> designs = book.histories(
                MixDesign.class, readings.keySet().stream().map(MixId::text).toList());
        standing.each(readings.keySet(), evidence -> {
            MixId mix = evidence.mix().value().id();
            MixHold.of(
                            Optional.ofNullable(designs.get(mix.text())).orElseThrow(),
                            evidence,
                            readings.getOrDefault(mix, List.of()),
                            Correcting.by(evidence),
                            moment)
                    .value()
                    .flatMap(MixHold::remark)
                    .ifPresent(remark -> remarks.put(mix, remark));
        });
        return new LaboratoryHolds(remarks);
    }

    /** Returns lines of the register, each with the remark about its mix first among what is missing. */
    public List<RegisterRow> marked(Collection<RegisterRow> rows) {
        return rows.stream()
                .map(row -> of(row.mixId())
                        .map(remark -> row.lacking(Stream.concat(Stream.of(remark.asProblem()), row.missing().stream())
                                .toList()))
                        .orElse(row))
                .toList();
    }

    /** Returns the remark about a mix. */
    public Optional<HoldRemark> of(MixId mix) {
        return Optional.ofNullable(remarks.get(mix));
    }
}

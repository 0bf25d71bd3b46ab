package porebench.evidence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.method.Profile;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/** The meters with their calibrations, and the equipment, as they were read. */
final class ReadBench {
    final Map<MeterId, Version<Meter>> meters;
    final Map<MeterId, List<Version<MeterCalibration>>> calibrations;
    final LaboratoryEquipment equipment;
    private final Map<Profile, Map<MeterId, MeterStory>> stories = new HashMap<>();

    ReadBench(Records book) {
        this.meters = book.latest(Meter.class).stream()
                .collect(Collectors.toMap(version -> version.value().id(), Function.identity()));
        this.calibrations = EvidenceReader.grouped(book, MeterCalibration.class, MeterCalibration::meterId);
        this.equipment = LaboratoryEquipment.of(book);
    }

    /** Returns the story of every meter by a profile's limits, told once for all mixes of that profile. */
    Map<MeterId, MeterStory> stories(Profile profile) {
        return stories.computeIfAbsent(
                profile,
                any -> meters.entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey,
                                entry -> MeterStory.of(
                                        entry.getValue(),
                                        calibrations.getOrDefault(entry.getKey(), List.of()),
                                        profile))));
    }
}

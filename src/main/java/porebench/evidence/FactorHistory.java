package porebench.evidence;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import porebench.record.MeterCalibration;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * Every trial of the laboratory in the order in which they were made, and what changed between them.
 *
 * @param made the trials, those that do not count among them, the earliest first
 * @param worked what was done to meters, the earliest first
 */
public record FactorHistory(List<Made> made, List<MeterWork> worked) {
    public FactorHistory {
        made = List.copyOf(made);
        worked = List.copyOf(worked);
    }

    /**
     * A trial with what it was made with.
     *
     * @param judged the trial
     * @param determination its determination
     * @param basis the mix design and sources of its determination; empty when the lab book no longer has them
     * @param divisionPercent a division of its meter's scale, in % air
     */
    public record Made(
            JudgedTrial judged, DeterminationId determination, Optional<Basis> basis, double divisionPercent) {
        public Trial trial() {
            return judged.trial().value();
        }

        /** Returns the sources of its aggregates. */
        public Set<SourceId> sources() {
            return basis.map(known -> known.mix().sources()).orElse(Set.of());
        }

        private Set<LocalDate> day() {
            return Set.of(trial().testedAt().toLocalDate());
        }

        /** Returns what changed between an earlier trial of the same mix and this one. */
        public List<HistoryChange> changesSince(Made earlier) {
            if (earlier.determination.equals(determination) || basis.isEmpty() || earlier.basis.isEmpty()) {
                return List.of();
            }
            Basis now = basis.get();
            Basis then = earlier.basis.get();
            List<HistoryChange> changes = new ArrayList<>();
            if (!now.mix().hasSameAggregatesAs(then.mix())) {
                changes.add(
                        new HistoryChange(HistoryChange.Of.MIX, now.mix().id().text()));
            }
            now.stories().keySet().stream().sorted().forEach(source -> {
                Set<Integer> before = then.stones(source, earlier.day());
                if (!before.isEmpty() && !before.equals(now.stones(source, day()))) {
                    changes.add(new HistoryChange(HistoryChange.Of.SOURCE, source.text()));
                }
            });
            if (!now.mix().profileId().equals(then.mix().profileId())) {
                changes.add(new HistoryChange(HistoryChange.Of.METHOD, now.mix().profileId()));
            }
            return changes;
        }
    }

    /**
     * Something that changed between two trials.
     *
     * @param of what
     * @param id which: the source, the mix, the meter or the new profile
     */
    public record HistoryChange(Of of, String id) {
        /** What can change. */
        public enum Of {
            /** Another stone from a source. */
            SOURCE,
            /** Other aggregates in a mix. */
            MIX,
            /** A meter was calibrated. */
            CALIBRATION,
            /** A meter was repaired. */
            REPAIR,
            /** Another profile, and so another method. */
            METHOD
        }
    }

    /**
     * What was done to a meter that may have moved its readings.
     *
     * @param meter the meter
     * @param on the day; trials of that day are taken to come after it
     * @param isRepair whether it was repaired without being calibrated
     */
    public record MeterWork(MeterId meter, LocalDate on, boolean isRepair) {}

    /** Puts together what is known about all mixes of a laboratory; asks no lab book anew. */
    public static FactorHistory of(List<Evidence> all) {
        List<Made> made = new ArrayList<>();
        Map<MeterId, MeterStory> stories = new HashMap<>();
        for (Evidence evidence : all) {
            stories.putAll(evidence.stories());
            for (JudgedDetermination judged : evidence.determinations()) {
                DeterminationId id = judged.determination().value().id();
                Optional<Basis> basis = Optional.ofNullable(evidence.made().get(id));
                for (JudgedTrial trial : judged.trials()) {
                    double division =
                            evidence.scale(List.of(trial)).divisionPercent().doubleValue();
                    made.add(new Made(trial, id, basis, division));
                }
            }
        }
        made.sort(Comparator.comparing((Made one) -> one.trial().testedAt())
                .thenComparing(one -> one.trial().id()));
        return new FactorHistory(made, worked(stories));
    }

    private static List<MeterWork> worked(Map<MeterId, MeterStory> stories) {
        return stories.values().stream()
                .flatMap(story -> story.calibrations().stream())
                .map(one -> one.calibration().value())
                .filter(one -> !one.isNote() || one.reason() == MeterCalibration.Reason.REPAIR)
                .map(one -> new MeterWork(one.meterId(), one.calibratedOn(), one.isNote()))
                .sorted(Comparator.comparing(MeterWork::on).thenComparing(MeterWork::meter))
                .toList();
    }

    /** Returns the trials that something holds of, and all work on meters. */
    public FactorHistory where(Predicate<Made> holds) {
        return new FactorHistory(made.stream().filter(holds).toList(), worked);
    }

    /**
     * Returns what changed before each trial since the one before it: work on any meter used here, and source, mix and method
     * since the last trial of the same mix.
     *
     * @return as many lists as there are trials; the first is empty
     */
    public List<List<HistoryChange>> changes() {
        Set<MeterId> used = new HashSet<>();
        made.forEach(one -> used.add(one.trial().meterId()));
        Map<MixId, Made> last = new HashMap<>();
        List<List<HistoryChange>> changes = new ArrayList<>();
        LocalDateTime before = LocalDateTime.MAX;
        for (Made one : made) {
            List<HistoryChange> here = new ArrayList<>();
            Optional.ofNullable(last.put(one.trial().mixId(), one))
                    .ifPresent(earlier -> here.addAll(one.changesSince(earlier)));
            LocalDateTime from = before;
            worked.stream()
                    .filter(work -> used.contains(work.meter()))
                    .filter(work -> isBetween(from, work.on(), one.trial().testedAt()))
                    .map(work -> new HistoryChange(
                            work.isRepair() ? HistoryChange.Of.REPAIR : HistoryChange.Of.CALIBRATION,
                            work.meter().text()))
                    .distinct()
                    .forEach(here::add);
            changes.add(List.copyOf(here));
            before = one.trial().testedAt();
        }
        return List.copyOf(changes);
    }

    /** Returns whether work of a day lies between two trials; the trials of that day come after it. */
    private static boolean isBetween(LocalDateTime before, LocalDate day, LocalDateTime trial) {
        return before.toLocalDate().isBefore(day) && !trial.toLocalDate().isBefore(day);
    }
}

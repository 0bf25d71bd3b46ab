package porebench.evidence.paper;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import porebench.evidence.CardState;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.MeterScale;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.air.PassWindow;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * The card that rides in the truck: what it says.
 *
 * @param laboratory who hands it out; empty when the lab book does not say
 * @param mixId the mix
 * @param mixTitle its title
 * @param sources name of each aggregate's source, in the order of the mix
 * @param issue the revision on the card
 * @param state how it stands with that revision on the day the card is made; it decides whether the card is marked
 * @param lastDay the last day it holds: the day to recheck by, or the one before a later revision begins, if that is known
 * @param until the hour of that day at which a later revision takes its place; empty when it holds to the end of the day
 * @param wetSieved whether the concrete is wet-sieved over 37.5 mm before the air test; factor and target are then for the
 *     sieved concrete
 * @param sievedAirs what the readings mean for full mixture and mortar; empty where it is not wet-sieved, or the mix design does
 *     not give the volumes
 * @param targetAirPercent the mix's target air, in %
 * @param airTolerancePercent the tolerance on it, in % air
 * @param divisionPercent a division of the meter's scale, in % air
 * @param window readings and the air content they mean, and which of them pass
 * @param rule where the reporting rule stands, for people to look it up
 * @param head how far the lab book reached when the card was made
 * @param seal what its plain text is sealed with; empty where no lab book holds the revision
 */
public record FactorCard(
        Optional<Laboratory> laboratory,
        MixId mixId,
        String mixTitle,
        List<String> sources,
        FactorIssue issue,
        CardState state,
        LocalDate lastDay,
        Optional<LocalTime> until,
        boolean wetSieved,
        Optional<SievedAirs> sievedAirs,
        BigDecimal targetAirPercent,
        BigDecimal airTolerancePercent,
        BigDecimal divisionPercent,
        PassWindow window,
        String rule,
        Head head,
        Optional<CardSeal> seal)
        implements Printed {
    public FactorCard {
        sources = List.copyOf(sources);
    }

    /** A card that holds to the end of its last day. */
    public FactorCard(
            Optional<Laboratory> laboratory,
            MixId mixId,
            String mixTitle,
            List<String> sources,
            FactorIssue issue,
            CardState state,
            LocalDate lastDay,
            boolean wetSieved,
            BigDecimal targetAirPercent,
            BigDecimal airTolerancePercent,
            BigDecimal divisionPercent,
            PassWindow window,
            String rule,
            Head head) {
        this(
                laboratory,
                mixId,
                mixTitle,
                sources,
                issue,
                state,
                lastDay,
                Optional.empty(),
                wetSieved,
                Optional.empty(),
                targetAirPercent,
                airTolerancePercent,
                divisionPercent,
                window,
                rule,
                head,
                Optional.empty());
    }

    /** Returns this card with what its plain text is sealed with. */
    public FactorCard sealedBy(Optional<CardSeal> other) {
        return new FactorCard(
                laboratory,
                mixId,
                mixTitle,
                sources,
                issue,
                state,
                lastDay,
                until,
                wetSieved,
                sievedAirs,
                targetAirPercent,
                airTolerancePercent,
                divisionPercent,
                window,
                rule,
                head,
                other);
    }

    /** Returns this card in another state and until another moment. */
    FactorCard in(CardState other, LocalDate day, Optional<LocalTime> time) {
        return new FactorCard(
                laboratory,
                mixId,
                mixTitle,
                sources,
                issue,
                other,
                day,
                time,
                wetSieved,
                sievedAirs,
                targetAirPercent,
                airTolerancePercent,
                divisionPercent,
                window,
                rule,
                head,
                seal);
    }

    /**
     * Returns the card of one revision of a mix's factor as it stands at a moment.
     *
     * @param head how far the lab book reaches
     */
    public static FactorCard of(
            Evidence evidence, FactorIssue issue, Optional<Laboratory> laboratory, Head head, LocalDateTime moment) {
        MixDesign mix = evidence.mix().value();
        Profile profile = evidence.profile();
        BigDecimal tolerance = mix.airTolerancePercent()
                .orElseGet(() ->
                        new BigDecimal(profile.figure(FigureName.AIR_TOLERANCE).value()));
        MeterScale scale = evidence.scale(evidence.determination(issue.determinationId())
                .map(JudgedDetermination::trials)
                .orElse(List.of()));
        BigDecimal top = scale.topPercent()
                .orElseGet(() ->
                        new BigDecimal(profile.figure(FigureName.SCALE_TOP).value()));
        BigDecimal target = mix.batch().targetAirPercent();
        BigDecimal division = scale.divisionPercent();
        PassWindow window = PassWindow.of(issue.factorPercent(), target, tolerance, division, top, profile);
        return new FactorCard(
                laboratory,
                mix.id(),
                mix.title(),
                sourceNames(evidence),
                issue,
                CardState.of(evidence, issue, moment),
                end(evidence, issue).map(FactorCard::lastDay).orElse(issue.recheckBy()),
                end(evidence, issue).map(LocalDateTime::toLocalTime).filter(time -> !time.equals(LocalTime.MIN)),
                mix.batch().wetSieved(),
                SievedAirs.of(mix.batch(), issue.factorPercent(), division, window, profile),
                target,
                tolerance,
                division,
                window,
                profile.title(),
                head,
                Optional.empty());
    }

    /** Returns when a later revision begins, where that is known and comes before the day to recheck by has passed. */
    private static Optional<LocalDateTime> end(Evidence evidence, FactorIssue issue) {
        return evidence.issues().stream()
                .map(Version::value)
                .filter(other -> other.revision() > issue.revision())
                .map(FactorIssue::begins)
                .filter(next -> next.isAfter(issue.begins()))
                .filter(next -> !lastDay(next).isBefore(issue.inForceFrom()))
                .filter(next -> next.isBefore(issue.recheckBy().plusDays(1).atStartOfDay()))
                .min(LocalDateTime::compareTo);
    }

    /** Returns the last day before a moment: that of the moment itself where it is no start of a day. */
    private static LocalDate lastDay(LocalDateTime next) {
        return next.toLocalTime().equals(LocalTime.MIN) ? next.toLocalDate().minusDays(1) : next.toLocalDate();
    }

    /** Returns whether it comes from a training book or rests on simulated trials, whatever book it stands in. */
    @Override
    public boolean isTraining() {
        return Printed.super.isTraining() || issue.isSimulated();
    }

    /** Returns this card with what its readings mean for full mixture and mortar. */
    public FactorCard spreading(Optional<SievedAirs> airs) {
        return new FactorCard(
                laboratory,
                mixId,
                mixTitle,
                sources,
                issue,
                state,
                lastDay,
                until,
                wetSieved,
                airs,
                targetAirPercent,
                airTolerancePercent,
                divisionPercent,
                window,
                rule,
                head,
                seal);
    }

    /** Returns whether its state stands across it, because it is no card to work by. */
    public boolean isMarked() {
        return !state.mayLeaveUnmarked();
    }

    private static List<String> sourceNames(Evidence evidence) {
        return evidence.mix().value().aggregates().stream()
                .map(aggregate -> evidence.sources().stream()
                        .map(Version::value)
                        .filter(source -> source.id().text().equals(aggregate.sourceOrName()))
                        .map(Source::name)
                        .findFirst()
                        .orElse(aggregate.sourceOrName()))
                .distinct()
                .toList();
    }
}

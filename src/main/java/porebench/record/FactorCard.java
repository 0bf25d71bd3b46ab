package porebench.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.air.PassWindow;

/**
 * The card that rides in the truck: what it says.
 *
 * @param laboratory who hands it out; empty when the lab book does not say
 * @param mixId the mix
 * @param mixTitle its title
 * @param sources name of each aggregate's source, in the order of the mix
 * @param issue the revision in force
 * @param wetSieved whether the concrete is wet-sieved over 37.5 mm before the air test; factor and target are then for the
 *     sieved concrete
 * @param targetAirPercent the mix's target air, in %
 * @param airTolerancePercent the tolerance on it, in % air
 * @param divisionPercent a division of the gauge, in % air
 * @param window readings and the air content they mean, and which of them pass
 * @param rule where the reporting rule stands, for people to look it up
 */
public record FactorCard(
        Optional<Laboratory> laboratory,
        MixId mixId,
        String mixTitle,
        List<String> sources,
        FactorIssue issue,
        boolean wetSieved,
        BigDecimal targetAirPercent,
        BigDecimal airTolerancePercent,
        BigDecimal divisionPercent,
        PassWindow window,
        String rule)
        implements Printed {
    public FactorCard {
        sources = List.copyOf(sources);
    }

    /** Returns the card of one revision of a mix's factor. */
    public static FactorCard of(Evidence evidence, FactorIssue issue, Optional<Laboratory> laboratory) {
        MixDesign mix = evidence.mix().value();
        Profile profile = evidence.profile();
        BigDecimal tolerance = mix.airTolerancePercent()
                .orElseGet(() ->
                        new BigDecimal(profile.figure(FigureName.AIR_TOLERANCE).value()));
        Optional<Meter> meter = meterOf(evidence, issue);
        BigDecimal division = meter.map(Meter::divisionPercent)
                .orElse(BigDecimal.valueOf(JudgedDetermination.USUAL_DIVISION_PERCENT));
        BigDecimal scaleTop = meter.map(Meter::scaleTopPercent)
                .orElseGet(() ->
                        new BigDecimal(profile.figure(FigureName.SCALE_TOP).value()));
        BigDecimal target = mix.batch().targetAirPercent();
        return new FactorCard(
                laboratory,
                mix.id(),
                mix.title(),
                sourceNames(evidence),
                issue,
                mix.batch().wetSieved(),
                target,
                tolerance,
                division,
                PassWindow.of(issue.factorPercent(), target, tolerance, division, scaleTop, profile),
                profile.title());
    }

    private static Optional<Meter> meterOf(Evidence evidence, FactorIssue issue) {
        return evidence.determination(issue.determinationId()).stream()
                .flatMap(judged -> judged.trials().stream())
                .filter(JudgedTrial::counts)
                .flatMap(trial -> Optional.ofNullable(
                        evidence.meters().get(trial.trial().value().meterId()))
                        .stream())
                .map(Version::value)
                .findFirst();
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

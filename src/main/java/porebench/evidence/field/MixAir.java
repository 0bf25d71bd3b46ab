package porebench.evidence.field;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceAsKnown;
import porebench.evidence.FactorState;
import porebench.evidence.FactorThen;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.budget.BudgetInputs;
import porebench.evidence.budget.FieldBudgetInputs;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.air.AcceptanceLimits;
import porebench.method.air.AirContent;
import porebench.method.budget.Budget;
import porebench.method.budget.FactorBudget;
import porebench.method.budget.FieldBudget;
import porebench.method.sample.SievedVolumes;
import porebench.record.FactorIssue;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.id.DeterminationId;

/** What is made of the readings of one mix. What many of them share is worked out once. */
final class MixAir {
    private final EvidenceAsKnown known;
    private final FactorThen now;
    private final Supplier<LaboratoryScatter> scatter;
    private final Optional<BigDecimal> guard;
    private final Map<Instant, FactorThen> then = new HashMap<>();
    private final Map<Instant, MixDesign> designs = new HashMap<>();
    private final Map<DeterminationId, Optional<FieldBudgetInputs>> budgets = new HashMap<>();
    private final Map<Integer, Boolean> changed = new HashMap<>();

    MixAir(EvidenceAsKnown known, Supplier<LaboratoryScatter> scatter, Optional<BigDecimal> guard) {
        this.known = known;
        this.now = new FactorThen(known.now());
        this.scatter = scatter;
        this.guard = guard;
    }

    /** Returns the mix as it is judged by when a reading was kept at an instant; for one that is not kept, as it is now. */
    private MixDesign design(Optional<Instant> keptAt) {
        return keptAt.map(at -> Objects.requireNonNull(designs.computeIfAbsent(at, known::designAt)))
                .orElseGet(() -> known.now().mix().value());
    }

    /**
     * Returns what follows from the lab book as it stands.
     *
     * @param keptAt when the reading was first kept; empty for one that is not
     */
    FieldFinding now(FieldReading reading, Optional<Instant> keptAt) {
        return find(reading, now, design(keptAt));
    }

    /** Returns what followed when a reading was first kept. */
    FieldFinding then(FieldReading reading, Instant keptAt) {
        FactorThen asKnown = then.computeIfAbsent(
                keptAt, at -> known.at(at).map(FactorThen::new).orElse(now));
        return find(reading, Objects.requireNonNull(asKnown), design(Optional.of(keptAt)));
    }

    private FieldFinding find(FieldReading reading, FactorThen factor, MixDesign design) {
        FactorState state = factor.stateAt(reading.readAt());
        if (!reading.counts()) {
            return FieldFinding.marked(state, Problem.warning("struckBecause", "field.struck", reading.recordId()));
        }
        return factor.usableAt(reading.readAt())
                .map(issue -> corrected(reading, state, issue, design))
                .orElseGet(() -> FieldFinding.marked(state, mark(reading, state)));
    }

    private static Problem mark(FieldReading reading, FactorState state) {
        String code = switch (state) {
            case LAPSED -> "field.lapsed";
            case SOURCE_CHANGED -> "field.source-changed";
            case EVIDENCE_CHANGED -> "field.evidence-changed";
            case NOT_VERIFIED -> "field.not-verified";
            case WITHDRAWN -> "field.withdrawn";
            case NO_FACTOR, IN_FORCE, RECHECK_DUE -> "field.no-factor";
        };
        return Problem.warning(
                "factor", code, reading.recordId(), reading.mixId().text());
    }

    private FieldFinding corrected(FieldReading reading, FactorState state, FactorIssue issue, MixDesign design) {
        Evidence evidence = known.now();
        List<Problem> doubts = new ArrayList<>();
        Answer<AirContent> content = AirContent.of(
                reading.gaugePercent(), issue.factorPercent(), division(reading, issue), evidence.profile());
        if (content.value().isEmpty()) {
            return FieldFinding.marked(state, content.problems().get(0));
        }
        doubts.addAll(content.problems());
        if (Objects.requireNonNull(changed.computeIfAbsent(
                issue.revision(), any -> !evidence.evidenceChangesSince(issue).isEmpty()))) {
            doubts.add(Problem.warning("factor", "field.evidence-since", reading.recordId(), issue.revision()));
        }
        AirContent air = content.value().get();
        Optional<Budget> budget = budget(reading, issue);
        OptionalDouble standard =
                budget.map(one -> OptionalDouble.of(one.combinedPercent())).orElse(OptionalDouble.empty());
        BigDecimal tolerance = design.airTolerancePercent()
                .orElseGet(() -> new BigDecimal(
                        evidence.profile().figure(FigureName.AIR_TOLERANCE).value()));
        AcceptanceLimits plain = AcceptanceLimits.of(design.batch().targetAirPercent(), tolerance);
        Answer<AcceptanceLimits> limits = FieldJudging.limits(reading, plain, guard, standard);
        doubts.addAll(limits.problems());
        Optional<SievedVolumes> volumes = SievedVolumes.of(design.batch());
        if (design.batch().wetSieved() && volumes.isEmpty()) {
            doubts.add(Problem.warning(
                    "mixId",
                    "field.volumes-unknown",
                    reading.recordId(),
                    reading.mixId().text()));
        }
        return new FieldFinding(
                state,
                Optional.of(new FieldAir(
                        issue,
                        air.percent(),
                        air.reported(),
                        air.rule().clause(),
                        budget,
                        limits.value().orElse(plain),
                        limits.value().map(one -> one.verdict(air.percent(), air.reported())),
                        volumes.flatMap(known -> SievedAirs.spread(known, air.percent(), evidence.profile())))),
                Optional.empty(),
                doubts);
    }

    /** The division of the meter as it was that day; of a meter that nobody wrote down that of the factor's own card. */
    private BigDecimal division(FieldReading reading, FactorIssue issue) {
        Evidence evidence = known.now();
        LocalDate day = reading.readAt().toLocalDate();
        return reading.meterId()
                .flatMap(meter -> Optional.ofNullable(evidence.stories().get(meter)))
                .map(story -> story.meterOn(day).divisionPercent())
                .orElseGet(() -> evidence.scale(evidence.determination(issue.determinationId())
                                .map(JudgedDetermination::trials)
                                .orElse(List.of()))
                        .divisionPercent());
    }

    /** A factor that a decision keeps, though its trials give another, has no uncertainty of its own: theirs is that of the other. */
    private Optional<Budget> budget(FieldReading reading, FactorIssue issue) {
        return Objects.requireNonNull(budgets.computeIfAbsent(issue.determinationId(), this::inputs))
                .filter(inputs -> inputs.determination()
                        .summary()
                        .filter(summary -> summary.reportedPercent().compareTo(issue.factorPercent()) == 0)
                        .isPresent())
                .map(inputs -> FieldBudget.of(inputs.of(
                        reading.gaugePercent().doubleValue(),
                        reading.meterId(),
                        reading.readAt().toLocalDate(),
                        issue.factorPercent().doubleValue(),
                        OptionalDouble.of(
                                known.now().profile().factorRounding().step().doubleValue()))));
    }

    private Optional<FieldBudgetInputs> inputs(DeterminationId id) {
        Evidence evidence = known.now();
        return evidence.determination(id)
                .flatMap(judged -> BudgetInputs.of(evidence, judged, scatter.get())
                        .map(FactorBudget::of)
                        .map(factor -> new FieldBudgetInputs(
                                judged, evidence.stories(), evidence.profile(), evidence.equipment(), factor)));
    }
}

package porebench.desk.field;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.desk.Reading;
import porebench.evidence.field.FieldAir;
import porebench.evidence.field.FieldFinding;
import porebench.evidence.field.FieldJudging;
import porebench.evidence.field.FieldOutcome;
import porebench.evidence.field.FieldReadings;
import porebench.evidence.paper.FieldList;
import porebench.method.Problem;
import porebench.method.air.AirVerdict;
import porebench.record.FieldReading;

/** What the page asks of the records: the one place where it meets what is made of readings. */
final class FieldRows {
    private FieldRows() {}

    /** Returns the readings that are asked for, the newest first. */
    static List<FieldLine> of(Reading seen, FieldAsked asked) {
        FieldReadings readings = readings(seen, asked.guard());
        List<FieldOutcome> outcomes = new ArrayList<>(asked.mix()
                .map(mix -> readings.ofMix(mix, Optional.of(asked.first()), Optional.of(asked.last())))
                .orElseGet(() -> readings.between(asked.first(), asked.last())));
        Collections.reverse(outcomes);
        return outcomes.stream().map(FieldRows::line).toList();
    }

    private static FieldReadings readings(Reading seen, Optional<BigDecimal> guard) {
        return new FieldReadings(seen.book(), mix -> seen.standing().evidence(mix), seen::scatter, guard);
    }

    private static FieldLine line(FieldOutcome outcome) {
        return new FieldLine(
                outcome.version().orElseThrow(),
                outcome.air().map(FieldRows::air),
                outcome.said()
                        .map(said -> new FieldLine.Said(said.finding().air().map(FieldRows::air))),
                marks(outcome.now()));
    }

    private static List<Problem> marks(FieldFinding finding) {
        return Stream.concat(finding.mark().stream(), finding.doubts().stream()).toList();
    }

    private static FieldLine.Air air(FieldAir air) {
        return new FieldLine.Air(
                air.issue().revision(),
                air.issue().factorPercent(),
                air.reportedPercent(),
                FieldList.shown(air.expandedPercent()),
                air.verdict().map(AirVerdict::symbol).orElse(FieldList.NOT_JUDGED),
                air.issue().terms().conditions(),
                air.spread());
    }

    /** Returns what a reading that was typed comes to, and what is against it. */
    static FieldGate.Held held(Reading seen, FieldGate gate) {
        FieldReading reading = gate.isNew()
                ? gate.reading()
                        .named(FieldNames.free(
                                gate.reading(),
                                name -> seen.book()
                                        .latest(FieldReading.class, name)
                                        .isPresent()))
                : gate.reading();
        FieldJudging judging = FieldJudging.of(seen.book(), gate.now());
        List<Problem> problems = new ArrayList<>(judging.check(reading));
        judging.twice(reading).ifPresent(problems::add);
        Optional<FieldFinding> finding = Problem.anyError(problems)
                ? Optional.empty()
                : readings(seen, gate.guard()).notKept(List.of(reading)).stream()
                        .map(FieldOutcome::now)
                        .findFirst();
        return new FieldGate.Held(
                reading,
                problems,
                finding.flatMap(FieldFinding::air).map(FieldRows::air),
                finding.map(FieldRows::marks).orElse(List.of()));
    }
}

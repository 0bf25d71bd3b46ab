package porebench.command.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.evidence.field.FieldAir;
import porebench.evidence.field.FieldOutcome;
import porebench.evidence.paper.FieldList;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.air.AirVerdict;
import porebench.record.FieldReading;
import porebench.record.Laboratory;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * Makes the list of field readings that {@code readings} writes, as the page of the window does: the same columns in the same order.
 *
 * @param words the words of the command line
 * @param problems says problems
 * @param said says what a reading was said to be before; empty where that is the same
 */
record ReadingsList(Texts words, ProblemText problems, Function<FieldOutcome, String> said) {
    /**
     * What the list is of.
     *
     * @param laboratory whose it is
     * @param moment when it stands so
     * @param from the first day; empty where it begins with the first reading
     * @param to the last day; empty where it ends with the last reading
     * @param mix the mix; empty where they are of all
     * @param guard how many standard uncertainties wide the guard band is; empty for none
     * @param head how far the lab book reaches
     */
    record Of(
            Optional<Laboratory> laboratory,
            LocalDateTime moment,
            Optional<LocalDate> from,
            Optional<LocalDate> to,
            Optional<MixId> mix,
            Optional<BigDecimal> guard,
            Head head) {}

    /** Returns the list of some readings. */
    FieldList list(Of of, List<FieldOutcome> outcomes) {
        LocalDate today = of.moment().toLocalDate();
        return new FieldList(
                of.laboratory(),
                of.moment(),
                new FieldList.Days(
                        of.from()
                                .orElseGet(() -> outcomes.stream()
                                        .map(ReadingsList::day)
                                        .reduce((one, other) -> one.isBefore(other) ? one : other)
                                        .orElse(today)),
                        of.to()
                                .orElseGet(() -> outcomes.stream()
                                        .map(ReadingsList::day)
                                        .reduce((one, other) -> one.isAfter(other) ? one : other)
                                        .orElse(today))),
                of.mix(),
                of.guard(),
                outcomes.stream().map(this::line).toList(),
                of.head());
    }

    private static LocalDate day(FieldOutcome outcome) {
        return outcome.reading().readAt().toLocalDate();
    }

    private FieldList.Line line(FieldOutcome outcome) {
        FieldReading reading = outcome.reading();
        if (!reading.counts()) {
            return new FieldList.Line(
                    reading, Optional.empty(), FieldList.STRUCK, words.get("readings.struck"), notes(outcome));
        }
        return outcome.air()
                .map(air -> new FieldList.Line(
                        reading,
                        Optional.of(new FieldList.Air(
                                air.issue().revision(),
                                air.issue().factorPercent(),
                                air.reportedPercent(),
                                FieldList.shown(air.expandedPercent()),
                                air.spread())),
                        air.verdict().map(AirVerdict::symbol).orElse(FieldList.NOT_JUDGED),
                        words.get(air.verdict()
                                .map(verdict -> "readings.is." + verdict.symbol())
                                .orElse("readings.not-judged")),
                        notes(outcome)))
                .orElseGet(() -> new FieldList.Line(
                        reading,
                        Optional.empty(),
                        FieldList.MARKED,
                        words.get("readings.said-nothing"),
                        notes(outcome)));
    }

    private List<String> notes(FieldOutcome outcome) {
        List<String> notes = new ArrayList<>();
        if (outcome.version().isEmpty()) {
            notes.add(words.get("readings.not-kept"));
        }
        if (!outcome.reading().counts()) {
            outcome.reading().struckBecause().ifPresent(notes::add);
            return notes;
        }
        if (outcome.said().isPresent()) {
            notes.add(words.get("readings.before") + ": " + said.apply(outcome));
        }
        outcome.air()
                .map(FieldAir::issue)
                .map(issue -> issue.terms().conditions())
                .filter(conditions -> !conditions.isBlank())
                .ifPresent(conditions -> notes.add(words.get(
                        "readings.conditions",
                        outcome.reading().mixId().text(),
                        Integer.toString(outcome.air().orElseThrow().issue().revision()),
                        conditions)));
        outcome.now().mark().map(problems::say).ifPresent(notes::add);
        outcome.now().doubts().stream().map(problems::say).forEach(notes::add);
        return notes;
    }
}

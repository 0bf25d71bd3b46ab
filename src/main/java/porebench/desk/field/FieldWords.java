package porebench.desk.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.evidence.paper.FieldList;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** Says of a reading how it is judged and why, on the screen and on paper alike. */
final class FieldWords {
    private final Texts texts;
    private final Numbers numbers;
    private final ProblemText problemText;

    FieldWords(Texts texts, Numbers numbers, ProblemText problemText) {
        this.texts = texts;
        this.numbers = numbers;
        this.problemText = problemText;
    }

    /** Says how a reading is judged; of one that does not count or is marked, that. */
    String verdict(FieldLine line) {
        return texts.get("verdict." + line.verdict());
    }

    /** Says how an air is judged. */
    String verdict(FieldLine.Air air) {
        return texts.get("verdict." + air.verdict());
    }

    /** Says why a reading is struck or marked, what is doubtful, and what was said at the time where that differs. */
    List<String> notes(FieldLine line) {
        Optional<String> struck = line.reading().struckBecause();
        if (struck.isPresent()) {
            return List.of(struck.get());
        }
        List<String> notes = new ArrayList<>();
        line.then().ifPresent(then -> notes.add(then(then)));
        line.now().flatMap(this::spread).ifPresent(notes::add);
        line.now()
                .map(FieldLine.Air::conditions)
                .filter(conditions -> !conditions.isBlank())
                .ifPresent(conditions -> notes.add(texts.get("why.conditions", conditions)));
        line.marks().forEach(mark -> notes.add(problemText.say(mark)));
        return notes;
    }

    /** Says of a wet-sieved concrete the air of the full mixture and of the mortar, and which air is judged. */
    Optional<String> spread(FieldLine.Air air) {
        return air.spread()
                .map(spread -> texts.get(
                        "why.sieved",
                        numbers.show(spread.fullMixturePercent()),
                        numbers.show(spread.mortarPercent()),
                        numbers.show(air.reportedPercent())));
    }

    private String then(FieldLine.Said said) {
        return said.air()
                .map(air -> texts.get(
                        "why.then",
                        numbers.show(air.reportedPercent()),
                        Integer.toString(air.revision()),
                        verdict(air)))
                .orElseGet(() -> texts.get("why.then-marked"));
    }

    /** Returns a line as it is printed. */
    FieldList.Line printed(FieldLine line) {
        return new FieldList.Line(
                line.reading(),
                line.counted()
                        .map(air -> new FieldList.Air(
                                air.revision(),
                                air.factorPercent(),
                                air.reportedPercent(),
                                air.expandedPercent(),
                                air.spread())),
                line.verdict(),
                verdict(line),
                notes(line));
    }
}

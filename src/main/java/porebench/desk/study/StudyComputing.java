package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.form.Numbers;
import porebench.evidence.MeterScale;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.CrossedReadings;
import porebench.evidence.study.FinestStep;
import porebench.evidence.study.LaboratoryLevels;
import porebench.evidence.study.LayeredReadings;
import porebench.evidence.study.ValueRow;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.CrossedVariances;
import porebench.statistics.variance.GaugeStudy;
import porebench.statistics.variance.VarianceLayers;

/** Makes studies of readings: all of the work, none of the window. */
final class StudyComputing {
    private static final double CONFIDENCE = 0.95;
    private static final long SEED = 1;

    private final Texts texts;
    private final ProblemText problemText;
    private final StudyFigures figures;

    /**
     * What came of it.
     *
     * @param problems what is wrong or doubtful, in words with the place
     * @param shown what the study says
     */
    record Said(List<String> problems, Optional<StudyShown> shown) {
        static final Said NOTHING = new Said(List.of(), Optional.empty());

        Said {
            problems = List.copyOf(problems);
        }

        static Said wrong(String why) {
            return new Said(List.of(why), Optional.empty());
        }
    }

    StudyComputing(Texts texts, Numbers numbers, ProblemText problemText) {
        this.texts = texts;
        this.problemText = problemText;
        this.figures = new StudyFigures(texts, numbers);
    }

    /**
     * Studies operators on shared samples.
     *
     * @param isTraining whether the lab book is for training, as pictures of it say
     */
    Said operators(Sheet<ValueRow> sheet, boolean withInteraction, boolean isTraining) {
        return of(
                CrossedReadings.of(sheet),
                readings -> new OperatorsStudy(
                                readings,
                                GaugeStudy.of(readings.readings(), withInteraction, CONFIDENCE, SEED),
                                texts,
                                figures,
                                isTraining)
                        .shown());
    }

    /**
     * Divides up the readings of a file.
     *
     * @param isCrossed whether the layers cross one another, rather than being groups within groups
     * @param isTraining whether the lab book is for training, as verdict and pictures of it say
     */
    Said layers(Sheet<ValueRow> sheet, boolean isCrossed, boolean isTraining) {
        Answer<LayeredReadings> answer = LayeredReadings.of(sheet);
        List<Problem> problems = new ArrayList<>(answer.problems());
        if (isCrossed) {
            answer.value()
                    .map(LayeredReadings::checkCrossing)
                    .ifPresent(found -> found.forEach(problem -> problems.add(problem.at(Place.of(sheet.file())))));
        }
        return of(
                Problem.anyError(problems) ? Answer.refused(problems) : answer,
                readings -> layers(
                        readings,
                        isCrossed,
                        new LayersStudy.Source(
                                false,
                                isTraining,
                                FinestStep.of(readings.values()).doubleValue())));
    }

    /** Makes the study of a lab book's factors. */
    Said ofBook(LayeredReadings readings, boolean isCrossed, boolean isTraining) {
        if (readings.values().length < 2) {
            return Said.NOTHING;
        }
        List<Problem> problems = isCrossed ? readings.checkCrossing() : List.of();
        if (Problem.anyError(problems)) {
            return new Said(problems.stream().map(problemText::say).toList(), Optional.empty());
        }
        LayersStudy.Source source = new LayersStudy.Source(true, isTraining, MeterScale.USUAL_DIVISION_PERCENT);
        return new Said(List.of(), Optional.of(layers(readings, isCrossed, source)));
    }

    private StudyShown layers(LayeredReadings readings, boolean isCrossed, LayersStudy.Source source) {
        return isCrossed ? crossed(readings, source) : nested(readings, source);
    }

    private StudyShown crossed(LayeredReadings readings, LayersStudy.Source source) {
        Judged<CrossedVariances> judged = CrossedVariances.of(readings.paths(), CONFIDENCE, readings.values());
        return judged.meaningful()
                .map(found -> LayersStudy.crossed(readings, found, source, texts, figures))
                .orElseGet(() -> StudyShown.of(texts.get(
                        judged.whyWithheld().equals(Optional.of(Judged.Reason.NO_SPREAD))
                                ? "layers.still"
                                : "crossed.explained")));
    }

    private StudyShown nested(LayeredReadings readings, LayersStudy.Source source) {
        return VarianceLayers.of(readings.paths(), CONFIDENCE, readings.values())
                .meaningful()
                .map(found -> LayersStudy.nested(readings, found, source, texts, figures))
                .orElseGet(() -> StudyShown.of(texts.get("layers.still")));
    }

    /**
     * Compares laboratories.
     *
     * @param isTraining whether the lab book is for training, as pictures of it say
     */
    Said laboratories(Sheet<ValueRow> sheet, boolean isTraining) {
        List<Problem> found = LaboratoryLevels.check(sheet);
        List<String> problems = found.stream().map(problemText::sayWithPlace).toList();
        if (Problem.anyError(found)) {
            return new Said(problems, Optional.empty());
        }
        double division = FinestStep.of(
                        sheet.values().stream().mapToDouble(ValueRow::value).toArray())
                .doubleValue();
        LaboratoryLevels levels = LaboratoryLevels.of(sheet, division);
        return new Said(
                problems,
                Optional.of(new LaboratoriesStudy(
                                levels,
                                levels.biases(division),
                                levels.doubts(),
                                texts,
                                figures,
                                problemText,
                                isTraining)
                        .shown()));
    }

    private <T> Said of(Answer<T> answer, Function<T, StudyShown> shown) {
        return new Said(
                answer.problems().stream().map(problemText::sayWithPlace).toList(),
                answer.value().map(shown));
    }
}

package porebench.desk.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import porebench.chart.hold.HoldPlot;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.FileNames;
import porebench.evidence.hold.HoldText;
import porebench.evidence.hold.MixHold;
import porebench.method.Answer;
import porebench.method.Dates;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.hold.Hold;
import porebench.method.hold.HoldPoint;
import porebench.record.FieldReading;
import porebench.record.id.MixId;

/** Whether the factor of the selected mix still holds, without its window. */
final class HoldModel {
    private static final String BUNDLE = "porebench.desk.hold.hold";

    private final DeskModel desk;
    private final Texts texts;
    private final HoldText words;

    HoldModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.words = HoldText.in(desk.tools().locale());
    }

    /**
     * What the pairs of a mix say.
     *
     * @param answer the chart, or why there is none; empty where the lab book has no such mix
     * @param sentences whether the factor holds, and what that rests on
     */
    private record Found(Optional<Answer<MixHold>> answer, List<String> sentences) {}

    /** Asks what the pairs of a mix say; how often a chart errs takes a moment to work out, so the words are answered too. */
    private record Asked(MixId mix, HoldText words) implements Question<Found> {
        @Override
        public Found answer(Reading seen) {
            Optional<Answer<MixHold>> answer =
                    seen.standing().evidence(mix).map(evidence -> MixHold.of(seen.book(), evidence, seen.moment()));
            List<String> sentences = new ArrayList<>();
            answer.flatMap(Answer::value).map(MixHold::hold).ifPresent(hold -> {
                sentences.add(words.say(hold));
                sentences.addAll(words.reasons(hold));
            });
            return new Found(answer, List.copyOf(sentences));
        }
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    private Optional<Found> found() {
        return desk.selected().flatMap(mix -> desk.answer(new Asked(mix, words)));
    }

    private Optional<Answer<MixHold>> answer() {
        return found().flatMap(Found::answer);
    }

    /** Returns the chart, once there is one pair at least. */
    private Optional<MixHold> charted() {
        return answer().flatMap(Answer::value).filter(hold -> !hold.pairs().isEmpty());
    }

    /** Returns whether the factor holds in one sentence, or why nothing is said of it. */
    String sentence() {
        if (charted().isPresent()) {
            return found().orElseThrow().sentences().get(0);
        }
        if (desk.selected().isEmpty()) {
            return "";
        }
        if (answer().isEmpty()) {
            return texts.get("doing");
        }
        return answer().flatMap(Answer::value)
                .map(hold -> texts.get("none", Dates.minute(hold.spell().from())))
                .orElseGet(() -> String.join(
                        " ",
                        answer().map(Answer::problems).orElse(List.of()).stream()
                                .map(desk.tools().problemText()::say)
                                .toList()));
    }

    /** Returns what the sentence rests on: which pairs, the density without air, and what the chart can tell. */
    List<String> reasons() {
        return charted()
                .map(hold -> {
                    // How often it errs stands above the plot.
                    List<String> reasons = new ArrayList<>(found().orElseThrow().sentences());
                    reasons.subList(0, 2).clear();
                    reasons.add(texts.get(
                            "pairs",
                            hold.hold().charted(),
                            Integer.toString(hold.spell().issue().revision()),
                            Dates.minute(hold.spell().from()),
                            desk.tools().numbers().show(hold.airFree().kilogramsPerCubicMetre(), 0)));
                    return reasons;
                })
                .orElse(List.of());
    }

    /** Returns what is not in the chart, and what began the time it shows. */
    List<Problem> notes() {
        return answer().flatMap(Answer::value).map(MixHold::notes).orElse(List.of());
    }

    Optional<HoldPlot> plot() {
        return charted()
                .map(hold -> new HoldPlot(
                        points(hold),
                        hold.hold()
                                .shift()
                                .map(shift -> OptionalInt.of(shift.from()))
                                .orElse(OptionalInt.empty()),
                        Hold.runLength(),
                        desk.isTraining()));
    }

    /** Returns the reading of a point of the plot, by the point's name. */
    Optional<FieldReading> reading(String name) {
        return charted().stream()
                .flatMap(hold -> hold.pairs().stream())
                .map(MixHold.Pair::reading)
                .filter(reading -> reading.recordId().equals(name))
                .findFirst();
    }

    private List<HoldPlot.Point> points(MixHold hold) {
        List<HoldPlot.Point> points = new ArrayList<>();
        for (int i = 0; i < hold.pairs().size(); i++) {
            MixHold.Pair pair = hold.pairs().get(i);
            HoldPoint on = hold.hold().points().get(i);
            points.add(new HoldPlot.Point(pair.reading().readAt().toLocalDate().toString(), said(pair, on), on));
        }
        return points;
    }

    private List<String> said(MixHold.Pair pair, HoldPoint on) {
        List<String> said = new ArrayList<>();
        said.add(texts.get(
                "tip.reading",
                pair.reading().id().text(),
                Dates.minute(pair.reading().readAt()),
                pair.reading().truck()));
        said.add(texts.get(
                "tip.airs",
                show(pair.air().pressurePercent()),
                show(pair.air().gravimetricPercent()),
                show(pair.air().difference())));
        if (on.pair().isDoubted()) {
            said.add(texts.get("tip.doubted"));
            return said;
        }
        said.add(texts.get("tip.sums", show(on.high()), show(on.low()), show(on.average())));
        if (on.isFarOut()) {
            said.add(texts.get("tip.far-out"));
        }
        return said;
    }

    private String show(double value) {
        return desk.tools().numbers().show(value, Digits.AIR);
    }

    String subject() {
        return desk.selected().map(MixId::text).orElse("");
    }

    /** Returns the name a picture of the plot is saved under unless the person says otherwise. */
    String pictureName() {
        return FileNames.part(subject()) + "-hold.png";
    }
}

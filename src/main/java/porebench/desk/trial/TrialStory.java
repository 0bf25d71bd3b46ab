package porebench.desk.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.chart.look.TrialPoint;
import porebench.desk.Tools;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.evidence.JudgedTrial;
import porebench.method.Digits;
import porebench.method.Languages;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.trial.Corrections;
import porebench.method.trial.Readings;
import porebench.quantity.LengthUnit;
import porebench.quantity.Typed;
import porebench.record.Trial;
import porebench.record.book.Version;

/** What there is to say about one trial, in sentences: its factor, what is doubtful, why it stands as it does, its versions. */
final class TrialStory {
    private static final int DECIMALS = Digits.AIR;
    private static final String ENTERED = "why.entered";
    /** The languages in which the program itself says why something is kept. */
    private static final List<Locale> WRITTEN = Languages.ALL;

    private final BenchModel entry;
    private final Tools tools;
    private final Texts texts;
    private final Numbers numbers;
    private final ProblemText problemText;

    TrialStory(Tools tools, Texts texts, BenchModel entry) {
        this.entry = entry;
        this.tools = tools;
        this.texts = texts;
        this.numbers = tools.numbers();
        this.problemText = tools.problemText();
    }

    /**
     * Tells a trial.
     *
     * @param row the trial as the table shows it
     * @param versions all its versions, the first one first
     */
    List<String> of(TrialRow row, List<Version<Trial>> versions) {
        JudgedTrial judged = row.judged();
        Trial trial = judged.trial().value();
        List<String> sentences = new ArrayList<>();
        sentences.add(factor(judged));
        sentences.add(texts.get(
                switch (row.state()) {
                    case COUNTED -> "story.counted";
                    case STRUCK -> "story.struck";
                    case VOID -> "story.void";
                },
                trial.struckBecause().orElse("")));
        judged.figures().problems().stream().map(this::doubt).forEach(sentences::add);
        if (judged.figures().problems().isEmpty()) {
            sentences.add(texts.get("story.no-doubt"));
        }
        trial.keptBecause().ifPresent(reason -> sentences.add(texts.get("story.kept", reason)));
        if (row.state() == TrialPoint.State.STRUCK && judged.isVoid()) {
            sentences.add(texts.get("story.void-too"));
        }
        trial.elevationMetres()
                .ifPresent(metres -> sentences.add(texts.get(
                        "story.elevation",
                        numbers.show(
                                        new Typed<>(metres, LengthUnit.METRE),
                                        row.units().elevation(),
                                        0)
                                + " "
                                + row.units().elevation().symbol())));
        if (!trial.remarks().isBlank()) {
            sentences.add(texts.get("story.remarks", trial.remarks()));
        }
        for (int i = 0; i < versions.size(); i++) {
            sentences.add(version(versions, i));
        }
        return sentences;
    }

    private String doubt(Problem problem) {
        return texts.get(problem.isError() ? "story.error" : "story.doubt", problemText.say(problem));
    }

    private String factor(JudgedTrial judged) {
        Readings readings = judged.trial().value().readings();
        if (judged.factorPercent().isEmpty()) {
            return texts.get("story.no-factor");
        }
        String factor = numbers.show(judged.factorPercent().getAsDouble(), DECIMALS);
        if (readings.meterType() == MeterType.A) {
            return texts.get(
                    "story.factor-a",
                    factor,
                    numbers.show(readings.h1Percent().orElseThrow()),
                    numbers.show(readings.h2Percent().orElseThrow()));
        }
        Optional<Corrections.Gauge> gauge = judged.figures().corrections().gauge();
        if (judged.figures().correctionPercent().isPresent()) {
            return texts.get(
                    "story.factor-b-corrected",
                    factor,
                    numbers.show(readings.gaugePercent().orElseThrow()),
                    numbers.show(
                            gauge.map(Corrections.Gauge::truePercent)
                                    .orElse(readings.gaugePercent()
                                            .orElseThrow()
                                            .doubleValue()),
                            DECIMALS),
                    numbers.show(judged.figures().withdrawnPercent().orElseThrow(), DECIMALS),
                    numbers.show(judged.figures().uncorrectedPercent().orElseThrow(), DECIMALS));
        }
        return texts.get(
                "story.factor-b",
                factor,
                numbers.show(readings.gaugePercent().orElseThrow()),
                numbers.show(judged.figures().withdrawnPercent().orElseThrow(), DECIMALS));
    }

    private String version(List<Version<Trial>> versions, int index) {
        Version<Trial> version = versions.get(index);
        String kept = texts.get(
                "story.version",
                Integer.toString(version.number()),
                version.stamp().who(),
                Days.show(version.stamp().at(), tools.zone()),
                why(version.stamp().why()));
        List<String> changes = index == 0 ? List.of() : changes(versions.get(index - 1), version);
        return changes.isEmpty() ? kept : texts.get("story.version-changed", kept, String.join("; ", changes));
    }

    /** Returns why a version was kept; what the program wrote for a person stands in the language of who reads it. */
    private String why(String kept) {
        return WRITTEN.stream()
                        .map(locale -> Texts.of(TrialsModel.BUNDLE, locale).get(ENTERED))
                        .anyMatch(kept::equals)
                ? texts.get(ENTERED)
                : kept;
    }

    private List<String> changes(Version<Trial> before, Version<Trial> after) {
        return entry.changes(
                BenchFields.IN_ORDER_OF_KEYS,
                entry.drafts().of(before.value()),
                entry.drafts().of(after.value()));
    }
}

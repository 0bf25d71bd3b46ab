package porebench.desk.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.desk.Bowl;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.desk.trial.TrialGate;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Meter;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** What Enter does at each step of a bowl: what was typed passes the gate, or it is said why it does not. */
final class BowlSteps {
    /** Says that the trial is kept in spite of its doubts, because the reading was looked at again. */
    private static final String CHECKED = "1";

    /** Says that the meter leaked, or that it did not after all. */
    private static final String LEAKED = "9";

    /** Says that the bowl goes off the bench. */
    private static final String OFF = "0";

    private static final int SECONDS = 60;
    private static final int MOST_DIGITS_OF_A_PLACE = 2;

    private final BowlsModel model;
    private final TrialGate gate;
    private final Texts texts;
    private final BenchWords words;

    BowlSteps(BowlsModel model) {
        this.model = model;
        this.gate = model.gate();
        this.texts = model.texts();
        this.words = new BenchWords(model);
    }

    void enter(Bowl bowl, BenchStep step) {
        switch (step) {
            case METER -> chooseMeter(bowl);
            case SOAK -> endSoak(bowl);
            case RESULT -> finish(bowl);
            default ->
                step.column()
                        .ifPresentOrElse(column -> read(bowl, step, column, bowl.typed()), () -> model.goOn(bowl, ""));
        }
    }

    private void chooseMeter(Bowl bowl) {
        List<Meter> meters = gate.meters();
        String typed = bowl.typed();
        if (typed.isEmpty()) {
            if (gate.meter().isPresent()) {
                takeMeter(bowl);
            } else {
                model.say(texts.get("no-meter"), true);
            }
            return;
        }
        if (typed.equals(OFF)) {
            if (model.isAskedTwice()) {
                model.giveUp();
            } else {
                model.ask(texts.get("off-the-bench"), true);
            }
            return;
        }
        boolean isPlace =
                typed.length() <= MOST_DIGITS_OF_A_PLACE && typed.chars().allMatch(Character::isDigit);
        int place = isPlace ? Integer.parseInt(typed) : 0;
        if (place < 1 || place > meters.size()) {
            model.keep(bowl.typing(""));
            model.say(texts.get("no-such-meter", Integer.toString(meters.size())), true);
        } else {
            String chosen = meters.get(place - 1).recordId();
            model.keep(bowl.typing("").with(bowl.draft().with(TrialColumns.METER, chosen)));
            model.arrive("");
            askAboutMeter();
        }
    }

    /** Goes on with the meter that is chosen, unless the trial could not be kept with it. */
    private void takeMeter(Bowl bowl) {
        if (model.isAskedTwice() || !askAboutMeter()) {
            model.goOn(bowl, "");
        }
    }

    /** Says what is wrong or doubtful about the meter before anything is weighed for it; returns whether anything is. */
    private boolean askAboutMeter() {
        List<Problem> problems = gate.problems(TrialColumns.METER).stream()
                .filter(problem -> !problem.kind().isNotYet())
                .toList();
        boolean isRefused = problems.stream().anyMatch(Problem::isError);
        if (!problems.isEmpty()) {
            model.ask(words(problems, texts.get(isRefused ? "other-meter" : "enter-again")), !isRefused);
        }
        return !problems.isEmpty();
    }

    /** Takes a reading through the gate; what is doubtful is taken by a second Enter. */
    private void read(Bowl bowl, BenchStep step, Column<Trial, ?> column, String typed) {
        if (typed.isBlank()) {
            model.say(texts.get("nothing-typed"), true);
            return;
        }
        TypedDraft draft = bowl.draft().with(column, typed.strip());
        if (column == TrialColumns.GAUGE || column == TrialColumns.H1) {
            draft = draft.with(
                    TrialColumns.TESTED_AT,
                    Days.show(model.now(), model.desk().tools().zone()));
        }
        model.judge(draft);
        List<Problem> problems = gate.problems(column);
        List<Problem> errors = problems.stream()
                .filter(Problem::isError)
                .filter(problem -> !problem.kind().isNotYet())
                .toList();
        if (!errors.isEmpty()) {
            model.ask(words(errors, texts.get("type-anew")), false);
        } else if (!problems.isEmpty() && !model.isAskedTwice()) {
            model.ask(words(problems, texts.get("enter-again")), true);
        } else if (problems.isEmpty() && isOffLimits(step) && !model.isAskedTwice()) {
            model.ask(texts.get("off-limits", words.massLimits(step)) + " " + texts.get("enter-again"), true);
        } else {
            String said = texts.get(
                    problems.isEmpty() && !isOffLimits(step) ? "read.well" : "read.doubtful",
                    texts.get("title." + step.name()),
                    (typed.strip() + " " + words.unit(step)).strip());
            model.goOn(bowl.with(draft), said);
        }
    }

    /** Returns whether what was weighed at a step is not between the limits of the list to weigh by. */
    private boolean isOffLimits(BenchStep step) {
        return step.role().filter(role -> !gate.isWithinLimits(role)).isPresent();
    }

    /** Returns whether the minutes typed are others than the clock of the bowl shows. */
    private boolean isOffTheClock(Bowl bowl) {
        Optional<BigDecimal> typed = model.desk().tools().numbers().parse(bowl.typed());
        return typed.isPresent()
                && bowl.soaked(model.now())
                        .filter(soaked -> typed.get()
                                        .multiply(BigDecimal.valueOf(SECONDS))
                                        .subtract(BigDecimal.valueOf(soaked.toSeconds()))
                                        .abs()
                                        .compareTo(BigDecimal.valueOf(SECONDS))
                                > 0)
                        .isPresent();
    }

    /** Ends the soak when its time is over; sooner only by the minutes, typed. */
    private void endSoak(Bowl bowl) {
        if (!bowl.typed().isBlank()) {
            if (isOffTheClock(bowl) && !model.isAskedTwice()) {
                model.ask(
                        texts.get(
                                "soak.off-the-clock",
                                BenchWords.clock(bowl.soaked(model.now()).orElseThrow())),
                        true);
                return;
            }
            read(bowl, BenchStep.SOAK, TrialColumns.SOAK, bowl.typed());
            return;
        }
        Duration soaked = bowl.soaked(model.now()).orElse(Duration.ZERO);
        Optional<Duration> left = bowl.soakLeft(model.now());
        String minutes = BigDecimal.valueOf(soaked.toSeconds())
                .divide(BigDecimal.valueOf(SECONDS), 0, RoundingMode.HALF_EVEN)
                .toPlainString();
        if (left.filter(still -> still.toSeconds() > 0).isPresent()) {
            model.say(texts.get("soak.too-early", BenchWords.clock(left.get())), true);
        } else if (left.isEmpty() && !model.isAskedTwice()) {
            model.ask(texts.get("soak.no-time", minutes), true);
        } else {
            read(bowl, BenchStep.SOAK, TrialColumns.SOAK, minutes);
        }
    }

    private void finish(Bowl bowl) {
        String choice = bowl.typed().strip();
        if (choice.equals(LEAKED)) {
            boolean leaks = !bowl.draft().isYes(TrialColumns.LEAK);
            model.keep(bowl.typing("").with(bowl.draft().with(TrialColumns.LEAK, leaks)));
            model.arrive("");
            model.say(texts.get(leaks ? "leaked" : "leaked.not"), leaks);
            return;
        }
        List<Problem> errors = gate.errors();
        List<Problem> doubts = gate.doubts();
        if (!errors.isEmpty()) {
            model.ask(words(errors, texts.get("go-back")), false);
        } else if (!doubts.isEmpty() && !choice.equals(CHECKED)) {
            model.keep(bowl.typing(""));
            model.ask(words(doubts, texts.get("doubt.choose")), false);
        } else {
            save(bowl, doubts.isEmpty() ? Optional.empty() : Optional.of(texts.get("doubt.checked")));
        }
    }

    private void save(Bowl bowl, Optional<String> because) {
        TypedDraft draft = model.named(bowl.draft());
        model.judge(draft);
        SavedTrial done = new SavedTrial(
                bowl.number(), bowl.mix(), draft.text(TrialColumns.ID), BenchWords.factor(model, gate.figures()));
        gate.keep(because, refused -> {
            if (refused.isEmpty()) {
                model.kept(bowl, done);
            } else {
                model.ask(words(refused, texts.get("go-back")), false);
            }
        });
    }

    /** Returns problems in words, and what to do about them. */
    private String words(List<Problem> problems, String then) {
        return Stream.concat(problems.stream().map(model.desk().tools().problemText()::say), Stream.of(then))
                .collect(Collectors.joining(" "));
    }
}

package porebench.desk.frame.start;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Settings;
import porebench.record.Source;

/** Which of the first steps of the lab book are done, and whether the list of them is still wanted. */
public final class FirstStepsModel {
    private static final String PUT_AWAY = "firstSteps.putAway";
    private static final int MOST_KEPT = 20;

    private final DeskModel desk;
    private final Settings settings;

    public FirstStepsModel(DeskModel desk, Settings settings) {
        this.desk = desk;
        this.settings = settings;
    }

    DeskModel desk() {
        return desk;
    }

    /** Returns the steps that are done, as far as is known by now. */
    public Set<FirstStep> done() {
        Set<FirstStep> done = EnumSet.noneOf(FirstStep.class);
        if (!desk.hasBook()) {
            return done;
        }
        note(done, FirstStep.LABORATORY, desk.laboratory().isPresent());
        note(done, FirstStep.METER, !desk.meters().isEmpty());
        note(
                done,
                FirstStep.CALIBRATION,
                desk.meters().stream().anyMatch(meter -> meter.nextDue().isPresent()));
        note(
                done,
                FirstStep.SOURCES,
                !desk.answer(new Question.Newest<>(Source.class))
                        .orElse(List.of())
                        .isEmpty());
        note(done, FirstStep.MIX, !desk.rows().isEmpty());
        note(done, FirstStep.TRIAL, hasTrial());
        return done;
    }

    private static void note(Set<FirstStep> done, FirstStep step, boolean isDone) {
        if (isDone) {
            done.add(step);
        }
    }

    private boolean hasTrial() {
        boolean isOfMix = desk.evidence().stream()
                .flatMap(evidence -> evidence.determinations().stream())
                .anyMatch(determination -> !determination.trials().isEmpty());
        return isOfMix
                || desk.rows().stream()
                        .anyMatch(row ->
                                row.countedTrials() > 0 || row.factorPercent().isPresent());
    }

    /** Returns the first step that is not done; empty when all are. */
    public Optional<FirstStep> next() {
        Set<FirstStep> done = done();
        return Arrays.stream(FirstStep.values())
                .filter(step -> !done.contains(step))
                .findFirst();
    }

    /** Returns whether a step can be taken now: a trial is made of a mix, and a calibration of a meter. */
    boolean isOpen(FirstStep step) {
        return switch (step) {
            case CALIBRATION -> !desk.meters().isEmpty();
            case TRIAL -> !desk.rows().isEmpty();
            default -> true;
        };
    }

    /** Returns whether a person should still be led: something before the first trial is open, and nobody put the list away. */
    public boolean isWanted() {
        return desk.hasBook() && !desk.isTraining() && !isPutAway() && !hasTrial();
    }

    private boolean isPutAway() {
        return putAway().contains(book());
    }

    /** Returns what tells the lab book from others, also from one of the same name in another folder, in a few letters. */
    private String book() {
        return desk.book().name() + " "
                + Integer.toHexString(desk.unsaved().place().hashCode());
    }

    private List<String> putAway() {
        return List.of(settings.get(PUT_AWAY, "").split("\n", -1));
    }

    /** Does not lead through this lab book any more, until somebody asks for it. */
    public void putAway(boolean away) {
        String name = book();
        List<String> others = putAway().stream()
                .filter(other -> !other.isEmpty() && !other.equals(name))
                .limit(MOST_KEPT)
                .toList();
        String joined = String.join("\n", others);
        settings.put(PUT_AWAY, away ? name + "\n" + joined : joined);
    }
}

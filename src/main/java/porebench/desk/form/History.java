package porebench.desk.form;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * A draft that can be undone and redone step by step.
 *
 * @param <D> the draft, immutable, with a meaningful {@code equals}
 */
public final class History<D> {
    private static final int KEPT_STEPS = 200;

    private final Deque<Step<D>> undone = new ArrayDeque<>();
    private final Deque<Step<D>> done = new ArrayDeque<>();
    private final List<Runnable> listeners = new ArrayList<>();
    private D draft;
    private D saved;
    private boolean isTogether;

    /**
     * What was done.
     *
     * @param saved what counted as saved before, where the step changed that
     * @param back what shows something else than the draft before when the step is taken back
     */
    private record Step<D>(String label, D before, Optional<D> saved, Optional<Runnable> back) {
        Step(String label, D before) {
            this(label, before, Optional.empty(), Optional.empty());
        }
    }

    /** Begins with a draft that counts as saved. */
    public History(D draft) {
        this.draft = draft;
        this.saved = draft;
    }

    /** Returns the draft as it is now. */
    public D draft() {
        return draft;
    }

    /**
     * Changes the draft. Steps with the same label in a row are one step, so that typing a word is undone as a word.
     *
     * @param label what was done, for the person
     */
    public void update(String label, D changed) {
        if (changed.equals(draft)) {
            return;
        }
        boolean goesOn = isTogether || !done.isEmpty() && done.peek().label().equals(label) && undone.isEmpty();
        if (!goesOn) {
            done.push(new Step<>(label, draft));
        }
        if (done.size() > KEPT_STEPS) {
            done.removeLast();
        }
        undone.clear();
        draft = changed;
        fire();
    }

    /** Makes several changes one step; none where nothing came of them. */
    public void together(String label, Runnable changes) {
        D before = draft;
        done.push(new Step<>(label, before));
        isTogether = true;
        try {
            changes.run();
        } finally {
            isTogether = false;
            if (draft.equals(before)) {
                done.pop();
            }
        }
    }

    /** Takes back the last step, if there is one. */
    public void undo() {
        if (!done.isEmpty()) {
            Step<D> step = done.pop();
            if (step.back().isPresent()) {
                step.back().get().run();
                return;
            }
            undone.push(turnBack(step));
            fire();
        }
    }

    /**
     * Notes as a step that another draft was given up for this one.
     *
     * @param back shows that draft again when the step is taken back
     */
    public void gaveUp(String label, Runnable back) {
        done.push(new Step<>(label, draft, Optional.empty(), Optional.of(back)));
        fire();
    }

    /** Does the last undone step again, if there is one. */
    public void redo() {
        if (!undone.isEmpty()) {
            done.push(turnBack(undone.pop()));
            fire();
        }
    }

    /** Shows what was before a step, and returns the step that turns to what was after it. */
    private Step<D> turnBack(Step<D> step) {
        Step<D> forth = new Step<>(step.label(), draft, step.saved().map(any -> saved), Optional.empty());
        draft = step.before();
        saved = step.saved().orElse(saved);
        return forth;
    }

    /** Returns what undoing would take back. */
    public Optional<String> undoLabel() {
        return Optional.ofNullable(done.peek()).map(Step::label);
    }

    /** Returns what redoing would do again. */
    public Optional<String> redoLabel() {
        return Optional.ofNullable(undone.peek()).map(Step::label);
    }

    /** Begins anew with a draft that counts as saved; nothing can be undone beyond it. */
    public void restart(D other) {
        done.clear();
        undone.clear();
        draft = other;
        saved = other;
        fire();
    }

    /** Begins anew as a step that can be taken back; the draft then counts as saved. */
    public void renew(String label, D other) {
        done.push(new Step<>(label, draft));
        undone.clear();
        draft = other;
        saved = other;
        fire();
    }

    /**
     * Goes on from another draft that counts as saved, as a step that takes both back.
     *
     * @param counts what counts as saved from now on
     * @param changed the draft as it is then
     */
    public void goOnFrom(String label, D counts, D changed) {
        done.push(new Step<>(label, draft, Optional.of(saved), Optional.empty()));
        undone.clear();
        saved = counts;
        draft = changed;
        fire();
    }

    /** Shows another draft that counts as saved, in the place of one that was not changed; what was undone can still be redone. */
    public void rebase(D other) {
        boolean isOther = !other.equals(draft);
        draft = other;
        saved = other;
        if (isOther) {
            fire();
        }
    }

    /** Goes on with a draft that was begun before; nothing can be undone beyond it, and what counts as saved stays. */
    public void resume(D other) {
        done.clear();
        undone.clear();
        draft = other;
        fire();
    }

    /** Returns the draft that counts as saved. */
    public D saved() {
        return saved;
    }

    /** Returns whether the draft differs from what was last saved. */
    public boolean isChanged() {
        return !draft.equals(saved);
    }

    /** Calls back after every change. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}

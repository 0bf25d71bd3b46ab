package porebench.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.desk.form.Tasks;
import porebench.record.RecordKind;
import porebench.record.book.Namesakes;

/**
 * What was asked of the lab book, with the answers as far as they are there. Used on one thread; what is not known is looked
 * up beside it, and an answer to a reading that is no longer the newest is dropped.
 */
final class Answers {
    private final Tasks tasks;
    private final Object oneAtATime;
    private final Runnable told;
    private final Map<Question<?>, Object> known = new LastAsked();
    private final Set<Question<?>> underWay = new HashSet<>();
    private final Set<Question<?>> wanted = new HashSet<>();
    private Reading seen;
    private boolean asking;

    /** The answers to the last questions; those of long ago are looked up again. */
    private static final class LastAsked extends LinkedHashMap<Question<?>, Object> {
        private static final long serialVersionUID = 1L;
        private static final int MOST = 100;

        LastAsked() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Question<?>, Object> eldest) {
            return size() > MOST;
        }
    }

    /**
     * Begins without any.
     *
     * @param oneAtATime held while something is looked up
     * @param told is told of an answer that came later than its question
     */
    Answers(Tasks tasks, Object oneAtATime, Reading seen, Runnable told) {
        this.tasks = tasks;
        this.oneAtATime = oneAtATime;
        this.seen = seen;
        this.told = told;
    }

    /** Returns the answer to a question; empty until it was looked up. */
    <A> Optional<A> to(Question<A> question) {
        wanted.add(question);
        if (!known.containsKey(question) && underWay.add(question)) {
            ask(question);
        }
        @SuppressWarnings("unchecked") // Beside a question stands only its own answer.
        A answer = (A) known.get(question);
        return Optional.ofNullable(answer);
    }

    /** Returns names that are looked up as all else is: one that was not yet is like no other until then. */
    Namesakes names() {
        return new Namesakes(new NoBook() {
            @Override
            public Map<String, String> alike(RecordKind kind, Collection<String> some) {
                return to(new Question.Alike(kind, List.copyOf(some))).orElse(Map.of());
            }
        });
    }

    private <A> void ask(Question<A> question) {
        Reading of = seen;
        boolean before = asking;
        asking = true;
        try {
            tasks.workOut(() -> lookUp(question, of), answer -> take(of, question, answer), failure -> {
                if (of == seen) {
                    throw new IllegalStateException("asking the lab book", failure);
                }
            });
        } finally {
            asking = before;
        }
    }

    /** Looks the answer to a question up; beside the event thread. */
    <A> A lookUp(Question<A> question, Reading of) {
        synchronized (oneAtATime) {
            return question.answer(of);
        }
    }

    private void take(Reading of, Question<?> question, Object answer) {
        if (of == seen) {
            underWay.remove(question);
            known.put(question, answer);
            if (!asking) {
                told.run();
            }
        }
    }

    /** Returns what is asked again when the lab book is read anew: what nobody asked since it was read last is not. */
    List<Question<?>> asked() {
        List<Question<?>> all = new ArrayList<>(known.keySet());
        all.addAll(underWay);
        all.retainAll(wanted);
        return all;
    }

    /** Looks some questions up; beside the event thread. */
    static Map<Question<?>, Object> lookUp(List<Question<?>> asked, Reading seen) {
        Map<Question<?>, Object> found = new LinkedHashMap<>();
        asked.forEach(question -> found.put(question, question.answer(seen)));
        return found;
    }

    /** Turns to another reading, with the answers that came with it. */
    void turnTo(Reading other, Map<Question<?>, Object> answered) {
        seen = other;
        underWay.clear();
        wanted.clear();
        known.clear();
        known.putAll(answered);
    }
}

package porebench.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import porebench.method.Problem;

/** Why something was not kept, where the outcome comes at once. */
public final class Refused {
    private Refused() {}

    /** Keeps something and returns why it was not kept; empty when it was. */
    public static List<Problem> by(Consumer<Outcome> keeping) {
        AtomicReference<List<Problem>> refused = new AtomicReference<>();
        keeping.accept(refused::set);
        return Optional.ofNullable(refused.get()).orElseThrow(() -> new AssertionError("there was no outcome"));
    }
}

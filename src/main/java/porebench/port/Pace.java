package porebench.port;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.LongSupplier;
import porebench.method.Texts;
import porebench.record.book.Progress;

/**
 * How far a long piece of work is, in words, with the time that what is being done will still take; and the way to end it.
 *
 * <p>One thread works and tells, another asks and may end it.
 */
public final class Pace implements Progress {
    /** Before so much of a stage has passed it says little about the rest. */
    private static final Duration TOO_SHORT = Duration.ofSeconds(1);

    private final LongSupplier nanos;
    private volatile Optional<Seen> seen = Optional.empty();
    private volatile boolean ended;

    private record Seen(Stage stage, long done, long of, long since, long now) {}

    /**
     * Makes one of work that begins now.
     *
     * @param nanos a clock that never goes back, in nanoseconds
     */
    public Pace(LongSupplier nanos) {
        this.nanos = nanos;
    }

    @Override
    public void at(Stage stage, long done, long of) {
        if (ended) {
            throw new CancellationException("ended by the person");
        }
        long now = nanos.getAsLong();
        long since =
                seen.filter(before -> before.stage == stage).map(Seen::since).orElse(now);
        seen = Optional.of(new Seen(stage, done, of, since, now));
    }

    /** Ends the work where it next tells how far it is. */
    public void end() {
        ended = true;
    }

    /** Returns the part of the stage that is done, 0 to 1; empty where that is not known. */
    public Optional<Double> part() {
        return seen.filter(one -> one.of > 0).map(one -> Math.min(1, (double) one.done / one.of));
    }

    /** Returns how long the rest of the stage takes when it goes on as it went; empty where that cannot be told yet. */
    public Optional<Duration> left() {
        return seen.filter(one -> one.done > 0 && one.of >= one.done)
                .filter(one -> one.now - one.since >= TOO_SHORT.toNanos())
                .map(one -> Duration.ofNanos((long) ((double) (one.now - one.since) * (one.of - one.done) / one.done)));
    }

    /** Returns what is being done, how much of it is done and how long the rest takes; empty before the work told anything. */
    public Optional<String> words(Locale locale) {
        Texts texts = Texts.of("porebench.port.pace", locale);
        return seen.map(one -> {
            String stage = texts.get(one.stage.name());
            Optional<String> percent = part().map(part -> Integer.toString((int) Math.floor(100 * part)));
            String done =
                    percent.map(number -> texts.get("done", stage, number)).orElse(stage);
            return left().map(rest -> texts.get("left", done, inWords(texts, rest)))
                    .orElse(done);
        });
    }

    private static String inWords(Texts texts, Duration rest) {
        long seconds = Math.max(1, Math.round(rest.toNanos() / 1e9));
        return seconds < 100
                ? texts.get("seconds", Long.toString(seconds))
                : texts.get("minutes", Long.toString(Math.round(seconds / 60.0)));
    }
}

package porebench.desk;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.DraftText;
import porebench.desk.form.TypedDraft;
import porebench.record.id.MixId;

/**
 * One bowl on the bench, in which a trial is being made: how far it is and what was read so far.
 *
 * @param mix the mix whose aggregate is in it
 * @param number tells the bowls on the bench apart, from 1 on
 * @param step the step it is at, by its symbol
 * @param draft what was read so far, as typed
 * @param typed what is being typed at the step
 * @param soakFrom since when the aggregate soaks; empty before
 * @param soakMinutes how long it should soak, in minutes; empty where the mix design does not say
 */
public record Bowl(
        MixId mix,
        int number,
        String step,
        TypedDraft draft,
        String typed,
        Optional<Instant> soakFrom,
        Optional<BigDecimal> soakMinutes) {
    static final String LEAD = "bench/";

    private static final int PARTS = 5;
    private static final String MARK = "bowl";

    /** Returns the name under which it is kept. */
    public String name() {
        return LEAD + mix.text() + "/" + number;
    }

    /** Returns this bowl at another step. */
    public Bowl at(String other) {
        return new Bowl(mix, number, other, draft, typed, soakFrom, soakMinutes);
    }

    /** Returns this bowl with other readings. */
    public Bowl with(TypedDraft other) {
        return new Bowl(mix, number, step, other, typed, soakFrom, soakMinutes);
    }

    /** Returns this bowl with something else being typed. */
    public Bowl typing(String other) {
        return new Bowl(mix, number, step, draft, other, soakFrom, soakMinutes);
    }

    /** Returns this bowl, its aggregate soaking since a moment. */
    public Bowl soaking(Instant since, Optional<BigDecimal> minutes) {
        return new Bowl(mix, number, step, draft, typed, Optional.of(since), minutes);
    }

    /** Returns how long its aggregate has soaked; empty before it does. */
    public Optional<Duration> soaked(Instant now) {
        return soakFrom.map(since -> Duration.between(since, now));
    }

    /** Returns how long it still has to soak, less than nothing when it is over; empty where it does not or nobody said how long. */
    public Optional<Duration> soakLeft(Instant now) {
        return soaked(now)
                .flatMap(soaked -> soakMinutes.map(minutes -> Duration.ofSeconds(
                                minutes.multiply(BigDecimal.valueOf(60)).longValue())
                        .minus(soaked)));
    }

    /** Returns it as text. */
    public String text() {
        return String.join(
                        "\t",
                        MARK,
                        step,
                        typed.replaceAll("\\s", " "),
                        soakFrom.map(Instant::toString).orElse(""),
                        soakMinutes.map(BigDecimal::toPlainString).orElse(""))
                + "\n"
                + DraftText.of(draft);
    }

    /** Returns the bowl that is kept under a name; empty where the text is of no bowl, as when another program wrote it. */
    public static Optional<Bowl> parse(String name, String text) {
        int slash = name.lastIndexOf('/');
        int line = text.indexOf('\n');
        if (slash <= LEAD.length() || line < 0) {
            return Optional.empty();
        }
        List<String> parts = List.of(text.substring(0, line).split("\t", -1));
        if (parts.size() != PARTS || !parts.get(0).equals(MARK)) {
            return Optional.empty();
        }
        try {
            return DraftText.parse(text.substring(line + 1))
                    .map(draft -> new Bowl(
                            new MixId(name.substring(LEAD.length(), slash)),
                            Integer.parseInt(name.substring(slash + 1)),
                            parts.get(1),
                            draft,
                            parts.get(2),
                            Optional.of(parts.get(3))
                                    .filter(at -> !at.isEmpty())
                                    .map(Instant::parse),
                            Optional.of(parts.get(4))
                                    .filter(minutes -> !minutes.isEmpty())
                                    .map(BigDecimal::new)));
        } catch (IllegalArgumentException | java.time.DateTimeException unknown) {
            return Optional.empty();
        }
    }
}

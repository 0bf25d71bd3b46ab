package porebench.desk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.desk.form.Respelling;
import porebench.method.Texts;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;

/** The bowls on the bench: kept outside the lab book as they stand, whichever page is on view, until their trial is kept. */
public final class Bowls {
    /** The symbol of the step at which the aggregate soaks. */
    public static final String SOAK = "SOAK";

    private static final int MOST = 99;

    private final DeskModel desk;
    private final Texts texts;

    public Bowls(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.desk", desk.tools().locale());
    }

    /** Returns all, by their number. */
    public List<Bowl> all() {
        Unsaved unsaved = desk.unsaved();
        return unsaved.names(Bowl.LEAD).stream()
                .flatMap(name -> unsaved
                        .find(name)
                        .flatMap(text -> Bowl.parse(name, text))
                        .map(bowl -> spelt(bowl, unsaved.respelling(name)))
                        .stream())
                .sorted(Comparator.comparingInt(Bowl::number))
                .toList();
    }

    private static Bowl spelt(Bowl bowl, Respelling respelling) {
        return bowl.with(respelling.of(bowl.draft(), TrialColumns.ALL.all())).typing(respelling.begun(bowl.typed()));
    }

    /** Returns the bowl of a number. */
    public Optional<Bowl> find(int number) {
        return all().stream().filter(bowl -> bowl.number() == number).findFirst();
    }

    /** Returns the least number that no bowl has. */
    public int freeNumber() {
        List<Integer> taken = all().stream().map(Bowl::number).toList();
        return IntStream.rangeClosed(1, MOST)
                .filter(number -> !taken.contains(number))
                .findFirst()
                .orElse(MOST + 1);
    }

    /** Keeps a bowl as it stands now. */
    public void keep(Bowl bowl) {
        desk.unsaved().keep(bowl.name(), bowl.text());
    }

    /** Keeps a bowl no longer. */
    public void drop(Bowl bowl) {
        desk.unsaved().drop(bowl.name());
    }

    /** Returns whether the soak of a bowl is over and nobody ended it yet. */
    public boolean rings(Bowl bowl) {
        return bowl.step().equals(SOAK)
                && bowl.soakLeft(desk.tools().clock().instant())
                        .filter(left -> left.isNegative() || left.isZero())
                        .isPresent();
    }

    /** Says what the bench does with a mix, such as {@code soaking, 8 min left}; empty when no bowl is of it. */
    public Optional<String> words(MixId mix) {
        List<Bowl> bowls = all().stream().filter(bowl -> bowl.mix().equals(mix)).toList();
        if (bowls.stream().anyMatch(this::rings)) {
            return Optional.of(texts.get("bench.soaked"));
        }
        return bowls.stream()
                .filter(bowl -> bowl.step().equals(SOAK))
                .flatMap(bowl -> bowl.soakLeft(desk.tools().clock().instant()).stream())
                .min(Comparator.naturalOrder())
                .map(left -> texts.get("bench.soaking", minutes(left)))
                .or(() -> bowls.isEmpty() ? Optional.empty() : Optional.of(texts.get("bench.begun")));
    }

    /** Returns the minutes that something still lasts, a begun one as a whole one. */
    private static String minutes(Duration left) {
        return BigDecimal.valueOf(left.toSeconds())
                .divide(BigDecimal.valueOf(60), 0, RoundingMode.CEILING)
                .toPlainString();
    }
}

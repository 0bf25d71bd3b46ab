package porebench.evidence.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.record.TestPlan;
import porebench.record.book.Records;
import porebench.record.book.Version;

/** Finds the plans that a lab book keeps. */
public final class KeptPlan {
    private KeptPlan() {}

    /** Returns the kept plan that begins on a day. */
    public static Optional<Version<TestPlan>> from(Records book, LocalDate day) {
        return book.latest(TestPlan.class, day.toString());
    }

    /** Returns the kept plan in whose seven days a day lies; of several the one that begins last. */
    public static Optional<Version<TestPlan>> on(Records book, LocalDate day) {
        List<String> firstDays = IntStream.range(0, TestPlan.DAYS)
                .mapToObj(back -> day.minusDays(back).toString())
                .toList();
        return book.latest(TestPlan.class, firstDays).values().stream()
                .max(Comparator.comparing(version -> version.value().from()));
    }
}

package porebench.evidence;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.method.Dates;
import porebench.record.FactorIssue;
import porebench.record.book.Version;

/**
 * Which revision of a factor has begun at a moment: the newest whose hour has come.
 *
 * <p>A question about a whole day is one about its last moment: on the day on which a revision begins, it is that revision that the
 * day is said to have. What holds now is asked of the moment.
 */
public final class Moments {
    private Moments() {}

    /** Returns the moment of which a question about a whole day is one. */
    public static LocalDateTime endOf(LocalDate day) {
        return day.atTime(LocalTime.MAX);
    }

    /** Returns the day of a moment as it is said of a mix, with the minute where a revision begins later that day. */
    public static String said(List<Version<FactorIssue>> issues, LocalDateTime moment) {
        boolean comesLater = issues.stream()
                .map(version -> version.value().begins())
                .anyMatch(begins -> begins.isAfter(moment) && !begins.isAfter(endOf(moment.toLocalDate())));
        return comesLater ? Dates.minute(moment) : moment.toLocalDate().toString();
    }

    /** Returns the newest revision, issue or withdrawal, that had begun at a moment. */
    static Optional<FactorIssue> begunBy(List<Version<FactorIssue>> issues, LocalDateTime moment) {
        return issues.stream()
                .map(Version::value)
                .filter(issue -> !issue.begins().isAfter(moment))
                .max(Comparator.comparingInt(FactorIssue::revision));
    }
}

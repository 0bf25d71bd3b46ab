package porebench.evidence.paper;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardAlarms;
import porebench.method.ProblemText;
import porebench.record.Laboratory;
import porebench.record.chain.Head;

/**
 * The factor register on paper: every mix with its factor, the evidence behind it, and what is due or missing.
 *
 * @param laboratory whose it is; empty when the lab book does not say
 * @param moment when it stands so, by the laboratory's clock; the end of a day for one that is not today
 * @param lines its lines, in the order in which they are printed
 * @param all how many mixes the lab book has, those that are not printed among them
 * @param covered how many of all of them have a factor that may be used then
 * @param alarms the cards of all of them that are out on a factor that no longer holds
 * @param head how far the lab book reached
 */
public record RegisterList(
        Optional<Laboratory> laboratory,
        LocalDateTime moment,
        List<Line> lines,
        int all,
        int covered,
        CardAlarms alarms,
        Head head)
        implements Printed {
    public RegisterList {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param row the mix as it stands
     * @param due why it is to be checked again, in words
     * @param missing what is missing, in words; what is overdue among it
     */
    public record Line(RegisterRow row, List<String> due, List<String> missing) {
        public Line {
            due = List.copyOf(due);
            missing = List.copyOf(missing);
        }

        /** Returns what is due and what is missing, nothing twice. */
        public List<String> all() {
            return Stream.concat(due.stream(), missing.stream()).distinct().toList();
        }
    }

    /**
     * Returns the list of some rows.
     *
     * @param all the rows of all mixes of the lab book at that moment
     * @param printed those to be printed, in their order
     * @param alarms the cards that are out on a factor that no longer holds
     * @param words says what is due or missing
     */
    public static RegisterList of(
            Optional<Laboratory> laboratory,
            LocalDateTime moment,
            List<RegisterRow> all,
            List<RegisterRow> printed,
            CardAlarms alarms,
            ProblemText words,
            Head head) {
        return new RegisterList(
                laboratory,
                moment,
                alarms.marked(printed).stream()
                        .map(row -> new Line(
                                row,
                                row.due().stream().map(words::say).toList(),
                                row.missing().stream().map(words::say).toList()))
                        .toList(),
                all.size(),
                RegisterRow.covered(all),
                alarms,
                head);
    }

    /** Returns from which hour of its day it says how factors stand; empty where it is for all of the day. */
    public Optional<LocalTime> hour() {
        return Optional.of(moment)
                .filter(any -> !moment.equals(Moments.endOf(moment.toLocalDate())))
                .map(LocalDateTime::toLocalTime);
    }

    /** Returns whether not every mix of the lab book is on it. */
    public boolean isPart() {
        return lines.size() < all;
    }
}

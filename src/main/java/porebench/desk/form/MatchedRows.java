package porebench.desk.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import porebench.record.column.Column;

/**
 * The things of which a record has several, as two people left them, each beside what became of it in the other's hands and what
 * it was before.
 *
 * <p>A thing is known again where nothing of it was changed, then by what names it, and then by its place.
 */
final class MatchedRows {
    /** One thing; at least one of the three has it. */
    record Row(Optional<TypedDraft> before, Optional<TypedDraft> theirs, Optional<TypedDraft> yours) {}

    private final List<List<Column<?, ?>>> names;
    private final List<TypedDraft> before;
    private final List<TypedDraft> theirs;
    private final List<TypedDraft> yours;

    /**
     * Puts them side by side.
     *
     * @param names the columns that together name a thing, those that name it best first
     */
    MatchedRows(
            List<List<Column<?, ?>>> names, List<TypedDraft> before, List<TypedDraft> theirs, List<TypedDraft> yours) {
        this.names = names;
        this.before = before;
        this.theirs = theirs;
        this.yours = yours;
    }

    /** Returns all, in your order, or in theirs where only they changed it; what only one has comes after what it came after there. */
    List<Row> all() {
        int[] ofTheirs = match(before, theirs, true);
        int[] ofYours = match(before, yours, true);
        int[] added = match(
                only(theirs, ofTheirs).map(theirs::get).toList(),
                only(yours, ofYours).map(yours::get).toList(),
                false);
        List<Integer> addedTheirs = only(theirs, ofTheirs).toList();
        List<Integer> addedYours = only(yours, ofYours).toList();
        List<Row> inTheirs = new ArrayList<>();
        for (int at = 0; at < theirs.size(); at++) {
            int known = ofTheirs[at];
            int same = known >= 0 ? indexOf(ofYours, known) : sameAdded(added, addedTheirs.indexOf(at), addedYours);
            inTheirs.add(new Row(at(before, known), at(theirs, at), at(yours, same)));
        }
        List<Row> inYours = new ArrayList<>();
        for (int at = 0; at < yours.size(); at++) {
            int known = ofYours[at];
            int place = addedYours.indexOf(at);
            int same = known >= 0
                    ? indexOf(ofTheirs, known)
                    : place >= 0 && added[place] >= 0 ? addedTheirs.get(added[place]) : -1;
            inYours.add(new Row(at(before, known), at(theirs, same), at(yours, at)));
        }
        boolean isTheirOrder = isMoved(ofTheirs) && !isMoved(ofYours);
        return isTheirOrder ? woven(inTheirs, inYours) : woven(inYours, inTheirs);
    }

    private static int sameAdded(int[] added, int theirPlace, List<Integer> addedYours) {
        int place = theirPlace < 0 ? -1 : indexOf(added, theirPlace);
        return place < 0 ? -1 : addedYours.get(place);
    }

    private static Stream<Integer> only(List<TypedDraft> rows, int[] known) {
        return Stream.iterate(0, at -> at < rows.size(), at -> at + 1).filter(at -> known[at] < 0);
    }

    private static Optional<TypedDraft> at(List<TypedDraft> rows, int at) {
        return at < 0 ? Optional.empty() : Optional.of(rows.get(at));
    }

    private static int indexOf(int[] all, int sought) {
        for (int at = 0; at < all.length; at++) {
            if (all[at] == sought) {
                return at;
            }
        }
        return -1;
    }

    private static boolean isMoved(int[] known) {
        int last = -1;
        for (int each : known) {
            if (each >= 0 && each < last) {
                return true;
            }
            last = Math.max(last, each);
        }
        return false;
    }

    private static List<Row> woven(List<Row> first, List<Row> second) {
        List<Row> all = new ArrayList<>(first);
        int place = 0;
        for (Row row : second) {
            int there = all.indexOf(row);
            if (there < 0) {
                all.add(place, row);
            }
            place = (there < 0 ? place : there) + 1;
        }
        return all;
    }

    /** Returns for each of some things which of the earlier ones it is; -1 for one that is none of them. */
    private int[] match(List<TypedDraft> from, List<TypedDraft> to, boolean byPlace) {
        int[] known = new int[to.size()];
        Arrays.fill(known, -1);
        pair(from, to, known, TypedDraft::equals);
        names.forEach(columns -> pair(from, to, known, (one, other) -> isCalledAlike(columns, one, other)));
        for (int at = 0; byPlace && at < Math.min(from.size(), to.size()); at++) {
            if (known[at] < 0 && indexOf(known, at) < 0) {
                known[at] = at;
            }
        }
        return known;
    }

    private static void pair(
            List<TypedDraft> from, List<TypedDraft> to, int[] known, BiPredicate<TypedDraft, TypedDraft> isSame) {
        for (int at = 0; at < to.size(); at++) {
            for (int earlier = 0; known[at] < 0 && earlier < from.size(); earlier++) {
                if (indexOf(known, earlier) < 0 && isSame.test(from.get(earlier), to.get(at))) {
                    known[at] = earlier;
                }
            }
        }
    }

    private static boolean isCalledAlike(List<Column<?, ?>> columns, TypedDraft one, TypedDraft other) {
        return columns.stream()
                .allMatch(column -> !one.text(column).isBlank()
                        && one.text(column).strip().equals(other.text(column).strip()));
    }
}

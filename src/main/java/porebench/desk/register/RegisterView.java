package porebench.desk.register;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A way of looking at the register that a person gave a name.
 *
 * @param name what the person calls it
 * @param wanted which mixes are wanted
 * @param sought the words they must have
 * @param order by which columns they are sorted, as {@link porebench.desk.table.TableOrder} writes it
 */
record RegisterView(String name, Wanted wanted, String sought, String order) {
    /** No more are kept: the list of them should be seen at one look. */
    static final int MOST = 20;

    /** A longer name would not be read in the list. */
    static final int LONGEST_NAME = 40;

    /** With longer words the views could be more than is remembered, and be lost without a word. */
    static final int LONGEST_SOUGHT = 200;

    private static final char BETWEEN_FIELDS = '\u001f';
    private static final char BETWEEN_VIEWS = '\u001e';
    private static final int FIELDS = 4;

    /** Returns some views as one text. */
    static String text(List<RegisterView> views) {
        return String.join(
                String.valueOf(BETWEEN_VIEWS),
                views.stream().map(RegisterView::text).toList());
    }

    private String text() {
        return String.join(String.valueOf(BETWEEN_FIELDS), name, wanted.symbol(), plain(sought), order);
    }

    /** Returns a text in which nothing stands that parts fields. */
    static String plain(String typed) {
        return typed.replaceAll("\\p{Cntrl}", " ").strip();
    }

    /** Returns the views of a text; what is none is left out. */
    static List<RegisterView> read(String text) {
        List<RegisterView> views = new ArrayList<>();
        for (String one : text.split(String.valueOf(BETWEEN_VIEWS), -1)) {
            String[] fields = one.split(String.valueOf(BETWEEN_FIELDS), -1);
            Optional<Wanted> wanted = fields.length == FIELDS
                    ? Arrays.stream(Wanted.values())
                            .filter(each -> each.symbol().equals(fields[1]))
                            .findFirst()
                    : Optional.empty();
            wanted.filter(any -> !fields[0].isBlank() && views.size() < MOST)
                    .ifPresent(which -> views.add(new RegisterView(fields[0], which, fields[2], fields[3])));
        }
        return List.copyOf(views);
    }
}

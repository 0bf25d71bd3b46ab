package porebench.print.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A place for text: how wide it is, how many lines it has, and between which sizes of type it may be set.
 *
 * <p>A text is set as large as it fits; when it does not fit at the smallest size its words are broken, and only then is
 * its end left off. It is never wider than its place and never has more lines.
 *
 * @param weight how heavy the text is set
 * @param largest the largest type, in points
 * @param smallest the smallest type, in points
 * @param width the width of the place, in points
 * @param lines the most lines it may have
 */
public record TextFit(Weight weight, double largest, double smallest, double width, int lines) {
    private static final double STEP = 0.25;
    /** After a space, and after a hyphen or stroke between letters. */
    private static final Pattern AT_BREAKS = Pattern.compile("(?<= )|(?<=\\p{L}[-/])(?=\\p{L})");

    private static final String ELLIPSIS = "\u2026";

    /** Returns the place for one line of one size. */
    public static TextFit line(Weight weight, double size, double width) {
        return new TextFit(weight, size, Math.min(size, 6), width, 1);
    }

    /** Sets a text in the first of some places that takes it whole, or in the last one. */
    public static FittedText first(Faces faces, String text, TextFit... places) throws IOException {
        for (TextFit place : places) {
            FittedText fitted = place.fit(faces, text);
            if (!fitted.cut()) {
                return fitted;
            }
        }
        return places[places.length - 1].fit(faces, text);
    }

    /** Sets a text in this place. */
    public FittedText fit(Faces faces, String text) throws IOException {
        return faces.fitted(this, text, () -> set(faces, text));
    }

    private FittedText set(Faces faces, String text) throws IOException {
        String printable = faces.printable(text);
        for (boolean breakWords : new boolean[] {false, true}) {
            for (double size = largest; size >= smallest; size -= STEP) {
                // Most texts are whole on one line; where there is only one, no other way is tried.
                List<String> set = faces.width(printable, weight, size) <= width
                        ? List.of(printable)
                        : lines == 1 ? List.of() : wrap(faces, printable, size, breakWords);
                if (!set.isEmpty() && set.size() <= lines && fits(faces, set, size)) {
                    return new FittedText(set, weight, size, false);
                }
            }
        }
        return cut(faces, wrap(faces, printable, smallest, true));
    }

    private boolean fits(Faces faces, List<String> set, double size) throws IOException {
        for (String line : set) {
            if (faces.width(line, weight, size) > width) {
                return false;
            }
        }
        return true;
    }

    private FittedText cut(Faces faces, List<String> set) throws IOException {
        List<String> kept = new ArrayList<>(set.subList(0, Math.min(lines, set.size())));
        String last = kept.remove(kept.size() - 1);
        while (!last.isEmpty() && faces.width(last + ELLIPSIS, weight, smallest) > width) {
            last = last.substring(0, last.offsetByCodePoints(last.length(), -1)).stripTrailing();
        }
        kept.add(last + ELLIPSIS);
        return new FittedText(kept, weight, smallest, true);
    }

    private List<String> wrap(Faces faces, String text, double size, boolean breakWords) throws IOException {
        List<String> done = new ArrayList<>();
        String line = "";
        for (String word : AT_BREAKS.split(text)) {
            String longer = line + word;
            if (faces.width(longer.stripTrailing(), weight, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                done.add(line.stripTrailing());
            }
            line = word;
            while (breakWords
                    && faces.width(line.stripTrailing(), weight, size) > width
                    && line.codePointCount(0, line.length()) > 1) {
                String head = head(faces, line, size);
                done.add(head);
                line = line.substring(head.length());
            }
        }
        done.add(line.stripTrailing());
        return done;
    }

    /** Returns as much of a word as fits on one line, at least one character. */
    private String head(Faces faces, String word, double size) throws IOException {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (faces.width(word.substring(0, next), weight, size) > width) {
                break;
            }
            end = next;
        }
        return word.substring(0, end);
    }
}

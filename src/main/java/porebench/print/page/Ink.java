package porebench.print.page;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * What is drawn on one page, or in a part that stands on many pages, as operators of a PDF (ISO 32000-1, recalled): coordinates in points
 * from the lower left corner, with two decimals, which is 0.004 mm.
 *
 * <p>The library writes the same a number at a time and looks every letter up again; cards by the ten thousand took most of their time for
 * that. What is set already (type, thickness, grey) is not set again.
 */
public final class Ink {
    private static final int HUNDREDTHS = 100;
    private static final int FINE = 100_000;
    private static final String STROKE = "S\n";
    private static final String FILL = "f\n";

    /** What lasts until something else is set; -1 where it is not known. */
    private record Settings(@Nullable Weight weight, long size, long thickness, long grey) {
        static final Settings BLACK = new Settings(null, -1, -1, 0);
    }

    private final Faces faces;
    private final boolean isPart;
    private final Deque<Settings> saved = new ArrayDeque<>();
    private Settings set = Settings.BLACK;
    private byte[] bytes = new byte[4096];
    private int length;
    private boolean isInText;
    /** How the path that is begun is to be drawn; empty where none is. */
    private String paint = "";

    private long lineX;
    private long lineY;

    private Ink(Faces faces, boolean isPart) {
        this.faces = faces;
        this.isPart = isPart;
    }

    /** Begins what is drawn on a page. */
    public static Ink ofPage(Faces faces) {
        return new Ink(faces, false);
    }

    /** Begins what is drawn in a part. */
    static Ink ofPart(Faces faces) {
        return new Ink(faces, true);
    }

    /** Returns whether it is a part that stands on many pages; it holds no other parts. */
    boolean isPart() {
        return isPart;
    }

    /** Returns everything drawn so far. */
    byte[] bytes() {
        end();
        return Arrays.copyOf(bytes, length);
    }

    /** Keeps what is set, to come back to it by {@link #restore}. */
    public void save() {
        end();
        saved.push(set);
        word("q\n");
    }

    public void restore() {
        end();
        set = saved.pop();
        word("Q\n");
    }

    public void translate(double right, double up) {
        transform(1, 0, 0, 1, right, up);
    }

    public void scale(double factor) {
        transform(factor, 0, 0, factor, 0, 0);
    }

    /** Turns what follows about a point, counterclockwise, by an angle in radians; the point becomes the origin. */
    void turnAbout(double x, double y, double angle) {
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        transform(cosine, sine, -sine, cosine, x, y);
    }

    private void transform(double a, double b, double c, double d, double right, double up) {
        if (a == 1 && d == 1 && b == 0 && c == 0 && hundredths(right) == 0 && hundredths(up) == 0) {
            return;
        }
        end();
        for (double one : new double[] {a, b, c, d}) {
            number(Math.round(one * FINE), FINE);
        }
        coordinate(right);
        coordinate(up);
        word("cm\n");
    }

    /** Draws a line of text from a point of its baseline on; in outline where it is not filled. */
    void text(String printable, Weight weight, double size, double x, double y, boolean isFilled) {
        endPath();
        grey(0);
        if (!isInText) {
            word("BT\n");
            isInText = true;
            lineX = 0;
            lineY = 0;
        }
        long hundredths = hundredths(size);
        if (set.weight != weight || set.size != hundredths) {
            word(faces.name(weight));
            number(hundredths, HUNDREDTHS);
            word("Tf\n");
            set = new Settings(weight, hundredths, set.thickness, set.grey);
        }
        if (!isFilled) {
            word("1 Tr\n");
        }
        long right = hundredths(x);
        long up = hundredths(y);
        number(right - lineX, HUNDREDTHS);
        number(up - lineY, HUNDREDTHS);
        lineX = right;
        lineY = up;
        word("Td(");
        letters(printable, weight);
        word(")Tj\n");
    }

    private void letters(String printable, Weight weight) {
        int index = 0;
        while (index < printable.length()) {
            int point = printable.codePointAt(index);
            int code = faces.code(point, weight);
            letterByte(code >>> 8);
            letterByte(code & 0xff);
            index += Character.charCount(point);
        }
    }

    private void letterByte(int value) {
        room(2);
        if (value == '(' || value == ')' || value == '\\') {
            bytes[length++] = '\\';
        } else if (value == '\r') {
            // As it stands it would be read as a line feed.
            bytes[length++] = '\\';
            bytes[length++] = 'r';
            return;
        }
        bytes[length++] = (byte) value;
    }

    /** Draws a straight line. */
    public void line(double fromX, double fromY, double toX, double toY, double thickness) {
        thickness(thickness);
        path(STROKE);
        point(fromX, fromY, "m ");
        point(toX, toY, "l\n");
    }

    /** Draws a line with corners through some points, x and y in turn; closed if it ends where it began. */
    void corners(double thickness, boolean isClosed, double... points) {
        thickness(thickness);
        path(STROKE);
        for (int index = 0; index < points.length; index += 2) {
            point(points[index], points[index + 1], index == 0 ? "m " : "l ");
        }
        word(isClosed ? "h\n" : "\n");
    }

    /** Makes corners round from here on. */
    void roundCorners() {
        end();
        word("1 j\n");
    }

    void frame(double left, double bottom, double width, double height, double thickness) {
        thickness(thickness);
        path(STROKE);
        point(left, bottom, "");
        point(width, height, "re\n");
    }

    void shade(double left, double bottom, double width, double height, double grey) {
        grey(hundredths(grey));
        path(FILL);
        point(left, bottom, "");
        point(width, height, "re\n");
    }

    void dot(double x, double y, double radius) {
        grey(0);
        path(FILL);
        // How far the handles of a quarter of a circle reach, over the radius: 4/3 (sqrt 2 - 1).
        double reach = 4.0 / 3 * (Math.sqrt(2) - 1) * radius;
        point(x + radius, y, "m ");
        quarter(x + radius, y + reach, x + reach, y + radius, x, y + radius);
        quarter(x - reach, y + radius, x - radius, y + reach, x - radius, y);
        quarter(x - radius, y - reach, x - reach, y - radius, x, y - radius);
        quarter(x + reach, y - radius, x + radius, y - reach, x + radius, y);
    }

    private void quarter(double x1, double y1, double x2, double y2, double x3, double y3) {
        point(x1, y1, "");
        point(x2, y2, "");
        point(x3, y3, "c ");
    }

    /** Draws a picture of black and white squares, a bit each, 1 for white, each row begun on a byte. */
    void squares(byte[] light, int across, double left, double bottom, double side) {
        save();
        number(hundredths(side), HUNDREDTHS);
        word("0 0 ");
        number(hundredths(side), HUNDREDTHS);
        point(left, bottom, "cm\n");
        word("BI /W ");
        number(across, 1);
        word("/H ");
        number(across, 1);
        word("/BPC 1 /CS /G\nID ");
        room(light.length);
        System.arraycopy(light, 0, bytes, length, light.length);
        length += light.length;
        word("\nEI\n");
        restore();
    }

    /** Draws a part that stands in the document once, so much higher than where it was first drawn. */
    void part(String name, double higher) {
        end();
        grey(0);
        boolean isMoved = hundredths(higher) != 0;
        if (isMoved) {
            save();
            translate(0, higher);
        }
        word(name);
        word("Do\n");
        if (isMoved) {
            restore();
        }
    }

    private void end() {
        endText();
        endPath();
    }

    private void endText() {
        if (isInText) {
            word("ET\n");
            isInText = false;
        }
    }

    /** Lines that follow each other are drawn together, and so are places of one grey. */
    private void path(String nextPaint) {
        endText();
        if (!paint.equals(nextPaint)) {
            endPath();
            paint = nextPaint;
        }
    }

    private void endPath() {
        word(paint);
        paint = "";
    }

    void thickness(double thickness) {
        long hundredths = hundredths(thickness);
        if (set.thickness != hundredths) {
            end();
            number(hundredths, HUNDREDTHS);
            word("w\n");
            set = new Settings(set.weight, set.size, hundredths, set.grey);
        }
    }

    private void grey(long hundredths) {
        if (set.grey != hundredths) {
            end();
            number(hundredths, HUNDREDTHS);
            word("g\n");
            set = new Settings(set.weight, set.size, set.thickness, hundredths);
        }
    }

    private void point(double x, double y, String operator) {
        coordinate(x);
        coordinate(y);
        word(operator);
    }

    private void coordinate(double points) {
        number(hundredths(points), HUNDREDTHS);
    }

    private static long hundredths(double points) {
        return Math.round(points * HUNDREDTHS);
    }

    /** Writes a number of parts of one with a space behind it, with no more decimals than it needs. */
    private void number(long parts, int ofOne) {
        room(24);
        long whole = Math.abs(parts);
        if (parts < 0) {
            bytes[length++] = '-';
        }
        long rest = whole % ofOne;
        digits(whole / ofOne);
        if (rest > 0) {
            bytes[length++] = '.';
            int unit = ofOne;
            while (rest > 0) {
                unit /= 10;
                bytes[length++] = (byte) ('0' + rest / unit);
                rest %= unit;
            }
        }
        bytes[length++] = ' ';
    }

    private void digits(long number) {
        if (number >= 10) {
            digits(number / 10);
        }
        bytes[length++] = (byte) ('0' + number % 10);
    }

    private void word(String ascii) {
        room(ascii.length());
        for (int index = 0; index < ascii.length(); index++) {
            bytes[length++] = (byte) ascii.charAt(index);
        }
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * bytes.length + more);
        }
    }
}

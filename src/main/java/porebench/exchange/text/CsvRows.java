package porebench.exchange.text;

import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.evidence.intake.SheetStyle;
import porebench.record.book.Progress;

/**
 * The rows of a CSV file, one after the other, with the line each begins on; rows that are damaged are noted and marked.
 *
 * <p>Lines are cut and decoded here, so that malformed bytes, endless lines and quotes that never close cost one row and not
 * the file; the fields of a row are split by the RFC 4180 parser of OpenCSV.
 */
public final class CsvRows {
    /** A longer line, in characters, is no row of a table. */
    public static final int LONGEST_LINE = 1_000_000;

    /** Stands where bytes could not be decoded; no text holds this noncharacter. */
    private static final char UNREADABLE = '\uFFFF';

    private static final Charset LIKELY = Charset.forName("windows-1252");

    private final CharsetDecoder strict = StandardCharsets.UTF_8.newDecoder();
    private final CharsetDecoder replacing = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .replaceWith(String.valueOf(UNREADABLE));
    private ICSVParser parser;
    private final byte[] bytes;
    private final Findings findings;
    private final Progress progress;
    private final SheetStyle style;
    private List<String> names = List.of();
    private int at;
    private int line;
    private int secondLineAt;
    private int firstLine;
    private int lost;

    public CsvRows(byte[] bytes, Findings findings) {
        this(bytes, findings, Progress.UNHEARD);
    }

    /** Begins with the first row, and says with each how far it is. */
    public CsvRows(byte[] bytes, Findings findings, Progress progress) {
        this(bytes, findings, progress, SheetStyle.DOCUMENTED);
    }

    /** Begins with the first row of a file that is written in some way, and says with each row how far it is. */
    public CsvRows(byte[] bytes, Findings findings, Progress progress, SheetStyle style) {
        this.bytes = bytes;
        this.findings = findings;
        this.progress = progress;
        this.style = style;
        this.parser = newParser();
        boolean marked =
                bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
        this.at = marked ? 3 : 0;
    }

    /**
     * One row as it stands in the file.
     *
     * @param line the line it begins on
     * @param lastLine the line it ends on
     * @param fields its fields
     * @param damaged whether bytes of it could not be read; the problem is noted already
     */
    public record Raw(int line, int lastLine, List<String> fields, boolean damaged) {
        public Raw {
            fields = List.copyOf(fields);
        }

        boolean isBlank() {
            for (String field : fields) {
                if (!field.isBlank()) {
                    return false;
                }
            }
            return true;
        }
    }

    /** One line that could not be decoded, and its first byte at fault. */
    private record Malformed(int line, byte culprit) {}

    private ICSVParser newParser() {
        return new RFC4180ParserBuilder().withSeparator(style.apart().sign()).build();
    }

    /** Returns how the file is written. */
    SheetStyle style() {
        return style;
    }

    /** From here on problems with bytes name the column they are in. */
    void isUnder(Heading heading) {
        names = heading.names();
    }

    /** Returns the next row that is not blank, or empty at the end of the file. */
    public Optional<Raw> next() {
        while (at < bytes.length) {
            progress.at(Progress.Stage.READING, at, bytes.length);
            Optional<Raw> row = read();
            if (row.isPresent() && (!row.get().isBlank() || row.get().damaged())) {
                return row;
            }
        }
        return Optional.empty();
    }

    /** Returns whether bytes of a text could not be decoded. */
    static boolean isUnreadable(String text) {
        return text.indexOf(UNREADABLE) >= 0;
    }

    static boolean isUnreadable(char c) {
        return c == UNREADABLE;
    }

    /** Returns how many rows so far gave no fields at all; their problems are noted. */
    int lost() {
        return lost;
    }

    /** Counts the last row as lost, too: its fields cannot be told apart. */
    void lose() {
        lost++;
    }

    /** Notes that a quote of the last row ran on over lines it should not have, and goes back to its second line. */
    void rejectRunOn(Raw row) {
        lose();
        findings.error(row.line(), 0, "", "csv.quote-runs-on", row.lastLine());
        at = secondLineAt;
        line = row.line();
    }

    private Optional<Raw> read() {
        firstLine = line + 1;
        StringBuilder text = new StringBuilder();
        List<Malformed> malformed = new ArrayList<>();
        boolean tooLong = false;
        boolean open = false;
        do {
            int from = at;
            line++;
            int end = endOfLine(from);
            at = afterLineBreak(end);
            if (line == firstLine) {
                secondLineAt = at;
            }
            String piece = decode(from, end, malformed);
            open ^= hasOddQuotes(piece);
            if (piece.length() > LONGEST_LINE) {
                tooLong = true;
                findings.error(line, 0, "", "csv.line-too-long", LONGEST_LINE);
            } else if (!tooLong) {
                text.append(piece);
                if (open) {
                    text.append(new String(bytes, end, at - end, StandardCharsets.US_ASCII));
                }
            }
        } while (open && at < bytes.length);
        if (open) {
            lose();
            findings.error(firstLine, 0, "", "csv.quote-never-closed");
            at = secondLineAt;
            line = firstLine;
            return Optional.empty();
        }
        if (tooLong) {
            lose();
            return Optional.empty();
        }
        return split(text.toString(), malformed);
    }

    private static boolean hasOddQuotes(String piece) {
        boolean odd = false;
        for (int quote = piece.indexOf('"'); quote >= 0; quote = piece.indexOf('"', quote + 1)) {
            odd = !odd;
        }
        return odd;
    }

    private int endOfLine(int from) {
        int end = from;
        while (end < bytes.length && bytes[end] != '\n' && bytes[end] != '\r') {
            end++;
        }
        return end;
    }

    private int afterLineBreak(int end) {
        if (end >= bytes.length) {
            return end;
        }
        boolean two = bytes[end] == '\r' && end + 1 < bytes.length && bytes[end + 1] == '\n';
        return end + (two ? 2 : 1);
    }

    private String decode(int from, int end, List<Malformed> malformed) {
        ByteBuffer slice = ByteBuffer.wrap(bytes, from, end - from);
        CharBuffer decoded = CharBuffer.allocate(end - from);
        CoderResult result = strict.reset().decode(slice, decoded, true);
        if (!result.isError()) {
            return decoded.flip().toString();
        }
        malformed.add(new Malformed(line, bytes[slice.position()]));
        slice.position(from);
        decoded.clear();
        replacing.reset().decode(slice, decoded, true);
        return decoded.flip().toString();
    }

    private Optional<Raw> split(String text, List<Malformed> malformed) {
        List<String> fields;
        try {
            fields = text.indexOf('"') < 0 ? cut(text) : List.of(parser.parseLineMulti(text));
        } catch (IOException impossible) {
            throw new UncheckedIOException("splitting a text in memory", impossible);
        }
        Raw row = new Raw(firstLine, line, fields, !malformed.isEmpty());
        if (parser.isPending()) {
            parser = newParser();
            if (row.lastLine() > row.line()) {
                rejectRunOn(row);
            } else {
                lose();
                findings.error(row.line(), 0, "", "csv.quote-misplaced");
            }
            return Optional.empty();
        }
        noteMalformed(fields, malformed);
        return Optional.of(row);
    }

    /** Cuts a row without quotes, which holds nothing that the parser would see but what parts its columns. */
    private List<String> cut(String text) {
        List<String> fields = new ArrayList<>();
        int from = 0;
        char sign = style.apart().sign();
        for (int end = text.indexOf(sign); end >= 0; end = text.indexOf(sign, from)) {
            fields.add(text.substring(from, end));
            from = end + 1;
        }
        fields.add(text.substring(from));
        return fields;
    }

    private void noteMalformed(List<String> fields, List<Malformed> malformed) {
        int column = 0;
        for (Malformed one : malformed) {
            int next = column + 1;
            while (next <= fields.size() && !isUnreadable(fields.get(next - 1))) {
                next++;
            }
            column = next <= fields.size() ? next : column;
            findings.error(
                    one.line(),
                    column,
                    column >= 1 && column <= names.size() ? names.get(column - 1) : "",
                    "csv.not-utf8",
                    String.format(Locale.ROOT, "%02X", one.culprit()),
                    new String(new byte[] {one.culprit()}, LIKELY));
        }
    }
}

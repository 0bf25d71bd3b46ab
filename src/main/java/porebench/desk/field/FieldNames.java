package porebench.desk.field;

import java.util.function.Predicate;
import porebench.desk.form.Days;
import porebench.desk.form.TypedDraft;
import porebench.record.FieldReading;
import porebench.record.column.FieldReadingColumns;
import porebench.record.id.ReadingId;

/** Names of readings that are typed: nobody types them, the mix, the minute and a number make them. */
final class FieldNames {
    private static final int LONGEST_MIX = 60;
    /** Stands for a mix or a minute that is not typed yet. */
    private static final String UNKNOWN = "?";

    private FieldNames() {}

    /** Returns what a reading is called in sentences while it is typed. */
    static String meanwhile(TypedDraft draft) {
        return stem(
                draft.text(FieldReadingColumns.MIX).strip(),
                draft.text(FieldReadingColumns.READ_AT).strip());
    }

    /**
     * Returns a name that no reading has: its mix and minute, and which of that minute it is.
     *
     * @param taken tells whether a name is in the lab book already
     */
    static ReadingId free(FieldReading reading, Predicate<String> taken) {
        String stem = of(reading);
        int number = 1;
        while (taken.test(stem + "-" + number)) {
            number++;
        }
        return new ReadingId(stem + "-" + number);
    }

    /** Returns the name that readings of a mix and minute share. */
    static String of(FieldReading reading) {
        return stem(reading.mixId().text(), Days.show(reading.readAt()));
    }

    private static String stem(String mix, String minute) {
        String known = mix.isEmpty() ? UNKNOWN : mix.substring(0, Math.min(LONGEST_MIX, mix.length()));
        return known + "/"
                + (minute.isEmpty() ? UNKNOWN : minute.replaceAll("[-:]", "").replace(' ', 'T'));
    }
}

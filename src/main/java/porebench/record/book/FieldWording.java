package porebench.record.book;

import porebench.record.FieldReading;
import porebench.record.book.Wording.Form;

/** Which texts of a field reading are looked at. */
final class FieldWording {
    private FieldWording() {}

    /** Takes a text: the field it stands in, the word for what it is, its form, and the text. */
    @FunctionalInterface
    interface Looker {
        void look(String field, String word, Form form, String text);
    }

    static void look(FieldReading reading, Looker looker) {
        looker.look("id", "text-id", Form.LONG_NAME, reading.recordId());
        looker.look("truck", "text-truck", Form.LINE, reading.truck());
        looker.look("remarks", "text-remarks", Form.NOTE, reading.remarks());
        looker.look(
                "keptBecause", "text-reason", Form.NOTE, reading.keptBecause().orElse(""));
        looker.look(
                "struckBecause",
                "text-reason",
                Form.NOTE,
                reading.struckBecause().orElse(""));
    }
}

package porebench.desk.form;

import java.util.function.Consumer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Follows what is typed into a field, letter by letter. */
public final class Typing {
    private Typing() {}

    /** Hands on the whole text of a field after every change, by the person or by the program. */
    public static void follow(JTextComponent field, Consumer<String> typed) {
        listen(field, () -> typed.accept(field.getText()));
    }

    /** Calls back after every change of a text, by the person or by the program. */
    public static void listen(JTextComponent field, Runnable changed) {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                changed.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                changed.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // Only the looks of the text changed.
            }
        });
    }

    /** Shows a text in a field, leaving the caret alone when the text is there already. */
    public static void show(JTextComponent field, String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
            field.setCaretPosition(0);
        }
    }
}

package porebench.desk.form;

import java.util.function.Consumer;
import javax.swing.text.JTextComponent;

/** Keeps a text field and one text of a draft the same, without either setting off the other in a circle. */
public final class TextLink {
    private final JTextComponent field;
    private boolean pulling;

    /**
     * Links a field.
     *
     * @param typed takes the whole text after every change a person makes
     */
    public TextLink(JTextComponent field, Consumer<String> typed) {
        this.field = field;
        Typing.listen(field, () -> push(typed));
    }

    private void push(Consumer<String> typed) {
        if (!pulling) {
            typed.accept(field.getText());
        }
    }

    /** Shows the draft's text; the caret stays where it is when the text is there already. */
    public void pull(String text) {
        if (!field.getText().equals(text)) {
            pulling = true;
            try {
                field.setText(text);
            } finally {
                pulling = false;
            }
        }
    }
}

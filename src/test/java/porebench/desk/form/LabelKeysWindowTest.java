package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.FlowLayout;
import java.awt.event.KeyEvent;
import javax.swing.JFrame;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;

/** Swing by itself loses about one in twenty strokes as quick as these: the caret stays on the label. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class LabelKeysWindowTest {
    private static final int STROKES = 100;

    @Test
    void theLetterOfALabelBringsTheCaretToItsFieldHoweverQuickly() throws Exception {
        JTextField title = EventThread.call(JTextField::new);
        JTextField remarks = EventThread.call(JTextField::new);
        JFrame frame = EventThread.call(() -> {
            JFrame made = new JFrame();
            made.setLayout(new FlowLayout());
            made.add(Form.label("&Title", title));
            made.add(title);
            made.add(Form.label("&Remarks", remarks));
            made.add(remarks);
            made.pack();
            made.setVisible(true);
            title.requestFocusInWindow();
            return made;
        });
        try {
            assertThat(EventThread.comes(title::isFocusOwner)).isTrue();
            Keys keys = new Keys();
            for (int stroke = 0; stroke < STROKES; stroke++) {
                boolean isEven = stroke % 2 == 0;
                keys.strike(KeyEvent.VK_ALT, isEven ? KeyEvent.VK_R : KeyEvent.VK_T);
                assertThat(EventThread.comesWithin(5, (isEven ? remarks : title)::isFocusOwner))
                        .as("stroke %d", stroke)
                        .isTrue();
            }
        } finally {
            EventThread.run(frame::dispose);
        }
    }
}

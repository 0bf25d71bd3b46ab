package porebench.desk.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Locale;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.EventThread;
import porebench.desk.NeedsDisplay;
import porebench.desk.access.OpenedDialog;
import porebench.method.Texts;

/** Everything that can be come to in the dialog of a photo says its name. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class PhotoNamesWindowTest {
    @Test
    void theDialogOfAPhotoSaysItsNames() throws Exception {
        Texts texts = Texts.of("porebench.desk.photo.photo", Locale.ENGLISH);
        BufferedImage picture = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        assertThat(OpenedDialog.faults(
                        "photo",
                        () -> new PhotoDialog(new JPanel(), "Trial T-1", "the gauge, photo 1", picture, texts).ask()))
                .isEmpty();
    }
}

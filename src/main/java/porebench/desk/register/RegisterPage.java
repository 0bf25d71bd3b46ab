package porebench.desk.register;

import java.util.function.Consumer;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The factor register: what is in force for every mix, what is due and what is missing. */
public final class RegisterPage implements Screen {
    private final Texts texts;
    private final RegisterPanel panel;

    /**
     * Makes the page.
     *
     * @param openMix turns the window to a mix
     */
    public RegisterPage(DeskModel desk, Consumer<MixId> openMix) {
        texts = RecordPage.texts(desk);
        panel = new RegisterPanel(desk, new RegisterModel(desk, texts), texts, openMix);
        desk.onChange(panel::refresh);
        panel.refresh();
    }

    @Override
    public JComponent component() {
        return panel.component();
    }
}

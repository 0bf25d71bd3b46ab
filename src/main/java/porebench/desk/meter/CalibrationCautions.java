package porebench.desk.meter;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.method.MeterType;
import porebench.method.Texts;

/** The cautions of a calibration for the type of meter at hand, beside the form where the work is written down. */
final class CalibrationCautions {
    private static final List<String> OF_THE_BENCH = List.of("caution.lift", "caution.plate", "caution.rules");

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 5", "[grow,fill]"));
    private final WrappedText pressure = new WrappedText("caution.pressure", "");
    private final WrappedText release = new WrappedText("caution.release", "");
    private final Texts texts;

    CalibrationCautions(Texts texts) {
        this.texts = texts;
        panel.setName("cautions");
        panel.putClientProperty("FlatLaf.styleClass", "caution");
        panel.add(Form.heading(texts.get("caution.title"), "h2"));
        panel.add(pressure, "wmin 0");
        panel.add(release, "wmin 0");
        OF_THE_BENCH.forEach(line -> panel.add(new WrappedText(line, "", texts.get(line)), "wmin 0"));
    }

    JComponent component() {
        return panel;
    }

    /** Shows the cautions of a type of meter. */
    void show(MeterType type) {
        pressure.setText(texts.get("caution.pressure." + type));
        release.setText(texts.get("caution.release." + type));
    }
}

package porebench.desk.variability;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.chart.FactorByTrial;
import porebench.chart.FactorOverTime;
import porebench.chart.PlotView;
import porebench.desk.Tools;

/** A plot under its title, with the ways to take it along as a picture. */
final class PlotPanel {
    private static final int HEIGHT = 320;
    private static final Dimension PICTURE = new Dimension(1600, 900);

    private final VariabilityModel model;
    private final String name;
    private final PlotView view;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow,fill][][]", "[]8[]"));

    PlotPanel(VariabilityModel model, String name, String titleKey) {
        this.model = model;
        this.name = name;
        Tools tools = model.desk().tools();
        view = new PlotView("plot." + name, tools.locale());
        JLabel title = new JLabel(model.texts().get(titleKey));
        title.putClientProperty("FlatLaf.styleClass", "h2");
        title.setLabelFor(view.component());
        view.component().getAccessibleContext().setAccessibleName(title.getText());
        JButton save = new JButton(model.texts().get("action.save"));
        save.setName("save." + name);
        save.addActionListener(event -> save());
        JButton copy = new JButton(model.texts().get("action.copy"));
        copy.setName("copy." + name);
        copy.addActionListener(event -> view.copy());
        JPanel box = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[fill]"));
        box.putClientProperty("FlatLaf.styleClass", "box");
        box.add(view.component(), "wmin 0, h " + HEIGHT + "!");
        panel.setOpaque(false);
        panel.add(title);
        panel.add(copy);
        panel.add(save, "wrap");
        panel.add(box, "span 3, wmin 0");
    }

    JComponent component() {
        return panel;
    }

    void show(FactorByTrial data) {
        view.show(data, Looks.now());
    }

    void show(FactorOverTime data) {
        view.show(data, Looks.now());
    }

    private void save() {
        Tools tools = model.desk().tools();
        Optional<Path> file =
                tools.asker().fileToWrite(panel, model.texts().get("save.title"), model.pictureName(name));
        String doing = model.texts().get("save.doing");
        file.ifPresent(path -> tools.tasks()
                .run(
                        doing,
                        () -> {
                            view.savePng(path, PICTURE);
                            return path;
                        },
                        written -> {},
                        failure -> tools.asker().failure(panel, doing, failure)));
    }
}

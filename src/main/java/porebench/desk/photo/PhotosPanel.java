package porebench.desk.photo;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.ImageIcon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.desk.form.WrappedText;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.port.OutputFolder;
import porebench.port.OutputRefused;
import porebench.record.PhotoFile;
import porebench.record.SheetPhoto;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.TrialId;

/** The photos of the trial looked at, small and in a row; each opens large. */
public final class PhotosPanel {
    private static final int SMALL_HEIGHT = 96;
    /** In a window 800 dots wide this many lying photos stand side by side. */
    private static final int IN_A_ROW = 3;
    /** A telephone of 12 million dots has 4032 along the longer side. */
    private static final int LARGE_DOTS = 4200;

    private static final int MOST_REMEMBERED = 40;

    private final PhotosModel model;
    private final Texts texts;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 6", "[grow,fill]"));
    private final JPanel row = new JPanel(new MigLayout("insets 0, gap 8, wrap " + IN_A_ROW, "", "[center]"));
    private final WrappedText withdrawn = new WrappedText("photosWithdrawn", "quiet");
    private final Map<PhotoFile, ImageIcon> small = new LinkedHashMap<>();
    private List<Version<SheetPhoto>> shown = List.of();

    /**
     * Makes the panel.
     *
     * @param trial the trial looked at, if one is
     */
    public PhotosPanel(DeskModel desk, Supplier<Optional<TrialId>> trial) {
        model = new PhotosModel(desk, trial);
        texts = model.texts();
        row.setVisible(false);
        // Above the photos, so that one more moves neither the button nor what stands before it.
        panel.add(Commands.button("photoAdd", Commands.of(texts.get("add"), this::add)), "growx 0");
        panel.add(row, "wmin 0");
        panel.add(withdrawn, "wmin 0");
    }

    public JComponent component() {
        return panel;
    }

    /** Shows the photos as the lab book holds them. */
    public void show() {
        List<Version<SheetPhoto>> photos = model.photos();
        withdrawn.say(model.withdrawn());
        if (photos.equals(shown)) {
            return;
        }
        shown = photos;
        row.removeAll();
        for (int i = 0; i < photos.size(); i++) {
            row.add(thumbnail(photos.get(i), i + 1));
        }
        row.setVisible(!photos.isEmpty());
        row.revalidate();
        row.repaint();
    }

    private JButton thumbnail(Version<SheetPhoto> photo, int number) {
        JButton button = Commands.button("photo" + number, Commands.of("", () -> open(photo)));
        button.setToolTipText(model.about(photo));
        button.getAccessibleContext().setAccessibleName(model.about(photo));
        button.setText(texts.get("small", Integer.toString(number)));
        ImageIcon known = small.get(photo.value().file());
        if (known == null) {
            draw(photo, SMALL_HEIGHT * 2, picture -> {
                ImageIcon icon = icon(picture);
                if (small.size() >= MOST_REMEMBERED) {
                    small.clear();
                }
                small.put(photo.value().file(), icon);
                put(button, icon);
            });
        } else {
            put(button, known);
        }
        return button;
    }

    private static void put(JButton button, ImageIcon icon) {
        button.setText("");
        button.setIcon(icon);
    }

    private static ImageIcon icon(BufferedImage picture) {
        int height = UIScale.scale(SMALL_HEIGHT);
        int width = Math.max(1, picture.getWidth() * height / picture.getHeight());
        return new ImageIcon(picture.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING));
    }

    /** Draws a photo beside the event thread, while the person goes on; nothing comes of one that cannot be drawn. */
    private void draw(Version<SheetPhoto> photo, int dots, Consumer<BufferedImage> then) {
        LabBook book = model.desk().book();
        model.desk()
                .tools()
                .tasks()
                .workOut(
                        () -> picture(book, photo, dots),
                        picture -> picture.ifPresent(then),
                        failure -> tell(texts.get("opening"), failure));
    }

    private static Optional<BufferedImage> picture(LabBook book, Version<SheetPhoto> photo, int dots) {
        return book.withBytes(photo.value().file()).flatMap(file -> DrawnPhoto.of(file, dots));
    }

    private Asker asker() {
        return model.desk().tools().asker();
    }

    private void tell(String doing, Exception failure) {
        if (failure instanceof OutputRefused refused) {
            asker().problems(panel, texts.get("refused"), refused.problems());
        } else if (!(failure instanceof CancellationException)) {
            asker().failure(panel, doing, failure);
        }
    }

    private void tell(List<Problem> problems) {
        if (!problems.isEmpty()) {
            asker().problems(panel, texts.get("refused"), problems);
        }
    }

    private void add() {
        Optional<TrialId> trial = model.trial();
        if (trial.isEmpty() || asker().person(panel).isEmpty()) {
            return;
        }
        Optional<Path> file = asker().fileToOpen(panel, texts.get("add.title"), List.of("jpg", "jpeg", "png"));
        file.ifPresent(one -> model.add(trial.get(), one, this::tell));
    }

    private void open(Version<SheetPhoto> photo) {
        LabBook book = model.desk().book();
        model.desk()
                .tools()
                .tasks()
                .await(
                        texts.get("opening"),
                        progress -> picture(book, photo, LARGE_DOTS),
                        picture -> opened(photo, picture),
                        failure -> tell(texts.get("opening"), failure));
    }

    private void opened(Version<SheetPhoto> photo, Optional<BufferedImage> picture) {
        String title = texts.get("title", photo.value().trialId().text());
        if (picture.isEmpty()) {
            asker().tell(panel, title, texts.get("not-drawn", photo.value().fileName()));
            return;
        }
        switch (new PhotoDialog(panel, title, model.about(photo), picture.get(), texts).ask()) {
            case SAVE -> save(photo);
            case WITHDRAW -> withdraw(photo);
            case NOTHING -> {}
        }
    }

    private void save(Version<SheetPhoto> photo) {
        LabBook book = model.desk().book();
        asker().folder(panel, texts.get("save.title"))
                .ifPresent(folder -> model.desk()
                        .tools()
                        .tasks()
                        .run(
                                texts.get("saving"),
                                () -> model.desk()
                                        .tools()
                                        .sheets()
                                        .writePhotos(book, List.of(photo.value().file()), OutputFolder.fresh(folder)),
                                files -> asker().tell(
                                                panel,
                                                texts.get("save.title"),
                                                texts.get("saved", files.get(0).toString())),
                                failure -> tell(texts.get("saving"), failure)));
    }

    private void withdraw(Version<SheetPhoto> photo) {
        if (asker().person(panel).isPresent()) {
            asker().reason(
                            panel,
                            texts.get("withdraw.title"),
                            texts.get("withdraw.question"),
                            texts.get("withdraw.act"))
                    .ifPresent(reason -> model.withdraw(photo, reason, this::tell));
        }
    }
}

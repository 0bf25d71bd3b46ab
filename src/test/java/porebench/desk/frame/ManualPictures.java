package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import javax.swing.JLabel;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import porebench.desk.EventThread;
import porebench.desk.SeenTexts;
import porebench.desk.Shots;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.print.Cards;
import porebench.print.PageText;
import porebench.print.PdfPress;
import porebench.print.Presses;
import porebench.record.id.MixId;

/**
 * Makes the pictures of the manual and of the README from the real window and a real card: {@code ManualPictures docs/pictures}.
 *
 * <p>Beside each picture stands a file of the texts that are in sight in it; {@code PicturesWindowTest} fails where the window has others.
 */
final class ManualPictures {
    static final Path FOLDER = Path.of("docs/pictures");
    static final int MOST_BYTES = 150_000;

    private static final Dimension SIZE = new Dimension(1280, 800);
    private static final float CARD_DOTS = 122;

    /** The pictures of the window: name, page and mix. */
    private static final List<List<String>> WINDOW = List.of(
            List.of("window", "factor", "HG-101"),
            List.of("mix", "mix", "HG-101"),
            List.of("sample", "sample", "HG-101"),
            List.of("trials", "trials", "HG-108"),
            List.of("variability", "variability", "HG-101"),
            List.of("sources", "sources", "HG-101"),
            List.of("meters", "meters", "HG-101"),
            List.of("register", "register", "HG-101"));

    private ManualPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        Map<String, String> texts = make(folder);
        for (Map.Entry<String, String> picture : texts.entrySet()) {
            Files.writeString(folder.resolve(picture.getKey() + ".txt"), picture.getValue(), StandardCharsets.UTF_8);
        }
    }

    /** Makes all pictures in a folder; returns the texts in sight by the names of the pictures. */
    static Map<String, String> make(Path folder) throws Exception {
        Map<String, String> texts = new TreeMap<>();
        Path books = Files.createTempDirectory("porebench-pictures");
        EventThread.run(Theme.LIGHT::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(books, Locale.ENGLISH));
        demo.memory.remember(SIZE);
        demo.memory.remember(Theme.LIGHT);
        WorkbenchFrame window = EventThread.call(() -> demo.open());
        try {
            for (List<String> picture : WINDOW) {
                EventThread.run(() -> window.openMix(new MixId(picture.get(2))));
                EventThread.run(
                        () -> window.turnTo(window.pages().named(picture.get(1)).orElseThrow()));
                EventThread.settle();
                Path file = folder.resolve(picture.get(0) + ".png");
                texts.put(picture.get(0), EventThread.call(() -> {
                    window.frame().setSize(SIZE);
                    nameTheBookAlone(window.frame().getRootPane(), books);
                    window.frame().validate();
                    Shots.save(window.frame().getRootPane(), file);
                    return lines(SeenTexts.in(window.frame().getRootPane()));
                }));
                save(few(ImageIO.read(file.toFile())), file);
            }
        } finally {
            EventThread.run(window::close);
        }
        Path pdf = books.resolve("card.pdf");
        // Without a version, which would be another one in every release.
        new PdfPress("Porebench", Presses.NOON, ZoneOffset.UTC)
                .write(Cards.usual(), Paper.A6, Locale.ENGLISH, OutputFile.replacing(pdf));
        byte[] card = Files.readAllBytes(pdf);
        try (PDDocument document = Loader.loadPDF(card)) {
            save(
                    few(new PDFRenderer(document).renderImageWithDPI(0, CARD_DOTS, ImageType.RGB)),
                    folder.resolve("card.png"));
        }
        texts.put(
                "card",
                lines(PageText.runs(card).stream().map(PageText.Run::text).toList()));
        return texts;
    }

    /** The folder is another one on every machine. */
    private static void nameTheBookAlone(Container around, Path books) {
        for (Component each : around.getComponents()) {
            if (each instanceof JLabel label
                    && label.getText() != null
                    && label.getText().contains(books.toString())) {
                label.setText(
                        label.getText().replace(books + books.getFileSystem().getSeparator(), ""));
            } else if (each instanceof Container inner) {
                nameTheBookAlone(inner, books);
            }
        }
    }

    private static String lines(List<String> texts) {
        return texts.stream()
                .map(text -> text.strip().replaceAll("\\s+", " "))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** Returns the picture in 256 colours, the most used ones: letters and lines need no more, and the file is a third. */
    private static BufferedImage few(BufferedImage picture) {
        Map<Integer, Integer> used = new TreeMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                used.merge(picture.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
            }
        }
        List<Integer> most = new ArrayList<>(used.keySet());
        most.sort((one, other) -> used.get(other) - used.get(one));
        int[] colours = most.stream().limit(256).mapToInt(each -> each).toArray();
        IndexColorModel model =
                new IndexColorModel(8, colours.length, colours, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
        BufferedImage few =
                new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
        Map<Integer, Integer> nearest = new TreeMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int colour = picture.getRGB(x, y) & 0xFFFFFF;
                int index = nearest.computeIfAbsent(colour, wanted -> nearest(wanted, colours));
                few.getRaster().setSample(x, y, 0, index);
            }
        }
        return few;
    }

    private static int nearest(int wanted, int[] colours) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int index = 0; index < colours.length; index++) {
            int red = (wanted >> 16 & 255) - (colours[index] >> 16 & 255);
            int green = (wanted >> 8 & 255) - (colours[index] >> 8 & 255);
            int blue = (wanted & 255) - (colours[index] & 255);
            int apart = red * red + green * green + blue * blue;
            if (apart < least) {
                least = apart;
                best = index;
            }
        }
        return best;
    }

    private static void save(BufferedImage picture, Path file) {
        try {
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException failure) {
            throw new UncheckedIOException("writing " + file, failure);
        }
    }
}

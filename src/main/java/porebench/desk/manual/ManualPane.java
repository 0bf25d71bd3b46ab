package porebench.desk.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Hashtable;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.swing.BorderFactory;
import javax.swing.JEditorPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.Document;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;

/** Shows one page in the colours and the type size of the theme. */
final class ManualPane extends JEditorPane {
    private static final long serialVersionUID = 1L;
    private static final int PICTURE_WIDTH = 640;
    private static final Pattern PICTURE = Pattern.compile("<img src=\"([^\"]+)\"");

    private final transient HTMLEditorKit kit = new HTMLEditorKit();

    /**
     * Makes a pane.
     *
     * @param follow follows a link
     */
    ManualPane(Consumer<String> follow) {
        setEditorKit(kit);
        setEditable(false);
        setName("manual.page");
        setBorder(BorderFactory.createEmptyBorder());
        addHyperlinkListener(event -> {
            if (event.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
                follow.accept(event.getDescription());
            }
        });
        getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "activate-link-action");
        getInputMap().put(KeyStroke.getKeyStroke("ctrl L"), "next-link-action");
    }

    /** What of the theme a page is made with, taken on the event thread. */
    record Look(Font font, Color ink, Color quiet, Color link, Color line, Color box, int pictureWidth) {
        static Look now() {
            return new Look(
                    UIManager.getFont("Label.font"),
                    color("Label.foreground"),
                    color("Porebench.quiet"),
                    color("Component.linkColor"),
                    color("Component.borderColor"),
                    color("Porebench.rail"),
                    UIScale.scale(PICTURE_WIDTH));
        }

        private static Color color(String key) {
            return Objects.requireNonNullElse(UIManager.getColor(key), Color.GRAY);
        }
    }

    /** Makes the document of a page; not on the event thread. */
    static HTMLDocument document(ManualPage page, String note, Look look) {
        StyleSheet style = new StyleSheet();
        style.addStyleSheet(new HTMLEditorKit().getStyleSheet());
        int size = look.font().getSize();
        String family = look.font().getFamily();
        style.addRule("body { font-family: \"" + family + "\"; font-size: " + size + "pt; color: " + hex(look.ink())
                + "; margin: 0 " + size + "pt " + 2 * size + "pt " + size + "pt; }");
        style.addRule("p, li { margin-top: " + size / 3 + "; margin-bottom: " + size / 3 + "; }");
        style.addRule("p.note { color: " + hex(look.quiet()) + "; }");
        style.addRule("h1 { font-size: " + (size + 9) + "pt; margin-top: " + size / 2 + "; margin-bottom: " + size / 2
                + "; }");
        style.addRule("h2 { font-size: " + (size + 4) + "pt; margin-top: " + size * 3 / 2 + "; margin-bottom: "
                + size / 3 + "; }");
        style.addRule(
                "h3 { font-size: " + (size + 1) + "pt; margin-top: " + size + "; margin-bottom: " + size / 4 + "; }");
        style.addRule("a { color: " + hex(look.link()) + "; }");
        style.addRule("ul, ol { margin-left-ltr: " + 2 * size + "; }");
        style.addRule("code { font-family: Monospaced; font-size: " + size + "pt; }");
        style.addRule("pre { font-family: Monospaced; font-size: " + size + "pt; background-color: " + hex(look.box())
                + "; padding: " + size / 2 + "; }");
        style.addRule("th { text-align: left; color: " + hex(look.quiet()) + "; }");
        String line =
                "border-bottom-width: 1px; border-bottom-style: solid; border-bottom-color: " + hex(look.line()) + "; ";
        style.addRule("th, td { " + line + "font-size: " + size + "pt; vertical-align: top; }");
        HTMLDocument document = new HTMLDocument(style);
        document.setAsynchronousLoadPriority(-1);
        String html = ManualHtml.of(page, note, look.pictureWidth());
        URL base = Objects.requireNonNull(ManualPane.class.getResource(Manual.FOLDER + ManualPage.CONTENTS + ".md"));
        document.setBase(base);
        document.putProperty("imageCache", pictures(html, base, look.pictureWidth()));
        try {
            new HTMLEditorKit().read(new StringReader(html), document, 0);
        } catch (IOException | BadLocationException failure) {
            throw new IllegalStateException("page " + page.name() + " of the manual cannot be shown", failure);
        }
        return document;
    }

    /** Reads the pictures of a page and makes them as wide as they are shown, which Swing would do coarsely. */
    private static Hashtable<URL, Image> pictures(String html, URL base, int width) {
        Hashtable<URL, Image> pictures = new Hashtable<>();
        Matcher found = PICTURE.matcher(html);
        while (found.find()) {
            try {
                URL place = new URL(base, found.group(1));
                BufferedImage picture = ImageIO.read(place);
                int height = Math.max(1, picture.getHeight() * width / picture.getWidth());
                Image fitting = picture.getScaledInstance(width, height, Image.SCALE_SMOOTH);
                BufferedImage shown = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
                java.awt.Graphics graphics = shown.getGraphics();
                graphics.drawImage(fitting, 0, 0, null);
                graphics.dispose();
                pictures.put(place, shown);
            } catch (IOException failure) {
                throw new UncheckedIOException("a picture of the manual cannot be read: " + found.group(1), failure);
            }
        }
        return pictures;
    }

    private static String hex(Color color) {
        return String.format(Locale.ROOT, "#%02x%02x%02x", color.getRed(), color.getGreen(), color.getBlue());
    }

    /** Shows a document from its top, from a heading of it, or from words in it. */
    void show(HTMLDocument document, String anchor, String words) {
        setDocument(document);
        setCaretPosition(0);
        if (!anchor.isEmpty()) {
            SwingUtilities.invokeLater(() -> scrollToReference(anchor));
        }
        if (!words.isBlank()) {
            mark(words);
        }
    }

    /** Marks every place of a word, and goes to the first. */
    private void mark(String words) {
        String word = MarkdownText.plain(words).strip().split("\\s+")[0];
        try {
            Document document = getDocument();
            String text = MarkdownText.plain(document.getText(0, document.getLength()));
            boolean isAligned = text.length() == document.getLength();
            int first = isAligned ? text.indexOf(word) : -1;
            for (int at = first; at >= 0; at = text.indexOf(word, at + word.length())) {
                getHighlighter()
                        .addHighlight(
                                at,
                                at + word.length(),
                                new DefaultHighlighter.DefaultHighlightPainter(
                                        UIManager.getColor("TextArea.selectionBackground")));
            }
            if (first >= 0) {
                setCaretPosition(first);
                Rectangle place = modelToView2D(first).getBounds();
                scrollRectToVisible(new Rectangle(place.x, place.y, 1, getVisibleRect().height / 2));
            }
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}

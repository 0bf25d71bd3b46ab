package porebench.print.picture;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import porebench.port.Picture;
import porebench.print.page.Typefaces;

/** A picture as the bytes of a file, on white. */
public final class PictureFile {
    /** Three pixels a point are 216 dots per inch. */
    private static final int PIXELS_PER_POINT = 3;

    private static final String SVG = "http://www.w3.org/2000/svg";

    private PictureFile() {}

    public static byte[] png(Picture picture) throws IOException {
        BufferedImage image = new BufferedImage(
                picture.width() * PIXELS_PER_POINT, picture.height() * PIXELS_PER_POINT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        graphics.scale(PIXELS_PER_POINT, PIXELS_PER_POINT);
        picture.drawing().accept(graphics);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    public static byte[] pdf(Picture picture, Typefaces typefaces, String program, Locale locale) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle(picture.title());
            document.getDocumentInformation().setCreator(program);
            document.getDocumentCatalog().setLanguage(locale.toLanguageTag());
            // Not made of the time, so that the same picture is the same file.
            document.setDocumentId(1L);
            PDPage page = new PDPage(new PDRectangle(picture.width(), picture.height()));
            document.addPage(page);
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, picture.width(), picture.height());
            try (PictureFonts fonts = new PictureFonts(typefaces.in(document))) {
                graphics.setFontTextDrawer(fonts);
                picture.drawing().accept(graphics);
            } finally {
                graphics.dispose();
            }
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(graphics.getXFormObject());
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    /**
     * Returns a picture as SVG. Its letters are outlines, so that it looks the same whatever typefaces a machine has; its words
     * stand in its description, where programs find and read them.
     */
    public static byte[] svg(Picture picture) throws IOException {
        OutlinedDrawing graphics = new OutlinedDrawing(emptyDocument());
        graphics.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, picture.width(), picture.height());
        picture.drawing().accept(graphics);
        Element root = graphics.getRoot();
        root.setAttribute("viewBox", "0 0 " + picture.width() + " " + picture.height());
        root.setAttribute("role", "img");
        Element title = root.getOwnerDocument().createElementNS(SVG, "title");
        title.setTextContent(picture.title());
        root.insertBefore(title, root.getFirstChild());
        Element words = root.getOwnerDocument().createElementNS(SVG, "desc");
        words.setTextContent(String.join("\n", graphics.words()));
        root.insertBefore(words, title.getNextSibling());
        nameNoFamilies(root);
        return written(root);
    }

    /** Returns the text of a drawing without a document type, which some programs would go and fetch. */
    private static byte[] written(Element root) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Transformer plain = TransformerFactory.newInstance().newTransformer();
            plain.setOutputProperty(OutputKeys.ENCODING, StandardCharsets.UTF_8.name());
            plain.setOutputProperty(OutputKeys.STANDALONE, "yes");
            plain.transform(new DOMSource(root), new StreamResult(bytes));
        } catch (TransformerException failure) {
            throw new IOException("writing the drawing as text", failure);
        }
        return bytes.toByteArray();
    }

    private static Document emptyDocument() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException failure) {
            throw new IllegalStateException("the Java platform has no XML documents", failure);
        }
    }

    /** There is no text left that a typeface could be looked up for. */
    private static void nameNoFamilies(Element element) {
        element.removeAttribute("font-family");
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            Node child = children.item(i);
            if (child instanceof Element inner) {
                nameNoFamilies(inner);
            }
        }
    }
}

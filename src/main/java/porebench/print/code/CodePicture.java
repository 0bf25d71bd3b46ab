package porebench.print.code;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.PhotoFile;

/**
 * The texts of the codes of squares (ISO/IEC 18004) in a photo or picture: JPEG or PNG, at most {@link PhotoFile#LARGEST} bytes.
 *
 * <p>ZXing finds them turned by any angle and tilted a little; what it does not find is said not to be found.
 */
public final class CodePicture {
    /** More dots than any phone's camera has, in all: what is larger is not unpacked. */
    private static final long MOST_DOTS = 120_000_000;

    /** Photos are looked at no larger than this on their longer side, and smaller once more: noise and blur then count less. */
    private static final int[] LONGEST_SIDES = {2400, 1200, 700};

    private static final Map<DecodeHintType, Object> HARD =
            Map.of(DecodeHintType.TRY_HARDER, true, DecodeHintType.CHARACTER_SET, "UTF-8");

    private CodePicture() {}

    /** Reads the texts of a file, each once, in the order in which they are found; refused when there is none. */
    public static Answer<List<String>> read(Path file) {
        byte[] bytes;
        try (InputStream stream = Files.newInputStream(file)) {
            bytes = stream.readNBytes(PhotoFile.LARGEST + 1);
        } catch (NoSuchFileException absent) {
            return refused(Problem.error("picture", "csv.file-missing", file.toString()));
        } catch (IOException | SecurityException failure) {
            return refused(Problem.error(
                    "picture", "csv.file-unreadable", file.toString(), String.valueOf(failure.getMessage())));
        }
        Answer<PhotoFile> photo = PhotoFile.of(bytes);
        return photo.value().isEmpty() ? Answer.refused(photo.problems()) : read(bytes, file);
    }

    private static Answer<List<String>> read(byte[] bytes, Path file) {
        try {
            List<String> texts = texts(picture(bytes));
            return texts.isEmpty()
                    ? refused(Problem.error("picture", "code.none-found", file.toString()))
                    : Answer.of(texts, List.of());
        } catch (IOException | IllegalArgumentException damaged) {
            return refused(Problem.error("picture", "code.picture-damaged", file.toString()));
        }
    }

    private static Answer<List<String>> refused(Problem problem) {
        return Answer.refused(List.of(problem));
    }

    private static BufferedImage picture(byte[] bytes) throws IOException {
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException("no reader");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream);
                if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_DOTS) {
                    throw new IOException("too many dots");
                }
                return reader.read(0);
            } finally {
                reader.dispose();
            }
        }
    }

    /** Returns the texts of a picture; of several sizes of it the one that shows most. */
    public static List<String> texts(BufferedImage picture) {
        Set<String> most = new LinkedHashSet<>();
        for (int longest : LONGEST_SIDES) {
            RGBLuminanceSource source = source(within(picture, longest));
            Set<String> found = new LinkedHashSet<>();
            Stream.of(
                            new BinaryBitmap(new HybridBinarizer(source)),
                            new BinaryBitmap(new GlobalHistogramBinarizer(source)))
                    .forEach(bitmap -> found.addAll(texts(bitmap)));
            if (found.size() > most.size()) {
                most = found;
            }
        }
        return List.copyOf(most);
    }

    private static List<String> texts(BinaryBitmap bitmap) {
        try {
            return Stream.of(new QRCodeMultiReader().decodeMultiple(bitmap, HARD))
                    .map(Result::getText)
                    .toList();
        } catch (NotFoundException none) {
            return one(bitmap);
        }
    }

    private static List<String> one(BinaryBitmap bitmap) {
        try {
            return List.of(new QRCodeReader().decode(bitmap, HARD).getText());
        } catch (ReaderException none) {
            return List.of();
        }
    }

    /** Draws a picture on white, no larger than some dots on its longer side. */
    private static BufferedImage within(BufferedImage picture, int longest) {
        double scale = Math.min(1, longest / (double) Math.max(picture.getWidth(), picture.getHeight()));
        int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = drawn.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            pen.setPaint(Color.WHITE);
            pen.fillRect(0, 0, width, height);
            pen.drawImage(picture, 0, 0, width, height, null);
        } finally {
            pen.dispose();
        }
        return drawn;
    }

    private static RGBLuminanceSource source(BufferedImage drawn) {
        int width = drawn.getWidth();
        int height = drawn.getHeight();
        return new RGBLuminanceSource(width, height, drawn.getRGB(0, 0, width, height, null, 0, width));
    }
}

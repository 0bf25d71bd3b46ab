package porebench.desk.photo;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import porebench.record.PhotoFile;

/** Makes a picture of a photo's bytes, no larger than wanted: a small file may say that it is a picture of a million lines. */
final class DrawnPhoto {
    private DrawnPhoto() {}

    /**
     * Returns the picture as the camera was held; takes long, and is no work for the event thread.
     *
     * @param file the photo with its bytes
     * @param mostDots the most dots a side may have; of a larger picture every second, third or so is taken
     * @return empty when the bytes are no picture that can be drawn
     */
    static Optional<BufferedImage> of(PhotoFile file, int mostDots) {
        try (ImageInputStream stream = new MemoryCacheImageInputStream(file.open())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            BufferedImage picture = read(readers.next(), stream, mostDots);
            for (int turn = HowHeld.quarterTurns(file.bytes()); turn > 0; turn--) {
                picture = turned(picture);
            }
            return Optional.of(picture);
        } catch (IOException | RuntimeException damaged) {
            // The readers of Java fail with either on a file that is damaged in itself.
            return Optional.empty();
        }
    }

    private static BufferedImage read(ImageReader reader, ImageInputStream stream, int mostDots) throws IOException {
        try {
            reader.setInput(stream, true, true);
            int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
            int every = (longest + mostDots - 1) / mostDots;
            ImageReadParam wanted = reader.getDefaultReadParam();
            wanted.setSourceSubsampling(every, every, 0, 0);
            return reader.read(0, wanted);
        } finally {
            reader.dispose();
        }
    }

    /** Returns a picture turned a quarter to the right. */
    static BufferedImage turned(BufferedImage picture) {
        BufferedImage turned = new BufferedImage(picture.getHeight(), picture.getWidth(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = turned.createGraphics();
        g.translate(picture.getHeight(), 0);
        g.transform(AffineTransform.getQuadrantRotateInstance(1));
        g.drawImage(picture, 0, 0, null);
        g.dispose();
        return turned;
    }
}

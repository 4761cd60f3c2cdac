package spoolyard.analysis.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Turns a picture into the bytes of a PNG file. */
final class Png {
    private Png() {}

    /**
     * Encodes.
     *
     * @param image the picture
     * @return content of the file
     */
    static byte[] of(BufferedImage image) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
    }
}

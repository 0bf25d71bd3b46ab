package porebench.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import porebench.method.Answer;
import porebench.method.Problem;

/**
 * The file of a photo: what kind of picture it is, how large, its SHA-256, and where they were read its bytes.
 *
 * <p>A record that is read from a lab book knows its file without the bytes, which are many. Two files are equal when their bytes
 * are, as far as their SHA-256 tells.
 */
public final class PhotoFile {
    /** The largest file that is kept, in bytes: 10 MB. A telephone's photo of a sheet has from 2 to 6 MB; no source. */
    public static final int LARGEST = 10_000_000;

    private static final int MEGABYTE = 1_000_000;
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private final PhotoType type;
    private final int size;
    private final String sha256;
    private final @Nullable Supplier<byte[]> bytes;

    private PhotoFile(PhotoType type, int size, String sha256, @Nullable Supplier<byte[]> bytes) {
        this.type = type;
        this.size = size;
        this.sha256 = sha256;
        this.bytes = bytes;
    }

    /** Makes the file of some bytes; refused when it is too large or no picture of a kind that is kept. */
    public static Answer<PhotoFile> of(byte[] bytes) {
        if (bytes.length > LARGEST) {
            return Answer.refused(List.of(Problem.error("file", "photo.too-large", LARGEST / MEGABYTE)));
        }
        return PhotoType.of(bytes)
                .map(type -> ofClone(type, bytes.clone()))
                .orElseGet(() -> Answer.refused(List.of(Problem.error("file", "photo.not-a-picture"))));
    }

    private static Answer<PhotoFile> ofClone(PhotoType type, byte[] bytes) {
        return Answer.of(new PhotoFile(type, bytes.length, hash(bytes), () -> bytes), List.of());
    }

    /**
     * Makes what is known of a file without its bytes.
     *
     * @param size in bytes
     * @param sha256 64 hexadecimal digits, small letters
     */
    public static PhotoFile stated(PhotoType type, int size, String sha256) {
        if (!isHash(sha256)) {
            throw new IllegalArgumentException("sha256 must be 64 hexadecimal digits, but is " + sha256);
        }
        return new PhotoFile(type, size, sha256, null);
    }

    /**
     * Returns the same file, its bytes read only when they are asked for, so that many photos are not held at one time.
     *
     * @param reading gives the bytes
     */
    public PhotoFile readBy(Supplier<byte[]> reading) {
        return new PhotoFile(type, size, sha256, reading);
    }

    /** Returns whether a text can be a SHA-256 as it is written here. */
    public static boolean isHash(String text) {
        return HASH.matcher(text).matches();
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Returns what kind of picture it is. */
    public PhotoType type() {
        return type;
    }

    /** Returns how large it is, in bytes. */
    public int size() {
        return size;
    }

    /** Returns the SHA-256 of its bytes, 64 hexadecimal digits in small letters. */
    public String sha256() {
        return sha256;
    }

    /** Returns the name of the file in which it leaves a lab book; the same bytes have the same name. */
    public String name() {
        return "photo-" + sha256 + "." + type.extension();
    }

    /** Returns whether its bytes are here or can be read. */
    public boolean hasBytes() {
        return bytes != null;
    }

    /**
     * Returns a copy of its bytes.
     *
     * @throws IllegalStateException if they are not here
     */
    public byte[] bytes() {
        return here().clone();
    }

    /**
     * Writes its bytes.
     *
     * @throws IllegalStateException if they are not here
     */
    public void writeTo(OutputStream out) throws IOException {
        out.write(here());
    }

    /**
     * Returns its bytes to be read one after the other.
     *
     * @throws IllegalStateException if they are not here
     */
    public InputStream open() {
        return new ByteArrayInputStream(here());
    }

    private byte[] here() {
        if (bytes == null) {
            throw new IllegalStateException("bytes must be here, but only " + this + " is known");
        }
        return bytes.get();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PhotoFile file && type == file.type && size == file.size && sha256.equals(file.sha256);
    }

    @Override
    public int hashCode() {
        return Objects.hash(type, size, sha256);
    }

    @Override
    public String toString() {
        return name() + ", " + size + " bytes";
    }
}

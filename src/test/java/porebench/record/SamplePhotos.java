package porebench.record;

import java.util.Random;
import porebench.record.id.PhotoId;
import porebench.record.id.TrialId;

/** Invented photos: bytes that begin as pictures do and are noise from there on. */
public final class SamplePhotos {
    private SamplePhotos() {}

    /** Returns bytes that say they are a JPEG picture; other seeds give others. */
    public static byte[] jpeg(int size, int seed) {
        return begun(size, seed, 0xFF, 0xD8, 0xFF, 0xE0);
    }

    /** Returns bytes that say they are a PNG picture. */
    public static byte[] png(int size, int seed) {
        return begun(size, seed, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A);
    }

    private static byte[] begun(int size, int seed, int... beginning) {
        byte[] bytes = new byte[size];
        new Random(seed).nextBytes(bytes);
        for (int i = 0; i < beginning.length; i++) {
            bytes[i] = (byte) beginning[i];
        }
        return bytes;
    }

    public static PhotoFile file(byte[] bytes) {
        return PhotoFile.of(bytes).value().orElseThrow();
    }

    public static SheetPhoto photo(String id, String trial, byte[] bytes) {
        return new SheetPhoto(new PhotoId(id), new TrialId(trial), "IMG 1.jpg", file(bytes), false);
    }
}

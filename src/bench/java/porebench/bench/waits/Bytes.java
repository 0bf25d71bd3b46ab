package porebench.bench.waits;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** What the bytes of a file cost at least: {@code parse}, {@code hash} or {@code copy FILE [TO]}. */
final class Bytes {
    private Bytes() {}

    public static void main(String[] arguments) throws IOException, NoSuchAlgorithmException {
        byte[] bytes = Files.readAllBytes(Path.of(arguments[1]));
        switch (arguments[0]) {
            case "parse" -> System.out.println(sum(bytes));
            case "hash" ->
                System.out.println(MessageDigest.getInstance("SHA-256").digest(bytes)[0]);
            case "copy" -> Files.write(Path.of(arguments[2]), bytes);
            default -> throw new IllegalArgumentException(arguments[0]);
        }
    }

    /** Makes a text of every cell and a number of every one that is one, and adds them up with the lengths. */
    private static double sum(byte[] bytes) {
        double sum = 0;
        int from = 0;
        for (int at = 0; at < bytes.length; at++) {
            if (bytes[at] == ',' || bytes[at] == '\n') {
                sum += cell(new String(bytes, from, at - from, StandardCharsets.UTF_8));
                from = at + 1;
            }
        }
        return sum;
    }

    private static double cell(String text) {
        boolean isNumber = !text.isEmpty();
        for (int i = 0; i < text.length(); i++) {
            isNumber &= text.charAt(i) <= '9' && text.charAt(i) >= '-' && text.charAt(i) != '/';
        }
        try {
            return isNumber ? Double.parseDouble(text) : text.length();
        } catch (NumberFormatException aDay) {
            return text.length();
        }
    }
}

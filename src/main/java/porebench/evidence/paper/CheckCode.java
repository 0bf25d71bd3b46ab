package porebench.evidence.paper;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import porebench.quantity.Require;

/**
 * The short code at the end of a card's text, by which the laboratory that holds its key tells whether the text was altered.
 *
 * <p>It is HMAC-SHA-256 (RFC 2104 and FIPS 180-4, both recalled; the JDK's own) of the text, cut to {@value #LENGTH} characters of
 * an alphabet of 31 that nobody mixes up by eye: digits and capital letters without 0, O, 1, I and L. There are 31 to the power of 8
 * codes, 852,891,037,441: a text made up with a guessed code passes once in that many tries.
 *
 * @param letters the eight characters
 */
public record CheckCode(String letters) {
    /** Characters of a code. */
    public static final int LENGTH = 8;

    private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    private static final Pattern FORM = Pattern.compile("[" + ALPHABET + "]{" + LENGTH + "}");
    private static final Pattern DASHES = Pattern.compile("[\\u2010-\\u2015\\u2212\\uFE58\\uFE63\\uFF0D]");
    private static final Pattern GAPS = Pattern.compile("[\\s\\p{Z}\\u0085\\uFEFF]+");
    private static final int GROUP = LENGTH / 2;

    /** Keeps these codes apart from whatever else may once be computed with the same key. */
    private static final String PURPOSE = "text of a factor card\n";

    public CheckCode {
        if (!FORM.matcher(letters).matches()) {
            throw new IllegalArgumentException("letters must be " + LENGTH + " of " + ALPHABET + ", but is " + letters);
        }
    }

    /**
     * Returns the code of a text.
     *
     * @param key what only the lab book holds
     * @param text the text before the code; how its lines are broken and how wide its gaps are does not matter
     */
    public static CheckCode of(String key, String text) {
        byte[] sum = sum(Require.notBlank("key", key), PURPOSE + normal(text));
        BigInteger left = new BigInteger(1, sum);
        BigInteger base = BigInteger.valueOf(ALPHABET.length());
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            BigInteger[] parts = left.divideAndRemainder(base);
            letters.append(ALPHABET.charAt(parts[1].intValue()));
            left = parts[0];
        }
        return new CheckCode(letters.toString());
    }

    private static byte[] sum(String key, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
            return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has HMAC-SHA-256", impossible);
        }
    }

    /**
     * Returns a text as its code is computed of it: what a phone, a mail or a keyboard changes on its own is made one (line breaks, gaps,
     * composed letters, kinds of dashes), and nothing that says something else.
     */
    public static String normal(String text) {
        // Letters of Latin-1 are composed already and none of them is a dash; this is most texts, in a tenth of the
        // time.
        StringBuilder normal = new StringBuilder(text.length());
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            if (letter > '\u00ff' || letter > '~' && letter <= '\u00a0') {
                return normalOfAnyLetters(text);
            }
            boolean isGap = letter == ' ' || letter >= '\t' && letter <= '\r';
            if (!isGap) {
                normal.append(letter);
            } else if (normal.length() > 0 && normal.charAt(normal.length() - 1) != ' ') {
                normal.append(' ');
            }
        }
        return normal.toString().strip();
    }

    private static String normalOfAnyLetters(String text) {
        String dashed =
                DASHES.matcher(Normalizer.normalize(text, Normalizer.Form.NFC)).replaceAll("-");
        return GAPS.matcher(dashed).replaceAll(" ").strip();
    }

    /** Reads a code as it is copied from paper, in its two groups or not, in whatever letter case; empty when it is none. */
    public static Optional<CheckCode> parse(String typed) {
        String letters = normal(typed).replaceAll("[ -]", "").toUpperCase(Locale.ROOT);
        return FORM.matcher(letters).matches() ? Optional.of(new CheckCode(letters)) : Optional.empty();
    }

    /** Returns the code in two groups, as it is printed: {@code K7QM-4XPA}. */
    public String printed() {
        return letters.substring(0, GROUP) + "-" + letters.substring(GROUP);
    }
}

package porebench.print.phone;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import porebench.evidence.paper.AirRule;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.PhonePage;
import porebench.evidence.paper.SievedAirs;
import porebench.method.Texts;
import porebench.port.FieldHandout;
import porebench.quantity.Volume;
import porebench.record.FactorTerms;
import porebench.record.Laboratory;

/**
 * Writes a phone page: the template beside this class with the card's data, the words of all its languages and a Content-Security-Policy
 * that lets nothing in or out ({@code default-src 'none'}) but the page's own script and style, each by its SHA-256.
 */
public final class PhoneFile {
    private static final String FOLDER = "/porebench/print/phone/";

    private PhoneFile() {}

    /** Returns the file, UTF-8. */
    public static byte[] of(PhonePage page, Locale locale) {
        String script = resource("page.js").replace("/*QR*/", resource("squares.js"));
        String style = resource("page.css");
        return resource("page.html")
                .replace("@policy@", policy(script, style))
                .replace("@title@", escaped(page.card().mixId().text()))
                .replace("@style@", style)
                .replace("@card@", data(page, locale))
                .replace("@script@", script)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String policy(String script, String style) {
        return "default-src 'none'; script-src '" + hash(script) + "'; style-src '" + hash(style)
                + "'; base-uri 'none'; form-action 'none'";
    }

    private static String hash(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(sum);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private static String resource(String name) {
        try (InputStream stream = Objects.requireNonNull(PhoneFile.class.getResourceAsStream(FOLDER + name))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException unreadable) {
            throw new IllegalStateException("the program's own file " + name + " must be readable", unreadable);
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("@", "&#64;");
    }

    private static String data(PhonePage page, Locale locale) {
        FactorCard card = page.card();
        AirRule rule = page.rule();
        String language = FieldHandout.LANGUAGES.contains(locale.getLanguage())
                ? locale.getLanguage()
                : FieldHandout.LANGUAGES.get(0);
        return new Json()
                .text("language", language)
                .text("laboratory", card.laboratory().map(Laboratory::name).orElse(""))
                .text("mix", card.mixId().text())
                .text("title", card.mixTitle())
                .text("revision", Integer.toString(card.issue().revision()))
                .text("meter", card.issue().meterType().name())
                .text("g", card.issue().factorPercent().toPlainString())
                .text("subtracted", page.subtracted().toPlainString())
                .text("step", rule.step().toPlainString())
                .text("ties", rule.ties().symbol())
                .text(
                        "highLooksAt",
                        rule.high()
                                .map(high -> high.looksAtAir() ? "air" : "reading")
                                .orElse("never"))
                .text("highAbove", plain(rule.high().map(AirRule.High::above)))
                .text("highStep", plain(rule.high().map(AirRule.High::step)))
                .text("top", page.scaleTop().toPlainString())
                .text("target", card.targetAirPercent().toPlainString())
                .text("tolerance", card.airTolerancePercent().toPlainString())
                .text("from", card.issue().inForceFrom().toString())
                .text(
                        "fromHour",
                        card.issue().terms().at().map(FactorTerms::written).orElse(""))
                .text("to", card.lastDay().toString())
                .text("toHour", card.until().map(FactorTerms::written).orElse(""))
                .text("conditions", card.issue().terms().conditions())
                .text("wetSieved", card.wetSieved() ? "yes" : "")
                .group("volumes", volumes(card.sievedAirs()))
                .text("training", card.isTraining() ? "yes" : "")
                .text("state", card.isMarked() ? card.state().symbol() : "")
                .text("head", card.head().printed() + " / " + card.head().entries())
                .text("text", CardText.of(card, CardWords.in(PaperLanguage.of(locale))))
                .group("words", words(locale))
                .toString();
    }

    /** Returns the air-free volumes that spread the air of a wet-sieved concrete, in millionths of a litre; none where none are known. */
    private static Json volumes(Optional<SievedAirs> airs) {
        Json written = new Json();
        airs.map(SievedAirs::volumes)
                .ifPresent(known -> written.text("passing", whole(known.passing()))
                        .text("total", whole(known.total()))
                        .text("held", whole(known.held()))
                        .text("mortar", whole(known.mortar())));
        return written;
    }

    private static String whole(Volume volume) {
        return BigDecimal.valueOf(volume.cubicMetres())
                .movePointRight(9)
                .setScale(0, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private static String plain(Optional<BigDecimal> number) {
        return number.map(BigDecimal::toPlainString).orElse("0");
    }

    /** Returns the words of all languages; Spanish as in the country of whoever asks for the page. */
    private static Json words(Locale locale) {
        Json all = new Json();
        for (String language : FieldHandout.LANGUAGES) {
            Texts texts = Texts.of(
                    "porebench.print.phone",
                    language.equals(locale.getLanguage()) ? locale : Locale.forLanguageTag(language));
            Json words = new Json();
            new TreeSet<>(texts.keys()).forEach(key -> words.text(key, texts.get(key, "{0}", "{1}", "{2}")));
            all.group(language, words);
        }
        return all;
    }

    /** A JSON object (RFC 8259) that may stand inside an HTML script element: no mark of HTML is in it. */
    private static final class Json {
        private final StringBuilder written = new StringBuilder("{");

        Json text(String name, String value) {
            return put(name, quoted(value));
        }

        Json group(String name, Json value) {
            return put(name, value.toString());
        }

        private Json put(String name, String value) {
            written.append(written.length() == 1 ? "" : ",")
                    .append(quoted(name))
                    .append(':')
                    .append(value);
            return this;
        }

        private static String quoted(String text) {
            StringBuilder quoted = new StringBuilder("\"");
            for (char letter : text.toCharArray()) {
                if (letter == '"' || letter == '\\') {
                    quoted.append('\\').append(letter);
                } else if (letter < ' '
                        || letter == '<'
                        || letter == '>'
                        || letter == '&'
                        || letter == '\u2028'
                        || letter == '\u2029'
                        || letter == '@') {
                    quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) letter));
                } else {
                    quoted.append(letter);
                }
            }
            return quoted.append('"').toString();
        }

        @Override
        public String toString() {
            return written + "}";
        }
    }
}

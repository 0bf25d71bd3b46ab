package porebench.print;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/**
 * What a document says of itself so that it can be kept for long: PDF/A-2b. Its typefaces are embedded, its colours are those of sRGB, and
 * what it is stands in it twice, as old and as new readers look for it.
 *
 * <p>Source: ISO 19005-2 (recalled); a test holds documents against a validator.
 */
final class LastingPdf {
    private static final String SRGB = "sRGB IEC61966-2.1";

    private LastingPdf() {}

    /**
     * Describes a document.
     *
     * @param title what it is, in the language of the document
     * @param program name and version of the program that made it
     * @param made when
     */
    static void describe(PDDocument document, String title, String program, Locale locale, ZonedDateTime made)
            throws IOException {
        ZonedDateTime second = made.truncatedTo(ChronoUnit.SECONDS);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setCreator(program);
        information.setCreationDate(GregorianCalendar.from(second));
        document.getDocumentCatalog().setLanguage(locale.toLanguageTag());
        document.setDocumentId(made.toInstant().toEpochMilli());
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(said(title, program, second).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
        byte[] colours = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(colours));
        intent.setInfo(SRGB);
        intent.setOutputCondition(SRGB);
        intent.setOutputConditionIdentifier(SRGB);
        intent.setRegistryName("http://www.color.org");
        document.getDocumentCatalog().addOutputIntent(intent);
    }

    private static String said(String title, String program, ZonedDateTime made) {
        String form = """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
                <pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
                <xmp:CreatorTool>%s</xmp:CreatorTool><xmp:CreateDate>%s</xmp:CreateDate>
                </rdf:Description>
                </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="w"?>""";
        return String.format(
                Locale.ROOT,
                form,
                escaped(title),
                escaped(program),
                made.toOffsetDateTime().toString());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}

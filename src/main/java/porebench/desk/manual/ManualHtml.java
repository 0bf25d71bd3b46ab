package porebench.desk.manual;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;
import org.commonmark.renderer.text.TextContentRenderer;

/** Turns a page of the manual into HTML: headings can be linked to, tables have no borders of their own, pictures fit the page. */
final class ManualHtml {
    static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();

    private static final TextContentRenderer TEXT =
            TextContentRenderer.builder().build();

    private ManualHtml() {}

    /**
     * Returns a page as HTML.
     *
     * @param note what is said above the page, such as that it is not in the reader's language; blank for nothing
     * @param pictureWidth how wide pictures are, in pixels
     */
    static String of(ManualPage page, String note, int pictureWidth) {
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(EXTENSIONS)
                .attributeProviderFactory(
                        context -> (node, tag, attributes) -> attribute(node, attributes, pictureWidth))
                .nodeRendererFactory(context -> new Headings(context, page.anchors()))
                .build();
        String above = note.isEmpty() ? "" : "<p class=\"note\">" + note + "</p>";
        return "<html><body>" + above + renderer.render(PARSER.parse(page.markdown())) + "</body></html>";
    }

    /** Returns the names of the headings of a page, in their order. */
    static List<String> anchors(ManualPage page) {
        Map<String, Integer> seen = new HashMap<>();
        List<String> anchors = new ArrayList<>();
        PARSER.parse(page.markdown()).accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                anchors.add(anchor(heading, seen));
            }
        });
        return anchors;
    }

    /** The second heading of the same words has another name, as on the pages of a repository. */
    private static String anchor(Node heading, Map<String, Integer> seen) {
        String anchor = MarkdownText.anchor(TEXT.render(heading));
        int times = seen.merge(anchor, 1, Integer::sum);
        return times == 1 ? anchor : anchor + "-" + (times - 1);
    }

    private static void attribute(Node node, Map<String, String> attributes, int pictureWidth) {
        if (node instanceof TableBlock) {
            attributes.putAll(Map.of("cellspacing", "0", "cellpadding", "5", "border", "0"));
        } else if (node instanceof TableCell) {
            attributes.put("valign", "top");
        } else if (node instanceof Image) {
            attributes.put("width", Integer.toString(pictureWidth));
        }
    }

    /** Writes headings with a name before them. */
    private static final class Headings implements NodeRenderer {
        private final HtmlNodeRendererContext context;
        private final HtmlWriter writer;
        private final List<String> english;
        private final Map<String, Integer> seen = new HashMap<>();
        private int count;

        Headings(HtmlNodeRendererContext context, List<String> english) {
            this.context = context;
            this.english = english;
            this.writer = context.getWriter();
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Heading.class);
        }

        private void name(String anchor) {
            writer.tag("a", Map.of("name", anchor));
            writer.tag("/a");
        }

        @Override
        public void render(Node node) {
            int level = ((Heading) node).getLevel();
            writer.line();
            writer.tag("h" + level);
            name(anchor(node, seen));
            if (count < english.size()) {
                name(english.get(count));
            }
            count++;
            for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
                context.render(child);
            }
            writer.tag("/h" + level);
            writer.line();
        }
    }
}

package porebench.print.page;

import java.io.IOException;
import java.util.List;

/**
 * A part of a page that knows how high it is before it is drawn.
 *
 * @param height its height, in points
 * @param drawing how it is drawn
 */
public record Block(double height, Drawing drawing) {
    /** Draws with its upper edge at a height. */
    public interface Drawing {
        void draw(double top) throws IOException;
    }

    public static double height(List<Block> blocks) {
        return blocks.stream().mapToDouble(Block::height).sum();
    }

    /** Draws blocks below each other and returns where the last one ends. */
    public static double draw(List<Block> blocks, double top) throws IOException {
        double y = top;
        for (Block block : blocks) {
            block.drawing().draw(y);
            y += block.height();
        }
        return y;
    }
}

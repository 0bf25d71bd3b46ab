package porebench.chart.look;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.entity.EntityCollection;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYDataset;
import org.jspecify.annotations.Nullable;

/** Draws of {@link ThinSeries} what the pixels can show, lines as one stroke each. */
public final class ThinRenderer extends XYLineAndShapeRenderer {
    private static final long serialVersionUID = 1L;

    private transient @Nullable ThinSeries shown;

    public ThinRenderer(boolean isLines) {
        super(isLines, !isLines);
        setDrawSeriesLineAsPath(isLines);
        // The canvas finds the point under the pointer itself, among all of them.
        setDefaultCreateEntities(false);
    }

    @Override
    public XYItemRendererState initialise(
            Graphics2D graphics, Rectangle2D area, XYPlot plot, XYDataset data, PlotRenderingInfo info) {
        shown = data instanceof ThinSeries series ? series : null;
        if (shown != null) {
            double pixels = Math.max(1, Math.abs(graphics.getTransform().getScaleX()));
            shown.show(new Places.Window(
                    plot.getDomainAxis().getRange(),
                    plot.getRangeAxis().getRange(),
                    (int) Math.max(1, Math.ceil(area.getWidth() * pixels)),
                    (int) Math.max(1, Math.ceil(area.getHeight() * pixels))));
        }
        return super.initialise(graphics, area, plot, data, info);
    }

    /** Strokes that run into one another have no edges to be smoothed. */
    @Override
    protected void drawFirstPassShape(Graphics2D graphics, int pass, int series, int item, Shape line) {
        if (isCrowded(series)) {
            Object before = graphics.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
            super.drawFirstPassShape(graphics, pass, series, item, line);
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, before);
        } else {
            super.drawFirstPassShape(graphics, pass, series, item, line);
        }
    }

    /** Filled marks that run into one another have no outlines to be seen. */
    @Override
    protected void drawSecondaryPass(
            Graphics2D graphics,
            XYPlot plot,
            XYDataset data,
            int pass,
            int series,
            int item,
            ValueAxis across,
            Rectangle2D area,
            ValueAxis upwards,
            CrosshairState crosshair,
            @Nullable EntityCollection entities) {
        if (!isCrowded(series) || !getItemShapeFilled(series, item)) {
            super.drawSecondaryPass(
                    graphics, plot, data, pass, series, item, across, area, upwards, crosshair, entities);
            return;
        }
        double x = across.valueToJava2D(data.getXValue(series, item), area, plot.getDomainAxisEdge());
        double y = upwards.valueToJava2D(data.getYValue(series, item), area, plot.getRangeAxisEdge());
        Shape mark = ShapeUtils.createTranslatedShape(getItemShape(series, item), x, y);
        if (mark.intersects(area)) {
            graphics.setPaint(getItemPaint(series, item));
            graphics.fill(mark);
        }
    }

    private boolean isCrowded(int series) {
        return shown != null && shown.isCrowded(series);
    }
}

package stenotherm.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Draws into an image in memory; needs no display. */
final class RasterCanvas implements Canvas {
  private final BufferedImage image;
  private final Graphics2D graphics;

  RasterCanvas(int width, int height) {
    image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
  }

  @Override
  public int width() {
    return image.getWidth();
  }

  @Override
  public int height() {
    return image.getHeight();
  }

  @Override
  public void fill(Shape shape, Color color) {
    smooth(true);
    graphics.setColor(color);
    graphics.fill(shape);
  }

  @Override
  public void fillCell(Rectangle2D cell, Color color) {
    smooth(false);
    graphics.setColor(color);
    int left = (int) Math.round(cell.getMinX());
    int top = (int) Math.round(cell.getMinY());
    graphics.fillRect(
        left, top, (int) Math.round(cell.getMaxX()) - left, (int) Math.round(cell.getMaxY()) - top);
  }

  @Override
  public void stroke(Shape shape, Pen pen) {
    smooth(true);
    graphics.setColor(pen.color());
    graphics.setStroke(strokeOf(pen));
    graphics.draw(shape);
  }

  private static BasicStroke strokeOf(Pen pen) {
    double[] lengths = pen.dash().lengths();
    float width = (float) pen.width();
    if (lengths.length == 0) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] pattern = new float[lengths.length];
    for (int i = 0; i < lengths.length; i++) {
      pattern[i] = (float) lengths[i];
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
  }

  @Override
  public void write(String text, Anchor anchor, Lettering lettering) {
    double shift =
        switch (anchor.alignment()) {
          case START -> 0;
          case MIDDLE -> -Letters.width(text, lettering) / 2;
          case END -> -Letters.width(text, lettering);
        };
    AffineTransform place = AffineTransform.getTranslateInstance(anchor.x(), anchor.y());
    if (lettering.upwards()) {
      place.rotate(-Math.PI / 2);
    }
    place.translate(shift, 0);
    GlyphVector glyphs = Letters.font(lettering).createGlyphVector(Letters.CONTEXT, text);
    Shape outline = place.createTransformedShape(glyphs.getOutline());
    if (lettering.halo()) {
      stroke(outline, new Pen(Look.HALO, Look.HALO_WIDTH));
    }
    fill(outline, lettering.color());
  }

  private void smooth(boolean on) {
    graphics.setRenderingHint(
        RenderingHints.KEY_ANTIALIASING,
        on ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
  }

  byte[] png() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    // A stream of our own, because the default one may put a cache file on the disk.
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
      if (!ImageIO.write(image, "png", stream)) {
        throw new IllegalStateException("this Java runtime writes no PNG");
      }
    } catch (IOException fault) {
      throw new UncheckedIOException("writing an image to memory", fault);
    }
    return bytes.toByteArray();
  }
}

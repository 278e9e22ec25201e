package io.pitchwatch.page;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * Screenshots with a palette of the 256 commonest colours: flat pictures look the same at a third
 * of the size.
 */
final class SmallPng {

  private static final int COLOURS = 256;
  private static final int RGB = 0xffffff;

  private SmallPng() {}

  static void write(byte[] png, Path file) throws IOException {
    BufferedImage full = ImageIO.read(new ByteArrayInputStream(png));
    int width = full.getWidth();
    int height = full.getHeight();
    int[] pixels = full.getRGB(0, 0, width, height, new int[width * height], 0, width);
    int[] palette = palette(pixels);
    IndexColorModel model =
        new IndexColorModel(8, palette.length, palette, 0, false, -1, DataBuffer.TYPE_BYTE);
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int i = 0; i < pixels.length; i++) {
      int index = nearest.computeIfAbsent(pixels[i] & RGB, rgb -> nearest(palette, rgb));
      small.getRaster().setSample(i % width, i / width, 0, index);
    }
    ImageIO.write(small, "png", file.toFile());
  }

  private static int[] palette(int[] pixels) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int pixel : pixels) {
      counts.merge(pixel & RGB, 1, Integer::sum);
    }
    List<Integer> commonest =
        counts.entrySet().stream()
            .sorted(
                Map.Entry.<Integer, Integer>comparingByValue()
                    .reversed()
                    .thenComparing(Map.Entry.comparingByKey()))
            .limit(COLOURS)
            .map(Map.Entry::getKey)
            .toList();
    return commonest.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int nearest(int[] palette, int rgb) {
    int best = 0;
    for (int i = 1; i < palette.length; i++) {
      if (distance(palette[i], rgb) < distance(palette[best], rgb)) {
        best = i;
      }
    }
    return best;
  }

  private static int distance(int a, int b) {
    int red = (a >> 16 & 255) - (b >> 16 & 255);
    int green = (a >> 8 & 255) - (b >> 8 & 255);
    int blue = (a & 255) - (b & 255);
    return red * red + green * green + blue * blue;
  }
}

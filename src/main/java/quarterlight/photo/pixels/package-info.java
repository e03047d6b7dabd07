/**
 * Answers: how are pixels reduced, turned into sRGB, written and measured?
 * <p>Uses the Java platform, native libraries and {@code capture}. Read {@link quarterlight.photo.pixels.RgbPixels} first.
 */
package quarterlight.photo.pixels;

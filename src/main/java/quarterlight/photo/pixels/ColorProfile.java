package quarterlight.photo.pixels;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.nio.charset.StandardCharsets;

/**
 * The color profile that a picture carries; immutable. Source: ISO 15076-1 (ICC.1).
 */
public final class ColorProfile {
    private static final System.Logger LOG = System.getLogger(ColorProfile.class.getName());
    private static final int HEADER_BYTES = 128;
    private static final int COLOR_SPACE_AT = 16;

    private final byte[] icc;

    /** @param icc the profile's bytes */
    public ColorProfile(byte[] icc) {
        this.icc = icc.clone();
    }

    /** Whether it says the picture is in sRGB already; told by its name. */
    boolean isStandard() {
        String text = new String(icc, StandardCharsets.ISO_8859_1);
        return text.contains("sRGB") || text.contains("s\0R\0G\0B");
    }

    /** The picture brought to sRGB; as it is, if the profile is damaged or not one of RGB. {@code picture} is of type INT_RGB. */
    public BufferedImage toStandard(BufferedImage picture) {
        if (isStandard() || icc.length < HEADER_BYTES || !space().equals("RGB ")) {
            return picture;
        }
        try {
            ColorSpace own = new ICC_ColorSpace(ICC_Profile.getInstance(icc));
            BufferedImage converted =
                    new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
            new ColorConvertOp(own, ColorSpace.getInstance(ColorSpace.CS_sRGB), null)
                    .filter(picture.getRaster(), converted.getRaster());
            return converted;
        } catch (RuntimeException e) {
            LOG.log(System.Logger.Level.DEBUG, "a color profile is damaged: " + e.getMessage());
            return picture;
        }
    }

    private String space() {
        return new String(icc, COLOR_SPACE_AT, 4, StandardCharsets.ISO_8859_1);
    }
}

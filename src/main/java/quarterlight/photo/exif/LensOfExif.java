package quarterlight.photo.exif;

import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.util.OptionalDouble;
import quarterlight.visit.photo.MediaFacts;

/**
 * The lens that Exif tells: the focal length that shows the same field on film of 36 x 24 mm, by the diagonal.
 * <p>Source: CIPA DC-008 (Exif 2.32), FocalLengthIn35mmFilm (0xA405; 0 means unknown); else FocalLength (0x920A) with the size of the
 * sensor from PixelXDimension, PixelYDimension (0xA002, 0xA003) and FocalPlaneXResolution, FocalPlaneYResolution in the unit of
 * FocalPlaneResolutionUnit (0xA20E to 0xA210; 2 is inch, 3 cm, inch if absent).
 */
final class LensOfExif {
    private static final double FILM_DIAGONAL_MM = Math.hypot(36, 24);
    private static final double INCH_MM = 25.4;
    private static final double CM_MM = 10;
    private static final int UNIT_CM = 3;

    private LensOfExif() {}

    static OptionalDouble focal35Mm(Metadata metadata) {
        for (ExifSubIFDDirectory exif : metadata.getDirectoriesOfType(ExifSubIFDDirectory.class)) {
            double said = number(exif, ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH);
            double found = said > 0 ? said : bySensor(exif);
            if (found > 0 && found <= MediaFacts.MAX_FOCAL_MM) {
                return OptionalDouble.of(found);
            }
        }
        return OptionalDouble.empty();
    }

    /** Not a number where something is missing. */
    private static double bySensor(ExifSubIFDDirectory exif) {
        Integer unit = exif.getInteger(ExifDirectoryBase.TAG_FOCAL_PLANE_RESOLUTION_UNIT);
        double unitMm = unit != null && unit == UNIT_CM ? CM_MM : INCH_MM;
        double wideMm = number(exif, ExifDirectoryBase.TAG_EXIF_IMAGE_WIDTH)
                / number(exif, ExifDirectoryBase.TAG_FOCAL_PLANE_X_RESOLUTION)
                * unitMm;
        double highMm = number(exif, ExifDirectoryBase.TAG_EXIF_IMAGE_HEIGHT)
                / number(exif, ExifDirectoryBase.TAG_FOCAL_PLANE_Y_RESOLUTION)
                * unitMm;
        return number(exif, ExifDirectoryBase.TAG_FOCAL_LENGTH) * FILM_DIAGONAL_MM / Math.hypot(wideMm, highMm);
    }

    private static double number(ExifSubIFDDirectory exif, int tag) {
        Double value = exif.getDoubleObject(tag);
        return value == null ? Double.NaN : value;
    }
}

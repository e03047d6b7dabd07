package quarterlight.rust;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import quarterlight.rust.plane.OutlineShape;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.photo.PhotoId;

/**
 * The traces of one zone put together: those of one photo are united, an overlap counting once with the scale of the
 * trace that came first; of the photos that show the same patch only the one with the smallest uncertainty counts.
 *
 * @param mm2 the area of them all, mm2
 * @param sdMm2 its standard deviation; marks of a shared scale and its unseen tilt move all their traces together
 * @param patchesMm2 the area of each patch that hangs together
 */
record RustPatches(double mm2, double sdMm2, List<Double> patchesMm2) {
    RustPatches {
        patchesMm2 = List.copyOf(patchesMm2);
    }

    /** Puts traces together; order is that of recording. None gives zero. */
    static RustPatches of(List<MeasuredTrace> traces) {
        double mm2 = 0;
        double variance = 0;
        List<Double> patches = new ArrayList<>();
        for (List<MeasuredTrace> photo : byPhoto(withoutOtherViews(traces)).values()) {
            RustPatches united = ofOnePhoto(photo);
            mm2 += united.mm2;
            variance += united.sdMm2 * united.sdMm2;
            patches.addAll(united.patchesMm2);
        }
        return new RustPatches(mm2, Math.sqrt(variance), patches);
    }

    /** Leaves out the traces of a patch on all photos but the one that shows it with the smallest uncertainty. */
    private static List<MeasuredTrace> withoutOtherViews(List<MeasuredTrace> traces) {
        Map<String, List<MeasuredTrace>> byPatch = new LinkedHashMap<>();
        for (MeasuredTrace trace : traces) {
            trace.trace().patch().ifPresent(patch -> byPatch.computeIfAbsent(patch, key -> new ArrayList<>())
                    .add(trace));
        }
        Set<MeasuredTrace> left = new HashSet<>();
        for (List<MeasuredTrace> views : byPatch.values()) {
            PhotoId best = views.get(0).trace().photo();
            double least = Double.POSITIVE_INFINITY;
            for (Map.Entry<PhotoId, List<MeasuredTrace>> view : byPhoto(views).entrySet()) {
                double sd = ofOnePhoto(view.getValue()).sdMm2;
                if (sd < least) {
                    least = sd;
                    best = view.getKey();
                }
            }
            for (MeasuredTrace trace : views) {
                if (!trace.trace().photo().equals(best)) {
                    left.add(trace);
                }
            }
        }
        return traces.stream().filter(trace -> !left.contains(trace)).toList();
    }

    private static Map<PhotoId, List<MeasuredTrace>> byPhoto(List<MeasuredTrace> traces) {
        Map<PhotoId, List<MeasuredTrace>> photos = new LinkedHashMap<>();
        for (MeasuredTrace trace : traces) {
            photos.computeIfAbsent(trace.trace().photo(), key -> new ArrayList<>())
                    .add(trace);
        }
        return photos;
    }

    private static RustPatches ofOnePhoto(List<MeasuredTrace> traces) {
        Geometry taken = OutlineShape.nothing();
        List<Piece> pieces = new ArrayList<>();
        for (MeasuredTrace trace : traces) {
            Geometry rest = OverlayNGRobust.overlay(trace.shape(), taken, OverlayNG.DIFFERENCE);
            pieces.add(new Piece(trace, rest));
            taken = OverlayNGRobust.overlay(taken, trace.shape(), OverlayNG.UNION);
        }
        double mm2 = pieces.stream().mapToDouble(Piece::mm2).sum();
        return new RustPatches(mm2, sd(pieces), patches(taken, pieces));
    }

    /** What a trace adds to those before it. */
    private record Piece(MeasuredTrace trace, Geometry rest) {
        double mm2() {
            return OutlineShape.areaMm2(rest, trace.plane());
        }

        /** The part of the trace's own area that it adds. */
        double share() {
            return trace.area().mm2() > 0 ? mm2() / trace.area().mm2() : 0;
        }

        /** How far the usual error of one coordinate of the scale moves what is added, mm2. */
        double ofScaleMark(int coordinate) {
            return trace.area().markPx() * share() * trace.area().scaleSlopes().get(coordinate);
        }
    }

    private static double sd(List<Piece> pieces) {
        double variance = 0;
        Set<PhotoScale> scales = new LinkedHashSet<>();
        for (Piece piece : pieces) {
            double own = piece.trace.area().markPx()
                    * piece.share()
                    * piece.trace.area().outlineSlope();
            variance += own * own;
            scales.add(piece.trace.trace().scale());
        }
        for (PhotoScale scale : scales) {
            List<Piece> sharing = pieces.stream()
                    .filter(piece -> piece.trace.trace().scale().equals(scale))
                    .toList();
            int coordinates = sharing.get(0).trace.area().scaleSlopes().size();
            for (int c = 0; c < coordinates; c++) {
                double joint = 0;
                for (Piece piece : sharing) {
                    joint += piece.ofScaleMark(c);
                }
                variance += joint * joint;
            }
            double tilt = sharing.stream()
                    .mapToDouble(piece -> piece.share() * piece.trace.area().tiltMm2())
                    .sum();
            variance += tilt * tilt;
        }
        return Math.sqrt(variance);
    }

    private static List<Double> patches(Geometry united, List<Piece> pieces) {
        List<Double> areas = new ArrayList<>();
        for (int i = 0; i < united.getNumGeometries(); i++) {
            Geometry patch = united.getGeometryN(i);
            double mm2 = 0;
            for (Piece piece : pieces) {
                mm2 += mm2Within(piece, patch);
            }
            if (mm2 > 0) {
                areas.add(mm2);
            }
        }
        return areas;
    }

    private static double mm2Within(Piece piece, Geometry patch) {
        double mm2 = 0;
        for (int i = 0; i < piece.rest.getNumGeometries(); i++) {
            Geometry part = piece.rest.getGeometryN(i);
            Point inside = part.getInteriorPoint();
            if (!inside.isEmpty() && patch.intersects(inside)) {
                mm2 += OutlineShape.areaMm2(part, piece.trace.plane());
            }
        }
        return mm2;
    }
}

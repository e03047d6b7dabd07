package quarterlight.rust;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.language.Sentences;
import quarterlight.rust.plane.CoinScale;
import quarterlight.rust.plane.Lens;
import quarterlight.rust.plane.MarkedArea;
import quarterlight.rust.plane.OutlineShape;
import quarterlight.rust.plane.PhotoPlane;
import quarterlight.rust.plane.Shoelace;
import quarterlight.rust.plane.TraceCheck;
import quarterlight.units.Area;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Recorded;

/** One recorded trace, measured if it can be. */
record TraceReading(TraceArea area, Optional<MeasuredTrace> measured) {
    /** An sd above this share of the area is worth a word. Judgement. */
    private static final double WIDE = 0.2;

    /** An outline that reaches from the middle of the rectangle or coin by more than this many of its sizes. Judgement. */
    private static final double FAR = 3;

    static TraceReading of(Recorded<Trace> row, VisitRecord visit, double markPx) {
        Trace trace = row.value();
        Optional<Photo> photo = visit.photo(trace.photo());
        Optional<String> problem = photo.isPresent()
                ? TraceCheck.problem(trace, photo.get().file())
                : Optional.of(say("rust.trace.no-photo"));
        Optional<PhotoPlane> plane = problem.isPresent() ? Optional.empty() : PhotoPlane.of(trace.scale());
        if (plane.isEmpty()) {
            String why = say("rust.trace.not-measured", problem.orElseGet(() -> say("rust.trace.no-scale")));
            return new TraceReading(
                    area(row, Optional.empty(), OptionalDouble.empty(), List.of(why)), Optional.empty());
        }
        Outline outline = drawnBack(trace.outline(), photo.orElseThrow());
        Lens lens = Lens.of(photo.orElseThrow().file(), marks(trace));
        MarkedArea marked = MarkedArea.of(outline, trace.scale(), markPx, lens);
        TraceArea area = area(
                row,
                Optional.of(new Area(marked.mm2())),
                OptionalDouble.of(marked.sdMm2()),
                remarks(outline, trace, marked, lens));
        MeasuredTrace measured = new MeasuredTrace(row.id(), trace, plane.get(), OutlineShape.of(outline), marked);
        return new TraceReading(area, Optional.of(measured));
    }

    private static TraceArea area(
            Recorded<Trace> row, Optional<Area> area, OptionalDouble sdMm2, List<String> remarks) {
        Trace trace = row.value();
        return new TraceArea(row.id(), trace.photo(), trace.kind(), trace.zone(), area, sdMm2, remarks);
    }

    private static List<PixelPoint> marks(Trace trace) {
        List<PixelPoint> marks = new ArrayList<>(trace.outline().shell());
        marks.addAll(trace.scale().marks());
        return marks;
    }

    private static Outline drawnBack(Outline outline, Photo photo) {
        if (photo.file().width().isEmpty() || photo.file().height().isEmpty()) {
            return outline;
        }
        return OutlineShape.drawnBack(
                outline, photo.file().width().getAsInt(), photo.file().height().getAsInt());
    }

    private static List<String> remarks(Outline outline, Trace trace, MarkedArea marked, Lens lens) {
        List<String> remarks = new ArrayList<>();
        TraceCheck.ofStatedSize(trace.scale(), lens).ifPresent(remarks::add);
        if (trace.scale() instanceof KnownLength) {
            remarks.add(say("rust.trace.known-length"));
        } else if (trace.scale() instanceof Coin coin) {
            if (reach(outline, coin.rim(), coinSizePx(coin)) > FAR) {
                remarks.add(say("rust.trace.far-from-coin"));
            }
        } else if (reach(outline, ((KnownRectangle) trace.scale()).corners(), sidePx((KnownRectangle) trace.scale()))
                > FAR) {
            remarks.add(say("rust.trace.far-from-rectangle"));
        }
        if (marked.sdMm2() > WIDE * marked.mm2()) {
            remarks.add(say("rust.trace.wide", Sentences.figure("%.0f", 100 * marked.sdMm2() / marked.mm2())));
        }
        return remarks;
    }

    private static double sidePx(KnownRectangle rectangle) {
        return Math.sqrt(Shoelace.area(rectangle.corners()));
    }

    /** The coin's mean diameter on the photo; a coin that is measured has one. */
    private static double coinSizePx(Coin coin) {
        return CoinScale.ofRim(coin.rim(), coin.diameterMm())
                .map(ellipse -> 2 * Math.sqrt(ellipse.majorPx() * ellipse.minorPx()))
                .orElseThrow();
    }

    /** How far the outline reaches from the middle of the scale's marks, in the scale's own size. */
    private static double reach(Outline outline, List<PixelPoint> marks, double sizePx) {
        double mx = marks.stream().mapToDouble(PixelPoint::x).average().orElse(0);
        double my = marks.stream().mapToDouble(PixelPoint::y).average().orElse(0);
        return outline.shell().stream()
                        .mapToDouble(p -> Math.hypot(p.x() - mx, p.y() - my))
                        .max()
                        .orElse(0)
                / sizePx;
    }
}

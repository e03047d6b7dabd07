package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import quarterlight.car.ZoneId;
import quarterlight.rust.plane.OutlineShape;
import quarterlight.table.ZoneTable;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;

/** United traces against counting grid points by hand. */
class RustPatchesPropertyTest {
    private static final ZoneId HOOD = new ZoneId("hood");

    @Test
    void theUnitedAreaIsThatOfThePointsInsideEachWithTheScaleOfTheFirstTraceThatHoldsThem() {
        for (long seed = 1; seed <= 6; seed++) {
            Random random = new Random(seed);
            List<Trace> traces = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                traces.add(trace(random));
            }
            double united = RustReport.of(TestVisits.coupe(traces, List.of()), ZoneTable.load(), Map.of())
                    .zone(HOOD)
                    .orElseThrow()
                    .rust()
                    .orElseThrow()
                    .mm2();
            double counted = counted(traces);
            assertThat(united).as("seed %d", seed).isCloseTo(counted, within(0.01 * counted));
        }
    }

    /** At one scale the united area is that of the union of the geometry library times the area of a pixel. */
    @Test
    void atOneScaleTheUnitedAreaIsTheLibrarysUnion() {
        for (long seed = 11; seed <= 30; seed++) {
            Random random = new Random(seed);
            PhotoScale scale = new KnownLength(new PixelPoint(0, 0), new PixelPoint(100, 0), 80);
            List<Trace> traces = new ArrayList<>();
            List<Polygon> shapes = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                Trace any = trace(random);
                shapes.add(OutlineShape.of(any.outline()));
                traces.add(new Trace(
                        any.photo(), any.kind(), any.outline(), scale, HOOD, Optional.empty(), Optional.empty()));
            }
            double mm2 = UnaryUnionOp.union(shapes).getArea() * 0.8 * 0.8;
            double united = RustReport.of(TestVisits.coupe(traces, List.of()), ZoneTable.load(), Map.of())
                    .zone(HOOD)
                    .orElseThrow()
                    .rust()
                    .orElseThrow()
                    .mm2();
            assertThat(united).as("seed %d", seed).isCloseTo(mm2, within(1e-6 * mm2));
        }
    }

    private static Trace trace(Random random) {
        double cx = 300 + 250 * random.nextDouble();
        double cy = 300 + 250 * random.nextDouble();
        List<PixelPoint> ring = new ArrayList<>();
        int corners = 3 + random.nextInt(20);
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double r = 60 + 140 * random.nextDouble();
            ring.add(new PixelPoint(cx + r * Math.cos(angle), cy + r * Math.sin(angle)));
        }
        PhotoScale scale =
                new KnownLength(new PixelPoint(0, 0), new PixelPoint(100, 0), 50 + 100 * random.nextDouble());
        TraceKind kind = random.nextBoolean() ? TraceKind.SURFACE : TraceKind.PITTING;
        return new Trace(
                new PhotoId(1), kind, new Outline(ring, List.of()), scale, HOOD, Optional.empty(), Optional.empty());
    }

    private static double counted(List<Trace> traces) {
        List<Polygon> shapes =
                traces.stream().map(trace -> OutlineShape.of(trace.outline())).toList();
        double mm2 = 0;
        double step = 2;
        for (double x = 1; x < 800; x += step) {
            for (double y = 1; y < 800; y += step) {
                Coordinate point = new Coordinate(x, y);
                for (int i = 0; i < shapes.size(); i++) {
                    if (SimplePointInAreaLocator.locate(point, shapes.get(i)) != Location.EXTERIOR) {
                        double mmPerPx = ((KnownLength) traces.get(i).scale()).mm() / 100;
                        mm2 += step * step * mmPerPx * mmPerPx;
                        break;
                    }
                }
            }
        }
        return mm2;
    }
}

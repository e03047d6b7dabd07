package quarterlight.diagram;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quarterlight.car.Body;
import quarterlight.car.BodyStyle;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.DiagramPainter;
import quarterlight.diagram.ink.DiagramScene;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.SheetLayout;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.table.ZoneTable;

/** How long the diagram takes: load, places, scene, redraw of all views at 1920 wide, redraw after a hover; medians of processor time. */
public final class RedrawBench {
    private static final int WARM = 40;
    private static final int RUNS = 41;

    private RedrawBench() {}

    public static void main(String[] args) throws Exception {
        for (BodyStyle style : BodyStyle.values()) {
            run(style, false);
            run(style, true);
        }
    }

    private static void run(BodyStyle style, boolean full) throws Exception {
        Body body = Body.usual(style);
        double load = median(10, () -> DiagramFile.shipped(body));
        BodyDiagram diagram = DiagramFile.shipped(body);
        double placing = median(5, () -> ZonePlaces.of(diagram));
        ZonePlaces places = ZonePlaces.of(diagram);
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        for (Zone zone : ZoneTable.load().zonesOf(body)) {
            int i = looks.size();
            boolean outer = full || zone.finish();
            looks.put(
                    zone.id(),
                    new ZoneLook(
                            outer ? OptionalDouble.of(i % 11 / 10.0) : OptionalDouble.empty(),
                            outer ? Integer.toString(90 + i) : "",
                            outer ? i % 5 : 0,
                            full || zone.structural() ? i % 6 : 0));
        }
        DiagramInk ink = new DiagramInk(looks, Map.of(), Map.of(), List.of(), Optional.empty());
        SheetLayout layout = SheetLayout.ofWidth(diagram, 1920, false);
        TextMeasure measure = TextMeasure.bundled();
        Ramp ramp = Ramp.load();
        double composing =
                median(10, () -> new DiagramScene(diagram, places, layout, ink, InkPalette.LIGHT, ramp, measure));
        DiagramScene scene = new DiagramScene(diagram, places, layout, ink, InkPalette.LIGHT, ramp, measure);
        DiagramPainter painter = new DiagramPainter(scene);
        BufferedImage image = new BufferedImage(1920, (int) Math.ceil(layout.height()), BufferedImage.TYPE_INT_RGB);
        double all = median(RUNS, () -> paint(painter, image, Optional.empty(), Highlight.NONE));
        Highlight before = new Highlight(Set.of(), Optional.of(new ZoneId("door-front-left")));
        Highlight after = new Highlight(Set.of(), Optional.of(new ZoneId("fender-left")));
        double hover = median(RUNS, () -> {
            for (Rectangle region : painter.dirty(before, after)) {
                paint(painter, image, Optional.of(region), after);
            }
            return image;
        });
        System.out.printf(
                "%-12s %-30s load %5.1f ms, places %6.1f ms, scene %6.1f ms, redraw %5.1f ms, hover %5.1f ms%n",
                style.word(),
                full ? "every zone with all textures" : "as after a visit",
                load,
                placing,
                composing,
                all,
                hover);
    }

    private static BufferedImage paint(
            DiagramPainter painter, BufferedImage image, Optional<Rectangle> clip, Highlight highlight) {
        Graphics2D g = image.createGraphics();
        clip.ifPresent(g::clip);
        painter.paint(g, highlight);
        g.dispose();
        return image;
    }

    private interface Work {
        Object run() throws Exception;
    }

    private static double median(int runs, Work work) throws Exception {
        for (int i = 0; i < Math.min(WARM, runs); i++) {
            work.run();
        }
        double[] ms = new double[runs];
        for (int i = 0; i < runs; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Object made = work.run();
            ms[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
            if (made.hashCode() == 42) {
                System.out.print("");
            }
        }
        Arrays.sort(ms);
        return ms[runs / 2];
    }
}

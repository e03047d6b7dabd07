package quarterlight.diagram;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.Surface;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ZoneLook;
import quarterlight.diagram.scene.DiagramPainter;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.table.ZoneTable;

/**
 * How long the diagram takes at 1920 wide: load, places, scene, the first drawing of all views (a picture is then kept), their redraw,
 * and the redraw after a hover and after a selection; median and 95th percentile of processor time, with the load of the machine.
 * <p>Arguments: styles; all if there is none.
 */
public final class RedrawBench {
    private static final int WARM = 40;
    private static final int RUNS = 41;

    private RedrawBench() {}

    public static void main(String[] args) throws Exception {
        for (BodyStyle style : BodyStyle.values()) {
            if (args.length == 0 || List.of(args).contains(style.word())) {
                run(style, false);
                run(style, true);
            }
        }
    }

    private static void run(BodyStyle style, boolean full) throws Exception {
        Body body = Body.usual(style);
        Times load = times(10, () -> DiagramFile.shipped(body));
        BodyDiagram diagram = DiagramFile.shipped(body);
        Times placing = times(3, () -> ZonePlaces.of(diagram.without(Set.of())));
        ZonePlaces places = ZonePlaces.of(diagram);
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        for (Zone zone : ZoneTable.load().zonesOf(body)) {
            int i = looks.size();
            boolean outer = full || zone.finish();
            looks.put(
                    zone.id(),
                    new ZoneLook(
                            outer ? OptionalInt.of(i % 7 - 2) : OptionalInt.empty(),
                            outer ? Integer.toString(90 + i) : "",
                            outer ? i % 5 : 0,
                            full || zone.structural() ? i % 6 : 0,
                            Surface.PLAIN));
        }
        DiagramInk ink = new DiagramInk(looks, Map.of(), Map.of(), List.of(), Optional.empty());
        SheetLayout layout = SheetLayout.fit(diagram, 1920, 1200, ink.legend(), TextMeasure.bundled());
        TextMeasure measure = TextMeasure.bundled();
        Ramp ramp = Ramp.load();
        Times composing =
                times(5, () -> new DiagramScene(diagram, places, layout, ink, InkPalette.LIGHT, ramp, measure));
        DiagramScene scene = new DiagramScene(diagram, places, layout, ink, InkPalette.LIGHT, ramp, measure);
        DiagramPainter painter = new DiagramPainter(scene);
        BufferedImage image = new BufferedImage(1920, (int) Math.ceil(layout.height()), BufferedImage.TYPE_INT_RGB);
        Times first = times(RUNS, () -> paint(new DiagramPainter(scene), image, Optional.empty(), Highlight.NONE));
        Times all = times(RUNS, () -> paint(painter, image, Optional.empty(), Highlight.NONE));
        Highlight before = new Highlight(Set.of(), Optional.of(new ZoneId("door-front-left")));
        Highlight after = new Highlight(Set.of(), Optional.of(new ZoneId("fender-left")));
        Highlight chosen = new Highlight(Set.of(new ZoneId("fender-left")), Optional.of(new ZoneId("fender-left")));
        Times hover = times(RUNS, () -> repaint(painter, image, before, after));
        Times select = times(RUNS, () -> repaint(painter, image, after, chosen));
        System.out.printf(
                Locale.ROOT,
                "%-12s %-30s load %s, places %s, scene %s, first drawing %s, redraw %s, hover %s, select %s; machine"
                        + " load %.1f%n",
                style.word(),
                full ? "every zone with all textures" : "as after a visit",
                load,
                placing,
                composing,
                first,
                all,
                hover,
                select,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static BufferedImage repaint(
            DiagramPainter painter, BufferedImage image, Highlight before, Highlight after) {
        for (Rectangle region : painter.dirty(before, after)) {
            paint(painter, image, Optional.of(region), after);
        }
        return image;
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

    /** Milliseconds. */
    private record Times(double median, double most95) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.1f (95 %%: %.1f) ms", median, most95);
        }
    }

    private static Times times(int runs, Work work) throws Exception {
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
        return new Times(ms[runs / 2], ms[(int) Math.ceil(0.95 * runs) - 1]);
    }
}

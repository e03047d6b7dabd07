package quarterlight.diagram.ink;

import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.io.File;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.imageio.ImageIO;
import quarterlight.car.FinishProfile;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramCheck;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.scene.DiagramPainter;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.DiagramSvg;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.finish.scale.FactoryRange;
import quarterlight.finish.scale.ThicknessSteps;
import quarterlight.page.FindingsInk;
import quarterlight.page.ThicknessRamp;
import quarterlight.table.ZoneTable;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.pin.ViewPoint;

/** Draws pictures of the diagrams with invented values into a folder, for looking at: {@code LookAtDiagram FOLDER [STYLE]}. */
final class LookAtDiagram {
    private LookAtDiagram() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        BodyStyle style = args.length > 1 ? BodyStyle.valueOf(args[1]) : BodyStyle.COUPE;
        ZoneCatalog catalog = ZoneTable.load();
        DiagramFile file = DiagramFile.shipped(style);
        DiagramCheck.check(file, catalog).forEach(finding -> System.out.println(finding.text()));
        BodyDiagram diagram = file.of(Body.usual(style));
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        ZonePlaces places = ZonePlaces.of(diagram);
        System.out.println("places "
                + (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000 + " ms");
        TextMeasure measure = TextMeasure.bundled();
        Ramp ramp = Ramp.load();
        for (double[] room : new double[][] {{1920, 1000}, {1100, 720}, {800, 540}, {540, 780}}) {
            DiagramInk values = values(diagram, catalog);
            SheetLayout layout = SheetLayout.fit(diagram, room[0], room[1], values.legend(), measure);
            String size = (int) room[0] + "x" + (int) room[1];
            start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            DiagramScene scene = new DiagramScene(diagram, places, layout, values, InkPalette.LIGHT, ramp, measure);
            System.out.println(
                    "scene " + (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000
                            + " ms, no room for " + scene.unlabeled());
            Files.writeString(folder.resolve(size + ".svg"), DiagramSvg.document(scene, "Diagram"));
            Highlight highlight = new Highlight(Set.of(new ZoneId("door-front-left")), Optional.of(new ZoneId("roof")));
            BufferedImage light = paint(scene, highlight);
            ImageIO.write(light, "png", new File(folder.toFile(), size + "-light.png"));
            ImageIO.write(
                    new ColorConvertOp(ColorSpace.getInstance(ColorSpace.CS_GRAY), null).filter(light, null),
                    "png",
                    new File(folder.toFile(), size + "-gray.png"));
            ImageIO.write(
                    paint(new DiagramScene(diagram, places, layout, values, InkPalette.DARK, ramp, measure), highlight),
                    "png",
                    new File(folder.toFile(), size + "-dark.png"));
            DiagramScene named = DiagramScene.fitted(
                    diagram, places, room[0], room[1], false, names(diagram, catalog), InkPalette.LIGHT, ramp, measure);
            System.out.println("no room for the names of " + named.unlabeled());
            ImageIO.write(paint(named, Highlight.NONE), "png", new File(folder.toFile(), size + "-names.png"));
        }
    }

    private static DiagramInk values(BodyDiagram diagram, ZoneCatalog catalog) {
        Map<ZoneId, ZoneLook> looks = new HashMap<>();
        Map<ZoneId, String> names = new HashMap<>();
        List<PinMark> pins = new ArrayList<>();
        ThicknessSteps steps = ThicknessSteps.of(110, FactoryRange.of(FinishProfile.MODERN));
        double[] um = {112, 104, 131, 180, 98, 460, 118, 61, 240, 109, 1200, 75, 121};
        List<LetterMark> letters = new ArrayList<>();
        int i = 0;
        for (Zone zone : catalog.zonesOf(diagram.body())) {
            names.put(zone.id(), zone.label());
            boolean outer = zone.finish();
            double value = um[i % um.length];
            int step = steps.of(value);
            int hatch = outer && step >= 3 ? 4 : outer && step >= 1 ? 2 : 0;
            int stipple = zone.structural() ? i % 6 : 0;
            Surface surface = zone.structural() && i % 9 == 4 ? Surface.THROUGH : Surface.PLAIN;
            if (outer || stipple > 0 || surface != Surface.PLAIN) {
                looks.put(
                        zone.id(),
                        new ZoneLook(
                                outer ? OptionalInt.of(step) : OptionalInt.empty(),
                                outer ? Long.toString(Math.round(value)) : "",
                                hatch,
                                stipple,
                                surface));
            }
            if (surface == Surface.THROUGH || step >= 3 && outer) {
                letters.add(new LetterMark(
                        String.valueOf((char) ('A' + letters.size() % 26)), zone.id(), surface == Surface.THROUGH));
            }
            i++;
        }
        for (int n = 1; n <= 14; n++) {
            pins.add(new PinMark(
                    Integer.toString(n),
                    new ViewPoint(View.LEFT, n < 7 ? 0.72 : n / 16.0, n < 7 ? 0.62 : 0.4 + n % 3 * 0.1)));
        }
        pins.add(new PinMark("115", new ViewPoint(View.UNDER, 0.3, 0.4)));
        Legend legend = FindingsInk.legend(looks, pins, letters, steps, new ThicknessRamp(ThicknessUnit.UM, 25, 4));
        return new DiagramInk(looks, Map.of(), names, pins, letters, Optional.of(legend));
    }

    private static DiagramInk names(BodyDiagram diagram, ZoneCatalog catalog) {
        Map<ZoneId, String> names = new HashMap<>();
        catalog.zonesOf(diagram.body()).forEach(zone -> names.put(zone.id(), zone.label()));
        return new DiagramInk(Map.of(), names, names, List.of(), Optional.empty());
    }

    private static BufferedImage paint(DiagramScene scene, Highlight highlight) {
        BufferedImage image = new BufferedImage(
                (int) scene.layout().width(), (int) scene.layout().height(), BufferedImage.TYPE_INT_RGB);
        DiagramPainter painter = new DiagramPainter(scene);
        for (int i = 0; i < 60; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Graphics2D g = image.createGraphics();
            painter.paint(g, highlight);
            g.dispose();
            if (i == 59) {
                System.out.println("paint "
                        + (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000 + " ms");
            }
        }
        return image;
    }
}

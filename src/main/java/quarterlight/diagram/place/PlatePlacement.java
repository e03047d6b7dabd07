package quarterlight.diagram.place;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * Places the name plates of selected zones: above the largest outline of the zone, else below or beside it, or at another of its outlines,
 * wherever no value, letter, title or other plate stands. Where nothing near is free a plate stands above all the same. Pure.
 */
public final class PlatePlacement {
    private static final double STEP_IN = 5;
    /** How far a plate may stand off its zone, px: further away, nobody would take it for its name. */
    private static final double[] OFF = {4, 10, 18, 27, 37};

    /**
     * A zone that wants a plate.
     *
     * @param outlines boxes of its outlines on the sheet, px; at least one
     */
    public record Wish(ZoneId zone, List<Rectangle2D> outlines, double width, double height) {
        public Wish {
            outlines = outlines.stream()
                    .sorted(Comparator.comparingDouble((Rectangle2D r) -> -r.getWidth() * r.getHeight()))
                    .toList();
        }
    }

    private final Rectangle2D sheet;

    private PlatePlacement(Rectangle2D sheet) {
        this.sheet = sheet;
    }

    /**
     * @param taken where no plate should lie
     * @param sheet that every plate stands on
     */
    public static Map<ZoneId, Rectangle2D> place(List<Wish> wishes, List<Rectangle2D> taken, Rectangle2D sheet) {
        PlatePlacement placement = new PlatePlacement(sheet);
        List<LabelPlacement.Wish> wanted = wishes.stream().map(placement::spots).toList();
        Map<ZoneId, Rectangle2D> plates = new HashMap<>();
        LabelPlacement.place(wanted, nowhereElse(), standing(taken))
                .forEach(plate -> plates.put(plate.zone(), plate.box()));
        wanted.forEach(wish ->
                plates.computeIfAbsent(wish.zone(), zone -> wish.at(wish.spots().get(0))));
        return plates;
    }

    private static LabelPlacement.Room nowhereElse() {
        return new LabelPlacement.Room(new Rectangle2D.Double(), new Rectangle2D.Double(), r -> false, List.of());
    }

    private static List<LabelPlacement.Placed> standing(List<Rectangle2D> taken) {
        ZoneId none = new ZoneId("taken");
        return taken.stream()
                .map(r -> new LabelPlacement.Placed(
                        none, "", r, new Point2D.Double(r.getCenterX(), r.getCenterY()), true))
                .toList();
    }

    private LabelPlacement.Wish spots(Wish wish) {
        List<Point2D> spots = new ArrayList<>();
        wish.outlines().forEach(box -> around(box, wish, spots));
        return new LabelPlacement.Wish(
                wish.zone(),
                "",
                spots.get(0),
                wish.width(),
                wish.height(),
                spots,
                sheet::contains,
                Optional.empty(),
                false);
    }

    /** Middles of plates about an outline, nearest first; the first stands on the sheet in any case. */
    private void around(Rectangle2D box, Wish wish, List<Point2D> spots) {
        double half = wish.width() / 2;
        double[] across = {
            onSheet(box.getCenterX(), half),
            onSheet(box.getMinX() + STEP_IN - half, half),
            onSheet(box.getMaxX() - STEP_IN + half, half)
        };
        boolean isRoomAbove = box.getMinY() - OFF[0] - wish.height() >= sheet.getMinY();
        for (double off : OFF) {
            double above = box.getMinY() - off - wish.height() / 2;
            double below = box.getMaxY() + off + wish.height() / 2;
            for (double x : across) {
                spots.add(new Point2D.Double(x, isRoomAbove ? above : below));
                spots.add(new Point2D.Double(x, isRoomAbove ? below : above));
            }
            spots.add(new Point2D.Double(box.getMaxX() + off + half, box.getCenterY()));
            spots.add(new Point2D.Double(box.getMinX() - off - half, box.getCenterY()));
        }
    }

    private double onSheet(double center, double half) {
        return Math.max(sheet.getMinX() + 2 + half, Math.min(center, sheet.getMaxX() - half - 2));
    }
}

package quarterlight.page.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.body.DriveSide;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;

/**
 * Where the readings of each outer panel are written: into the panel itself where boxes for three spots fit into what can be seen of it, else
 * into a numbered row beside the view. Every panel has exactly one place. Immutable.
 *
 * @param inside panels that hold their boxes
 * @param beside panels too small for them, in the order of their numbers, from 1
 */
record ReadingSlots(List<Inside> inside, List<Beside> beside) {
    /** Spots asked of a panel by the usual coverage. */
    static final int SPOTS = 3;
    /** Height of the words above the boxes, mm on paper. */
    static final double WORDS_MM = 3;

    static final double GAP_MM = 0.7;

    /** Sizes of a box that a pencil can write a reading into, mm on paper, the most comfortable first. */
    private static final double[][] BOXES = {{12, 7.5}, {11, 7}, {10, 6.5}, {9, 6}, {9, 5.5}};

    private static final List<View> OUTSIDE = List.of(View.LEFT, View.RIGHT, View.TOP, View.FRONT, View.REAR);
    private static final int STEPS = 36;
    /** Free rim round the boxes, mm on paper. */
    private static final double RIM_MM = 0.5;

    /**
     * Boxes in a panel.
     *
     * @param boxes in mm of the view
     * @param words whether its name stands above the boxes
     */
    record Inside(Zone zone, View view, List<Rectangle2D> boxes, boolean words) {
        Inside {
            boxes = List.copyOf(boxes);
        }
    }

    /** A numbered mark on a panel, in mm of the view. */
    record Beside(Zone zone, View view, int number, double xMm, double yMm) {}

    ReadingSlots {
        inside = List.copyOf(inside);
        beside = List.copyOf(beside);
    }

    /**
     * @param panels the outer panels of the car
     * @param scale mm on paper for each mm of a view
     */
    static ReadingSlots of(List<Zone> panels, BodyDiagram diagram, ZonePlaces places, double scale) {
        Objects.requireNonNull(panels, "panels");
        List<Inside> inside = new ArrayList<>();
        List<Beside> small = new ArrayList<>();
        for (Zone zone : panels) {
            Optional<Inside> fitting = inside(zone, diagram, places, scale);
            fitting.ifPresent(inside::add);
            if (fitting.isEmpty()) {
                mark(zone, diagram, places).ifPresent(small::add);
            }
        }
        List<Beside> beside = new ArrayList<>();
        for (View view : OUTSIDE) {
            small.stream()
                    .filter(mark -> mark.view() == view)
                    .forEach(mark ->
                            beside.add(new Beside(mark.zone(), view, beside.size() + 1, mark.xMm(), mark.yMm())));
        }
        return new ReadingSlots(inside, beside);
    }

    private static Optional<Inside> inside(Zone zone, BodyDiagram diagram, ZonePlaces places, double scale) {
        for (double[] box : BOXES) {
            for (View view : OUTSIDE) {
                Optional<ZonePlaces.Place> place =
                        diagram.view(view).flatMap(drawing -> places.place(drawing.view(), zone.id()));
                if (place.isPresent()) {
                    for (boolean words : new boolean[] {true, false}) {
                        for (int across : new int[] {SPOTS, 2, 1}) {
                            Optional<Inside> found = fit(zone, view, place.get(), box, across, words, scale);
                            if (found.isPresent()) {
                                return found;
                            }
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** The block of boxes as near to the middle of the panel as it fits. */
    private static Optional<Inside> fit(
            Zone zone, View view, ZonePlaces.Place place, double[] box, int across, boolean words, double scale) {
        int down = (SPOTS + across - 1) / across;
        double wide = (across * box[0] + (across - 1) * GAP_MM + 2 * RIM_MM) / scale;
        double high = (down * box[1] + (down - 1) * GAP_MM + 2 * RIM_MM + (words ? WORDS_MM : 0)) / scale;
        Rectangle2D room = place.seen().box();
        Rectangle2D best = null;
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i <= STEPS && wide <= room.getWidth() && high <= room.getHeight(); i++) {
            for (int j = 0; j <= STEPS; j++) {
                double x = room.getX() + (room.getWidth() - wide) * i / STEPS;
                double y = room.getY() + (room.getHeight() - high) * j / STEPS;
                double far = Math.hypot(x + wide / 2 - place.xMm(), y + high / 2 - place.yMm());
                Rectangle2D block = new Rectangle2D.Double(x, y, wide, high);
                if (far < nearest && place.seen().covers(block)) {
                    best = block;
                    nearest = far;
                }
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        List<Rectangle2D> boxes = new ArrayList<>();
        double top = best.getY() + (RIM_MM + (words ? WORDS_MM : 0)) / scale;
        for (int n = 0; n < SPOTS; n++) {
            int line = n / across;
            boxes.add(new Rectangle2D.Double(
                    best.getX() + (RIM_MM + n % across * (box[0] + GAP_MM)) / scale,
                    top + line * (box[1] + GAP_MM) / scale,
                    box[0] / scale,
                    box[1] / scale));
        }
        return Optional.of(new Inside(zone, view, boxes, words));
    }

    /** On the view of its own side where that shows the panel, else where most of it can be seen. */
    private static Optional<Beside> mark(Zone zone, BodyDiagram diagram, ZonePlaces places) {
        Optional<View> own = zone.side().map(side -> side == DriveSide.LEFT ? View.LEFT : View.RIGHT);
        Optional<Beside> best = Optional.empty();
        double largest = -1;
        for (View view : OUTSIDE) {
            Optional<ZonePlaces.Place> place =
                    diagram.view(view).map(ViewDrawing::view).flatMap(shown -> places.place(shown, zone.id()));
            double weight = place.map(ZonePlaces.Place::radiusMm).orElse(-1.0);
            boolean aside = view == View.LEFT || view == View.RIGHT;
            if (weight >= 0 && own.equals(Optional.of(view))) {
                weight = Double.MAX_VALUE;
            } else if (weight >= 0 && aside) {
                weight = 0;
            }
            if (weight > largest) {
                largest = weight;
                best = place.map(at -> new Beside(zone, view, 0, at.xMm(), at.yMm()));
            }
        }
        return best;
    }

    /** The numbered panels of some views. */
    List<Beside> beside(View... views) {
        return beside.stream()
                .filter(mark -> List.of(views).contains(mark.view()))
                .toList();
    }
}

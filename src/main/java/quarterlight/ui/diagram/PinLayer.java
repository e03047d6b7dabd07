package quarterlight.ui.diagram;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.View;
import quarterlight.diagram.place.PinPlacement;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.page.PinKey;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.visit.photo.PhotoId;

/**
 * The pins over the diagram: pins at one place are one pile that tells how many, and opens as a fan of numbered discs where the pointer
 * or the selection is. Laid out without the drawing beneath, so that a fresh pin shows at once. Event thread only.
 */
final class PinLayer {
    private static final double PLACE_PX = 16;
    private static final double DISC = PinPlacement.DISC;
    private static final double RING = 3;

    /** Pins at one place. */
    private record Pile(Point2D tip, Point2D center, List<PinKey.Entry> entries) {
        boolean isOne() {
            return entries.size() == 1;
        }

        /** The number of its only pin, or how many there are, which reads like no number. */
        String text() {
            return isOne() ? entries.get(0).number() : "x" + entries.size();
        }
    }

    /** What of a pile is painted. */
    private record Sight(Point2D tip, Point2D center, String text, boolean one) {}

    /** One disc of an open pile. */
    private record Disc(PinKey.Entry entry, Point2D tip, Point2D center) {}

    /** Where the grid of places puts a point. */
    private record Place(View view, int column, int row) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Place key && key.view == view && key.column == column && key.row == row;
        }

        @Override
        public int hashCode() {
            return Objects.hash(view, column, row);
        }
    }

    private List<PinKey.Entry> entries = List.of();
    private Optional<DiagramScene> scene = Optional.empty();
    private List<Pile> piles = List.of();
    private List<Disc> fan = List.of();
    private Optional<Pile> open = Optional.empty();

    /** @return where the layer must be painted again */
    List<Rectangle> pins(List<PinKey.Entry> fresh) {
        Set<Sight> before = sights();
        entries = fresh;
        arrange();
        Set<Sight> after = sights();
        return Stream.concat(
                        before.stream().filter(sight -> !after.contains(sight)),
                        after.stream().filter(sight -> !before.contains(sight)))
                .map(sight -> extent(sight.tip(), sight.center()))
                .toList();
    }

    private Set<Sight> sights() {
        return piles.stream()
                .map(pile -> new Sight(pile.tip(), pile.center(), pile.text(), pile.isOne()))
                .collect(Collectors.toSet());
    }

    /** What the piles of these photos cover, with the rings round them. */
    List<Rectangle> around(Set<PhotoId> photos) {
        return piles.stream()
                .filter(pile -> pile.entries().stream().anyMatch(entry -> photos.contains(entry.photo())))
                .map(pile -> extent(pile.tip(), pile.center()))
                .toList();
    }

    boolean isOpen() {
        return open.isPresent();
    }

    private static Rectangle extent(Point2D tip, Point2D center) {
        Rectangle2D r = around(center);
        r.add(tip);
        Rectangle grown = r.getBounds();
        grown.grow((int) RING + 5, (int) RING + 5);
        return grown;
    }

    void scene(DiagramScene fresh) {
        piles = List.of();
        scene = Optional.of(fresh);
        arrange();
    }

    private void arrange() {
        if (scene.isEmpty()) {
            return;
        }
        Map<Place, List<PinKey.Entry>> places = new LinkedHashMap<>();
        Map<Place, Point2D> tips = new LinkedHashMap<>();
        for (PinKey.Entry entry : entries) {
            entry.point().ifPresent(point -> scene.get().px(point).ifPresent(px -> {
                Place place = new Place(point.view(), (int) (px.getX() / PLACE_PX), (int) (px.getY() / PLACE_PX));
                places.computeIfAbsent(place, key -> new ArrayList<>()).add(entry);
                tips.putIfAbsent(place, px);
            }));
        }
        Map<Place, Point2D> centers = centers(tips);
        List<Pile> fresh = new ArrayList<>();
        places.forEach((place, pins) -> fresh.add(new Pile(tips.get(place), centers.get(place), List.copyOf(pins))));
        Optional<Point2D> was = open.map(Pile::tip);
        piles = List.copyOf(fresh);
        open(piles.stream().filter(pile -> was.equals(Optional.of(pile.tip()))).findFirst());
    }

    /**
     * Where the discs of these points go: within the room of their view, as on a page; where that is full, anywhere on the sheet. One that has
     * its place keeps it, only new ones look for theirs.
     */
    private Map<Place, Point2D> centers(Map<Place, Point2D> tips) {
        SheetLayout layout = scene.orElseThrow().layout();
        Map<Point2D, Point2D> placed = new HashMap<>();
        piles.forEach(pile -> placed.put(pile.tip(), pile.center()));
        placed.keySet().retainAll(Set.copyOf(tips.values()));
        List<Rectangle2D> taken = taken();
        placed.values().stream().map(PinLayer::around).forEach(taken::add);
        Stream<Optional<View>> rooms =
                Stream.of(View.values()).filter(layout.cells()::containsKey).map(Optional::of);
        Stream.concat(rooms, Stream.of(Optional.<View>empty())).forEach(view -> {
            List<PinPlacement.Wish> wishes = new ArrayList<>();
            tips.forEach((place, tip) -> {
                if (view.orElse(place.view()) == place.view() && !placed.containsKey(tip)) {
                    wishes.add(new PinPlacement.Wish(wishes.size(), tip));
                }
            });
            Rectangle2D room = view.map(layout.cells()::get).orElse(sheet());
            PinPlacement.place(wishes, room, taken).forEach(disc -> {
                placed.put(disc.tip(), disc.center());
                taken.add(around(disc.center()));
            });
        });
        Map<Place, Point2D> centers = new HashMap<>();
        tips.forEach((place, tip) -> centers.put(place, placed.getOrDefault(tip, tip)));
        return centers;
    }

    private Rectangle2D sheet() {
        SheetLayout layout = scene.orElseThrow().layout();
        return new Rectangle2D.Double(0, 0, layout.width(), layout.height());
    }

    /** What no disc may cover: values, letters, titles, the legend and the key. */
    private List<Rectangle2D> taken() {
        List<Rectangle2D> taken = new ArrayList<>(scene.orElseThrow().taken());
        scene.get().layout().legend().ifPresent(taken::add);
        scene.get().layout().key().ifPresent(taken::add);
        return taken;
    }

    /** What the discs and counts cover that are painted. */
    List<Rectangle2D> covered() {
        return Stream.concat(piles.stream().map(Pile::center), fan.stream().map(Disc::center))
                .map(PinLayer::around)
                .toList();
    }

    private static Rectangle2D around(Point2D center) {
        return new Rectangle2D.Double(center.getX() - DISC / 2, center.getY() - DISC / 2, DISC, DISC);
    }

    private void open(Optional<Pile> pile) {
        open = pile.filter(p -> !p.isOne());
        fan = open.map(this::fanned).orElse(List.of());
    }

    /** Discs on rings round the pile, nearest ring first, where they cover neither a value nor another pile. */
    private List<Disc> fanned(Pile pile) {
        List<Disc> discs = new ArrayList<>();
        Rectangle2D frame = sheet();
        List<Rectangle2D> taken = taken();
        piles.forEach(other -> taken.add(around(other.center())));
        double radius = 30;
        while (discs.size() < pile.entries().size()) {
            int seats = (int) (2 * Math.PI * radius / (DISC + 3));
            for (int seat = 0; seat < seats && discs.size() < pile.entries().size(); seat++) {
                double angle = -Math.PI / 2 + 2 * Math.PI * seat / seats;
                Point2D center = new Point2D.Double(
                        pile.center().getX() + radius * Math.cos(angle),
                        pile.center().getY() + radius * Math.sin(angle));
                Rectangle2D disc = around(center);
                if (frame.contains(disc) && taken.stream().noneMatch(disc::intersects)) {
                    discs.add(new Disc(pile.entries().get(discs.size()), pile.center(), center));
                }
            }
            radius += DISC + 3;
            if (radius > 2 * Math.max(frame.getWidth(), frame.getHeight())) {
                break;
            }
        }
        return List.copyOf(discs);
    }

    /** The pointer has moved; true if the layer must be painted again. */
    boolean pointer(Point2D p) {
        Optional<Pile> under = piles.stream()
                .filter(pile -> pile.center().distance(p) <= DISC / 2 + 2)
                .findFirst();
        if (under.isPresent()) {
            return opened(under);
        }
        boolean within = open.isPresent() && bounds(open.get()).contains(p);
        return !within && opened(Optional.empty());
    }

    private boolean opened(Optional<Pile> pile) {
        boolean other = !pile.filter(p -> !p.isOne()).equals(open);
        if (other) {
            open(pile);
        }
        return other;
    }

    private Rectangle bounds(Pile pile) {
        Rectangle2D r =
                new Rectangle2D.Double(pile.center().getX(), pile.center().getY(), 0, 0);
        fan.forEach(disc -> r.add(disc.center()));
        return new Rectangle(
                (int) r.getX() - 16, (int) r.getY() - 16, (int) r.getWidth() + 32, (int) r.getHeight() + 32);
    }

    /** Opens the largest pile of a zone, by its name; true if the layer must be painted again. */
    boolean openZone(Optional<String> zone) {
        return opened(zone.flatMap(name -> piles.stream()
                .filter(pile -> pile.entries().get(0).zone().equals(name))
                .max(java.util.Comparator.comparingInt(pile -> pile.entries().size()))));
    }

    /** The pin whose own disc lies under a point; a pile of several has none. */
    Optional<PinKey.Entry> pinAt(Point2D p) {
        return fan.stream()
                .filter(disc -> disc.center().distance(p) <= DISC / 2)
                .map(Disc::entry)
                .findFirst()
                .or(() -> piles.stream()
                        .filter(pile -> pile.isOne() && pile.center().distance(p) <= DISC / 2)
                        .map(pile -> pile.entries().get(0))
                        .findFirst());
    }

    /** The photos of the pile under a point. */
    List<PhotoId> pileAt(Point2D p) {
        return piles.stream()
                .filter(pile -> pile.center().distance(p) <= DISC / 2)
                .findFirst()
                .map(pile -> pile.entries().stream()
                        .map(PinKey.Entry::photo)
                        .distinct()
                        .toList())
                .orElse(List.of());
    }

    /** Draws what the clip shows: a picture of all pins would have to be sent to the screen anew after each of them. */
    void paint(Graphics2D g, Set<PhotoId> marked) {
        Palette p = Look.palette();
        if (scene.isEmpty()) {
            return;
        }
        smooth(g);
        Rectangle clip = g.getClipBounds();
        piles.stream()
                .filter(pile -> clip == null || clip.intersects(extent(pile.tip(), pile.center())))
                .forEach(pile -> pile(g, p, pile));
        piles.stream()
                .filter(pile -> pile.entries().stream().anyMatch(entry -> marked.contains(entry.photo())))
                .forEach(pile -> ring(g, p, pile.center()));
        open.ifPresent(pile -> {
            fan.forEach(disc -> leader(g, p, disc.tip(), disc.center()));
            count(g, p, pile);
            fan.forEach(disc -> disc(
                    g,
                    p,
                    disc.center(),
                    disc.entry().number(),
                    marked.contains(disc.entry().photo())));
        });
    }

    private void pile(Graphics2D g, Palette p, Pile pile) {
        leader(g, p, pile.tip(), pile.center());
        if (pile.isOne()) {
            disc(g, p, pile.center(), pile.text(), false);
        } else {
            count(g, p, pile);
        }
    }

    /** How many pins lie here: a frame with square corners, so that nobody takes it for the number of a photo. */
    private static void count(Graphics2D g, Palette p, Pile pile) {
        Rectangle2D box = around(pile.center());
        g.setColor(p.sheet());
        g.fill(box);
        g.setColor(p.accent());
        g.setStroke(new BasicStroke(1.5f));
        g.draw(new Rectangle2D.Double(box.getX() + 1, box.getY() + 1, DISC - 2, DISC - 2));
        text(g, pile.center(), pile.text());
    }

    private static void text(Graphics2D g, Point2D center, String text) {
        Font base = javax.swing.UIManager.getFont("defaultFont");
        g.setFont(base.deriveFont(Font.BOLD, text.length() > 2 ? 9f : 11f));
        double width = g.getFontMetrics().stringWidth(text);
        g.drawString(text, (float) (center.getX() - width / 2), (float)
                (center.getY() + g.getFont().getSize2D() * 0.35));
    }

    private static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }

    private static void ring(Graphics2D g, Palette p, Point2D center) {
        double out = DISC / 2 + RING;
        g.setColor(p.ink());
        g.setStroke(new BasicStroke(2));
        g.draw(new Ellipse2D.Double(center.getX() - out, center.getY() - out, 2 * out, 2 * out));
    }

    private void leader(Graphics2D g, Palette p, Point2D tip, Point2D center) {
        g.setColor(p.accent());
        g.setStroke(new BasicStroke(1));
        Optional<Point2D> end = scene.flatMap(drawn -> drawn.visibleTip(tip, center));
        end.ifPresent(point -> g.draw(new Line2D.Double(point, center)));
        end.filter(tip::equals).ifPresent(point -> g.fill(new Ellipse2D.Double(tip.getX() - 2, tip.getY() - 2, 4, 4)));
    }

    private static void disc(Graphics2D g, Palette p, Point2D center, String text, boolean ringed) {
        double r = DISC / 2;
        Ellipse2D disc = new Ellipse2D.Double(center.getX() - r, center.getY() - r, DISC, DISC);
        g.setColor(p.accent());
        g.fill(disc);
        g.setColor(p.sheet());
        g.setStroke(new BasicStroke(1));
        g.draw(disc);
        if (ringed) {
            ring(g, p, center);
        }
        g.setColor(p.onAccent());
        text(g, center, text);
    }
}

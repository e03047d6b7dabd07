package quarterlight.diagram.scene;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.PinMark;
import quarterlight.diagram.place.LabelPlacement;
import quarterlight.diagram.place.PinPlacement;

/**
 * One view of a scene.
 *
 * @param drawn everything, in drawing order; its title first
 * @param labels where values and names stand
 * @param letters where the squares of matters stand
 * @param marks the pins of this view
 * @param pins where their discs stand, each by the place of its mark in {@code marks}
 * @param taken what values, letters and the title take up
 * @param outlines of each zone, px
 * @param unlabeled zones whose label found no place
 * @param numbered zones that bear a number of the key in place of their words
 */
record ViewScene(
        View view,
        String title,
        Rectangle2D cell,
        List<DrawnItem> drawn,
        List<LabelPlacement.Placed> labels,
        List<LabelPlacement.Placed> letters,
        List<PinMark> marks,
        List<PinPlacement.Placed> pins,
        List<Rectangle2D> taken,
        Map<ZoneId, List<Shape>> outlines,
        Set<ZoneId> unlabeled,
        Set<ZoneId> numbered) {
    ViewScene {
        drawn = List.copyOf(drawn);
        labels = List.copyOf(labels);
        letters = List.copyOf(letters);
        marks = List.copyOf(marks);
        pins = List.copyOf(pins);
        taken = List.copyOf(taken);
        outlines = Map.copyOf(outlines);
        unlabeled = Set.copyOf(unlabeled);
        numbered = Set.copyOf(numbered);
    }

    /** Numbers of the pins that found no room for a disc. */
    List<String> undrawn() {
        return java.util.stream.IntStream.range(0, marks.size())
                .filter(i -> pins.stream().noneMatch(pin -> pin.number() == i))
                .mapToObj(i -> marks.get(i).number())
                .toList();
    }
}

package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import quarterlight.diagram.ink.ColorContrast;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.place.LabelPlacement;

/** Draws the letters of matters: small squares, those of grave matters filled. */
final class LetterDrawing {
    /** Side of a square, px. */
    static final double SIDE = 15;

    private static final double SIZE = 11;

    private LetterDrawing() {}

    /** One square with its letter about a point. */
    static List<DrawnItem> square(
            String letter, boolean grave, double centerX, double centerY, InkPalette palette, TextMeasure measure) {
        Rectangle2D square = new Rectangle2D.Double(centerX - SIDE / 2, centerY - SIDE / 2, SIDE, SIDE);
        Color fill = grave ? palette.grave() : palette.ground();
        Color edge = grave ? palette.grave() : palette.ink();
        double width = measure.width(letter, SIZE, true);
        return List.of(
                DrawnItem.Filled.of(DrawnItem.grown(square, 1), palette.ground()),
                DrawnItem.Filled.of(square, fill),
                DrawnItem.Stroked.of(square, edge, 1.2),
                new DrawnItem.Words(
                        letter,
                        centerX - width / 2,
                        centerY + 0.35 * SIZE,
                        SIZE,
                        true,
                        ColorContrast.readable(fill, palette.ground(), palette.ink()),
                        width));
    }

    /** Placed letters with their leaders. */
    static List<DrawnItem> draw(
            List<LabelPlacement.Placed> placed, List<LetterMark> marks, InkPalette palette, TextMeasure measure) {
        List<DrawnItem> drawn = new ArrayList<>();
        placed.forEach(letter -> drawn.addAll(SceneLabels.leader(letter, palette.ink())));
        for (LabelPlacement.Placed letter : placed) {
            boolean grave = marks.stream()
                    .anyMatch(mark -> mark.grave()
                            && mark.letter().equals(letter.text())
                            && mark.zone().equals(letter.zone()));
            Rectangle2D box = letter.box();
            drawn.addAll(square(letter.text(), grave, box.getCenterX(), box.getCenterY(), palette, measure));
        }
        return drawn;
    }
}

package quarterlight.page.brief;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.scene.OneView;
import quarterlight.matters.Matters;
import quarterlight.page.MatterLetters;

/**
 * The drawing beside the matters of the first page: for the gravest letter first the view that bears it and most of the others, then for the
 * next that does not stand yet, as far as the column holds them. Immutable.
 */
public final class MattersDrawing {
    private static final double WIDTH_MM = 54;
    /** A view that is no longer than high is not drawn larger than this. */
    private static final double VIEW_HEIGHT_MM = 27;

    private static final double MAX_HEIGHT_MM = 66;
    private static final double TITLE_MM = 4;

    private final List<String> views;
    private final String notDrawn;

    private MattersDrawing(List<String> views, String notDrawn) {
        this.views = List.copyOf(views);
        this.notDrawn = notDrawn;
    }

    public static MattersDrawing of(BodyDiagram diagram, ZonePlaces places, Matters matters) {
        List<LetterMark> open = new ArrayList<>(MatterLetters.of(matters));
        List<ViewDrawing> free = new ArrayList<>(diagram.views());
        Set<String> drawn = new TreeSet<>();
        List<String> views = new ArrayList<>();
        double room = MAX_HEIGHT_MM;
        while (!open.isEmpty()) {
            Optional<ViewDrawing> next = next(free, places, open);
            if (next.isEmpty()) {
                break;
            }
            ViewDrawing view = next.get();
            free.remove(view);
            if (heightMm(view) > room) {
                continue;
            }
            List<LetterMark> here = shown(view, places, open);
            Set<String> letters = here.stream().map(LetterMark::letter).collect(Collectors.toCollection(TreeSet::new));
            views.add(element(diagram, places, view, here, letters));
            drawn.addAll(letters);
            room -= heightMm(view);
            open.removeIf(mark -> letters.contains(mark.letter()));
        }
        Set<String> left = matters.lettered().stream()
                .map(matter -> String.valueOf(matter.letter().orElseThrow()))
                .filter(letter -> !drawn.contains(letter))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return new MattersDrawing(
                views,
                views.isEmpty() || left.isEmpty()
                        ? ""
                        : say("brief.matters-drawing.not-drawn-here", String.join(", ", left)));
    }

    /** The view for the gravest letter that is open and has one: of those that show it the one with most letters. */
    private static Optional<ViewDrawing> next(List<ViewDrawing> free, ZonePlaces places, List<LetterMark> open) {
        return open.stream()
                .map(mark -> free.stream()
                        .filter(view -> !shown(view, places, List.of(mark)).isEmpty())
                        .max(Comparator.comparingLong(view -> shown(view, places, open).stream()
                                .map(LetterMark::letter)
                                .distinct()
                                .count())))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Letters at zones of which something can be seen in the view. */
    private static List<LetterMark> shown(ViewDrawing view, ZonePlaces places, List<LetterMark> open) {
        return open.stream()
                .filter(mark -> places.place(view.view(), mark.zone())
                        .filter(place -> place.radiusMm() > 0)
                        .isPresent())
                .toList();
    }

    private static double scale(ViewDrawing view) {
        return Math.min(WIDTH_MM / view.widthMm(), VIEW_HEIGHT_MM / view.heightMm());
    }

    private static double heightMm(ViewDrawing view) {
        return view.heightMm() * scale(view) + TITLE_MM;
    }

    private static String element(
            BodyDiagram diagram, ZonePlaces places, ViewDrawing view, List<LetterMark> here, Set<String> letters) {
        DiagramInk ink = new DiagramInk(Map.of(), Map.of(), Map.of(), List.of(), here, Optional.empty());
        return new OneView(diagram, places, view, scale(view), TITLE_MM, ink, InkPalette.LIGHT)
                .element(say("brief.matters-drawing.with", view.title(), String.join(", ", letters)), "");
    }

    /** Each view as an SVG element; none if no letter has a place. */
    List<String> views() {
        return views;
    }

    /** Which letters stand on none of them, in a sentence; empty if all do. */
    String notDrawn() {
        return notDrawn;
    }
}

package quarterlight.ui.kit.view;

import java.util.List;
import java.util.Optional;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.ContextMenu;

/** What a right click or the menu key offers on every photo: how it is looked at, and what its zone rests on. Event thread only. */
final class CanvasMenu {
    private static final double CLOSER = 1.25;

    private CanvasMenu() {}

    static void install(PhotoCanvas canvas, Texts texts, OpenVisit visit) {
        Command grounds = visit.grounds(() -> zone(canvas, visit));
        List<Command> looking = List.of(
                grounds,
                Command.of(texts, "beside.do.closer", () -> canvas.zoom(CLOSER)).begins(),
                Command.of(texts, "beside.do.away", () -> canvas.zoom(1 / CLOSER)),
                Command.of(texts, "beside.do.whole", canvas::toggleWhole),
                Command.of(texts, "beside.do.turn", () -> canvas.turn(1)));
        ContextMenu.on(canvas, () -> {
            grounds.setEnabled(zone(canvas, visit).isPresent());
            return canvas.photo().isPresent() ? looking : List.of();
        });
    }

    private static Optional<Subject> zone(PhotoCanvas canvas, OpenVisit visit) {
        return canvas.photo()
                .flatMap(photo -> visit.zonesOf(photo.id()).stream().findFirst())
                .map(Subject.OfZone::new);
    }
}

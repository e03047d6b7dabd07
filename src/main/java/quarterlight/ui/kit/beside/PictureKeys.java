package quarterlight.ui.kit.beside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.view.PhotoCanvas;

/**
 * What can be done with the picture in hand, by the same keys in every station and without leaving the field that is being typed into: of the
 * station's own picture where it has one, else of the photo beside the drawing. Event thread only.
 */
public final class PictureKeys {
    private static final double CLOSER = 1.25;

    private final Texts texts;
    private final Supplier<Optional<PhotoCanvas>> own;
    private final PhotoBeside beside;
    private final BooleanSupplier isBeside;
    private final List<Command> commands = new ArrayList<>();

    /**
     * @param own the picture of the station in front
     * @param isBeside whether the photo stands beside the drawing now
     */
    public PictureKeys(Texts texts, Supplier<Optional<PhotoCanvas>> own, PhotoBeside beside, BooleanSupplier isBeside) {
        this.texts = texts;
        this.own = own;
        this.beside = beside;
        this.isBeside = isBeside;
        add("beside.do.loupe", "alt L", () -> either(canvas -> canvas.loupe(!canvas.isLoupe()), beside::toggleLoupe));
        add(
                "beside.do.tone",
                "alt C",
                () -> either(canvas -> canvas.tone(canvas.tone().next()), beside::nextTone));
        add("beside.do.turn", "alt R", () -> either(canvas -> canvas.turn(1), () -> beside.turn(1)));
        add("beside.do.closer", "alt EQUALS", () -> zoom(CLOSER));
        add("beside.do.away", "alt MINUS", () -> zoom(1 / CLOSER));
        add(
                "beside.do.whole",
                "alt 0",
                () -> either(PhotoCanvas::toggleWhole, () -> beside.canvas().toggleWhole()));
        add("beside.do.next", "alt PAGE_DOWN", () -> beside(() -> beside.step(1)));
        add("beside.do.previous", "alt PAGE_UP", () -> beside(() -> beside.step(-1)));
        add("beside.do.two", "alt B", () -> beside(beside::toggleTwo));
    }

    private void add(String key, String stroke, Runnable work) {
        commands.add(Command.of(texts, key, work).key(stroke));
    }

    public List<Command> commands() {
        return List.copyOf(commands);
    }

    private void zoom(double factor) {
        either(canvas -> canvas.zoom(factor), () -> beside.canvas().zoom(factor));
    }

    private void either(Consumer<PhotoCanvas> ofStation, Runnable ofBeside) {
        own.get().ifPresentOrElse(ofStation, () -> beside(ofBeside));
    }

    private void beside(Runnable work) {
        if (isBeside.getAsBoolean()) {
            work.run();
        }
    }
}

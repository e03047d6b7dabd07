package quarterlight.ui.photos;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;

/** The commands of the Photos station, each made once. Event thread only. */
final class PhotosActions {
    private final List<Command> commands = new ArrayList<>();
    private final Texts texts;
    private boolean begins;

    PhotosActions(Texts texts) {
        this.texts = texts;
    }

    PhotosActions with(String key, String stroke, Runnable work) {
        return with(Command.of(texts, key, work).key(stroke));
    }

    /** What follows is another section of the menu. */
    PhotosActions section() {
        begins = true;
        return this;
    }

    PhotosActions withMenuKey(String key, String stroke, Runnable work) {
        return with(Command.of(texts, key, work).menuKey(stroke));
    }

    PhotosActions with(Command... made) {
        for (Command command : made) {
            commands.add(begins ? command.begins() : command);
            begins = false;
        }
        return this;
    }

    /** A command for each of some digits, from 1. */
    PhotosActions digits(int count, String key, IntConsumer work) {
        return digitsWith("typed", count, key, work);
    }

    /** The same for digits pressed with another key. */
    PhotosActions digitsWith(String with, int count, String key, IntConsumer work) {
        for (int digit = 1; digit <= count; digit++) {
            int at = digit;
            Command command = Command.of(texts, key, () -> work.accept(at - 1));
            command.rename(texts.get(key, digit));
            with(command.key(with + " " + digit));
        }
        return this;
    }

    /** What is done with the photo in hand, without the digits and the steps. */
    List<Command> ofPhoto() {
        List<String> wanted = List.of(
                "photos.do.large",
                "photos.do.caption",
                "photos.do.aside",
                "photos.do.back",
                "photos.do.release",
                "photos.do.turn",
                "film.do.state",
                "film.do.keep-frame");
        List<Object> names = wanted.stream().map(key -> (Object) texts.get(key)).toList();
        return commands.stream()
                .filter(command -> names.contains(command.getValue(Command.NAME)))
                .toList();
    }

    List<Command> all() {
        return List.copyOf(commands);
    }
}

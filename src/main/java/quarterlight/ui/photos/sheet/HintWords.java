package quarterlight.ui.photos.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.language.Retold;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.ui.photos.list.PhotoItem;

/** What a photo's hints say in words, with the number behind each. Pure functions. */
public final class HintWords {
    private HintWords() {}

    /** The file's name and every hint. */
    public static String of(Texts texts, PhotoHints hints, PhotoItem item) {
        List<String> parts = new ArrayList<>();
        parts.add(item.name());
        parts.addAll(hints(texts, hints, item));
        item.photo().file().notes().stream().map(Retold::of).forEach(parts::add);
        return String.join("  \u00b7  ", parts);
    }

    /** What a cell says, for those who hear it: the file, when, where it is pinned, every hint. */
    static String heard(Texts texts, Function<ZoneId, String> label, PhotoHints hints, PhotoItem item) {
        List<String> parts = new ArrayList<>();
        parts.add(item.name());
        item.local().map(Format::clock).ifPresent(parts::add);
        parts.add(
                item.isPinned()
                        ? item.allPins()
                                .map(pin -> label.apply(pin.zone()))
                                .distinct()
                                .collect(Collectors.joining(", "))
                        : texts.get("photos.part.unpinned"));
        parts.addAll(hints(texts, hints, item));
        return String.join("  \u00b7  ", parts);
    }

    /** Only the hints, each with its number. */
    public static List<String> hints(Texts texts, PhotoHints hints, PhotoItem item) {
        List<String> parts = new ArrayList<>();
        if (hints.isSoft(item.id())) {
            parts.add(texts.get(
                    "photos.hint.soft",
                    Format.number(item.photo().file().sharpness().orElse(0), 0),
                    Format.number(hints.sharpness().low(), 0)));
        }
        hints.alike(item.id()).ifPresent(match -> parts.add(texts.get("photos.hint.alike", match.distance())));
        if (hints.isDark(item.id())) {
            parts.add(texts.get(
                    "photos.hint.dark", Format.number(hints.mean(item.id()).orElse(0), 0)));
        }
        if (hints.isBright(item.id())) {
            parts.add(texts.get(
                    "photos.hint.bright", Format.number(hints.mean(item.id()).orElse(0), 0)));
        }
        return parts;
    }
}

package quarterlight.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.walk.PastWalk;

/**
 * A walk as text: a heading with the form's number, the style, then a line for each photo with digest, seconds and zones ({@code -} if it
 * is not pinned), and {@code end}.
 */
final class WalkText {
    private static final String HEADING = "quarterlight walk 1";
    private static final String END = "end";
    private static final String NOT_PINNED = "-";

    private WalkText() {}

    /** A text that is no walk, or not a whole one. */
    static final class Damaged extends Exception {
        private static final long serialVersionUID = 1;

        Damaged(String why) {
            super(why);
        }
    }

    static String of(PastWalk walk) {
        StringBuilder text = new StringBuilder(HEADING).append('\n');
        text.append("style ").append(walk.style().word()).append('\n');
        for (PastWalk.Moment photo : walk.photos()) {
            List<String> zones = photo.pinned().stream().map(ZoneId::value).toList();
            text.append(String.format(
                    Locale.ROOT,
                    "%s %.3f %s\n",
                    photo.digest(),
                    photo.seconds(),
                    zones.isEmpty() ? NOT_PINNED : String.join(",", zones)));
        }
        return text.append(END).append('\n').toString();
    }

    static PastWalk read(String text) throws Damaged {
        List<String> lines = text.lines().toList();
        if (lines.size() < 3 || !lines.get(0).equals(HEADING)) {
            throw new Damaged("it does not begin as a walk of this version does");
        }
        if (!lines.get(lines.size() - 1).equals(END)) {
            throw new Damaged("its end is missing");
        }
        BodyStyle style = style(lines.get(1));
        List<PastWalk.Moment> photos = new ArrayList<>();
        for (int i = 2; i + 1 < lines.size(); i++) {
            photos.add(photo(lines.get(i), i + 1));
        }
        return new PastWalk(style, photos);
    }

    private static BodyStyle style(String line) throws Damaged {
        Optional<BodyStyle> style = Arrays.stream(BodyStyle.values())
                .filter(one -> line.equals("style " + one.word()))
                .findFirst();
        return style.orElseThrow(() -> new Damaged("line 2 names no body style"));
    }

    private static PastWalk.Moment photo(String line, int number) throws Damaged {
        String[] cells = line.split(" ", -1);
        try {
            if (cells.length != 3) {
                throw new IllegalArgumentException(line);
            }
            List<ZoneId> zones = cells[2].equals(NOT_PINNED)
                    ? List.of()
                    : Arrays.stream(cells[2].split(",", -1)).map(ZoneId::new).toList();
            return new PastWalk.Moment(cells[0], Double.parseDouble(cells[1]), zones);
        } catch (IllegalArgumentException e) {
            throw new Damaged("line " + number + " is no photo");
        }
    }
}

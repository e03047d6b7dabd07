package quarterlight.caption;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lines that begin with a time: {@code [1:05] text}, with or without brackets; each lasts until the next. */
final class LineCues {
    private static final Pattern LINE = Pattern.compile(
            "^\\s*(?:\\[" + Times.FORM + "\\]|\\(" + Times.FORM + "\\)|" + Times.FORM + "(?=\\s))\\s*[-:]?\\s*(.*)$");
    private static final Pattern TIME = Pattern.compile(Times.FORM);

    private LineCues() {}

    static List<RawCue> of(String text) {
        List<RawCue> cues = new ArrayList<>();
        Markup markup = new Markup();
        for (String line : text.split("\n", -1)) {
            Matcher m = LINE.matcher(line);
            if (m.matches()) {
                Matcher time = TIME.matcher(line);
                if (time.find()) {
                    Times.seconds(time.group())
                            .ifPresent(at -> cues.add(new RawCue(at, RawCue.UNSAID, markup.plain(m.group(10)))));
                }
            } else if (!cues.isEmpty() && !line.isBlank()) {
                RawCue last = cues.remove(cues.size() - 1);
                cues.add(new RawCue(last.from(), last.until(), (last.text() + " " + markup.plain(line)).strip()));
            }
        }
        return cues;
    }
}

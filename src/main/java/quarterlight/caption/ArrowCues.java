package quarterlight.caption;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** WebVTT and SRT: a line with an arrow between two times, then text up to a blank line. */
final class ArrowCues {
    private static final Pattern ARROW = Pattern.compile("^\\s*([\\d:.,]{4,20})\\s*-->\\s*([\\d:.,]{4,20})(?:\\s.*)?$");

    private ArrowCues() {}

    static List<RawCue> of(String text) {
        List<RawCue> cues = new ArrayList<>();
        Markup markup = new Markup();
        String[] lines = text.split("\n", -1);
        int i = 0;
        while (i < lines.length) {
            Matcher m = ARROW.matcher(lines[i]);
            i++;
            if (!m.matches()) {
                continue;
            }
            OptionalDouble from = Times.seconds(m.group(1));
            OptionalDouble until = Times.seconds(m.group(2));
            StringBuilder said = new StringBuilder();
            while (i < lines.length
                    && !lines[i].isBlank()
                    && !ARROW.matcher(lines[i]).matches()) {
                said.append(lines[i]).append(' ');
                i++;
            }
            if (from.isPresent() && until.isPresent()) {
                cues.add(new RawCue(from.getAsDouble(), until.getAsDouble(), markup.plain(said.toString())));
            }
        }
        return cues;
    }
}

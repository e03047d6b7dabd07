package quarterlight.caption;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes the markup out of the text of a cue: tags, karaoke times, entities; a change of voice becomes {@code >>}. */
final class Markup {
    private static final Pattern VOICE = Pattern.compile("<v(?:\\.[^ >]*)?\\s+([^>]{1,80})>");
    private static final Pattern TAG =
            Pattern.compile("</?[A-Za-z][^<>]{0,200}>|<\\d[\\d:.]{1,20}>|\\{\\\\[^}]{0,80}\\}");

    private String voice = "";

    String plain(String text) {
        Matcher m = VOICE.matcher(text);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            boolean other = !voice.isEmpty() && !voice.equals(m.group(1));
            voice = m.group(1);
            m.appendReplacement(out, other ? ">> " : "");
        }
        m.appendTail(out);
        return TAG.matcher(out)
                .replaceAll("")
                .replace("&gt;", ">")
                .replace("&lt;", "<")
                .replace("&nbsp;", " ")
                .replace("&lrm;", "")
                .replace("&rlm;", "")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ")
                .strip();
    }
}

package quarterlight.words;

import java.util.ArrayList;
import java.util.List;

/** One row that was taken down by hand, with the other forms in which it is right as well. */
final class GoldRow {
    /** What is taken down, where, and with which value, as the gold files write it. */
    record Form(String what, String zone, String value) {}

    final String part;
    final double at;
    final double end;
    final double window;
    final String text;
    final boolean hard;
    final List<Form> forms = new ArrayList<>();

    GoldRow(String part, double at, double end, double window, String text, boolean hard, Form form) {
        this.part = part;
        this.at = at;
        this.end = end;
        this.window = window;
        this.text = text;
        this.hard = hard;
        forms.add(form);
    }
}

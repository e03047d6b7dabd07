package quarterlight.caption;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import quarterlight.words.Cue;

/** Puts cues in the order of time, gives each an end, and drops the lines that rolling captions repeat. */
final class CueOrder {
    private static final double USUAL_S = 5;
    private static final double MAX_SECONDS = 60;
    private static final int ROLLING = 4;

    private CueOrder() {}

    static List<Cue> of(List<RawCue> raw, List<String> remarks) {
        List<RawCue> filled = new ArrayList<>(
                raw.stream().filter(cue -> !cue.text().isBlank()).toList());
        boolean back = false;
        for (int i = 1; i < filled.size(); i++) {
            back |= filled.get(i).from() < filled.get(i - 1).from();
        }
        if (back) {
            remarks.add(say("captions.order"));
            filled.sort(Comparator.comparingDouble(RawCue::from));
        }
        List<RawCue> said = unrolled(filled);
        double usual = usual(said);
        List<Cue> cues = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            RawCue cue = said.get(i);
            double next = i + 1 < said.size() ? said.get(i + 1).from() : cue.from() + usual;
            double until = cue.until() >= cue.from() ? cue.until() : Math.min(next, cue.from() + MAX_SECONDS);
            double end = i + 1 < said.size() ? Math.min(until, Math.max(next, cue.from())) : until;
            cues.add(new Cue(cue.from(), Math.max(end, cue.from()), cue.text()));
        }
        return cues;
    }

    private static double usual(List<RawCue> cues) {
        double[] steps = new double[Math.max(0, cues.size() - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = cues.get(i + 1).from() - cues.get(i).from();
        }
        Arrays.sort(steps);
        return steps.length == 0 ? USUAL_S : steps[steps.length / 2];
    }

    /** Rolling captions show the last line again above the new one: a cue that begins with the words of the one before loses them. */
    private static List<RawCue> unrolled(List<RawCue> cues) {
        List<RawCue> out = new ArrayList<>();
        String before = "";
        for (RawCue cue : cues) {
            String text = cue.text();
            if (text.equals(before)) {
                continue;
            }
            boolean rolls = before.split(" ").length >= ROLLING && text.startsWith(before + " ");
            String own = rolls ? text.substring(before.length()).strip() : text;
            out.add(new RawCue(cue.from(), cue.until(), own));
            before = text;
        }
        return out;
    }
}

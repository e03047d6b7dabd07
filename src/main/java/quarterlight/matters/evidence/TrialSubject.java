package quarterlight.matters.evidence;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.visit.trial.Trial;

/** What a trial is about, as far as its weight goes: by the words of its name, else by its group in the list of trials or its zone. */
enum TrialSubject {
    LAMPS("lamp|light|signal|indicator"),
    BRAKES("brak(e|es|ing)"),
    STEERING("steer|tracks straight|wanders|pulls to"),
    INTERLOCK("interlock|neutral (safety|switch|start)|clutch switch"),
    TIRES("tread|tires?"),
    BELTS("belts? (latch|retract|hold)|seat belts?|harness"),
    FUEL("(smell|leak)\\w* of (fuel|gas|petrol)|(fuel|gas|petrol) (smell|leak)|smells of (fuel|gas|petrol)"),
    ENGINE(""),
    OTHER("");

    private final Pattern words;

    TrialSubject(String words) {
        this.words = Pattern.compile(words.isEmpty() ? "(?!)" : "\\b(" + words + ")");
    }

    static TrialSubject of(Trial trial, TrialList list) {
        String item = trial.item().toLowerCase(Locale.ROOT);
        for (TrialSubject subject : values()) {
            if (subject.words.matcher(item).find() && !isGauge(item)) {
                return subject;
            }
        }
        Optional<TrialItem> listed = listed(trial, list);
        boolean drives = listed.filter(known -> known.group() == TrialGroup.ENGINE
                        || known.group() == TrialGroup.RUNNING
                                && known.zone().value().equals("transmission"))
                .isPresent();
        boolean there = listed.isEmpty()
                && trial.zone()
                        .filter(zone ->
                                zone.value().equals("engine") || zone.value().equals("transmission"))
                        .isPresent();
        return drives || there ? ENGINE : OTHER;
    }

    /** A fuel gauge is no fuel, and a brake fluid level is one of the brakes. */
    private static boolean isGauge(String item) {
        return item.contains("gauge");
    }

    static Optional<TrialItem> listed(Trial trial, TrialList list) {
        String item = trial.item().strip();
        return list.items().stream()
                .filter(known -> known.item().strip().equalsIgnoreCase(item))
                .findFirst();
    }
}

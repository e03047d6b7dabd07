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
    LAMPS("lamp|light|signal|indicator", "leucht|(?<!pf|sch)licht(?!maschine)|lampe|scheinwerfer|blink"),
    BRAKES("brak(e|es|ing)", "(?<!unge)brems(?!staub|spur)"),
    STEERING(
            "steer|tracks straight|wanders|pulls to",
            "(?<!ge|um|ab)lenk(ung|getrieb|säul|rad|gestäng|spiel|kraft|hilf|t(?!\\p{L}))|geradeauslauf|(zieht|läuft|fährt)"
                    + " (nach |leicht |stark )*(links|rechts|schief|geradeaus)|hält (die )?spur"),
    INTERLOCK(
            "interlock|neutral (safety|switch|start)|clutch switch",
            "(anlass|anlaß|start)sperr|anlasssicherung|(leerlauf|neutral|kupplungs?|parksperren)schalter"),
    TIRES("tread|tires?", "(?<!st|g)reifen|(?<!\\p{L})profiltiefe"),
    BELTS("belts? (latch|retract|hold)|seat belts?|harness", "(?<!spann|zurr|tank|trage)gurt"),
    FUEL(
            "(smell|leak)\\w* of (fuel|gas|petrol)|(fuel|gas|petrol) (smell|leak)|smells of (fuel|gas|petrol)",
            "(benzin|kraftstoff|treibstoff|sprit|diesel|(?<!\\p{L})gas)(geruch|leck|austritt|verlust)|(riecht|stinkt|geruch)"
                    + " (\\p{L}+ )?nach"
                    + " (benzin|kraftstoff|treibstoff|sprit|diesel|gas(?!\\p{L}))|(benzin|kraftstoff|(?<!\\p{L})tank(?!\\p{L}))\\p{L}*"
                    + " (ist )?(undicht|leckt|tropft|riecht|läuft aus|tritt aus)"),
    ENGINE("", ""),
    OTHER("", "");

    private final Pattern words;

    /**
     * @param english how words of it begin
     * @param german what it is called anywhere in a word, as German joins its words
     */
    TrialSubject(String english, String german) {
        this.words = Pattern.compile(english.isEmpty() ? "(?!)" : "\\b(" + english + ")|" + german);
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

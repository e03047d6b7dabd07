package quarterlight.ui.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Texts;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.trial.TrialResult;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;

/** What a draft can say instead, by a letter each. Pure. */
final class DraftChoices {
    /** One of them; taking it makes another draft. */
    record Choice(char letter, String label, Draft draft) {}

    private DraftChoices() {}

    static Draft at(Draft draft, List<ZoneId> zones) {
        return of(draft, draft.what(), zones, draft.facets());
    }

    /** The draft at the other side of the car, left for right; what has no other side stays. */
    static Draft otherSide(Draft draft, List<ZoneId> known) {
        return swapped(draft, known, "left", "right");
    }

    /** The draft at the other end of the car, front for rear; what has no other end stays. */
    static Draft otherEnd(Draft draft, List<ZoneId> known) {
        return swapped(draft, known, "front", "rear");
    }

    private static Draft swapped(Draft draft, List<ZoneId> known, String one, String other) {
        return at(
                draft,
                draft.zones().stream()
                        .map(zone -> swapped(zone, known, one, other))
                        .distinct()
                        .toList());
    }

    private static ZoneId swapped(ZoneId zone, List<ZoneId> known, String one, String other) {
        String name = "-" + zone.value() + "-";
        String swapped = name.contains("-" + one + "-")
                ? name.replace("-" + one + "-", "-" + other + "-")
                : name.replace("-" + other + "-", "-" + one + "-");
        ZoneId found = new ZoneId(swapped.substring(1, swapped.length() - 1));
        return known.contains(found) ? found : zone;
    }

    /** The draft with another typed value: a figure, a code, a reading or a range. */
    static Draft valued(Draft draft, String typed) {
        return with(draft, draft.what(), draft.what() == DraftKind.MARK ? Facet.TEXT : Facet.VALUE, typed);
    }

    /** The typed value, of drafts that have one. */
    static Optional<String> value(Draft draft) {
        return switch (draft.what()) {
            case MARK -> Optional.of(draft.facet(Facet.TEXT).orElse(""));
            case THICKNESS, ODOMETER -> Optional.of(draft.facet(Facet.VALUE).orElse(""));
            default -> Optional.empty();
        };
    }

    /** What it can say instead; none of drafts with a typed value. */
    static List<Choice> of(Draft draft, Texts texts) {
        List<Choice> choices = new ArrayList<>();
        switch (draft.what()) {
            case STATEMENT, NOT_LOOKED_AT -> {
                for (Origin origin : Origin.values()) {
                    choices.add(said(draft, texts, Facet.ORIGIN, origin));
                }
                for (Condition condition : Condition.values()) {
                    if (condition != Condition.NOT_LOOKED_AT) {
                        choices.add(said(draft, texts, Facet.CONDITION, condition));
                    }
                }
            }
            case SIGN -> {
                for (String seen : List.of("yes", "no")) {
                    choices.add(new Choice(
                            letter(texts.get("words.letter." + seen)),
                            texts.get("words.sign." + seen),
                            with(draft, DraftKind.SIGN, Facet.SEEN, seen)));
                }
            }
            case TRIAL -> {
                for (TrialResult result : TrialResult.values()) {
                    if (result != TrialResult.MEASURED) {
                        choices.add(new Choice(
                                letter(texts.get("words.letter." + key(result))),
                                result.word(),
                                with(draft, DraftKind.TRIAL, Facet.RESULT, result.word())));
                    }
                }
            }
            case CLAIM -> {
                for (Claimant by : Claimant.values()) {
                    choices.add(new Choice(
                            letter(texts.get("words.letter." + key(by))),
                            by.word(),
                            with(draft, DraftKind.CLAIM, Facet.SAID_BY, by.word())));
                }
            }
            case MARK, THICKNESS, ODOMETER, GAUGE -> {
                // a typed value, or none that words can give
            }
        }
        return choices;
    }

    private static Choice said(Draft draft, Texts texts, Facet facet, Worded word) {
        return new Choice(
                letter(texts.get("notes.letter." + key(word))),
                word.word(),
                with(draft, DraftKind.STATEMENT, facet, word.word()));
    }

    private static String key(Worded word) {
        return word.word().replace(' ', '_');
    }

    private static char letter(String text) {
        return text.toUpperCase(Locale.ROOT).charAt(0);
    }

    private static Draft with(Draft draft, DraftKind what, Facet facet, String word) {
        Map<Facet, String> facets = new HashMap<>(draft.facets());
        facets.put(facet, word);
        return of(draft, what, draft.zones(), facets);
    }

    private static Draft of(Draft draft, DraftKind what, List<ZoneId> zones, Map<Facet, String> facets) {
        return new Draft(
                draft.id(),
                draft.source(),
                draft.atSeconds(),
                draft.untilSeconds(),
                what,
                zones,
                facets,
                draft.words(),
                draft.p(),
                draft.because(),
                draft.features(),
                draft.withdrawn());
    }
}

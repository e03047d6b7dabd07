package quarterlight.cli.text;

import java.util.List;
import java.util.stream.Collectors;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.edit.spoken.SpokenQuote;
import quarterlight.words.Utterance;
import quarterlight.words.clash.Contradiction;
import quarterlight.words.clash.Testimony;
import quarterlight.words.unsaid.Unsaid;

/** What a walk leaves unsaid, and what contradicts each other, in lines for people. */
public final class WalkDoubtsText {
    private static final int SHOWN_ZONES = 6;

    private WalkDoubtsText() {}

    /** Empty if nothing is left unsaid. */
    public static String unsaid(List<Unsaid> all) {
        String whole = all.stream()
                .filter(Unsaid::wholeGroup)
                .flatMap(one -> one.group().stream())
                .map(ZoneGroup::word)
                .collect(Collectors.joining(", "));
        return all.isEmpty()
                ? ""
                : "Not said:\n"
                        + all.stream()
                                .filter(one -> !one.wholeGroup())
                                .map(one -> "  " + WalkDoubtsText.line(one) + "\n")
                                .collect(Collectors.joining())
                        + (whole.isEmpty() ? "" : "  never spoken of at all: " + whole + "\n");
    }

    private static String line(Unsaid one) {
        String zones = zones(one.zones());
        return switch (one.kind()) {
            case PROMISE ->
                one.heard().map(WalkDoubtsText::quote).orElse("") + ": nothing of it follows"
                        + (one.zones().isEmpty() ? "." : " (" + zones + ").");
            case OTHER_SIDE ->
                zones + ": only the other side was spoken of, "
                        + one.heard().map(WalkDoubtsText::quote).orElse("") + ".";
            case NEVER_SPOKEN_OF ->
                "never spoken of"
                        + one.group().map(group -> ", " + group.word()).orElse("") + ": " + zones + ".";
        };
    }

    /** Empty if nothing contradicts. */
    public static String contradictions(List<Contradiction> all) {
        return all.isEmpty()
                ? ""
                : "Against each other:\n"
                        + all.stream()
                                .map(one -> "  " + (one.zones().isEmpty() ? "whole car" : zones(one.zones())) + ": "
                                        + one.why() + "\n    " + testimony(one.first()) + "\n    "
                                        + testimony(one.second()) + "\n")
                                .collect(Collectors.joining());
    }

    private static String testimony(Testimony one) {
        return one.by() + ", "
                + one.heard()
                        .map(WalkDoubtsText::quote)
                        .orElseGet(() -> one.text()
                                + one.row()
                                        .map(row -> " (" + row.kind() + ", row " + row.id() + ")")
                                        .orElse(""));
    }

    private static String quote(Utterance words) {
        return SpokenQuote.clock(words.atSeconds()) + " of " + words.source() + " \""
                + words.words().strip() + "\"";
    }

    private static String zones(List<ZoneId> zones) {
        String named = zones.stream().limit(SHOWN_ZONES).map(ZoneId::value).collect(Collectors.joining(", "));
        return zones.size() <= SHOWN_ZONES ? named : named + " and " + (zones.size() - SHOWN_ZONES) + " more";
    }
}

package quarterlight.words;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.caption.WordsUnreadable;
import quarterlight.car.ZoneId;

/** A narrated walk with what a person took down of it, as the one who confirms its drafts knows it: whether a draft is right, and if not, where it belongs. */
public final class HandTaken {
    /** What is to be done with a draft. */
    public enum Answer {
        KEEP,
        OTHER_ZONE,
        OTHER_VALUE,
        DROP
    }

    /**
     * The answer to one draft.
     *
     * @param zones where it belongs, if elsewhere
     */
    public record Judged(Answer answer, List<ZoneId> zones) {}

    private final GoldWalk walk;
    private final Set<GoldRow> answered = new HashSet<>();
    private final Map<String, Judged> judged = new HashMap<>();

    private HandTaken(GoldWalk walk) {
        this.walk = walk;
    }

    /** @param parts the names of its files without their endings, in order */
    public static HandTaken of(String name, List<String> parts) throws IOException, WordsUnreadable {
        return new HandTaken(GoldWalk.of(name, parts));
    }

    /** How long the talk is, in seconds. */
    public double seconds() {
        return walk.words.stream()
                .mapToDouble(part -> part.cues().isEmpty()
                        ? 0
                        : part.cues().get(part.cues().size() - 1).untilSeconds())
                .sum();
    }

    /** How many rows were taken down by hand. */
    public int rows() {
        return walk.rows.size();
    }

    /** Judges drafts once, the right ones first, so that none takes the row of another. */
    public void judge(List<Draft> drafts) {
        for (Answer answer : List.of(Answer.KEEP, Answer.OTHER_ZONE, Answer.OTHER_VALUE)) {
            for (Draft draft : drafts) {
                if (!judged.containsKey(draft.id())) {
                    row(draft, answer).ifPresent(zones -> judged.put(draft.id(), new Judged(answer, zones)));
                }
            }
        }
    }

    /** What is to be done with a draft that was judged. */
    public Judged of(Draft draft) {
        return judged.getOrDefault(draft.id(), new Judged(Answer.DROP, List.of()));
    }

    private Optional<List<ZoneId>> row(Draft draft, Answer answer) {
        for (GoldRow row : walk.rows) {
            if (answered.contains(row) || !near(draft, row)) {
                continue;
            }
            for (GoldRow.Form form : row.forms) {
                List<ZoneId> zones = zones(form.zone());
                boolean fits =
                        switch (answer) {
                            case KEEP -> RowFit.full(draft, form);
                            case OTHER_ZONE -> !zones.isEmpty() && RowFit.full(at(draft, zones), form);
                            default ->
                                draft.what().word().equals(form.what()) && RowFit.zones(draft.zones(), form.zone());
                        };
                if (fits) {
                    answered.add(row);
                    return Optional.of(zones);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean near(Draft draft, GoldRow row) {
        double end = Math.min(Math.max(draft.atSeconds(), draft.untilSeconds()), draft.atSeconds() + 30);
        double gap = Math.max(0, Math.max(row.at - end, draft.atSeconds() - row.end));
        return draft.source().startsWith(row.part) && gap <= row.window;
    }

    private static List<ZoneId> zones(String spec) {
        if (spec.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(spec.split(spec.contains(" | ") ? " \\| " : " / "))
                .limit(spec.contains(" | ") ? Long.MAX_VALUE : 1)
                .filter(zone -> !zone.equals("whole-car"))
                .map(ZoneId::new)
                .toList();
    }

    private static Draft at(Draft draft, List<ZoneId> zones) {
        return new Draft(
                draft.id(),
                draft.source(),
                draft.atSeconds(),
                draft.untilSeconds(),
                draft.what(),
                zones,
                draft.facets(),
                draft.words(),
                draft.p(),
                draft.because(),
                draft.features(),
                draft.withdrawn());
    }
}

package quarterlight.ui.marks;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.statement.Origin;

/** A mark while it is written, as the fields hold it. Immutable. */
record MarkDraft(
        String part,
        MarkKind kind,
        String text,
        Optional<MarkStage> stage,
        String pattern,
        String expected,
        String leadDays,
        Optional<ZoneId> zone,
        Optional<ViewPoint> point,
        Optional<PhotoId> photo,
        String note,
        Optional<Origin> origin) {
    static final MarkDraft EMPTY = new MarkDraft(
            "",
            MarkKind.STAMP,
            "",
            Optional.empty(),
            "",
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            Optional.empty());

    private static final int MAX_LEAD_DAYS = 3650;

    MarkDraft {
        Objects.requireNonNull(kind, "kind");
    }

    static MarkDraft of(Mark mark) {
        return new MarkDraft(
                mark.part(),
                mark.kind(),
                mark.text(),
                mark.stage(),
                mark.pattern().orElse(""),
                mark.expected().orElse(""),
                mark.leadDays().map(String::valueOf).orElse(""),
                mark.zone(),
                mark.point(),
                mark.photo(),
                mark.note().orElse(""),
                mark.origin());
    }

    /** Text key of the first sentence on what must be put right before it can be kept; empty if nothing. */
    Optional<String> problem() {
        return problems().values().stream().findFirst();
    }

    /** All that must be put right: text keys by the name of the field. */
    Map<String, String> problems() {
        Map<String, String> problems = new LinkedHashMap<>();
        if (part.isBlank()) {
            problems.put("part", "marks.needs.part");
        }
        if (text.isBlank()) {
            problems.put("text", "marks.needs.text");
        }
        if (!leadDays.isBlank() && days().isEmpty()) {
            problems.put("lead", "marks.needs.lead");
        }
        return problems;
    }

    private Optional<Integer> days() {
        String digits = leadDays.strip();
        return digits.matches("[0-9]{1,4}") && Integer.parseInt(digits) <= MAX_LEAD_DAYS
                ? Optional.of(Integer.parseInt(digits))
                : Optional.empty();
    }

    /** The mark as it will be kept; empty if something must be put right. */
    Optional<Mark> mark() {
        return problem().isPresent()
                ? Optional.empty()
                : Optional.of(new Mark(
                        part.strip(),
                        kind,
                        text.strip(),
                        stage,
                        filled(pattern),
                        filled(expected),
                        zone,
                        point,
                        photo,
                        filled(note),
                        days(),
                        origin));
    }

    private static Optional<String> filled(String text) {
        return Optional.of(text.strip()).filter(words -> !words.isEmpty());
    }

    MarkDraft at(Optional<ZoneId> other, Optional<ViewPoint> where) {
        return new MarkDraft(part, kind, text, stage, pattern, expected, leadDays, other, where, photo, note, origin);
    }

    MarkDraft with(Optional<PhotoId> other) {
        return new MarkDraft(part, kind, text, stage, pattern, expected, leadDays, zone, point, other, note, origin);
    }
}

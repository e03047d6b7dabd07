package quarterlight.compare.matter;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.findings.Findings;
import quarterlight.findings.NotLookedAt;
import quarterlight.language.Sentences;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.matters.rule.FindingKind;
import quarterlight.matters.rule.MatterRule;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.TrialNames;

/** Reads what matters about a car for the table: which topic, which concern, and what it is about. Pure functions. */
public final class FoundMatters {
    /** What is no finding, but the lack of one. */
    private static final Set<MatterRule> NOT_ESTABLISHED =
            EnumSet.of(MatterRule.CLAIM_OPEN, MatterRule.READINGS_NOT_CHECKED);

    /** What the inspector says was not looked at. */
    private static final Set<MatterRule> STATED_UNSEEN =
            EnumSet.of(MatterRule.STATED_NOT_SEEN, MatterRule.FUEL_NOT_SEEN);

    /** So many characters a cell of the table has room for before it crowds out others. */
    private static final int MAX_TEXT = 260;

    private static final int MAX_UNSEEN = 6;

    private FoundMatters() {}

    /**
     * The car with all that matters about it; nothing is left out.
     *
     * @param paragraph what its own first page says of it; blank if nothing
     */
    public static CarEvidence of(Findings car, Matters matters, String paragraph) {
        return new CarEvidence(
                car, matters.all().stream().map(matter -> found(car, matter)).toList(), brief(car, matters, paragraph));
    }

    private static FoundMatter found(Findings car, Matter matter) {
        Topic topic = topic(matter);
        Optional<String> about = about(car, matter, topic);
        boolean named = about.isPresent() && (topic == Topic.TRIAL || topic == Topic.NUMBER);
        return new FoundMatter(
                matter.severity(),
                matter.safety().isPresent(),
                topic,
                concern(car, matter, topic),
                matter.zones(),
                about,
                named ? TrialNames.said(about.get()) : matter.place(),
                text(car, matter),
                matter.photos().stream().findFirst(),
                matter.kind() != FindingKind.NOT_LOOKED_AT && !NOT_ESTABLISHED.contains(matter.rule()));
    }

    /** What it is, and the first evidence that says more where there is room for it; of what was not looked at the inspector's own words. */
    private static String text(Findings car, Matter matter) {
        String sentence = matter.sentence();
        if (matter.kind() == FindingKind.NOT_LOOKED_AT) {
            return STATED_UNSEEN.contains(matter.rule()) ? stated(car, matter) : sentence;
        }
        String core = sentence.replaceAll("\\.$", "");
        return matter.further().stream()
                .filter(more -> !more.contains(core))
                .findFirst()
                .filter(more -> sentence.length() + more.length() <= MAX_TEXT)
                .map(more -> sentence + " " + more)
                .orElse(sentence);
    }

    private static String stated(Findings car, Matter matter) {
        return car.visit().statements().stream()
                .filter(row -> restsOn(matter, "statements", row.id()))
                .map(row -> Sentences.whole(row.value().text()))
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElseGet(matter::sentence);
    }

    /** The word before the first colon of a matter's id tells what it is about. */
    private static Topic topic(Matter matter) {
        return switch (word(matter)) {
            case "metal" -> Topic.RUST;
            case "finish" -> Topic.FINISH;
            case "origin" -> Topic.ORIGIN;
            case "number", "date" -> Topic.NUMBER;
            case "trial" -> Topic.TRIAL;
            case "gauge" -> Topic.GAUGE;
            case "claim" -> Topic.CLAIM;
            case "conflict" -> Topic.CONFLICT;
            case "unseen" -> matter.id().equals("unseen:paint") ? Topic.FINISH : Topic.UNSEEN;
            default -> Topic.CONDITION;
        };
    }

    private static String word(Matter matter) {
        return matter.id().substring(0, Math.max(0, matter.id().indexOf(':')));
    }

    private static Concern concern(Findings car, Matter matter, Topic topic) {
        boolean carries = matter.zones().stream()
                .flatMap(zone -> car.catalog().find(zone).stream())
                .anyMatch(Zone::structural);
        boolean outer = matter.zones().stream()
                .flatMap(zone -> car.catalog().find(zone).stream())
                .anyMatch(Zone::finish);
        if (topic == Topic.CONDITION || topic == Topic.RUST || topic == Topic.UNSEEN) {
            return carries ? Concern.STRUCTURE : outer ? Concern.FINISH : Topic.CONDITION.concern();
        }
        return topic.concern();
    }

    /** The name of what it is about, as the visit has it. */
    private static Optional<String> about(Findings car, Matter matter, Topic topic) {
        String[] parts = matter.id().split(":");
        return switch (topic) {
            case TRIAL ->
                car.visit().trials().stream()
                        .filter(row -> restsOn(matter, "trials", row.id()))
                        .map(row -> TrialNames.said(row.value().item()))
                        .findFirst();
            case CLAIM ->
                car.visit().claims().stream()
                        .filter(row -> restsOn(matter, "claims", row.id()))
                        .map(row -> row.value().about().orElse(row.value().text()))
                        .findFirst();
            case NUMBER ->
                car.marks().contradictions().stream()
                        .filter(one -> one.rows().stream().anyMatch(row -> restsOn(matter, "marks", row)))
                        .map(one -> one.what())
                        .findFirst()
                        .or(() -> Optional.of(matter.place()));
            case CONDITION, CONFLICT -> parts.length > 2 ? Optional.of(parts[2]) : Optional.empty();
            case UNSEEN -> matter.zones().size() > 1 ? Optional.of(matter.id()) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static boolean restsOn(Matter matter, String table, RecordId row) {
        return matter.evidence().stream()
                .anyMatch(one -> one.table().equals(table) && one.row().equals(Optional.of(row)));
    }

    /** What the inspector says was not seen, and what was not tried; zones by the dozen are counted in the sentence beside it and stand in a row. */
    private static List<String> unseen(NotLookedAt missing) {
        List<String> said = new ArrayList<>();
        missing.stated().stream().limit(MAX_UNSEEN).forEach(said::add);
        if (missing.stated().size() > MAX_UNSEEN) {
            said.add(say("compare.found-matters.and-more", missing.stated().size() - MAX_UNSEEN));
        }
        if (!missing.untried().isEmpty()) {
            said.add(say("compare.found-matters.not-tried", String.join("; ", missing.untried())));
        }
        return said;
    }

    /** What it is, with its place where the sentence does not say it. */
    private static String danger(Findings car, Matter matter) {
        return matter.kind() == FindingKind.TRIAL || matter.zones().isEmpty()
                ? matter.sentence()
                : matter.place() + ": " + text(car, matter);
    }

    /** A sentence that begins with its subject needs no other. */
    private static String under(String subject, String danger) {
        return danger.startsWith(subject) ? danger : subject + danger;
    }

    private static CarBrief brief(Findings car, Matters matters, String paragraph) {
        List<String> safety = matters.safety().stream()
                .map(matter -> under(matter.safety().orElseThrow().subject() + ": ", danger(car, matter)))
                .toList();
        List<String> cautions = matters.safety().stream()
                .map(matter -> matter.safety().orElseThrow().caution())
                .distinct()
                .toList();
        return new CarBrief(
                paragraph,
                safety,
                cautions,
                unseen(NotLookedAt.of(car)),
                matters.checked().sentence(),
                matters.next().stream()
                        .map(look -> new CarBrief.Look(
                                look.what(), look.why(), look.zones(), look.turns() == Severity.GRAVE, look.caution()))
                        .toList());
    }
}

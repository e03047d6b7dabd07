package quarterlight.page.brief;

import static quarterlight.language.Sentences.say;
import static quarterlight.language.Sentences.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.matters.Checked;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.matters.rule.FindingKind;
import quarterlight.matters.rule.MatterRule;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.units.Days;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.TrialResult;

/** The paragraph of the first page, composed of the findings sentence by sentence; the rules stand in docs/methods/brief.md. */
public final class BriefText {
    private static final int NAMED = 3;

    private final Findings car;
    private final Matters matters;

    private BriefText(Findings car, Matters matters) {
        this.car = car;
        this.matters = matters;
    }

    /** What the first page says of a car: the inspector's own words, else the composed paragraph. */
    public static String of(Findings car, Matters matters) {
        return car.visit().facts().choices().brief().paragraph().orElseGet(() -> composed(car, matters));
    }

    /** The composed paragraph. */
    static String composed(Findings car, Matters matters) {
        return String.join(" ", new BriefText(car, matters).sentences());
    }

    private List<String> sentences() {
        List<String> said = new ArrayList<>();
        said.add(extent());
        if (matters.checked().lookedAt() == 0
                && matters.all().stream().allMatch(matter -> matter.kind() == FindingKind.NOT_LOOKED_AT)) {
            said.add(say("brief.brief-text.nothing-can-be-said-of"));
            return said;
        }
        said.add(gravest());
        major().ifPresent(said::add);
        paint().ifPresent(said::add);
        numbers().ifPresent(said::add);
        unseen().ifPresent(said::add);
        return said;
    }

    /** When, by whom, and how much was looked at. */
    private String extent() {
        Checked checked = matters.checked();
        String when = car.visit()
                .facts()
                .date()
                .map(date -> say("brief.brief-text.on", Days.day(date)))
                .orElse("");
        String who = car.visit().facts().inspector().map(String::strip).orElse(say("brief.brief-text.the-inspector"));
        long tried = car.visit().trials().stream()
                .filter(row -> row.value().result() != TrialResult.NOT_TRIED
                        && row.value().result() != TrialResult.NOT_FITTED)
                .count();
        String looked = say("brief.brief-text.looked-at-of-zones-of", checked.lookedAt(), checked.zones());
        List<String> more = new ArrayList<>();
        if (checked.panels() > 0) {
            more.add(
                    checked.measured() == 0
                            ? say("brief.brief-text.measured-no-panel")
                            : say("brief.brief-text.measured-the-paint-of-of", checked.measured(), checked.panels()));
        }
        more.add(
                tried == 0
                        ? say("brief.brief-text.tried-no-function")
                        : say("brief.brief-text.tried-functions", tried));
        String start = when.isEmpty() ? capital(who) : when + who;
        return start + looked
                + (more.size() == 1
                        ? say("brief.brief-text.and", more.get(0))
                        : ", " + String.join(say("brief.brief-text.and-2"), more))
                + ".";
    }

    private String gravest() {
        List<Matter> grave = matters.of(Severity.GRAVE);
        if (grave.isEmpty()) {
            return say("brief.brief-text.nothing-grave-was-found-in");
        }
        return capital(spelled(grave.size()))
                + (grave.size() == 1
                        ? say("brief.brief-text.finding-is-grave")
                        : say("brief.brief-text.findings-are-grave"))
                + places(grave) + ".";
    }

    private Optional<String> major() {
        List<Matter> major = matters.of(Severity.MAJOR).stream()
                .filter(matter -> matter.rule() != MatterRule.STRUCTURE_NOT_SEEN)
                .toList();
        return major.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        say("brief.brief-text.are-major", capital(spelled(major.size())), major.size(), places(major)));
    }

    /** The first places by name, each with how many of the matters it stands for, so that all add up to their number. */
    private static String places(List<Matter> some) {
        Map<String, Long> names = some.stream()
                .collect(Collectors.groupingBy(BriefText::named, LinkedHashMap::new, Collectors.counting()));
        String first = names.entrySet().stream()
                .limit(NAMED)
                .map(name -> name.getValue() == 1 ? name.getKey() : name.getKey() + " (" + name.getValue() + ")")
                .collect(Collectors.joining("; "));
        long more =
                names.values().stream().skip(NAMED).mapToLong(Long::longValue).sum();
        return more > 0 ? say("brief.brief-text.and-more", first, more) : first;
    }

    /** What it is in a few words: the function of a trial with its answer, else where it is. */
    private static String named(Matter matter) {
        return switch (matter.kind()) {
            case TRIAL -> lower(matter.sentence().replaceFirst("\\.(?: .*)?$", ""));
            case CLAIM -> say("brief.brief-text.a-claim-that-does-not");
            case GAUGE_CHECK -> say("brief.brief-text.the-gauge-check");
            case NUMBER -> say("brief.brief-text.a-number-that-contradicts", matter.place());
            case STATEMENT, RUST_NEED, FINISH, DATE, NOT_LOOKED_AT -> lower(matter.place());
        };
    }

    private Optional<String> paint() {
        if (matters.checked().measured() == 0) {
            return Optional.empty();
        }
        if (GaugeQuality.of(car.visit()).summary() == GaugeQuality.Summary.FAILED) {
            return Optional.of(say("brief.brief-text.the-gauge-check-failed-so"));
        }
        List<ZoneHistory> known = car.history().zones().stream()
                .filter(zone -> !zone.reasons().isEmpty())
                .toList();
        long filled = known.stream()
                .filter(zone -> zone.repairScore() >= Findings.LIKELY_SCORE)
                .count();
        long over = known.stream()
                        .filter(zone -> zone.refinishScore() >= Findings.LIKELY_SCORE)
                        .count()
                - filled;
        if (known.isEmpty()) {
            return Optional.empty();
        }
        String of = say("brief.brief-text.of-panels-with-readings-or", known.size());
        if (filled + Math.max(0, over) == 0) {
            return Optional.of(say("brief.brief-text.none-reads-as-likely-refinished", of));
        }
        List<String> parts = new ArrayList<>();
        if (over > 0) {
            parts.add(say("brief.brief-text.were-likely-refinished", over));
        }
        if (filled > 0) {
            parts.add(say("brief.brief-text.were-likely-repaired-with-filler", filled));
        }
        return Optional.of(say(
                "brief.brief-text.likelihoods-are-aids-not-proof",
                of,
                String.join(say("brief.brief-text.and-2"), parts)));
    }

    private Optional<String> numbers() {
        if (car.visit().marks().isEmpty()) {
            return Optional.empty();
        }
        if (found(MatterRule.IDENTITY_CONTRADICTS, MatterRule.NUMBER_CONTRADICTS) > 0) {
            return Optional.empty();
        }
        int marks = car.visit().marks().size();
        long dates = found(MatterRule.MAIN_PART_DATE, MatterRule.PART_DATE, MatterRule.DATE_ORDER);
        long features = found(MatterRule.FEATURE);
        List<String> others = new ArrayList<>();
        if (dates > 0) {
            others.add(say("brief.brief-text.dates", dates));
        }
        if (features > 0) {
            others.add(say("brief.brief-text.features", features));
        }
        return Optional.of(
                others.isEmpty()
                        ? say("brief.brief-text.no-number-read-contradicts-another", marks)
                        : say(
                                "brief.brief-text.no-number-but-others",
                                marks,
                                String.join(say("brief.brief-text.and-2"), others),
                                dates + features));
    }

    private long found(MatterRule... rules) {
        return matters.all().stream()
                .flatMap(matter -> matter.findings().stream())
                .filter(finding -> List.of(rules).contains(finding.rule()))
                .count();
    }

    private Optional<String> unseen() {
        Checked checked = matters.checked();
        return checked.structuralUnseen() == 0
                ? Optional.empty()
                : Optional.of(say(
                        "brief.brief-text.of-zones-that-carry-load", checked.structuralUnseen(), checked.structural()));
    }

    /** A number in words up to twelve, as a sentence begins with it. */
    private static String spelled(int number) {
        return number < List.of(say("brief.brief-text.numbers").split(" ")).size()
                ? List.of(say("brief.brief-text.numbers").split(" ")).get(number)
                : Integer.toString(number);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    private static String lower(String text) {
        boolean name = text.length() > 1 && Character.isUpperCase(text.charAt(1));
        return text.isEmpty() || name ? text : within(text);
    }
}

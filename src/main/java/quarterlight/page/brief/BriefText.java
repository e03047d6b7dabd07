package quarterlight.page.brief;

import java.util.ArrayList;
import java.util.List;
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
import quarterlight.units.Numerals;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.TrialResult;

/** The paragraph of the first page, composed of the findings sentence by sentence; the rules stand in docs/methods/brief.md. */
public final class BriefText {
    private static final int NAMED = 3;
    private static final List<String> SPELLED = List.of(
            "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

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
            said.add("Nothing can be said of the car yet.");
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
                .map(date -> "On " + Days.day(date) + " ")
                .orElse("");
        String who = car.visit().facts().inspector().map(String::strip).orElse("the inspector");
        long tried = car.visit().trials().stream()
                .filter(row -> row.value().result() != TrialResult.NOT_TRIED
                        && row.value().result() != TrialResult.NOT_FITTED)
                .count();
        String looked = " looked at " + checked.lookedAt() + " of " + checked.zones() + " zones of the car";
        List<String> more = new ArrayList<>();
        if (checked.panels() > 0) {
            more.add(
                    checked.measured() == 0
                            ? "measured no panel"
                            : "measured the paint of " + checked.measured() + " of " + checked.panels()
                                    + " outer panels");
        }
        more.add(tried == 0 ? "tried no function" : "tried " + Numerals.count(tried, "function", "functions"));
        String start = when.isEmpty() ? capital(who) : when + who;
        return start + looked + (more.size() == 1 ? " and " + more.get(0) : ", " + String.join(" and ", more)) + ".";
    }

    private String gravest() {
        List<Matter> grave = matters.of(Severity.GRAVE);
        if (grave.isEmpty()) {
            return "Nothing grave was found in what was looked at.";
        }
        return capital(spelled(grave.size())) + (grave.size() == 1 ? " finding is grave: " : " findings are grave: ")
                + places(grave) + ".";
    }

    private Optional<String> major() {
        List<Matter> major = matters.of(Severity.MAJOR).stream()
                .filter(matter -> matter.rule() != MatterRule.STRUCTURE_NOT_SEEN)
                .toList();
        return major.isEmpty()
                ? Optional.empty()
                : Optional.of(capital(spelled(major.size())) + (major.size() == 1 ? " is" : " are") + " major: "
                        + places(major) + ".");
    }

    private static String places(List<Matter> some) {
        List<String> names = some.stream().map(BriefText::named).distinct().toList();
        String first = names.stream().limit(NAMED).collect(Collectors.joining("; "));
        return names.size() > NAMED ? first + "; and " + (names.size() - NAMED) + " more" : first;
    }

    /** What it is in a few words: the function of a trial with its answer, else where it is. */
    private static String named(Matter matter) {
        return switch (matter.kind()) {
            case TRIAL -> lower(matter.sentence().replaceFirst("\\.(?: .*)?$", ""));
            case CLAIM -> "a claim that does not hold";
            case GAUGE_CHECK -> "the gauge check";
            case NUMBER -> "a number that contradicts (" + matter.place() + ")";
            case STATEMENT, RUST_NEED, FINISH, DATE, NOT_LOOKED_AT -> lower(matter.place());
        };
    }

    private Optional<String> paint() {
        if (matters.checked().measured() == 0) {
            return Optional.empty();
        }
        if (GaugeQuality.of(car.visit()).summary() == GaugeQuality.Summary.FAILED) {
            return Optional.of("The gauge check failed, so nothing is said of the paint.");
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
        String of = "Of " + Numerals.count(known.size(), "panel", "panels") + " with readings or signs, ";
        if (filled + Math.max(0, over) == 0) {
            return Optional.of(of + "none reads as likely refinished or filled.");
        }
        List<String> parts = new ArrayList<>();
        if (over > 0) {
            parts.add(Numerals.count(over, "was", "were") + " likely refinished");
        }
        if (filled > 0) {
            parts.add(Numerals.count(filled, "was", "were") + " likely repaired with filler");
        }
        return Optional.of(of + String.join(" and ", parts) + "; likelihoods are aids, not proof.");
    }

    private Optional<String> numbers() {
        if (car.visit().marks().isEmpty()) {
            return Optional.empty();
        }
        boolean contradicted = matters.all().stream()
                .flatMap(matter -> matter.findings().stream())
                .anyMatch(finding -> finding.rule() == MatterRule.IDENTITY_CONTRADICTS
                        || finding.rule() == MatterRule.NUMBER_CONTRADICTS);
        return contradicted
                ? Optional.empty()
                : Optional.of("No number read contradicts another ("
                        + Numerals.count(car.visit().marks().size(), "mark", "marks") + " read).");
    }

    private Optional<String> unseen() {
        Checked checked = matters.checked();
        return checked.structuralUnseen() == 0
                ? Optional.empty()
                : Optional.of(checked.structuralUnseen() + " of " + checked.structural()
                        + " zones that carry load were not looked at for rust: nothing is known of them.");
    }

    /** A number in words up to twelve, as a sentence begins with it. */
    private static String spelled(int number) {
        return number < SPELLED.size() ? SPELLED.get(number) : Integer.toString(number);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    private static String lower(String text) {
        boolean name = text.length() > 1 && Character.isUpperCase(text.charAt(1));
        return text.isEmpty() || name
                ? text
                : text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }
}

package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Car;
import quarterlight.marks.code.Completion;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.code.UnreadLetter;
import quarterlight.marks.code.VehicleNumber;

/**
 * Judges identity numbers: 17 characters by 49 CFR 565 from model year 1981 on and in its region; no published rule reaches others.
 */
public final class NumberJudge {
    private static final int MAX_UNREAD = 2;
    private static final int MAX_NAMED = 6;

    private final OptionalInt modelYear;
    private final Optional<BuildWindow> window;
    private final DateJudge dates;

    public NumberJudge(Car car, Optional<BuildWindow> window, DateJudge dates) {
        this.modelYear = car.modelYear();
        this.window = window;
        this.dates = dates;
    }

    public MarkJudgment judge(String text) {
        String plain = VehicleNumber.plain(text);
        if (isBeforeRule()) {
            return MarkJudgment.bare(
                    Verdict.NOT_APPLICABLE, say("marks.vin.before-rule", VehicleNumber.FIRST_MODEL_YEAR));
        }
        if (plain.length() != VehicleNumber.LENGTH) {
            return MarkJudgment.bare(
                    isSinceRule() ? Verdict.MALFORMED : Verdict.CANNOT_TELL,
                    say(
                            isSinceRule() ? "marks.vin.length" : "marks.vin.length-no-year",
                            plain.length(),
                            VehicleNumber.FIRST_MODEL_YEAR,
                            VehicleNumber.LENGTH));
        }
        Optional<String> foreign = foreign(plain);
        if (foreign.isPresent()) {
            return MarkJudgment.bare(Verdict.NOT_APPLICABLE, foreign.get());
        }
        return UnreadLetter.count(plain) == 0 ? read(plain) : partlyRead(plain);
    }

    /** Surely before the first model year of the rule; without a model year, built before July of the year before it. */
    private boolean isBeforeRule() {
        if (modelYear.isPresent()) {
            return modelYear.getAsInt() < VehicleNumber.FIRST_MODEL_YEAR;
        }
        return window.filter(w -> w.last().isBefore(java.time.LocalDate.of(VehicleNumber.FIRST_MODEL_YEAR - 1, 7, 1)))
                .isPresent();
    }

    private boolean isSinceRule() {
        return modelYear.isPresent()
                || window.filter(w -> w.first().getYear() >= VehicleNumber.FIRST_MODEL_YEAR)
                        .isPresent();
    }

    private static Optional<String> foreign(String plain) {
        char first = plain.charAt(0);
        char check = plain.charAt(8);
        boolean inRegion = (first >= '1' && first <= '5') || first == 'L' || first == UnreadLetter.LETTER;
        if (!inRegion) {
            return Optional.of(say("marks.vin.region", first));
        }
        if (Character.isLetter(check) && check != 'X') {
            return Optional.of(say("marks.vin.no-check", check));
        }
        return Optional.empty();
    }

    private MarkJudgment read(String plain) {
        Optional<VehicleNumber> number = VehicleNumber.of(plain);
        if (number.isEmpty()) {
            return MarkJudgment.bare(Verdict.MALFORMED, say("marks.vin.character"));
        }
        if (!number.get().checks()) {
            return MarkJudgment.bare(
                    Verdict.MALFORMED,
                    say("marks.vin.check", number.get().check(), number.get().expectedCheck()));
        }
        List<DateCandidate> years = number.get().modelYears();
        if (years.isEmpty()) {
            return MarkJudgment.bare(
                    Verdict.MALFORMED, say("marks.vin.year-letter", number.get().yearLetter()));
        }
        MarkJudgment judged = dates.modelYear(List.of(new Completion(plain, years)));
        int year = years.get(0).to().getYear();
        return new MarkJudgment(judged.verdict(), holds(year, judged.why()), judged.candidates(), List.of());
    }

    private String holds(int year, String why) {
        return modelYear.isPresent() && modelYear.getAsInt() != year
                ? say("marks.vin.holds-other", year, why, modelYear.getAsInt())
                : say("marks.vin.holds", year, why);
    }

    /** The model year that the number says, if it is another than the car's claimed one. */
    public Optional<Integer> otherYear(MarkJudgment judged) {
        return judged.candidates().stream()
                .filter(date -> date.pattern().equals("model-year-letter"))
                .map(date -> date.to().getYear())
                .findFirst()
                .filter(year -> modelYear.isPresent() && modelYear.getAsInt() != year);
    }

    private MarkJudgment partlyRead(String plain) {
        int unread = UnreadLetter.count(plain);
        if (unread > MAX_UNREAD) {
            return MarkJudgment.bare(Verdict.CANNOT_TELL, say("marks.vin.unread", unread));
        }
        List<VehicleNumber> possible = VehicleNumber.completions(plain);
        List<Completion> completions = possible.stream()
                .filter(number -> !number.modelYears().isEmpty())
                .map(number -> new Completion(number.text(), number.modelYears()))
                .toList();
        if (completions.isEmpty()) {
            return MarkJudgment.bare(Verdict.MALFORMED, say("marks.vin.never-holds"));
        }
        MarkJudgment judged = dates.modelYear(completions);
        boolean open = judged.verdict() == Verdict.FITS || judged.verdict() == Verdict.CANNOT_TELL;
        String letters = unread == 1 ? letters(plain, possible) : "";
        return new MarkJudgment(
                open ? Verdict.CANNOT_TELL : judged.verdict(),
                (open ? say("marks.vin.untested") + letters + "; " : "") + judged.why(),
                judged.candidates(),
                List.of());
    }

    private static String letters(String plain, List<VehicleNumber> possible) {
        int at = plain.indexOf(UnreadLetter.LETTER);
        Set<String> letters = new LinkedHashSet<>();
        possible.forEach(number -> letters.add(number.text().substring(at, at + 1)));
        return letters.size() <= MAX_NAMED
                ? " ("
                        + say("marks.vin.letters", letters.stream().sorted().collect(Collectors.joining(", ")), at + 1)
                        + ")"
                : "";
    }
}

package quarterlight.words.clash;

import static quarterlight.language.Sentences.say;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import quarterlight.findings.StatementConflict;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.trial.TrialNames;
import quarterlight.words.clash.Assertion.Marked;
import quarterlight.words.clash.Assertion.Measured;
import quarterlight.words.clash.Assertion.Mileage;
import quarterlight.words.clash.Assertion.SignSeen;
import quarterlight.words.clash.Assertion.Stated;
import quarterlight.words.clash.Assertion.Sweeping;
import quarterlight.words.clash.Assertion.Tried;
import quarterlight.words.clause.Meaning;

/**
 * Whether two assertions can both hold, rule by rule. The rules and their limits are judgment and common practice, without a source: a figure said of an
 * odometer may be rounded, one that was read may not; two readings of a panel differ by where they were taken; a code may be read amiss in a letter or two.
 */
final class Opposition {
    /** Above this no one calls the coat a first finish: 12 mil. From memory, common practice. */
    static final double FIRST_FINISH_AT_MOST_UM = 304.8;

    /** What was told of the odometer may be rounded by this share. */
    private static final double ROUNDED = 0.05;

    /** So far the car may have been driven between two looks at the odometer. */
    private static final double DRIVEN = 50;

    private static final double FAR_APART = 2;
    private static final double FAR_APART_UM = 76;
    private static final int TAIL = 6;
    private static final Set<Condition> RUST =
            EnumSet.of(Condition.SURFACE_RUST, Condition.SCALE, Condition.PITTED, Condition.RUSTED_THROUGH);
    private static final Set<Condition> REDONE =
            EnumSet.of(Condition.REFINISHED, Condition.FILLER, Condition.ADDED_COATING);
    private static final Set<Condition> MENDED = EnumSet.of(Condition.REPAIRED, Condition.FILLER);
    /** One who calls a part sound may still go on to name a dent in it. */
    private static final Set<Condition> REFINING = EnumSet.of(Condition.DAMAGED, Condition.LEAKING, Condition.BLOCKED);

    private static final Set<String> REDONE_SIGNS = Set.of("overspray", "tape edge", "sanding scratches");
    private static final Set<String> HIT_SIGNS = Set.of("weak magnet", "gap out of line", "seam not as built");
    private static final Set<String> FAULTY = Set.of("does not", "works with a fault", "bypassed");
    private static final Set<String> NOT_WORKING = Set.of("does not", "bypassed", "not fitted");
    private static final Set<String> OF_THE_CAR = Set.of("vin", "plate");

    private final List<String> numbers;

    /** On which ground two cannot both hold. */
    record Ground(About about, String why) {}

    /** @param all among them the numbers of the car, against which stamps are laid */
    Opposition(List<Assertion> all) {
        numbers = all.stream()
                .filter(one -> one.said() instanceof Marked mark && OF_THE_CAR.contains(mark.kind()))
                .map(one -> tail(((Marked) one.said()).text()))
                .filter(text -> text.length() == TAIL)
                .distinct()
                .toList();
    }

    Optional<Ground> of(Assertion one, Assertion other) {
        if (one.said() instanceof Sweeping sweeping) {
            return sweeping(sweeping, one, other);
        }
        if (other.said() instanceof Sweeping sweeping) {
            return sweeping(sweeping, other, one);
        }
        if (one.said() instanceof Stated a && other.said() instanceof Stated b) {
            return stated(one, a, other, b);
        }
        if (one.said() instanceof SignSeen a && other.said() instanceof SignSeen b) {
            boolean opposed = one.sharesZone(other) && a.kind().equals(b.kind()) && a.seen() != b.seen();
            return ground(opposed, About.SIGN, say("clash.sign", Meaning.said(a.kind())));
        }
        if (one.said() instanceof Tried a && other.said() instanceof Tried b) {
            return ground(
                    a.item().equals(b.item()) && opposed(a.result(), b.result()),
                    About.FUNCTION,
                    say("clash.trial", TrialNames.said(a.item()), Meaning.said(a.result()), Meaning.said(b.result())));
        }
        if (one.said() instanceof Marked a && other.said() instanceof Marked b) {
            return ground(
                    one.meets(other) && differ(a, b),
                    About.MARK,
                    say("clash.mark", Meaning.said(a.kind()), a.text(), b.text()));
        }
        if (one.said() instanceof Mileage a && other.said() instanceof Mileage b) {
            return mileage(a, b);
        }
        if (one.said() instanceof Measured a && other.said() instanceof Measured b) {
            return ground(one.sharesZone(other) && farApart(a, b), About.THICKNESS, say("clash.readings"));
        }
        return Optional.empty();
    }

    private static Optional<Ground> ground(boolean holds, About about, String why) {
        return holds ? Optional.of(new Ground(about, why)) : Optional.empty();
    }

    private static Optional<Ground> stated(Assertion one, Stated a, Assertion other, Stated b) {
        boolean oneVoice = one.from().by().equals(other.from().by());
        boolean refined = oneVoice && (refines(a.facets(), b.facets()) || refines(b.facets(), a.facets()));
        boolean opposed = one.sharesZone(other)
                && a.part().equals(b.part())
                && !refined
                && StatementConflict.exclude(a.facets(), b.facets());
        boolean origins = a.facets().origin().isPresent() && b.facets().origin().isPresent();
        return ground(
                opposed,
                origins ? About.ORIGIN : About.CONDITION,
                say("clash.stated", a.facets().words(), b.facets().words()));
    }

    private static boolean refines(Facets general, Facets closer) {
        return general.is(Condition.SOUND)
                && closer.condition().filter(REFINING::contains).isPresent();
    }

    private static boolean opposed(String a, String b) {
        boolean works = a.equals("works") && NOT_WORKING.contains(b) || b.equals("works") && NOT_WORKING.contains(a);
        boolean amount = a.equals("none") && b.equals("heavy") || b.equals("none") && a.equals("heavy");
        boolean there = a.equals("not fitted") && FAULTY.contains(b) || b.equals("not fitted") && FAULTY.contains(a);
        return works || amount || there;
    }

    /** Numbers of the car that differ, save where one is the end of the other; other codes of one part that differ in a letter or two. */
    private static boolean differ(Marked a, Marked b) {
        String one = plain(a.text());
        String two = plain(b.text());
        if (!a.kind().equals(b.kind()) || one.isEmpty() || two.isEmpty() || suits(one, two)) {
            return false;
        }
        if (OF_THE_CAR.contains(a.kind())) {
            int end = Math.min(one.length(), two.length());
            boolean sameEnd = suits(one.substring(one.length() - end), two.substring(two.length() - end));
            return end >= TAIL && !sameEnd && a.part().equals(b.part());
        }
        return a.part().equals(b.part())
                && one.length() == two.length()
                && one.length() >= 3
                && differences(one, two) <= Math.max(1, one.length() / 3);
    }

    private static boolean suits(String one, String two) {
        return one.length() == two.length() && differences(one, two) == 0;
    }

    /** A letter that could not be read differs from none. */
    private static int differences(String one, String two) {
        int count = 0;
        for (int i = 0; i < one.length(); i++) {
            boolean unread = one.charAt(i) == '?' || two.charAt(i) == '?';
            count += unread || one.charAt(i) == two.charAt(i) ? 0 : 1;
        }
        return count;
    }

    private static String plain(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9?]", "");
    }

    private static String tail(String text) {
        String digits = text.replaceAll("\\D", "");
        return digits.length() < TAIL ? "" : digits.substring(digits.length() - TAIL);
    }

    private static Optional<Ground> mileage(Mileage a, Mileage b) {
        boolean aRead = a.source().equals("read");
        boolean bRead = b.source().equals("read");
        double gap = Math.abs(a.figure() - b.figure());
        if (aRead && bRead) {
            return ground(gap > DRIVEN, About.ODOMETER, say("clash.odometer.twice"));
        }
        if (!aRead && !bRead) {
            return Optional.empty();
        }
        Mileage read = aRead ? a : b;
        Mileage told = aRead ? b : a;
        if (told.source().equals("papers")) {
            return ground(told.figure() > read.figure() + DRIVEN, About.ODOMETER, say("clash.odometer.paper"));
        }
        return ground(
                gap > ROUNDED * Math.max(read.figure(), told.figure()), About.ODOMETER, say("clash.odometer.told"));
    }

    private static boolean farApart(Measured a, Measured b) {
        Measured low = a.highUm() < b.highUm() ? a : b;
        Measured high = a.highUm() < b.highUm() ? b : a;
        return high.lowUm() > low.highUm() * FAR_APART && high.lowUm() - low.highUm() > FAR_APART_UM;
    }

    private Optional<Ground> sweeping(Sweeping said, Assertion sweeping, Assertion other) {
        if (!sweeping.meets(other) && !(other.said() instanceof Tried)) {
            return Optional.empty();
        }
        return switch (said.what()) {
            case "first finish" -> firstFinish(other);
            case "no rust" -> condition(other, RUST, About.CONDITION, say("clash.rust"));
            case "no leaks" -> condition(other, EnumSet.of(Condition.LEAKING), About.CONDITION, say("clash.leak"));
            case "never hit" ->
                condition(other, MENDED, About.CONDITION, say("clash.repair"))
                        .or(() -> sign(other, HIT_SIGNS, say("clash.repair.sign")));
            case "all works" ->
                other.said() instanceof Tried tried && FAULTY.contains(tried.result())
                        ? Optional.of(new Ground(
                                About.FUNCTION,
                                say(
                                        "clash.not-all-works",
                                        TrialNames.said(tried.item()),
                                        Meaning.said(tried.result()))))
                        : Optional.empty();
            case "numbers match" -> numbersMatch(other);
            default -> Optional.empty();
        };
    }

    private static Optional<Ground> firstFinish(Assertion other) {
        if (other.said() instanceof Measured measured) {
            return ground(measured.highUm() > FIRST_FINISH_AT_MOST_UM, About.FINISH, say("clash.finish.thick"));
        }
        return condition(other, REDONE, About.FINISH, say("clash.finish.later"))
                .or(() -> sign(other, REDONE_SIGNS, say("clash.finish.sign")));
    }

    private static Optional<Ground> condition(Assertion other, Set<Condition> against, About about, String why) {
        return ground(
                other.said() instanceof Stated stated
                        && stated.facets().condition().filter(against::contains).isPresent(),
                about,
                why);
    }

    private static Optional<Ground> sign(Assertion other, Set<String> against, String why) {
        return ground(
                other.said() instanceof SignSeen sign
                        && sign.seen()
                        && against.contains(sign.kind().replace('-', ' ')),
                About.SIGN,
                why);
    }

    /** A stamp on engine or gearbox that does not end as the number of the car does. */
    private Optional<Ground> numbersMatch(Assertion other) {
        if (numbers.isEmpty()
                || !(other.said() instanceof Marked mark)
                || !mark.kind().equals("stamp")) {
            return Optional.empty();
        }
        String stamp = tail(mark.text());
        return ground(
                !stamp.isEmpty() && !numbers.contains(stamp),
                About.MARK,
                say("clash.numbers", String.join(", ", numbers)));
    }
}

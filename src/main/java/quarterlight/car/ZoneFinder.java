package quarterlight.car;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import quarterlight.car.body.DriveSide;

/**
 * Finds zones by a few typed characters: {@code df l} or {@code driver door} for the driver's front door.
 * <p>What is typed is cut at spaces and hyphens; every piece must name words of the zone that no other piece names: a whole word, the
 * beginning of one, or the initials of two or more that stand together, in the order of the id ({@code dfl}) or of the label
 * ({@code fdl}). {@code driver} and {@code passenger} stand for the sides by the drive side. Whole words go before beginnings, beginnings
 * before initials; only if nothing suits, a mistyped word passes. Then the zone with the fewest words left over. A zone ten times as likely as
 * another makes good two words left over; what is left equal stands in the order of the zone table. Immutable.
 */
public final class ZoneFinder {
    private static final int WHOLE = 0;
    private static final int BEGINNING = 2;
    private static final int INITIALS = 3;
    private static final int LEFT_OVER = 1;
    private static final int NEAR = 6;
    /** What a tenfold likelihood is worth against words left over. Judgement, tried on the sample visits. */
    private static final double TENFOLD = 2;

    private static final double LEAST_LIKELY = 1e-4;

    private record Entry(Zone zone, List<String> id, List<String> label, Set<String> all) {}

    private record Match(Zone zone, int cost, double likelihood) {
        double rank() {
            return cost - TENFOLD * Math.log10(Math.max(LEAST_LIKELY, likelihood));
        }
    }

    private final List<Entry> entries;

    /** @param zones the car's zones in the order of the table */
    public ZoneFinder(List<Zone> zones, DriveSide drive) {
        Objects.requireNonNull(drive, "drive");
        entries = zones.stream().map(zone -> entry(zone, drive)).toList();
    }

    /** The zones of a list that suit what is typed, best first; none for nothing typed. */
    public static List<Zone> matches(String typed, DriveSide drive, List<Zone> zones) {
        return new ZoneFinder(zones, drive).matches(typed);
    }

    public List<Zone> matches(String typed) {
        return matches(typed, zone -> 0);
    }

    /** @param likelihood of two zones that suit about equally well, the likelier goes first; 0 for a zone of which nothing is known */
    public List<Zone> matches(String typed, ToDoubleFunction<ZoneId> likelihood) {
        List<String> pieces = words(typed);
        if (pieces.isEmpty()) {
            return List.of();
        }
        List<Zone> found = matches(pieces, likelihood, false);
        return found.isEmpty() ? matches(pieces, likelihood, true) : found;
    }

    /** @param slips true to let a mistyped word pass */
    private List<Zone> matches(List<String> pieces, ToDoubleFunction<ZoneId> likelihood, boolean slips) {
        List<Match> found = new ArrayList<>();
        for (Entry entry : entries) {
            OptionalInt cost = cost(entry, pieces, slips);
            if (cost.isPresent()) {
                found.add(new Match(
                        entry.zone(),
                        cost.getAsInt(),
                        likelihood.applyAsDouble(entry.zone().id())));
            }
        }
        found.sort(Comparator.comparingDouble(Match::rank));
        return found.stream().map(Match::zone).toList();
    }

    private static Entry entry(Zone zone, DriveSide drive) {
        List<String> id = words(zone.id().value());
        List<String> label = words(zone.label());
        Set<String> all = new LinkedHashSet<>(id);
        all.addAll(label);
        zone.side().ifPresent(side -> all.add(side == drive ? "driver" : "passenger"));
        all.addAll(OtherWords.of(id));
        return new Entry(zone, id, label, all);
    }

    private static List<String> words(String text) {
        return List.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")).stream()
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** The least cost of naming words of the zone by all pieces; empty if some piece names none. */
    private static OptionalInt cost(Entry entry, List<String> pieces, boolean slips) {
        int best = Math.min(
                least(entry, pieces, 0, Set.of(), entry.id(), slips),
                least(entry, pieces, 0, Set.of(), entry.label(), slips));
        return best == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(best);
    }

    /** @param order the words in the order in which initials must stand */
    private static int least(
            Entry entry, List<String> pieces, int at, Set<String> used, List<String> order, boolean slips) {
        if (at == pieces.size()) {
            return LEFT_OVER
                    * (int) entry.id().stream()
                            .filter(word -> !used.contains(word))
                            .count();
        }
        String piece = pieces.get(at);
        int best = Integer.MAX_VALUE;
        for (String word : entry.all()) {
            boolean begins = word.startsWith(piece);
            if (!used.contains(word) && (begins || slips && OtherWords.isNear(piece, word))) {
                Set<String> more = new LinkedHashSet<>(used);
                more.add(word);
                names(entry, word).forEach(more::add);
                int cost = word.equals(piece) ? WHOLE : begins ? BEGINNING : NEAR;
                best = Math.min(best, plus(cost, least(entry, pieces, at + 1, more, order, slips)));
            }
        }
        for (int start = 0; piece.length() > 1 && start + piece.length() <= order.size(); start++) {
            List<String> run = order.subList(start, start + piece.length());
            if (initials(run).equals(piece) && run.stream().noneMatch(used::contains)) {
                Set<String> more = new LinkedHashSet<>(used);
                more.addAll(run);
                best = Math.min(best, plus(INITIALS, least(entry, pieces, at + 1, more, order, slips)));
            }
        }
        return best;
    }

    /** The zone's own words that another word for them also names: the side for driver and passenger. */
    private static List<String> names(Entry entry, String word) {
        List<String> same = new ArrayList<>();
        if (word.equals("driver") || word.equals("passenger")) {
            entry.zone().side().ifPresent(side -> same.add(side.name().toLowerCase(Locale.ROOT)));
        } else {
            same.addAll(OtherWords.meant(word, entry.id()));
        }
        return same;
    }

    private static String initials(List<String> words) {
        StringBuilder text = new StringBuilder();
        words.forEach(word -> text.append(word.charAt(0)));
        return text.toString();
    }

    private static int plus(int cost, int rest) {
        return rest == Integer.MAX_VALUE ? rest : cost + rest;
    }
}

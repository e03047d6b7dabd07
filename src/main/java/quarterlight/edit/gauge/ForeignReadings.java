package quarterlight.edit.gauge;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneFinder;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.table.TableRead.Refused;
import quarterlight.table.foreign.ForeignTable;
import quarterlight.table.foreign.ReadingProfile;
import quarterlight.table.text.LenientDateTime;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/**
 * What a table from another program says when read by a profile.
 *
 * @param readings those whose zone is known, in the order of the table
 * @param withoutZone those that have a time and no zone; they can be placed by the photos around them
 * @param unknown names of zones that nobody has matched yet
 * @param refused rows that cannot be taken, with the reason
 */
public record ForeignReadings(
        List<Placed> readings, List<WithoutZone> withoutZone, Map<String, Unknown> unknown, List<Refused> refused) {

    /** A reading with its zone, and its line of the table. */
    public record Placed(int line, Reading reading) {}

    /** The first row that names a zone nobody has matched, how many do, and the zone it most likely is. */
    public record Unknown(int line, int rows, Optional<ZoneId> guess) {}

    /**
     * A reading that has no zone yet.
     *
     * @param line of the table
     */
    public record WithoutZone(int line, GaugeValue value, LocalDateTime time, Optional<String> spot) {
        /** The same with its zone. */
        public Reading in(ZoneId zone) {
            return new Reading(
                    zone,
                    value,
                    Optional.of(time),
                    spot,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
    }

    public ForeignReadings {
        readings = List.copyOf(readings);
        withoutZone = List.copyOf(withoutZone);
        unknown = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(unknown));
        refused = List.copyOf(refused);
    }

    /** @throws EditRefused if the table lacks a column that the profile names */
    public static ForeignReadings of(ForeignTable table, ReadingProfile profile, VisitRecord visit, ZoneCatalog catalog)
            throws EditRefused {
        List<String> lacking = profile.lacking(table);
        if (!lacking.isEmpty()) {
            throw new EditRefused(
                    "columns",
                    say("refused.table.column", table.file(), lacking.get(0), String.join(", ", table.columns())));
        }
        return new Reader(table, profile, visit, catalog).read();
    }

    /** Why one row cannot be taken. */
    private static final class RowRefused extends Exception {
        private final Optional<String> column;

        RowRefused(Optional<String> column, String reason) {
            super(reason);
            this.column = column;
        }
    }

    private static final class Reader {
        /** Other words for panels; common practice, without a source. */
        private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
                Map.entry("bonnet", "hood"),
                Map.entry("motorhaube", "hood"),
                Map.entry("boot", "decklid"),
                Map.entry("kofferraum", "decklid"),
                Map.entry("heckklappe", "decklid"),
                Map.entry("wing", "fender"),
                Map.entry("top", "roof"),
                Map.entry("dach", "roof"),
                Map.entry("schweller", "rocker"),
                Map.entry("links", "left"),
                Map.entry("rechts", "right"),
                Map.entry("vorn", "front"),
                Map.entry("hinten", "rear"),
                Map.entry("lf", "left front"),
                Map.entry("rf", "right front"),
                Map.entry("lr", "left rear"),
                Map.entry("rr", "right rear"));

        private final ForeignTable table;
        private final ReadingProfile profile;
        private final VisitRecord visit;
        private final List<Zone> zones;
        private final ZoneFinder finder;
        private final Optional<LocalDate> day;
        private final List<Placed> readings = new ArrayList<>();
        private final List<WithoutZone> withoutZone = new ArrayList<>();
        private final Map<String, Unknown> unknown = new LinkedHashMap<>();
        private final List<Refused> refused = new ArrayList<>();

        Reader(ForeignTable table, ReadingProfile profile, VisitRecord visit, ZoneCatalog catalog) {
            this.table = Objects.requireNonNull(table, "table");
            this.profile = Objects.requireNonNull(profile, "profile");
            this.visit = Objects.requireNonNull(visit, "visit");
            this.zones = catalog.zonesOf(visit.facts().car().body());
            this.finder = new ZoneFinder(zones, visit.facts().car().drive());
            this.day = visit.facts().date();
        }

        ForeignReadings read() {
            table.odd().forEach(line -> refused.add(new Refused(line, Optional.empty(), say("refused.table.odd"))));
            for (ForeignTable.Line line : table.rows()) {
                try {
                    take(line);
                } catch (RowRefused e) {
                    refused.add(new Refused(line.number(), e.column, e.getMessage()));
                }
            }
            return new ForeignReadings(readings, withoutZone, unknown, refused);
        }

        private void take(ForeignTable.Line line) throws RowRefused {
            GaugeValue value = value(line);
            Optional<LocalDateTime> time = time(line);
            Optional<String> spot = cell(line, profile.spot());
            Optional<String> named = cell(line, profile.zone());
            if (named.isEmpty()) {
                LocalDateTime when =
                        time.orElseThrow(() -> new RowRefused(profile.zone(), say("refused.table.placeless")));
                withoutZone.add(new WithoutZone(line.number(), value, when, spot));
                return;
            }
            Optional<ZoneId> zone = zone(named.get());
            if (zone.isPresent()) {
                readings.add(new Placed(
                        line.number(),
                        new Reading(
                                zone.get(),
                                value,
                                time,
                                spot,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())));
            } else {
                Unknown before = unknown.getOrDefault(named.get(), new Unknown(line.number(), 0, guess(named.get())));
                unknown.put(named.get(), new Unknown(before.line(), before.rows() + 1, before.guess()));
            }
        }

        private Optional<String> cell(ForeignTable.Line line, Optional<String> column) {
            OptionalInt place = column.map(table::place).orElse(OptionalInt.empty());
            return place.isEmpty()
                    ? Optional.empty()
                    : Optional.of(line.cells()
                                    .get(place.getAsInt())
                                    .replace('\u00a0', ' ')
                                    .strip())
                            .filter(text -> !text.isEmpty());
        }

        private Optional<ZoneId> zone(String name) {
            String tidy = ForeignTable.tidy(name);
            return Optional.ofNullable(profile.zones().get(tidy))
                    .filter(id -> zones.stream().anyMatch(zone -> zone.id().equals(id)))
                    .or(() -> zones.stream()
                            .filter(zone -> zone.id().value().equals(tidy)
                                    || zone.label().toLowerCase(Locale.ROOT).equals(tidy))
                            .findFirst()
                            .map(Zone::id));
        }

        private Optional<ZoneId> guess(String name) {
            String words = Arrays.stream(ForeignTable.tidy(name).split("[^\\p{L}\\p{N}]+"))
                    .map(word -> OTHER_WORDS.getOrDefault(word, word))
                    .distinct()
                    .collect(Collectors.joining(" "));
            return finder.matches(words).stream().findFirst().map(Zone::id);
        }

        private GaugeValue value(ForeignTable.Line line) throws RowRefused {
            Optional<String> column = Optional.of(profile.value());
            String text = cell(line, column).orElseThrow(() -> new RowRefused(column, say("refused.table.empty")));
            if (text.matches("\\d+,\\d{3}")) {
                throw new RowRefused(column, say("refused.table.thousands", text));
            }
            String plain = text.toLowerCase(Locale.ROOT)
                    .replaceAll("\\bmicrons?\\b", "um")
                    .replaceAll("^ol$", "over");
            try {
                GaugeValue value =
                        TypedReading.of(plain, unit(line), visit.facts().gaugeRange());
                if (value instanceof GaugeValue.Measured measured
                        && measured.typed().signum() < 0) {
                    throw new RowRefused(column, say("refused.table.below", text));
                }
                return value;
            } catch (EditRefused e) {
                throw new RowRefused(column, e.getMessage());
            }
        }

        private ThicknessUnit unit(ForeignTable.Line line) throws RowRefused {
            Optional<String> text = cell(line, profile.unit()).map(unit -> unit.toLowerCase(Locale.ROOT));
            if (text.isEmpty()) {
                return profile.usual();
            }
            if (text.get().matches("mils?")) {
                return ThicknessUnit.MIL;
            }
            if (text.get().matches("um|\u00b5m|\u03bcm|microns?")) {
                return ThicknessUnit.UM;
            }
            throw new RowRefused(profile.unit(), say("refused.table.unit", text.get()));
        }

        private Optional<LocalDateTime> time(ForeignTable.Line line) throws RowRefused {
            Optional<String> text = cell(line, profile.time()).or(() -> cell(line, profile.date()));
            if (text.isEmpty()) {
                return Optional.empty();
            }
            Optional<LocalDate> known = cell(line, profile.date())
                    .flatMap(date -> LenientDateTime.date(date, profile.order()))
                    .or(() -> day);
            Optional<LocalDateTime> time = LenientDateTime.parse(
                    text.get(), profile.order(), known, visit.facts().timezone());
            if (time.isEmpty() && profile.time().isPresent()) {
                throw new RowRefused(
                        profile.time(),
                        say(known.isEmpty() ? "refused.table.bare-time" : "refused.table.time", text.get()));
            }
            return time;
        }
    }
}

package quarterlight.table.foreign;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.table.text.LenientDateTime;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;

/**
 * How tables of readings from some other program are read: which of their columns is what, said once by the user. Immutable.
 *
 * @param header the names of all columns, by which such a table is known again
 * @param value the column with the readings
 * @param zone the column with the zones; without one the readings are placed by their times
 * @param unit the column with the units
 * @param usual the unit of values whose row names none
 * @param time the column with the time, or with date and time in one
 * @param date the column with the date, if it stands apart
 * @param spot the column that groups readings of one place
 * @param order of the numbers of a date
 * @param zones what names of zones of the other program mean, however they are capitalized
 */
public record ReadingProfile(
        List<String> header,
        String value,
        Optional<String> zone,
        Optional<String> unit,
        ThicknessUnit usual,
        Optional<String> time,
        Optional<String> date,
        Optional<String> spot,
        LenientDateTime.Order order,
        Map<String, ZoneId> zones) {
    private static final String SEPARATOR = "\t";
    private static final String ZONE_PREFIX = "zone.";

    public ReadingProfile {
        header = header.stream().map(ForeignTable::tidy).toList();
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(usual, "usual");
        Objects.requireNonNull(order, "order");
        zones = zones.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(
                        e -> ForeignTable.tidy(e.getKey()), Map.Entry::getValue, (a, b) -> b));
    }

    /** True if the table has the header that this profile was made for. */
    public boolean suits(ForeignTable table) {
        return header.equals(table.columns().stream().map(ForeignTable::tidy).toList());
    }

    /** The columns named that the table does not have. */
    public List<String> lacking(ForeignTable table) {
        return java.util.stream.Stream.of(Optional.of(value), zone, unit, time, date, spot)
                .flatMap(Optional::stream)
                .filter(column -> table.place(column).isEmpty())
                .toList();
    }

    /** The same with more names of zones known. */
    public ReadingProfile knowing(Map<String, ZoneId> more) {
        Map<String, ZoneId> all = new TreeMap<>(zones);
        more.forEach((name, id) -> all.put(ForeignTable.tidy(name), id));
        return new ReadingProfile(header, value, zone, unit, usual, time, date, spot, order, all);
    }

    /** As keys and values for a file. */
    public Map<String, String> asText() {
        Map<String, String> text = new TreeMap<>();
        text.put("header", String.join(SEPARATOR, header));
        text.put("value", value);
        zone.ifPresent(column -> text.put("zone", column));
        unit.ifPresent(column -> text.put("unit", column));
        text.put("usual-unit", usual.word());
        time.ifPresent(column -> text.put("time", column));
        date.ifPresent(column -> text.put("date", column));
        spot.ifPresent(column -> text.put("spot", column));
        text.put("date-order", order.word());
        zones.forEach((name, id) -> text.put(ZONE_PREFIX + name, id.value()));
        return text;
    }

    /** What a file says; empty if it names no value column. Zones that cannot be are left out. */
    public static Optional<ReadingProfile> ofText(Map<String, String> text) {
        if (!text.containsKey("value")) {
            return Optional.empty();
        }
        Map<String, ZoneId> zones = text.entrySet().stream()
                .filter(e -> e.getKey().startsWith(ZONE_PREFIX) && ZoneId.isWellFormed(e.getValue()))
                .collect(Collectors.toMap(
                        e -> e.getKey().substring(ZONE_PREFIX.length()), e -> new ZoneId(e.getValue())));
        return Optional.of(new ReadingProfile(
                List.of(text.getOrDefault("header", "").split(SEPARATOR, -1)),
                text.get("value"),
                Optional.ofNullable(text.get("zone")),
                Optional.ofNullable(text.get("unit")),
                ThicknessUnit.said(text.getOrDefault("usual-unit", "")).orElse(ThicknessUnit.UM),
                Optional.ofNullable(text.get("time")),
                Optional.ofNullable(text.get("date")),
                Optional.ofNullable(text.get("spot")),
                Worded.find(LenientDateTime.Order.class, text.getOrDefault("date-order", ""))
                        .orElse(LenientDateTime.Order.YEAR_FIRST),
                zones));
    }
}

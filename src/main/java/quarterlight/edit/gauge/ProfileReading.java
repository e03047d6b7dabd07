package quarterlight.edit.gauge;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.settings.ColumnProfiles;
import quarterlight.table.foreign.ColumnGuess;
import quarterlight.table.foreign.ForeignTable;
import quarterlight.table.foreign.ReadingProfile;
import quarterlight.table.text.LenientDateTime;
import quarterlight.table.text.Nearest;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;

/** The user's profiles of tables from other programs: found, made from a few words, kept. Not for the event thread. */
public final class ProfileReading {
    private final ColumnProfiles profiles;

    /** @param settings the settings folder of the user; need not exist */
    public ProfileReading(Path settings) {
        profiles = new ColumnProfiles(Objects.requireNonNull(settings, "settings"));
    }

    /** A profile and the name it is kept under. */
    public record Named(String name, ReadingProfile profile) {}

    public List<String> names() {
        return profiles.names();
    }

    /** @throws EditRefused if no profile of this name is kept */
    public ReadingProfile named(String name) throws EditRefused {
        return find(name)
                .orElseThrow(() -> new EditRefused(
                        "profile",
                        "There is no profile " + name + "; "
                                + (names().isEmpty()
                                        ? "none is kept yet. Name the columns once with --columns."
                                        : "kept are " + String.join(", ", names()) + ".")));
    }

    public Optional<ReadingProfile> find(String name) {
        return profiles.read(name).flatMap(ReadingProfile::ofText);
    }

    /** The first profile that was made for a table with this header. */
    public Optional<Named> thatSuits(ForeignTable table) {
        return names().stream()
                .flatMap(name -> find(name).map(profile -> new Named(name, profile)).stream())
                .filter(named -> named.profile().suits(table))
                .findFirst();
    }

    /** @throws EditRefused if it cannot be called so, or cannot be written */
    public void keep(String name, ReadingProfile profile) throws EditRefused {
        if (!ColumnProfiles.isName(name)) {
            throw new EditRefused("profile", say("refused.profile.name", name));
        }
        try {
            profiles.keep(name, profile.asText());
        } catch (IOException e) {
            throw new EditRefused("profile", say("refused.table.kept"));
        }
    }

    /**
     * A profile made from words such as {@code zone=Panel, value=Thickness, unit=um, time=Taken, order=day-first}; what is not said is guessed.
     * A unit is a column of the table, or mil or um for all rows.
     *
     * @throws EditRefused if a word is none of these, or names no column
     */
    public static ReadingProfile ofWords(String words, ForeignTable table) throws EditRefused {
        ReadingProfile guess = ColumnGuess.of(table);
        Map<String, String> said = pairs(words);
        for (String key : said.keySet()) {
            if (!List.of("zone", "value", "unit", "time", "date", "spot", "order")
                    .contains(key)) {
                throw new EditRefused("columns", say("refused.profile.columns", key));
            }
        }
        Optional<ThicknessUnit> fixed = Optional.ofNullable(said.get("unit")).flatMap(ThicknessUnit::said);
        Optional<LenientDateTime.Order> order =
                Optional.ofNullable(said.get("order")).flatMap(word -> Worded.find(LenientDateTime.Order.class, word));
        if (said.containsKey("order") && order.isEmpty()) {
            throw new EditRefused("columns", say("refused.profile.order", Worded.words(LenientDateTime.Order.class)));
        }
        return new ReadingProfile(
                table.columns(),
                column(said, "value", Optional.of(guess.value()), table).orElseThrow(),
                column(said, "zone", guess.zone(), table),
                fixed.isPresent() ? Optional.empty() : column(said, "unit", guess.unit(), table),
                fixed.orElse(guess.usual()),
                column(said, "time", guess.time(), table),
                column(said, "date", guess.date(), table),
                column(said, "spot", guess.spot(), table),
                order.orElse(guess.order()),
                Map.of());
    }

    /** Names of zones of the other program with the zones they mean: {@code Motorhaube=hood, Dach=roof}. */
    public static Map<String, ZoneId> zones(String words, ZoneCatalog catalog) throws EditRefused {
        Map<String, ZoneId> zones = new LinkedHashMap<>();
        for (Map.Entry<String, String> one : split(words).entrySet()) {
            String id = one.getValue();
            if (!ZoneId.isWellFormed(id) || catalog.find(new ZoneId(id)).isEmpty()) {
                List<String> all =
                        catalog.all().stream().map(zone -> zone.id().value()).toList();
                throw new EditRefused("zones", say("refused.profile.zone", id, Nearest.hint(id, all)));
            }
            zones.put(one.getKey(), new ZoneId(id));
        }
        return zones;
    }

    private static Optional<String> column(
            Map<String, String> said, String what, Optional<String> guess, ForeignTable table) throws EditRefused {
        if (!said.containsKey(what)) {
            return guess;
        }
        String name = said.get(what);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        if (table.place(name).isEmpty()) {
            throw new EditRefused(
                    "columns",
                    say("refused.profile.column", table.file(), name, what, String.join(", ", table.columns())));
        }
        return Optional.of(name);
    }

    private static Map<String, String> pairs(String words) throws EditRefused {
        Map<String, String> pairs = new LinkedHashMap<>();
        split(words).forEach((key, value) -> pairs.put(key.toLowerCase(Locale.ROOT), value));
        return pairs;
    }

    private static Map<String, String> split(String words) throws EditRefused {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : words.split(",", -1)) {
            int sign = pair.indexOf('=');
            if (sign < 1) {
                throw new EditRefused("columns", say("refused.profile.pair", pair.strip()));
            }
            pairs.put(pair.substring(0, sign).strip(), pair.substring(sign + 1).strip());
        }
        return pairs;
    }
}

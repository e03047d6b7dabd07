package quarterlight.cli.evidence;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.edit.EditRefused;
import quarterlight.edit.gauge.ForeignReadings;
import quarterlight.edit.gauge.ProfileReading;
import quarterlight.table.TableRead;
import quarterlight.table.TableRead.Refused;
import quarterlight.table.TableUnreadable;
import quarterlight.table.foreign.ForeignTable;
import quarterlight.table.foreign.ReadingProfile;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.reading.Reading;
import quarterlight.walk.ReadingPlaces;

/** The part of {@code add} that takes readings from a table of some other program, by a profile of its columns. */
final class AddForeign {
    private static final String PROFILE = "--profile";
    private static final String COLUMNS = "--columns";
    private static final String ZONES = "--zones";

    private final CliContext around;

    AddForeign(CliContext around) {
        this.around = around;
    }

    static CommandSpec options(CommandSpec spec) {
        return spec.addOption(CliOptions.text(
                        PROFILE,
                        "NAME",
                        "add readings from a table of another program, with the columns saved under this name"))
                .addOption(CliOptions.text(
                        COLUMNS,
                        "PAIRS",
                        "name the columns once and save them under the profile:"
                                + " zone=Panel,value=Thickness,unit=um,time=Taken"))
                .addOption(CliOptions.text(
                        ZONES, "PAIRS", "match the zone names of the table once and save them: Bonnet=hood,Top=roof"));
    }

    static boolean isAsked(ParseResult call) {
        return call.hasMatchedOption(PROFILE) || call.hasMatchedOption(COLUMNS) || call.hasMatchedOption(ZONES);
    }

    /** Reads the table; a profile made or widened by the call is kept. */
    TableRead<Reading> read(ParseResult call, String kind, VisitRecord visit)
            throws CallRefused, EditRefused, IOException {
        if (!kind.equals("readings") || !call.hasMatchedOption(PROFILE)) {
            throw new CallRefused(
                    PROFILE + " NAME reads readings, and " + COLUMNS + " and " + ZONES + " are saved under it");
        }
        String name = call.matchedOptionValue(PROFILE, "");
        ProfileReading profiles = new ProfileReading(around.settings());
        try {
            ForeignTable table =
                    ForeignTable.read(around.console().in().file(CliOptions.pathAt(call, 2)), AddVerb.sheet(call));
            ReadingProfile profile = call.hasMatchedOption(COLUMNS)
                    ? ProfileReading.ofWords(call.matchedOptionValue(COLUMNS, ""), table)
                            .knowing(profiles.find(name)
                                    .map(ReadingProfile::zones)
                                    .orElse(Map.of()))
                    : profiles.named(name);
            if (call.hasMatchedOption(ZONES)) {
                profile = profile.knowing(ProfileReading.zones(
                        call.matchedOptionValue(ZONES, ""), around.zones().get()));
            }
            ForeignReadings read =
                    ForeignReadings.of(table, profile, visit, around.zones().get());
            profiles.keep(name, profile);
            return tableRead(table, read, visit);
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    /** Rows without a zone are not taken here: the refusal says where they likely belong. */
    private TableRead<Reading> tableRead(ForeignTable table, ForeignReadings read, VisitRecord visit) {
        List<Refused> refused = new ArrayList<>(read.refused());
        read.unknown()
                .forEach((name, row) -> refused.add(new Refused(
                        row.line(),
                        Optional.of("zone"),
                        "no zone is matched to \"" + name + "\" is"
                                + row.guess().map(zone -> "; perhaps " + zone).orElse("") + ". Match it with "
                                + ZONES
                                + " \"" + name + "="
                                + row.guess().map(ZoneId::value).orElse("ZONE") + "\"")));
        List<LocalDateTime> times = read.withoutZone().stream()
                .map(ForeignReadings.WithoutZone::time)
                .toList();
        Map<Integer, ReadingPlaces.Place> places =
                ReadingPlaces.of(visit, CorrectedTimes.of(visit), times, readable(visit)).stream()
                        .collect(Collectors.toMap(ReadingPlaces.Place::reading, place -> place));
        for (int i = 0; i < times.size(); i++) {
            Optional<ReadingPlaces.Place> place = Optional.ofNullable(places.get(i));
            refused.add(new Refused(
                    read.withoutZone().get(i).line(),
                    Optional.of("zone"),
                    "the row has no zone"
                            + place.map(one -> "; from photos taken near that time, probably " + one.zone() + " ("
                                            + Math.round(100 * one.share()) + " percent, "
                                            + shown(one.away()) + " from a photo pinned there)")
                                    .orElse("")
                            + ". Write the zone in the table, or confirm the suggestion in the window"));
        }
        refused.sort(java.util.Comparator.comparingInt(Refused::line));
        List<TableRead.Row<Reading>> rows = read.readings().stream()
                .map(row -> new TableRead.Row<>(row.line(), row.reading()))
                .toList();
        return new TableRead<>(table.file(), true, rows, refused);
    }

    private Set<ZoneId> readable(VisitRecord visit) {
        return around.zones().get().zonesOf(visit.facts().car().body()).stream()
                .filter(zone -> zone.group() == ZoneGroup.OUTER)
                .map(Zone::id)
                .collect(Collectors.toSet());
    }

    private static String shown(Duration away) {
        return String.format(Locale.ROOT, "%d:%02d min", away.toMinutes(), away.toSecondsPart());
    }
}

package quarterlight.ui.tables;

import java.awt.Window;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.edit.gauge.ForeignReadings;
import quarterlight.edit.gauge.ProfileReading;
import quarterlight.edit.row.RowEdits;
import quarterlight.table.foreign.ColumnGuess;
import quarterlight.table.foreign.ForeignTable;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** Takes readings from tables of other programs: asks for their columns, keeps the profile, adds the rows, places the rest. Event thread only. */
public final class ForeignTables {
    private final UiContext parts;
    private final OpenVisit visit;
    private final Window owner;

    public ForeignTables(UiContext parts, OpenVisit visit, Window owner) {
        this.parts = Objects.requireNonNull(parts, "parts");
        this.visit = Objects.requireNonNull(visit, "visit");
        this.owner = owner;
    }

    /** A table as it stands, with the profile to begin with and the name it is kept under. */
    record Begun(ForeignTable table, ProfileReading.Named named, boolean known) {}

    /** Reads a file in the background and asks what its columns are. */
    public void take(Path file, Optional<String> sheet) {
        ProfileReading profiles = new ProfileReading(parts.settings().folder());
        parts.jobs()
                .start(
                        parts.texts().get("take.table", String.valueOf(file.getFileName())),
                        progress -> begin(file, sheet, profiles),
                        begun -> new ColumnSheet(parts, visit, begun)
                                .ask(owner)
                                .ifPresent(answer -> keep(answer, profiles)),
                        parts.problems()::failed);
    }

    private static Begun begin(Path file, Optional<String> sheet, ProfileReading profiles) throws Exception {
        ForeignTable table = ForeignTable.read(file, sheet);
        Optional<ProfileReading.Named> known = profiles.thatSuits(table);
        return new Begun(
                table,
                known.orElseGet(() -> new ProfileReading.Named(stem(table.file()), ColumnGuess.of(table))),
                known.isPresent());
    }

    private static String stem(String file) {
        int dot = file.lastIndexOf('.');
        String name = (dot > 0 ? file.substring(0, dot) : file)
                .replaceAll("[^\\p{L}\\p{N} _-]", " ")
                .strip();
        return name.isEmpty() ? "gauge" : name.substring(0, Math.min(40, name.length()));
    }

    private void keep(ColumnSheet.Answer answer, ProfileReading profiles) {
        List<Reading> rows = answer.readings().readings().stream()
                .map(ForeignReadings.Placed::reading)
                .toList();
        visit.edit(
                store -> {
                    profiles.keep(answer.named().name(), answer.named().profile());
                    return new RowEdits(store).add(RecordKind.READINGS, rows);
                },
                added -> told(answer, added));
    }

    private void told(ColumnSheet.Answer answer, RowEdits.Added added) {
        List<ForeignReadings.WithoutZone> left = answer.readings().withoutZone();
        if (!left.isEmpty()) {
            new PlaceSheet(parts, visit, left).show(owner);
            return;
        }
        String sentence = parts.texts()
                .get("take.added", RecordKind.READINGS.count(added.ids().size()));
        int refused = answer.readings().refused().size()
                + answer.readings().unknown().values().stream()
                        .mapToInt(ForeignReadings.Unknown::rows)
                        .sum();
        String rest = refused == 0 ? "" : " " + parts.texts().get("tables.left-out", refused);
        String equal = added.equalToOlder() == 0 ? "" : " " + parts.texts().get("tables.equal", added.equalToOlder());
        parts.problems().remark(sentence + equal + rest);
    }
}

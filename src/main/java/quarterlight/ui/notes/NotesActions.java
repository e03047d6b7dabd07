package quarterlight.ui.notes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import quarterlight.car.ZoneId;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.settings.PhraseFile;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.said.SentenceReading;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;
import quarterlight.visit.trial.Trial;

/** What can be done in the Notes station: keep statements, trials, facts and wishes. Each is one step of undo. Event thread only. */
final class NotesActions {
    private final UiContext parts;
    private final OpenVisit visit;
    private final NotesModel model;

    NotesActions(UiContext parts, OpenVisit visit, NotesModel model) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
    }

    /** Adds one statement of the same words for every zone; of the film in hand, it speaks of the moment shown. */
    void state(
            List<ZoneId> zones,
            Facets what,
            String text,
            Optional<Severity> severity,
            Optional<Basis> basis,
            Optional<PhotoId> photo,
            List<PhotoId> more,
            StatementDetails details) {
        OptionalDouble moment = visit.selection().moment();
        Optional<Double> at =
                photo.isPresent() && photo.equals(visit.selection().photo()) && moment.isPresent()
                        ? Optional.of(moment.getAsDouble())
                        : Optional.empty();
        List<Statement> rows = zones.stream()
                .map(zone -> new Statement(zone, what, text, severity, basis, photo, at, more, details))
                .toList();
        visit.edit(
                store -> {
                    RowEdits.Added added = new RowEdits(store).add(RecordKind.STATEMENTS, rows);
                    new PhraseFile(parts.settings().folder()).keep(text);
                    return added;
                },
                added -> model.wrote(text));
    }

    <T> void update(RecordKind<T> kind, RecordId id, T value) {
        visit.edit(
                store -> {
                    new RowEdits(store).update(kind, id, value);
                    return id;
                },
                done -> {});
    }

    <T> void add(RecordKind<T> kind, List<T> rows) {
        visit.edit(store -> new RowEdits(store).add(kind, rows), done -> {});
    }

    <T> void remove(RecordKind<T> kind, List<RecordId> ids) {
        if (visit.isEditable() && !ids.isEmpty()) {
            visit.edit(
                    store -> {
                        new RowEdits(store).remove(kind, ids);
                        return ids;
                    },
                    done -> {});
        }
    }

    /** Keeps the outcome of a trial in place of the one that the visit has of the same function. */
    void tried(Optional<RecordId> old, Trial trial) {
        if (old.isPresent()) {
            update(RecordKind.TRIALS, old.get(), trial);
        } else {
            add(RecordKind.TRIALS, List.of(trial));
        }
    }

    void fact(String key, String value) {
        visit.edit(store -> new FactEdits(parts.catalog()).set(store, Map.of(key, value)), done -> {});
    }

    /** Asks for so much of a kind of evidence of a zone (of every zone if empty) in this visit, in place of the usual. */
    void wish(CoverageOverride wish) {
        Optional<Recorded<CoverageOverride>> old = visit.visit().coverage().stream()
                .filter(row -> row.value().zone().equals(wish.zone())
                        && row.value().evidence().equals(wish.evidence()))
                .findFirst();
        if (old.isPresent()) {
            update(RecordKind.COVERAGE, old.get().id(), wish);
        } else {
            add(RecordKind.COVERAGE, List.of(wish));
        }
    }

    /** Reads the lists again, after a change of the user's own. */
    void reload() {
        load(model::lists);
    }

    /** Reads what lies outside the visit: the functions to try and the sentences of earlier visits. */
    void load(Consumer<NotesModel.Lists> loaded) {
        SentenceReading reading = new SentenceReading(parts, visit);
        parts.jobs()
                .start(
                        parts.texts().get("notes.loading"),
                        progress -> new NotesModel.Lists(
                                parts.work().trials(visit.folder()),
                                new PhraseFile(parts.settings().folder()).read(),
                                reading.load()),
                        loaded,
                        parts.problems()::failed);
    }
}

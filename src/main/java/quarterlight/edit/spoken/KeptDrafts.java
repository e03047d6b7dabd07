package quarterlight.edit.spoken;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Statement;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;

/**
 * Which drafts are kept already, told from the rows alone. A row comes from a draft if it has its source and second (a statement), or quotes its words with
 * their second (other rows), and says the same of it. A row that was changed since still counts where only one draft of that kind has these words.
 */
final class KeptDrafts {
    private static final double SAME_SECOND = 0.011;
    private static final List<Facet> COMPARED =
            List.of(Facet.ORIGIN, Facet.CONDITION, Facet.SIGN, Facet.ITEM, Facet.TEXT, Facet.VALUE);

    private final VisitRecord visit;
    private final VisitWalk walk;

    private KeptDrafts(VisitRecord visit, VisitWalk walk) {
        this.visit = visit;
        this.walk = walk;
    }

    /** The ids of the drafts that are kept. */
    static Set<String> of(VisitRecord visit, VisitWalk walk) {
        KeptDrafts kept = new KeptDrafts(visit, walk);
        Set<String> ids = new HashSet<>();
        for (Draft draft : walk.drafts()) {
            List<Trace> from = kept.from(draft);
            if (from.stream().anyMatch(row -> row.says(draft)) || !from.isEmpty() && kept.isAlone(draft)) {
                ids.add(draft.id());
            }
        }
        return Set.copyOf(ids);
    }

    /** What of a row can be compared with a draft. */
    private record Trace(Optional<ZoneId> zone, List<String> said) {
        boolean says(Draft draft) {
            boolean same = draft.what() == DraftKind.NOT_LOOKED_AT
                    ? said.contains(Condition.NOT_LOOKED_AT.word())
                    : COMPARED.stream()
                            .flatMap(facet -> draft.facet(facet).stream())
                            .anyMatch(said::contains);
            return (same || said.isEmpty()) && zone.map(draft.zones()::contains).orElse(true);
        }
    }

    private boolean isAlone(Draft draft) {
        return walk.drafts().stream()
                        .filter(other -> other.source().equals(draft.source())
                                && other.what() == draft.what()
                                && Math.abs(other.atSeconds() - draft.atSeconds()) < SAME_SECOND)
                        .count()
                == 1;
    }

    private List<Trace> from(Draft draft) {
        List<PhotoId> sources = sources(draft);
        String quote = SpokenQuote.of(draft);
        Function<Optional<String>, Boolean> quoted =
                note -> note.filter(text -> text.contains(quote)).isPresent();
        return switch (draft.what()) {
            case STATEMENT, NOT_LOOKED_AT ->
                visit.statements().stream()
                        .map(row -> row.value())
                        .filter(row -> row.photos().stream().anyMatch(sources::contains))
                        .filter(row -> row.atSeconds()
                                .filter(at -> Math.abs(at - draft.atSeconds()) < SAME_SECOND)
                                .isPresent())
                        .map(KeptDrafts::trace)
                        .toList();
            case THICKNESS ->
                visit.readings().stream()
                        .map(row -> row.value())
                        .filter(row -> quoted.apply(row.note()))
                        .map(row -> new Trace(Optional.of(row.zone()), typed(row.value())))
                        .toList();
            case SIGN ->
                visit.signs().stream()
                        .map(row -> row.value())
                        .filter(row -> quoted.apply(row.note())
                                && row.photo().filter(sources::contains).isPresent())
                        .map(row -> new Trace(
                                Optional.of(row.zone()), List.of(row.kind().word())))
                        .toList();
            case TRIAL ->
                visit.trials().stream()
                        .map(row -> row.value())
                        .filter(row -> quoted.apply(row.note()))
                        .map(row -> new Trace(Optional.empty(), List.of(row.item())))
                        .toList();
            case MARK ->
                visit.marks().stream()
                        .map(row -> row.value())
                        .filter(row -> quoted.apply(row.note())
                                && row.photo().filter(sources::contains).isPresent())
                        .map(row -> new Trace(Optional.empty(), List.of(row.text())))
                        .toList();
            case CLAIM ->
                visit.claims().stream()
                        .map(row -> row.value())
                        .filter(row -> row.text().equals(draft.words().strip())
                                && row.photo().filter(sources::contains).isPresent())
                        .map(row -> new Trace(Optional.empty(), List.of()))
                        .toList();
            case ODOMETER ->
                visit.odometer().stream()
                        .map(row -> row.value())
                        .filter(row -> quoted.apply(row.note()))
                        .map(row -> new Trace(Optional.empty(), List.of()))
                        .toList();
            case GAUGE ->
                visit.gaugeChecks().stream()
                        .map(row -> row.value())
                        .filter(row -> quoted.apply(row.note()))
                        .map(row -> new Trace(Optional.empty(), List.of()))
                        .toList();
        };
    }

    private static List<String> typed(GaugeValue value) {
        if (value instanceof GaugeValue.Measured measured) {
            return List.of(measured.typed().toPlainString());
        }
        return value instanceof GaugeValue.Range range ? List.of(range.typed()) : List.of("");
    }

    private static Trace trace(Statement row) {
        List<String> said = new ArrayList<>();
        row.what().origin().map(Worded::word).ifPresent(said::add);
        row.what().condition().map(Worded::word).ifPresent(said::add);
        return new Trace(Optional.of(row.zone()), said);
    }

    private List<PhotoId> sources(Draft draft) {
        VisitWalk.Part part = walk.parts().get(draft.source());
        return Stream.concat(Stream.of(part.words()), part.about().stream())
                .map(Photo::id)
                .toList();
    }
}

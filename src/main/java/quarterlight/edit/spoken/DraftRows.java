package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowKinds;
import quarterlight.table.RowKind;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.trial.TrialResult;
import quarterlight.words.Draft;
import quarterlight.words.Facet;

/**
 * The rows that a draft becomes when it is kept, made of the cells that a table would have, so that the same rules hold. What several zones are meant by
 * becomes a row each, save what is one thing: a mark, a trial, a claim.
 */
final class DraftRows {
    /** In these units a figure alone answers the trial. */
    private static final Set<String> MEASURES = Set.of("V", "psi", "bar", "mm", "1/32 in");

    private final RowContext context;

    DraftRows(RowContext context) {
        this.context = context;
    }

    /** A row of a kind. */
    record Row<T>(RecordKind<T> kind, T value) {}

    /** @throws CellRefused if the draft lacks what a row needs */
    List<Row<?>> of(Draft draft, VisitWalk.Part part) throws CellRefused {
        return switch (draft.what()) {
            case STATEMENT -> perZone(RecordKind.STATEMENTS, draft, statement(draft, part, Facet.CONDITION));
            case NOT_LOOKED_AT ->
                perZone(RecordKind.STATEMENTS, draft, with(statement(draft, part), "condition", "not looked at"));
            case THICKNESS -> perZone(RecordKind.READINGS, draft, reading(draft));
            case SIGN -> perZone(RecordKind.SIGNS, draft, shown(noted(draft, Facet.SIGN, Facet.SEEN), part));
            case TRIAL -> one(RecordKind.TRIALS, inZone(draft, trial(draft)));
            case MARK -> one(RecordKind.MARKS, inZone(draft, shown(mark(draft), part)));
            case CLAIM -> one(RecordKind.CLAIMS, inZone(draft, shown(claim(draft), part)));
            case ODOMETER -> one(RecordKind.ODOMETER, odometer(draft));
            case GAUGE -> one(RecordKind.GAUGE, gauge(draft));
        };
    }

    private <T> List<Row<?>> one(RecordKind<T> kind, Map<String, String> cells) throws CellRefused {
        RowKind<?> rows = RowKinds.find(kind.word()).orElseThrow();
        return List.of(row(rows, cells));
    }

    private <T> Row<T> row(RowKind<T> kind, Map<String, String> cells) throws CellRefused {
        return new Row<>(kind.kind(), kind.value(new Cells(cells, false, context)));
    }

    private List<Row<?>> perZone(RecordKind<?> kind, Draft draft, Map<String, String> cells) throws CellRefused {
        if (draft.zones().isEmpty()) {
            throw new CellRefused("zone", say("refused.draft.zone", kind.one()));
        }
        Stream.Builder<Row<?>> rows = Stream.builder();
        for (ZoneId zone : draft.zones()) {
            one(kind, with(cells, "zone", zone.value())).forEach(rows);
        }
        return rows.build().toList();
    }

    private static Map<String, String> with(Map<String, String> cells, String column, String value) {
        Map<String, String> more = new LinkedHashMap<>(cells);
        more.put(column, value);
        return more;
    }

    private static Map<String, String> cells(Draft draft, Facet... facets) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Facet facet : facets) {
            draft.facet(facet).filter(said -> !said.isBlank()).ifPresent(said -> cells.put(facet.word(), said));
        }
        return cells;
    }

    private static Map<String, String> noted(Draft draft, Facet... facets) {
        return with(cells(draft, facets), "note", SpokenQuote.of(draft));
    }

    private Map<String, String> shown(Map<String, String> cells, VisitWalk.Part part) {
        return with(cells, "photo", context.nameOf(part.evidence().id()));
    }

    private static Map<String, String> inZone(Draft draft, Map<String, String> cells) {
        return draft.zones().size() == 1
                ? with(cells, "zone", draft.zones().get(0).value())
                : cells;
    }

    private Map<String, String> statement(Draft draft, VisitWalk.Part part, Facet... more) {
        Map<String, String> cells = shown(cells(draft, Facet.ORIGIN, Facet.CERTAINTY, Facet.SAID_BY, Facet.SIZE), part);
        cells.putAll(cells(draft, more));
        partOf(draft).ifPresent(name -> cells.put("part", name));
        cells.put("text", draft.words().strip());
        cells.put("at", second(draft));
        return cells;
    }

    private static String second(Draft draft) {
        return BigDecimal.valueOf(draft.atSeconds()).toPlainString();
    }

    /** The part, where its name says more than that of the zone. */
    private static Optional<String> partOf(Draft draft) {
        return draft.facet(Facet.PART).filter(name -> !name.isBlank()).filter(name -> draft.zones().stream()
                .noneMatch(zone ->
                        zone.value().contains(name.toLowerCase(Locale.ROOT).replace(' ', '-'))));
    }

    private static Map<String, String> reading(Draft draft) throws CellRefused {
        if (draft.facet(Facet.LOW_UM).isEmpty()) {
            throw new CellRefused("value", say("refused.draft.value"));
        }
        return noted(draft, Facet.VALUE, Facet.UNIT);
    }

    /** A figure of what is measured is the answer; of what works or does not it stands beside it. */
    private static Map<String, String> trial(Draft draft) {
        Map<String, String> cells = noted(draft, Facet.ITEM, Facet.RESULT, Facet.VALUE, Facet.UNIT);
        boolean measured = draft.facet(Facet.UNIT).filter(MEASURES::contains).isPresent()
                && draft.facet(Facet.RESULT).filter("works"::equals).isPresent();
        if (measured && cells.containsKey("value")) {
            cells.put("result", TrialResult.MEASURED.word());
        }
        return cells;
    }

    private static Map<String, String> gauge(Draft draft) throws CellRefused {
        if (draft.facet(Facet.KIND).isEmpty()) {
            throw new CellRefused("shown", say("refused.draft.gauge"));
        }
        Map<String, String> cells = noted(draft, Facet.UNIT);
        cells.put("when", draft.facet(Facet.TEXT).orElse(""));
        cells.put("on", draft.facet(Facet.KIND).orElse(""));
        cells.put("nominal", draft.facet(Facet.EXPECTED).orElse(""));
        cells.put("shown", draft.facet(Facet.VALUE).orElse(""));
        return cells;
    }

    private static Map<String, String> mark(Draft draft) throws CellRefused {
        String part = draft.facet(Facet.PART)
                .filter(name -> !name.isBlank())
                .or(() -> draft.zones().size() == 1
                        ? Optional.of(draft.zones().get(0).value())
                        : Optional.empty())
                .orElseThrow(() -> new CellRefused("part", say("refused.draft.part")));
        return with(noted(draft, Facet.KIND, Facet.TEXT, Facet.EXPECTED), "part", part);
    }

    private static Map<String, String> claim(Draft draft) {
        Map<String, String> cells = with(cells(draft), "text", draft.words().strip());
        draft.facet(Facet.SAID_BY).ifPresent(by -> cells.put("by", by));
        partOf(draft).ifPresent(name -> cells.put("part", name));
        return cells;
    }

    private static Map<String, String> odometer(Draft draft) throws CellRefused {
        Map<String, String> cells =
                with(noted(draft), "figure", draft.facet(Facet.VALUE).orElse(""));
        cells.put("unit", distanceUnit(draft));
        cells.put(
                "source",
                draft.facet(Facet.SAID_BY)
                        .map(by -> by.equals("papers") ? "papers" : "told")
                        .orElse("read"));
        return cells;
    }

    private static String distanceUnit(Draft draft) throws CellRefused {
        String words = " " + draft.words().toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ") + " ";
        if (words.contains(" miles ") || words.contains(" mile ") || words.contains(" mileage ")) {
            return "mi";
        }
        if (words.contains(" km ") || words.contains(" kilomet") || words.contains(" kays ")) {
            return "km";
        }
        throw new CellRefused("unit", say("refused.draft.unit"));
    }
}

package quarterlight.ui.doubt;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import quarterlight.car.ZoneId;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.findings.Findings;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.Verdict;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.Station;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Condition;

/**
 * All that is open in a visit, station by station: photos without a pin, readings that stand apart, marks that do not fit, statements
 * without a photo, claims that nobody decided, evidence that is missing. Immutable.
 */
public final class Doubts {
    private static final Set<Verdict> DOUBTFUL = Set.of(Verdict.TOO_LATE, Verdict.UNUSUALLY_EARLY, Verdict.MALFORMED);

    private final Texts texts;
    private final Function<ZoneId, String> label;
    private final List<Doubt> found = new ArrayList<>();

    private Doubts(Texts texts, Function<ZoneId, String> label) {
        this.texts = texts;
        this.label = label;
    }

    /**
     * In the order in which they are gone through.
     *
     * @param label the name of a zone for readers
     * @param findings empty before they were worked out; then only what the rows tell is open
     */
    public static List<Doubt> of(
            Texts texts,
            Function<ZoneId, String> label,
            VisitRecord visit,
            Optional<Findings> findings,
            List<ZoneCoverage> coverage) {
        Doubts doubts = new Doubts(texts, label);
        doubts.photos(visit);
        findings.ifPresent(doubts::readings);
        findings.ifPresent(doubts::marks);
        doubts.statements(visit);
        doubts.claims(visit);
        doubts.gaps(coverage);
        return List.copyOf(doubts.found);
    }

    /**
     * What is said when one comes into hand: how many are open, as far as that is known, and what it is.
     *
     * @param workedOut whether the findings have come; until then the count is not final, and none is no answer
     */
    public static String said(Texts texts, List<Doubt> open, Optional<Doubt> inHand, boolean workedOut) {
        return inHand.map(doubt ->
                        texts.get(workedOut ? "doubt.open" : "doubt.open.so-far", open.size(), doubt.sentence()))
                .orElseGet(() -> texts.get(workedOut ? "doubt.none" : "working.out"));
    }

    private void photos(VisitRecord visit) {
        Set<PhotoId> pinned = new HashSet<>();
        visit.pins().forEach(row -> pinned.add(row.value().photo()));
        for (Photo photo : visit.photos()) {
            boolean open = !pinned.contains(photo.id())
                    && photo.setAside().isEmpty()
                    && !photo.file().kind().isHeldBack();
            if (open) {
                add(
                        Station.PHOTOS,
                        Optional.empty(),
                        List.of(),
                        Set.of(),
                        List.of(photo.id()),
                        texts.get("doubt.photo", photo.file().name()));
            }
        }
    }

    private void readings(Findings findings) {
        findings.thickness().zones().stream()
                .filter(zone -> !zone.outliers().isEmpty())
                .forEach(zone -> add(
                        Station.GAUGE,
                        Optional.of(RecordKind.READINGS),
                        List.of(),
                        Set.of(zone.zone()),
                        List.of(),
                        texts.get("doubt.reading", label.apply(zone.zone()))));
    }

    private void marks(Findings findings) {
        for (JudgedMark mark : findings.marks().marks()) {
            if (DOUBTFUL.contains(mark.verdict())) {
                add(
                        Station.MARKS,
                        Optional.of(RecordKind.MARKS),
                        List.of(mark.row()),
                        mark.mark().zone().map(Set::of).orElse(Set.of()),
                        mark.mark().photo().map(List::of).orElse(List.of()),
                        texts.get(
                                "doubt.mark", mark.mark().part(), mark.verdict().said()));
            }
        }
    }

    private void statements(VisitRecord visit) {
        visit.statements().stream()
                .filter(row -> row.value().photos().isEmpty()
                        && !row.value().is(Condition.NOT_LOOKED_AT)
                        && !visit.isWithdrawn(row.id()))
                .forEach(row -> add(
                        Station.NOTES,
                        Optional.of(RecordKind.STATEMENTS),
                        List.of(row.id()),
                        Set.of(row.value().zone()),
                        List.of(),
                        texts.get("doubt.statement", row.value().text())));
    }

    private void claims(VisitRecord visit) {
        visit.claims().stream().filter(row -> row.value().judged().isEmpty()).forEach(row -> {
            Claim claim = row.value();
            add(
                    Station.NOTES,
                    Optional.of(RecordKind.CLAIMS),
                    List.of(row.id()),
                    claim.zone().map(Set::of).orElse(Set.of()),
                    List.of(),
                    texts.get("doubt.claim", claim.text()));
        });
    }

    private void gaps(List<ZoneCoverage> coverage) {
        coverage.stream()
                .flatMap(zone -> zone.gaps().stream())
                .filter(gap -> gap.excuse().isEmpty())
                .forEach(gap -> found.add(new Doubt(
                        Station.NOTES,
                        new ChangedRows(
                                Optional.of(RecordKind.COVERAGE),
                                List.of(),
                                Set.of(gap.zone().id()),
                                List.of()),
                        Optional.of(gap),
                        texts.get("doubt.gap", gap.zone().label(), gap.lacks().said(), gap.have(), gap.want()))));
    }

    private void add(
            Station station,
            Optional<RecordKind<?>> kind,
            List<RecordId> rows,
            Set<ZoneId> zones,
            List<PhotoId> photos,
            String sentence) {
        found.add(new Doubt(station, new ChangedRows(kind, rows, zones, photos), Optional.empty(), sentence));
    }
}

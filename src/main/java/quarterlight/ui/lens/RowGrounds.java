package quarterlight.ui.lens;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.ui.kit.place.Subject;
import quarterlight.units.Numerals;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;

/** What one row says, and what its verdict rests on. Pure functions. */
final class RowGrounds {
    private static final int DATES = 4;

    private RowGrounds() {}

    static String title(Grounds of, Subject.OfRow asked) {
        return mark(of, asked)
                .map(row -> row.value().part() + ", " + row.value().text())
                .or(() -> find(of.visit().statements(), asked, RecordKind.STATEMENTS)
                        .map(row -> of.label(row.value().zone())))
                .or(() -> find(of.visit().claims(), asked, RecordKind.CLAIMS)
                        .map(row -> row.value().text()))
                .or(() -> find(of.visit().trials(), asked, RecordKind.TRIALS)
                        .map(row -> row.value().item()))
                .orElse("");
    }

    static List<Ground> of(Grounds of, Subject.OfRow asked) {
        List<Ground> grounds = new ArrayList<>();
        mark(of, asked).ifPresent(row -> grounds.addAll(ofMark(of, row)));
        find(of.visit().statements(), asked, RecordKind.STATEMENTS).ifPresent(row -> grounds.add(statement(of, row)));
        find(of.visit().claims(), asked, RecordKind.CLAIMS).ifPresent(row -> grounds.addAll(ofClaim(of, row)));
        find(of.visit().trials(), asked, RecordKind.TRIALS).ifPresent(row -> grounds.add(trial(of, row)));
        return grounds;
    }

    private static Optional<Recorded<Mark>> mark(Grounds of, Subject.OfRow asked) {
        return find(of.visit().marks(), asked, RecordKind.MARKS);
    }

    private static <T> Optional<Recorded<T>> find(List<Recorded<T>> rows, Subject.OfRow asked, RecordKind<T> kind) {
        return rows.stream()
                .filter(row -> asked.kind() == kind && row.id().equals(asked.row()))
                .findFirst();
    }

    static Ground statement(Grounds of, Recorded<Statement> row) {
        Statement one = row.value();
        String details = Stream.of(
                        Optional.of(one.what().words()),
                        one.severity().map(severity -> severity.said()),
                        one.basis().map(basis -> basis.said()),
                        one.details().certainty().map(certainty -> certainty.said()),
                        Optional.of(of.texts()
                                .get("lens.said-by", one.details().saidBy().said())))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return new Ground(
                of.texts().get("lens.statement"),
                one.text() + " (" + details + ")",
                "",
                Ground.at(RecordKind.STATEMENTS, List.of(row.id()), Set.of(one.zone()), one.photos()),
                Optional.empty());
    }

    private static List<Ground> ofMark(Grounds of, Recorded<Mark> row) {
        Mark mark = row.value();
        Set<ZoneId> zones = mark.zone().map(Set::of).orElse(Set.of());
        List<PhotoId> photos = mark.photo().map(List::of).orElse(List.of());
        List<Ground> grounds = new ArrayList<>();
        grounds.add(new Ground(
                of.texts().get("lens.as-read"),
                mark.text() + mark.note().map(note -> " (" + note + ")").orElse(""),
                of.texts().get(photos.isEmpty() ? "lens.as-read.no-photo" : "lens.as-read.rule"),
                Ground.at(RecordKind.MARKS, List.of(row.id()), zones, photos),
                Optional.empty()));
        of.findings().marks().marks().stream()
                .filter(judged -> judged.row().equals(row.id()))
                .findFirst()
                .ifPresent(judged -> grounds.addAll(verdict(of, judged, zones, photos)));
        of.visit().marks().stream()
                .filter(other -> !other.id().equals(row.id())
                        && other.value().part().equalsIgnoreCase(mark.part())
                        && other.value().kind() == mark.kind())
                .forEach(other -> grounds.add(new Ground(
                        of.texts().get("lens.other-view"),
                        other.value().text(),
                        "",
                        Ground.at(
                                RecordKind.MARKS,
                                List.of(other.id()),
                                zones,
                                other.value().photo().map(List::of).orElse(List.of())),
                        Optional.empty())));
        return grounds;
    }

    private static List<Ground> verdict(Grounds of, JudgedMark judged, Set<ZoneId> zones, List<PhotoId> photos) {
        List<RecordId> rows = List.of(judged.row());
        List<Ground> grounds = new ArrayList<>();
        grounds.add(new Ground(
                of.texts().get("lens.verdict"),
                judged.verdict().said() + ": " + judged.why(),
                of.texts().get("lens.verdict.rule"),
                Ground.at(RecordKind.MARKS, rows, zones, photos),
                Optional.empty()));
        judged.candidates().stream()
                .limit(DATES)
                .forEach(date -> grounds.add(new Ground(
                        of.texts().get("lens.date"),
                        DateText.of(date),
                        of.texts().get("lens.date.rule", date.pattern()),
                        Ground.at(RecordKind.MARKS, rows, zones, photos),
                        Optional.empty())));
        Stream.concat(judged.matches().stream().map(match -> match.sentence()), judged.decoded().stream())
                .forEach(sentence -> grounds.add(new Ground(
                        of.texts().get("lens.number"),
                        sentence,
                        "",
                        Ground.at(RecordKind.MARKS, rows, zones, photos),
                        Optional.empty())));
        return grounds;
    }

    private static List<Ground> ofClaim(Grounds of, Recorded<Claim> row) {
        Claim claim = row.value();
        Set<ZoneId> zones = claim.zone().map(Set::of).orElse(Set.of());
        List<PhotoId> photos = claim.photo().map(List::of).orElse(List.of());
        List<Ground> grounds = new ArrayList<>();
        grounds.add(new Ground(
                of.texts().get("lens.claim"),
                claim.text() + " (" + claim.by().said() + ")",
                "",
                Ground.at(RecordKind.CLAIMS, List.of(row.id()), zones, photos),
                Optional.empty()));
        ClaimedAndFound.of(of.findings()).stream()
                .filter(laid -> laid.claim().equals(claim))
                .findFirst()
                .ifPresent(laid -> {
                    grounds.add(new Ground(
                            of.texts().get("lens.verdict"),
                            laid.judgment().said(),
                            of.texts().get(claim.judged().isPresent() ? "lens.claim.decided" : "lens.claim.proposed"),
                            Ground.at(RecordKind.CLAIMS, List.of(row.id()), zones, photos),
                            Optional.empty()));
                    laid.found()
                            .forEach(sentence -> grounds.add(new Ground(
                                    of.texts().get("lens.found"),
                                    sentence,
                                    "",
                                    Ground.at(RecordKind.CLAIMS, List.of(row.id()), zones, List.of()),
                                    Optional.empty())));
                });
        return grounds;
    }

    static Ground trial(Grounds of, Recorded<Trial> row) {
        Trial trial = row.value();
        String value = trial.value()
                .map(number -> ", " + Numerals.typed(number)
                        + trial.unit().map(unit -> " " + unit).orElse(""))
                .orElse("");
        List<PhotoId> photos = of.visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> trial.zone().equals(Optional.of(pin.zone())))
                .map(pin -> pin.photo())
                .distinct()
                .toList();
        return new Ground(
                of.texts().get("lens.trial"),
                TrialNames.said(trial.item()) + ": " + trial.result().said() + value
                        + trial.note().map(note -> " (" + note + ")").orElse(""),
                "",
                Ground.at(
                        RecordKind.TRIALS,
                        List.of(row.id()),
                        trial.zone().map(Set::of).orElse(Set.of()),
                        photos),
                Optional.empty());
    }
}

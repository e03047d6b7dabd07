package quarterlight.compare.hour;

import static quarterlight.language.Sentences.say;
import static quarterlight.language.Sentences.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.compare.matter.CarBrief;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.CellClass;
import quarterlight.compare.matter.MatterCell;
import quarterlight.compare.matter.MatterRow;
import quarterlight.compare.matter.MatterTable;
import quarterlight.compare.matter.Topic;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.NextMeasurement;
import quarterlight.rust.need.RepairRule;
import quarterlight.visit.statement.Severity;

/**
 * What to do with one hour more at a car: first what could turn up something grave, then what would make a grave or major row of the table
 * comparable, then the reading of which the finish model expects most, then the rest of the car's own list. Immutable.
 */
public final class OneHour {
    /** As many as one hour has room for. Judgment. */
    private static final int MAX_LOOKS = 7;

    /** Least expected fall of the uncertainty of a panel that makes it worth measuring, in bits. Judgment. */
    private static final double MIN_BITS = 0.1;

    private static final int NAMED = 4;

    private final MatterTable table;
    private final int car;

    private OneHour(MatterTable table, int car) {
        this.table = table;
        this.car = car;
    }

    /** @param car which car of the table */
    public static List<HourLook> of(MatterTable table, int car) {
        return new OneHour(table, car).looks();
    }

    private List<HourLook> looks() {
        List<CarBrief.Look> own = table.cars().get(car).brief().next();
        List<HourLook> looks = new ArrayList<>();
        own.stream().filter(CarBrief.Look::grave).map(OneHour::own).forEach(looks::add);
        List<MatterRow> open = table.heavy().stream().filter(this::isOpenHere).toList();
        open(
                open.stream().filter(row -> row.subject().topic() == Topic.RUST).toList(),
                "compare.one-hour.look-for-rust",
                looks);
        open(open.stream().filter(row -> row.subject().topic() == Topic.TRIAL).toList(), "compare.one-hour.try", looks);
        open(
                open.stream()
                        .filter(row -> !Set.of(Topic.RUST, Topic.TRIAL, Topic.FINISH, Topic.GAUGE)
                                .contains(row.subject().topic()))
                        .toList(),
                "compare.one-hour.look-at",
                looks);
        measure(open).ifPresent(looks::add);
        own.stream().filter(look -> !look.grave()).map(OneHour::own).forEach(looks::add);
        return looks.stream().distinct().limit(MAX_LOOKS).toList();
    }

    private static HourLook own(CarBrief.Look look) {
        return new HourLook(look.what(), look.why(), look.caution());
    }

    private boolean isOpenHere(MatterRow row) {
        return row.cells().get(car).kind() == CellClass.NOT_LOOKED_AT
                && row.cells().stream().anyMatch(cell -> cell.kind() == CellClass.FOUND);
    }

    /** Rows found on another car and not looked at here, as one look: they lie close together or take the same tool. */
    private void open(List<MatterRow> rows, String key, List<HourLook> looks) {
        if (rows.isEmpty()) {
            return;
        }
        List<String> names = rows.stream().map(this::name).distinct().toList();
        String foremost = names.stream().limit(NAMED).collect(Collectors.joining("; "));
        String named =
                names.size() > NAMED ? say("compare.car-answers.and-more", foremost, names.size() - NAMED) : foremost;
        MatterRow first = rows.get(0);
        String where = first.cells().size() > 2 ? "compare.one-hour.on-another" : "compare.one-hour.on-the-other";
        Severity severity = first.severity();
        looks.add(new HourLook(
                say(key, named), say(where, foundOn(first), severity.said(), found(first)), caution(first)));
    }

    private static Optional<String> caution(MatterRow row) {
        return row.subject().topic() == Topic.RUST ? Optional.of(RepairRule.liftCaution()) : Optional.empty();
    }

    private String name(MatterRow row) {
        String here = row.subject().places().stream()
                .map(place -> place.labelOn(car))
                .filter(label -> !label.isEmpty())
                .collect(Collectors.joining("; "));
        return here.isEmpty() ? row.place() : here;
    }

    private static String foundOn(MatterRow row) {
        return IntStream.range(0, row.cells().size())
                .filter(i -> row.cells().get(i).kind() == CellClass.FOUND)
                .mapToObj(MatterRow::letter)
                .collect(Collectors.joining(", "));
    }

    private static String found(MatterRow row) {
        return row.cells().stream()
                .filter(cell -> cell.kind() == CellClass.FOUND)
                .map(MatterCell::text)
                .findFirst()
                .orElse("");
    }

    /** The reading of which most is to be expected; panels on which another car shows something come first. */
    private Optional<HourLook> measure(List<MatterRow> open) {
        CarEvidence here = table.cars().get(car);
        Findings findings = here.findings();
        Set<ZoneId> asked = open.stream()
                .filter(row -> row.subject().topic() == Topic.FINISH)
                .flatMap(row -> row.subject().places().stream())
                .map(place -> place.on(car))
                .flatMap(List::stream)
                .map(Zone::id)
                .collect(Collectors.toSet());
        List<NextMeasurement> next = new FinishEngine(findings.evidence().profile())
                .joint(findings.evidence()).next().stream()
                        .filter(one -> one.why() != NextMeasurement.Why.SETTLED && one.expectedBits() >= MIN_BITS)
                        .toList();
        return next.stream()
                .filter(one -> asked.contains(one.zone()))
                .findFirst()
                .or(() -> next.stream().findFirst())
                .map(one -> measured(findings, one));
    }

    private static HourLook measured(Findings findings, NextMeasurement next) {
        String label = findings.catalog().get(next.zone()).label();
        return new HourLook(
                say("compare.one-hour.measure-spots-on", next.spots(), label),
                say("compare.one-hour.of-all-panels-the-finish", next.about(), within(next.settles())),
                Optional.empty());
    }
}

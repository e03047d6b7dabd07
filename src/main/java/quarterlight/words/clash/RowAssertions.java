package quarterlight.words.clash;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.units.Numerals;
import quarterlight.units.Thickness;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.TrialNames;
import quarterlight.words.clash.Assertion.Said;
import quarterlight.words.clause.Heard;

/** What is asserted by the rows of a visit; claims are read by the same ear as the words of a walk. Pure. */
final class RowAssertions {
    /** Of a claim that someone wrote down less has to be certain than of speech. */
    private static final double WRITTEN = 0.3;

    private static final String CAR = "car";

    private final VisitRecord visit;
    private final RowFilter counts;
    private final List<Assertion> found = new ArrayList<>();

    /** Which rows count; those that come from the words of the walk are there already. */
    @FunctionalInterface
    interface RowFilter {
        boolean counts(Recorded<?> row);
    }

    private RowAssertions(VisitRecord visit, RowFilter counts) {
        this.visit = visit;
        this.counts = counts;
    }

    /** @param ear reads a written sentence */
    static List<Assertion> of(VisitRecord visit, RowFilter counts, Function<String, Heard> ear) {
        RowAssertions rows = new RowAssertions(visit, counts);
        rows.gather(ear);
        return rows.found;
    }

    private void gather(Function<String, Heard> ear) {
        rows(visit.statements()).stream()
                .filter(row -> !visit.isWithdrawn(row.id()))
                .forEach(row -> statement(row.id().value(), row.value()));
        rows(visit.claims()).forEach(row -> claim(row.id().value(), row.value(), ear));
        rows(visit.marks())
                .forEach(row -> add(
                        RecordKind.MARKS,
                        row.id().value(),
                        row.value().zone(),
                        new Assertion.Marked(
                                Assertion.part(
                                        row.value().part(),
                                        row.value().zone().map(List::of).orElse(List.of())),
                                row.value().kind().word(),
                                row.value().text()),
                        CAR,
                        row.value().part() + ", " + row.value().kind().said() + ": "
                                + row.value().text()));
        rows(visit.signs())
                .forEach(row -> add(
                        RecordKind.SIGNS,
                        row.id().value(),
                        Optional.of(row.value().zone()),
                        new Assertion.SignSeen(
                                row.value().kind().word(), row.value().seen()),
                        "inspector",
                        say(
                                row.value().seen() ? "clash.row.seen" : "clash.row.not-seen",
                                row.value().kind().said())));
        rows(visit.trials())
                .forEach(row -> add(
                        RecordKind.TRIALS,
                        row.id().value(),
                        row.value().zone(),
                        new Assertion.Tried(
                                row.value().item(), row.value().result().word()),
                        "inspector",
                        TrialNames.said(row.value().item()) + ": "
                                + row.value().result().said()));
        rows(visit.odometer()).stream()
                .filter(row -> !row.value().wentRound())
                .forEach(row -> add(
                        RecordKind.ODOMETER,
                        row.id().value(),
                        Optional.empty(),
                        new Assertion.Mileage(
                                row.value().figure().doubleValue(),
                                row.value().source().word()),
                        switch (row.value().source()) {
                            case READ -> CAR;
                            case PAPERS -> "papers";
                            case TOLD -> "seller";
                        },
                        Numerals.typed(row.value().figure()) + " "
                                + row.value().unit().said()
                                + row.value()
                                        .date()
                                        .map(date -> ", " + date.said())
                                        .orElse("")));
        rows(visit.readings()).stream()
                .filter(row -> row.value().exclude().isEmpty())
                .flatMap(row -> span(row).stream())
                .collect(Collectors.groupingBy(Span::zone, TreeMap::new, Collectors.toList()))
                .values()
                .forEach(this::readings);
    }

    private <T> List<Recorded<T>> rows(List<Recorded<T>> all) {
        return all.stream().filter(row -> counts.counts(row)).toList();
    }

    private void add(RecordKind<?> kind, long id, Optional<ZoneId> zone, Said said, String by, String text) {
        found.add(new Assertion(zone.map(List::of).orElse(List.of()), said, Testimony.row(by, text, kind.word(), id)));
    }

    private void statement(long id, Statement row) {
        List<ZoneId> zones = List.of(row.zone());
        found.add(new Assertion(
                zones,
                new Assertion.Stated(Assertion.part(row.details().part().orElse(""), zones), row.what()),
                Testimony.row(
                        row.details().saidBy().word(),
                        row.text().isBlank() ? row.what().words() : row.text(),
                        RecordKind.STATEMENTS.word(),
                        id)));
    }

    /** One reading, from its lower to its higher value. */
    private record Span(String zone, long id, double lowUm, double highUm, String typed) {}

    private static Optional<Span> span(Recorded<Reading> row) {
        String zone = row.value().zone().value();
        if (row.value().value() instanceof GaugeValue.Measured measured) {
            double um = measured.thickness().um();
            String typed =
                    Numerals.typed(measured.typed()) + " " + measured.unit().word();
            return Optional.of(new Span(zone, row.id().value(), um, um, typed));
        }
        if (row.value().value() instanceof GaugeValue.Range range) {
            double low = Thickness.of(range.low().doubleValue(), range.unit()).um();
            double high = Thickness.of(range.high().doubleValue(), range.unit()).um();
            String typed = range.typed() + " " + range.unit().word();
            return Optional.of(new Span(zone, row.id().value(), low, high, typed));
        }
        return Optional.empty();
    }

    /** The readings of a zone together; the row is that of the highest. */
    private void readings(List<Span> zone) {
        Span low = zone.stream().min(Comparator.comparingDouble(Span::lowUm)).orElseThrow();
        Span high = zone.stream().max(Comparator.comparingDouble(Span::highUm)).orElseThrow();
        String text = zone.size() == 1
                ? say("clash.row.reads", high.typed())
                : say("clash.row.readings", zone.size(), low.typed(), high.typed());
        add(
                RecordKind.READINGS,
                high.id(),
                Optional.of(new ZoneId(high.zone())),
                new Assertion.Measured(low.lowUm(), high.highUm()),
                "gauge",
                text);
    }

    /** What a claim says of the car, as far as the ear knows its words; the zone that was given goes before the one that was read. */
    private void claim(long id, Claim row, Function<String, Heard> ear) {
        Testimony from = Testimony.row(row.by().word(), row.text(), RecordKind.CLAIMS.word(), id);
        List<ZoneId> given = row.zone().map(List::of).orElse(List.of());
        for (Assertion said : SpokenAssertions.of(ear.apply(row.text()), draft -> draft.p() >= WRITTEN)) {
            boolean whole = said.said() instanceof Assertion.Mileage || said.said() instanceof Assertion.Tried;
            Said what = said.said() instanceof Assertion.Mileage mileage
                    ? new Assertion.Mileage(mileage.figure(), row.by().word().equals("papers") ? "papers" : "told")
                    : said.said();
            found.add(new Assertion(given.isEmpty() || whole ? said.zones() : given, what, from));
        }
    }
}

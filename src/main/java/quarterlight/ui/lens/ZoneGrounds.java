package quarterlight.ui.lens;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.page.report.text.LikelihoodTexts;
import quarterlight.rust.TraceArea;
import quarterlight.rust.ZoneRust;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.thickness.spot.Spot;
import quarterlight.ui.kit.Format;
import quarterlight.units.Thickness;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.trial.Sign;

/** What the numbers of one zone rest on: its readings, its signs, its outlines, what was stated of it. Pure functions. */
final class ZoneGrounds {
    private static final double MM2_PER_CM2 = 100;

    private final Grounds of;
    private final ZoneId zone;
    private final List<Ground> found = new ArrayList<>();

    private ZoneGrounds(Grounds of, ZoneId zone) {
        this.of = of;
        this.zone = zone;
    }

    static List<Ground> of(Grounds of, ZoneId zone) {
        ZoneGrounds made = new ZoneGrounds(of, zone);
        of.findings().thickness().zone(zone).ifPresent(made::thickness);
        of.findings().history().zone(zone).filter(h -> !h.reasons().isEmpty()).ifPresent(made::likelihood);
        of.findings().rust().zone(zone).filter(ZoneRust::lookedAt).ifPresent(made::rust);
        made.statements();
        made.marks();
        made.trials();
        return List.copyOf(made.found);
    }

    /** All photos pinned to a zone. */
    static Optional<Ground> photos(Grounds of, ZoneId zone) {
        List<PhotoId> photos = of.visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> pin.zone().equals(zone))
                .map(pin -> pin.photo())
                .distinct()
                .toList();
        return photos.isEmpty()
                ? Optional.empty()
                : Optional.of(new Ground(
                        of.texts().get("lens.photos"),
                        of.texts().get("lens.photos.text", photos.size()),
                        "",
                        Ground.at(RecordKind.PINS, List.of(), Set.of(zone), photos),
                        Optional.empty()));
    }

    private void add(String head, String text, String rule, RecordKind<?> kind, List<RecordId> rows) {
        found.add(new Ground(
                of.texts().get(head),
                text,
                rule.isEmpty() ? "" : of.texts().get(rule),
                Ground.at(kind, rows, Set.of(zone), List.of()),
                Optional.empty()));
    }

    private String shown(double um) {
        return Format.thicknessWithUnit(new Thickness(um), of.unit());
    }

    private void thickness(ZoneThickness thickness) {
        List<Recorded<Reading>> readings = of.visit().readings().stream()
                .filter(row -> row.value().zone().equals(zone))
                .toList();
        if (thickness.readable() && thickness.meanUm().isPresent()) {
            String interval = thickness.showsInterval()
                    ? of.texts()
                            .get(
                                    "lens.thickness.interval",
                                    shown(thickness.ci95LowUm().getAsDouble()),
                                    shown(thickness.ci95HighUm().getAsDouble()))
                    : "";
            add(
                    "lens.thickness",
                    of.texts()
                            .get(
                                    "lens.thickness.text",
                                    shown(thickness.meanUm().getAsDouble()),
                                    thickness.readings(),
                                    thickness.valueSpots(),
                                    interval),
                    "lens.thickness.rule",
                    RecordKind.READINGS,
                    readings.stream().map(Recorded::id).toList());
        }
        Map<RecordId, Reading> byId = readings.stream().collect(Collectors.toMap(Recorded::id, Recorded::value));
        for (Spot spot : thickness.spots()) {
            String values = spot.readings().stream()
                    .map(byId::get)
                    .filter(java.util.Objects::nonNull)
                    .map(this::typed)
                    .collect(Collectors.joining("; "));
            add("lens.spot", values, "", RecordKind.READINGS, spot.readings());
        }
        readings.stream()
                .filter(row -> row.value().exclude().isPresent())
                .forEach(row -> add(
                        "lens.excluded",
                        typed(row.value()) + ": " + row.value().exclude().get(),
                        "",
                        RecordKind.READINGS,
                        List.of(row.id())));
        GaugeQuality.Summary check = GaugeQuality.of(of.visit()).summary();
        add(
                "lens.gauge",
                of.texts().get("gauge.check." + check.name().toLowerCase(java.util.Locale.ROOT)),
                "lens.gauge.rule",
                RecordKind.GAUGE,
                of.visit().gaugeChecks().stream().map(Recorded::id).toList());
    }

    private String typed(Reading reading) {
        String value = reading.value() instanceof GaugeValue.Measured measured
                ? shown(measured.thickness().um())
                : reading.value() instanceof GaugeValue.Range range
                        ? range.typed()
                        : of.texts()
                                .get(
                                        reading.value() instanceof GaugeValue.NoMetal
                                                ? "lens.reading.no-metal"
                                                : "lens.reading.over");
        return value
                + reading.time().map(time -> ", " + Format.clock(time)).orElse("")
                + reading.note().map(note -> ", " + note).orElse("");
    }

    private void likelihood(ZoneHistory history) {
        List<String> said = LikelihoodTexts.sentences(history);
        add("lens.likelihood", said.get(0) + " " + said.get(1), "lens.likelihood.rule", RecordKind.READINGS, List.of());
        List<FinishReason> reasons = history.reasons();
        List<String> texts = said.subList(said.size() - reasons.size(), said.size());
        for (int i = 0; i < reasons.size(); i++) {
            FinishReason reason = reasons.get(i);
            List<Recorded<Sign>> signs = of.visit().signs().stream()
                    .filter(row -> Optional.of(row.value().kind()).equals(reason.sign())
                            && row.value()
                                    .speaksFor()
                                    .orElse(row.value().zone())
                                    .equals(zone))
                    .toList();
            RecordKind<?> kind =
                    switch (reason.source()) {
                        case SIGN -> RecordKind.SIGNS;
                        case RUST -> RecordKind.TRACES;
                        case VALUES, NO_METAL, REST_OF_CAR -> RecordKind.READINGS;
                    };
            found.add(new Ground(
                    of.texts().get("lens.reason"),
                    texts.get(i).replaceAll("\\s*\\([^()]*\\)\\.?$", "") + ".",
                    "",
                    Ground.at(
                            kind,
                            signs.stream().map(Recorded::id).toList(),
                            Set.of(zone),
                            signs.stream()
                                    .flatMap(row -> row.value().photo().stream())
                                    .toList()),
                    Optional.empty()));
        }
    }

    private void rust(ZoneRust rust) {
        String grade = rust.gradeInWords()
                .map(words -> of.texts().get("lens.rust.grade", words))
                .orElse("");
        String need = rust.need()
                .map(one -> of.texts().get("lens.rust.need", one.said()))
                .orElse("");
        add(
                "lens.rust",
                (grade + need + String.join(" ", rust.advice().reasons())).strip(),
                "lens.rust.rule",
                RecordKind.TRACES,
                List.of());
        of.findings().rust().traces().stream()
                .filter(area -> area.zone().equals(zone))
                .forEach(this::outline);
    }

    private void outline(TraceArea area) {
        Optional<Trace> drawn = of.visit().traces().stream()
                .filter(row -> row.id().equals(area.id()))
                .map(Recorded::value)
                .findFirst();
        String size = area.area()
                .map(one -> of.texts()
                        .get(
                                "lens.outline.size",
                                Format.number(one.mm2() / MM2_PER_CM2, 1),
                                Format.number(area.sdMm2().orElse(0) / MM2_PER_CM2, 1)))
                .orElse("");
        found.add(new Ground(
                of.texts().get("lens.outline"),
                area.kind().said() + size + String.join(" ", area.remarks()),
                "",
                Ground.at(RecordKind.TRACES, List.of(area.id()), Set.of(zone), List.of(area.photo())),
                drawn.map(Trace::outline)));
    }

    private void statements() {
        of.visit().statements().stream()
                .filter(row -> row.value().zone().equals(zone) && !of.visit().isWithdrawn(row.id()))
                .forEach(row -> found.add(RowGrounds.statement(of, row)));
    }

    private void marks() {
        of.findings().marks().marks().stream()
                .filter(judged -> judged.mark().zone().equals(Optional.of(zone)))
                .forEach(judged -> found.add(new Ground(
                        of.texts().get("lens.mark"),
                        judged.mark().part() + ", " + judged.mark().text() + ": "
                                + judged.verdict().said() + ". " + judged.why(),
                        of.texts().get("lens.verdict.rule"),
                        Ground.at(
                                RecordKind.MARKS,
                                List.of(judged.row()),
                                Set.of(zone),
                                judged.mark().photo().map(List::of).orElse(List.of())),
                        Optional.empty())));
    }

    private void trials() {
        of.visit().trials().stream()
                .filter(row -> row.value().zone().equals(Optional.of(zone)))
                .forEach(row -> found.add(RowGrounds.trial(of, row)));
    }
}

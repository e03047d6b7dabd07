package quarterlight.page.report.text;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.rust.EverydaySize;
import quarterlight.rust.TraceArea;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.units.Area;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** The rust of a zone in words: extent, grades, holes, each outline with its area, and what the zone needs. */
final class RustTexts {
    private final Findings car;
    private final Shots shots;

    RustTexts(Findings car, Shots shots) {
        this.car = car;
        this.shots = shots;
    }

    /** Empty for a zone that was not looked at, has no outline and needs nothing. */
    Optional<ReportContent.RustText> of(ZoneId zone) {
        List<ReportContent.TraceText> traces = traces(zone);
        return car.rust()
                .zone(zone)
                .filter(rust -> rust.lookedAt()
                        || !traces.isEmpty()
                        || rust.need().filter(n -> n != RepairNeed.NONE).isPresent())
                .map(rust -> new ReportContent.RustText(
                        figures(rust),
                        traces,
                        need(rust),
                        Stream.concat(rust.remarks().stream(), shared(zone).stream())
                                .toList(),
                        rust.cautions()));
    }

    private static String figures(ZoneRust zone) {
        if (!zone.lookedAt()) {
            return say("report.rust-texts.not-looked-at-for-rust");
        }
        double mm2 = zone.rust().map(Area::mm2).orElse(0.0);
        if (!zone.byEye().isEmpty() && zone.rust().isEmpty()) {
            return say("report.rust-texts.seen-by-eye-not-outlined");
        }
        if (mm2 == 0) {
            return say("report.rust-texts.looked-for-none-seen");
        }
        List<String> parts = new ArrayList<>();
        String spread = zone.rustSdMm2().isPresent()
                ? say(
                        "report.rust-texts.mm-from-the-marking",
                        figure("%.0f", zone.rustSdMm2().getAsDouble()))
                : "";
        parts.add(size(zone.rust().get()) + spread);
        if (zone.percent().isPresent() && zone.zoneArea().isPresent()) {
            parts.add(say(
                    "report.rust-texts.of-the-zone-s-nominal",
                    figure("%.2g", zone.percent().getAsDouble()),
                    figure("%,.0f", zone.zoneArea().get().mm2() / 100)));
        }
        zone.gradeInWords().ifPresent(grade -> parts.add(say("report.rust-texts.astm-d610-grade", grade)));
        if (zone.ri().isPresent()) {
            parts.add(say("report.rust-texts.iso-4628-3-ri", zone.ri().getAsInt()));
        }
        int holes = zone.holes().orElse(0);
        if (holes > 0) {
            parts.add((holes == 1 ? say("report.rust-texts.1-hole") : say("report.rust-texts.holes-the-largest", holes))
                    + zone.largestHole()
                            .map(area -> say("report.rust-texts.of", size(area)))
                            .orElse(""));
        }
        return String.join("; ", parts) + ".";
    }

    private static String size(Area area) {
        return EverydaySize.words(area).replace(" mm2", "\u2009mm\u00b2");
    }

    private static String need(ZoneRust zone) {
        return Stream.of(
                        measuredNeed(zone),
                        zone.needByEye()
                                .map(need -> say("report.rust-texts.repair-need-by-eye-not", need.said()))
                                .orElse(""))
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String measuredNeed(ZoneRust zone) {
        return zone.need()
                .map(need -> say(
                        "report.rust-texts.repair-need",
                        need.said(),
                        zone.advice().reasons().isEmpty()
                                ? ""
                                : " ("
                                        + String.join("; ", zone.advice().reasons())
                                                .replace(" mm2", "\u2009mm\u00b2") + ")"))
                .orElse("");
    }

    private List<ReportContent.TraceText> traces(ZoneId zone) {
        Map<RecordId, Trace> rows =
                car.visit().traces().stream().collect(Collectors.toMap(Recorded::id, Recorded::value));
        Map<RecordId, TraceArea> areas =
                car.rust().traces().stream().collect(Collectors.toMap(TraceArea::id, Function.identity()));
        return car.visit().traces().stream()
                .filter(row -> row.value().zone().equals(zone))
                .map(row -> text(rows.get(row.id()), areas.get(row.id())))
                .toList();
    }

    /** Remarks on several outlines of a zone, said once. */
    private List<String> shared(ZoneId zone) {
        List<String> all = car.rust().traces().stream()
                .filter(trace -> trace.zone().equals(zone))
                .flatMap(trace -> trace.remarks().stream())
                .toList();
        return all.stream()
                .distinct()
                .filter(remark -> Collections.frequency(all, remark) > 1)
                .toList();
    }

    private ReportContent.TraceText text(Trace trace, TraceArea area) {
        String figure = area.area()
                .map(a -> size(a)
                        + (area.sdMm2().isPresent()
                                ? say(
                                        "report.rust-texts.mm",
                                        figure("%.0f", area.sdMm2().getAsDouble()))
                                : ""))
                .orElse(say("report.rust-texts.cannot-be-measured"));
        List<String> more = new ArrayList<>();
        trace.patch().ifPresent(patch -> more.add(say("report.rust-texts.patch", patch)));
        trace.note().ifPresent(more::add);
        List<String> common = shared(trace.zone());
        area.remarks().stream().filter(remark -> !common.contains(remark)).forEach(more::add);
        return new ReportContent.TraceText(
                LikelihoodTexts.words(trace.kind().said()),
                figure,
                String.join("; ", more).replace(".; ", ". "),
                shots.link(Optional.of(trace.photo())));
    }
}

package quarterlight.ui.rust;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.rust.EverydaySize;
import quarterlight.rust.TraceArea;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.rust.draw.RustModel;
import quarterlight.ui.rust.draw.RustTool;
import quarterlight.ui.rust.draw.TraceDraft;
import quarterlight.units.Area;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** What is said of an outline while it is drawn: its area with what the marks leave open, and what to beware of. Pure functions. */
final class TraceWords {
    private static final double SQUARE_M = 1e6;
    private static final double VERY_LARGE_MM2 = 1e5;
    private static final double SQUARE_CM = 100;
    private static final double LARGE_MM2 = 10_000;

    /**
     * What is said.
     *
     * @param figure the area in one line, or what is lacking
     * @param sentences what to beware of
     */
    record Said(String figure, List<String> sentences) {}

    private TraceWords() {}

    static Said of(Texts texts, OpenVisit visit, TraceDraft draft) {
        Optional<Photo> photo = visit.visit().photo(draft.photo());
        if (!draft.isClosed()) {
            return new Said(texts.get("trace.said.open"), List.of());
        }
        Optional<String> problem = photo.flatMap(p -> draft.problem(p.file()));
        if (problem.isPresent()) {
            return new Said(texts.get("trace.said.problem"), List.of(sentence(problem.get())));
        }
        Optional<Trace> trace = draft.measurable();
        if (trace.isEmpty()) {
            return new Said(texts.get("trace.said.scale"), List.of(texts.get("trace.said.scale.why")));
        }
        TraceArea area = TraceArea.of(new Recorded<>(new RecordId(0), trace.get()), visit.visit());
        List<String> sentences = new ArrayList<>();
        if (draft.zone().isEmpty()) {
            sentences.add(texts.get("trace.said.zone"));
        }
        sentences.addAll(area.remarks());
        sentences.add(texts.get("trace.said.plane"));
        return new Said(figure(area), sentences);
    }

    /** The area with one standard deviation, and beside an everyday thing. */
    static String figure(TraceArea area) {
        return area.area()
                .map(known -> measure(area)
                        + EverydaySize.beside(known)
                                .map(beside -> ", " + beside)
                                .orElse(""))
                .orElse("");
    }

    /** {@code 1430 mm2 +- 60}. */
    static String measure(TraceArea area) {
        return area.area()
                .map(known -> {
                    boolean large = known.mm2() >= LARGE_MM2;
                    double by = large ? SQUARE_CM : 1;
                    int decimals = large ? 1 : known.mm2() < 10 ? 1 : 0;
                    String sd = area.sdMm2().isPresent()
                            ? " \u00b1 " + Format.number(area.sdMm2().getAsDouble() / by, decimals)
                            : "";
                    return Format.number(known.mm2() / by, decimals) + sd + "\u2009"
                            + (large ? "cm\u00b2" : "mm\u00b2");
                })
                .orElse("");
    }

    static String area(Area area) {
        return area.mm2() >= VERY_LARGE_MM2 ? Format.withUnit(area.mm2() / SQUARE_M, 2, "m\u00b2") : smaller(area);
    }

    private static String smaller(Area area) {
        return area.mm2() >= LARGE_MM2
                ? Format.withUnit(area.mm2() / SQUARE_CM, 1, "cm\u00b2")
                : Format.withUnit(area.mm2(), area.mm2() > 0 && area.mm2() < 10 ? 1 : 0, "mm\u00b2");
    }

    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** What to do next. */
    static String next(Texts texts, RustModel.State state) {
        if (state.draft().isEmpty() && state.tool() == RustTool.LOOK) {
            return texts.get("trace.next.begin");
        }
        return state.tool() == RustTool.SCALE && state.draft().isPresent()
                ? texts.get(
                        "trace.next.scale." + state.wish().shape().name().toLowerCase(Locale.ROOT),
                        state.draft().get().marks().size())
                : texts.get(state.tool().hintKey());
    }

    /** The zone an outline on a photo lies on, as far as it can be told. */
    static Optional<ZoneId> zoneOf(OpenVisit visit, Photo photo) {
        var pinned = visit.zonesOf(photo.id());
        Optional<ZoneId> selected = visit.selection().zone();
        if (selected.isPresent() && (pinned.isEmpty() || pinned.contains(selected.get()))) {
            return selected;
        }
        return pinned.size() == 1 ? pinned.stream().findFirst() : Optional.empty();
    }
}

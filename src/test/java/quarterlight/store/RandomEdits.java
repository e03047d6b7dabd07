package quarterlight.store;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;
import quarterlight.visit.BuyerRelease;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.DroppedDraft;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.mark.DistanceUnit;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.mark.OdometerSource;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** Random values of every kind, and random edits of one to four changes each. */
public final class RandomEdits {
    private static final List<String> TEXTS =
            List.of("plain", "it's \"quoted\"", "two\nlines; DROP", "größer 塗装", "", " ", "x'41'", "NULL", "%_?");

    private final Random random;
    private int photos;
    private int edits;

    public RandomEdits(Random random) {
        this.random = random;
    }

    /** True if it made a step; changes that take each other back make one too. */
    public boolean oneOf(VisitStore store) throws VisitUnwritable {
        String label = "edit " + ++edits;
        store.change(label, tx -> {
            for (int i = 1 + random.nextInt(4); i > 0; i--) {
                change(tx);
            }
        });
        return store.undoLabel().equals(Optional.of(label));
    }

    private void change(VisitTx tx) {
        VisitRecord visit = tx.read();
        switch (random.nextInt(7)) {
            case 0 ->
                tx.addPhoto(random.nextBoolean() ? SampleVisit.fullPhoto(++photos) : SampleVisit.barePhoto(++photos));
            case 1 -> tx.setFacts(random.nextBoolean() ? SampleVisit.fullFacts() : SampleVisit.bareFacts());
            case 2 -> clock(tx);
            case 3 -> photo(tx, visit);
            default -> row(tx, visit, any(RecordKind.all()));
        }
    }

    private void clock(VisitTx tx) {
        CameraId camera = new CameraId("camera-" + random.nextInt(3));
        if (random.nextInt(3) == 0) {
            tx.removeClock(camera);
        } else {
            tx.setClock(new ClockSetting(
                    camera, Duration.ofMillis(random.nextInt()), maybe(java.time.ZoneId.of("Asia/Kathmandu"))));
        }
    }

    private void photo(VisitTx tx, VisitRecord visit) {
        if (!visit.photos().isEmpty()) {
            Photo photo = any(visit.photos());
            tx.setAside(photo.id(), maybe("blurred"));
            tx.setSharpness(photo.id(), OptionalDouble.of(random.nextDouble() * 1e4));
        }
    }

    private <T> void row(VisitTx tx, VisitRecord visit, RecordKind<T> kind) {
        List<Recorded<T>> rows = kind.of(visit);
        Optional<T> value = value(kind, visit);
        int way = random.nextInt(4);
        if (way == 0 && !rows.isEmpty()) {
            tx.remove(kind, any(rows).id());
        } else if (way == 1 && !rows.isEmpty() && value.isPresent()) {
            tx.update(kind, any(rows).id(), value.get());
        } else {
            value.ifPresent(v -> tx.add(kind, v));
        }
    }

    /** Empty only where a photo is needed and there is none yet. */
    @SuppressWarnings("unchecked")
    <T> Optional<T> value(RecordKind<T> kind, VisitRecord visit) {
        Optional<PhotoId> photo = visit.photos().isEmpty()
                ? Optional.empty()
                : Optional.of(any(visit.photos()).id());
        Optional<?> value =
                switch (kind.word()) {
                    case "readings" -> Optional.of(reading());
                    case "gauge" -> Optional.of(check());
                    case "pins" -> photo.map(this::pin);
                    case "signs" ->
                        Optional.of(new Sign(
                                zone(),
                                word(SignKind.class),
                                random.nextBoolean(),
                                maybe(zone()),
                                someOf(photo),
                                text()));
                    case "traces" -> photo.map(this::trace);
                    case "marks" -> Optional.of(mark(someOf(photo)));
                    case "trials" ->
                        Optional.of(new Trial(
                                "horn",
                                word(TrialResult.class),
                                maybe(decimal()),
                                text(),
                                maybe(zone()),
                                text(),
                                random.nextBoolean()));
                    case "statements" -> Optional.of(statement(someOf(photo), visit));
                    case "features" ->
                        Optional.of(new Feature(
                                "wipers",
                                date("1970"),
                                date("1971-02-28"),
                                maybe(random.nextBoolean()),
                                maybe(zone()),
                                text()));
                    case "notes" -> photo.map(this::note);
                    case "hidden" -> photo.map(id -> new HiddenRegion(id, outline(), text()));
                    case "coverage" -> Optional.of(new CoverageOverride(maybe(zone()), "spots", random.nextInt(9)));
                    case "left-out" ->
                        Optional.of(someOf(photo).map(ReportExclusion::of).orElseGet(() -> ReportExclusion.of(zone())));
                    case "claims" -> Optional.of(claim(someOf(photo)));
                    case "odometer" -> Optional.of(figure());
                    case "released" -> photo.map(BuyerRelease::new);
                    case "decisions" ->
                        Optional.of(new MatterDecision(
                                "metal:" + zone().value(),
                                Severity.values()[random.nextInt(4)],
                                text().filter(reason -> !reason.isBlank()).orElse("seen again"),
                                Severity.values()[random.nextInt(4)]));
                    case "dropped" ->
                        photo.map(id -> new DroppedDraft(
                                id, random.nextInt(900), "statement", "hood: pitted", any(TEXTS), text()));
                    default -> throw new IllegalStateException(kind.word());
                };
        return (Optional<T>) value;
    }

    private Statement statement(Optional<PhotoId> first, VisitRecord visit) {
        List<PhotoId> more = visit.photos().stream()
                .map(Photo::id)
                .filter(id -> first.isPresent() && !id.equals(first.get()) && random.nextBoolean())
                .toList();
        return new Statement(
                zone(),
                facets(),
                any(TEXTS),
                maybe(word(Severity.class)),
                maybe(word(Basis.class)),
                first,
                moment(),
                more,
                new StatementDetails(
                        text(),
                        maybe(word(Certainty.class)),
                        word(SaidBy.class),
                        maybe(new SaidSize("4 in")),
                        random.nextBoolean(),
                        maybe(new RecordId(1))));
    }

    private Facets facets() {
        return switch (random.nextInt(3)) {
            case 0 -> Facets.of(word(Origin.class));
            case 1 -> Facets.of(word(Condition.class));
            default -> new Facets(Optional.of(word(Origin.class)), Optional.of(word(Condition.class)));
        };
    }

    private Claim claim(Optional<PhotoId> photo) {
        return new Claim(
                "never \"welded\" " + any(TEXTS),
                word(Claimant.class),
                maybe(zone()),
                text(),
                maybe(date("1971")),
                text(),
                photo,
                maybe(word(Judgment.class)),
                random.nextBoolean());
    }

    private OdometerFigure figure() {
        return new OdometerFigure(
                new BigDecimal(random.nextInt(1_000_000)),
                word(DistanceUnit.class),
                word(OdometerSource.class),
                maybe(date("1971-02")),
                random.nextBoolean(),
                text());
    }

    private Reading reading() {
        GaugeValue value =
                switch (random.nextInt(5)) {
                    case 4 ->
                        new GaugeValue.Range(new BigDecimal("4"), new BigDecimal("5.5"), word(ThicknessUnit.class));
                    case 0 -> new GaugeValue.NoMetal();
                    case 1 -> new GaugeValue.OverRange();
                    default -> measured();
                };
        return new Reading(
                zone(),
                value,
                maybe(LocalDateTime.of(2026, 3, 2, 9, 0, random.nextInt(60))),
                text(),
                maybe(point()),
                maybe(word(GaugeMode.class)),
                text(),
                text(),
                random.nextBoolean());
    }

    private GaugeCheck check() {
        return new GaugeCheck(
                word(GaugeMoment.class),
                word(GaugeSurface.class),
                measured(),
                measured(),
                number(),
                number(),
                number(),
                text());
    }

    private Pin pin(PhotoId photo) {
        return new Pin(photo, zone(), number(), maybe(point()), text(), text(), text());
    }

    private Trace trace(PhotoId photo) {
        return new Trace(photo, word(TraceKind.class), outline(), scale(), zone(), text(), text());
    }

    private Outline outline() {
        List<List<PixelPoint>> holes = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            holes.add(pixels(3));
        }
        return new Outline(pixels(4), holes);
    }

    private PhotoScale scale() {
        return switch (random.nextInt(3)) {
            case 0 -> new PhotoScale.KnownLength(pixel(), pixel(), 1 + random.nextDouble());
            case 1 -> new PhotoScale.KnownRectangle(pixels(4), 1 + random.nextDouble(), 85.6);
            default -> new PhotoScale.Coin(pixels(5 + random.nextInt(3)), 24.26);
        };
    }

    private PhotoNote note(PhotoId photo) {
        NoteShape shape = word(NoteShape.class);
        return new PhotoNote(
                photo,
                moment(),
                shape,
                pixels(shape.points()),
                shape == NoteShape.TEXT ? Optional.of(any(TEXTS)) : text(),
                shape == NoteShape.MEASURE ? Optional.of(scale()) : Optional.empty());
    }

    private Optional<Double> moment() {
        return maybe(random.nextDouble() * 100);
    }

    private List<PixelPoint> pixels(int count) {
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(pixel());
        }
        return points;
    }

    private Mark mark(Optional<PhotoId> photo) {
        return new Mark(
                "engine block",
                word(MarkKind.class),
                "C 4 ? 1",
                maybe(word(MarkStage.class)),
                text(),
                text(),
                maybe(zone()),
                maybe(point()),
                photo,
                text(),
                maybe(random.nextInt(400)),
                maybe(word(Origin.class)));
    }

    private GaugeValue.Measured measured() {
        return new GaugeValue.Measured(decimal(), word(ThicknessUnit.class));
    }

    private BigDecimal decimal() {
        return new BigDecimal(any(List.of("4.0", "101", "0.1", "-0.3", "1E+2", "123.4500")));
    }

    private OptionalDouble number() {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(random.nextDouble() * 100);
    }

    private PixelPoint pixel() {
        return new PixelPoint(random.nextDouble() * 4032 - 1, random.nextDouble() * 1e-7);
    }

    private ViewPoint point() {
        return SampleVisit.point(random.nextDouble(), 1.0 / 3);
    }

    private ZoneId zone() {
        return random.nextBoolean() ? SampleVisit.HOOD : SampleVisit.ROOF;
    }

    private static PartialDate date(String text) {
        return PartialDate.parse(text).orElseThrow();
    }

    private Optional<String> text() {
        return maybe(any(TEXTS));
    }

    private <E extends Enum<E> & Worded> E word(Class<E> type) {
        return any(List.of(type.getEnumConstants()));
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private Optional<PhotoId> someOf(Optional<PhotoId> photo) {
        return photo.filter(id -> random.nextBoolean());
    }

    private <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }
}

package quarterlight.page.report.text;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.page.report.picture.Frame;
import quarterlight.page.report.picture.PrintedPicture;
import quarterlight.page.report.picture.ReportPictures;
import quarterlight.units.Worded;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;
import quarterlight.visit.trial.Sign;

/** The chapter of each zone: statements, readings, likelihood, signs, rust, photos. */
public final class ZoneTexts {
    /** Photos of a row are of one height on paper, so that a row has no holes. */
    private static final double HEIGHT_MM = 32.8;

    private static final double MAX_WIDTH_MM = 86;
    private static final double MIN_ROOM_MM = 30;
    /** A caption of more letters takes the width of the page, and its photo stands alone. */
    private static final int LONG_CAPTION = 240;

    private static final double WHOLE_MM = 180;

    private static final int HASH_DIGITS = 8;

    private final Findings car;
    private final Shots shots;
    private final ReportPictures pictures;
    private final ReadingTexts readings;
    private final RustTexts rust;
    private final PhotoWords words;
    private final Map<RecordId, String> said;

    /** @param said for a statement that was said on film or memo: when, and in which words as far as these may be told */
    public ZoneTexts(
            Findings car,
            Shots shots,
            ReportPictures pictures,
            ReadingTexts readings,
            PhotoWords words,
            Map<RecordId, String> said) {
        this.car = car;
        this.shots = shots;
        this.pictures = pictures;
        this.readings = readings;
        this.rust = new RustTexts(car, shots);
        this.words = words;
        this.said = said;
    }

    /** What the inspector drew on a photo, in words. */
    @FunctionalInterface
    public interface PhotoWords {
        List<String> of(Frame frame);
    }

    /** The id of a zone's chapter. */
    public static String id(ZoneId zone) {
        return "zone-" + zone;
    }

    /** Empty for a zone of which nothing was recorded. */
    public Optional<ReportContent.ZoneText> of(Zone zone) {
        List<ReportContent.StatementText> statements = statements(zone.id());
        Optional<ReportContent.ReadingText> measured = readings.of(zone.id(), zone.label());
        List<ReportContent.SignText> signs = signs(zone.id());
        Optional<ReportContent.RustText> rusty = rust.of(zone.id());
        List<Shots.Shot> shown = shots.of(zone.id());
        boolean nothing =
                statements.isEmpty() && measured.isEmpty() && signs.isEmpty() && rusty.isEmpty() && shown.isEmpty();
        if (nothing) {
            return Optional.empty();
        }
        Optional<ReportContent.LikelihoodText> likelihood =
                car.history().zone(zone.id()).filter(this::hasEvidence).map(LikelihoodTexts::of);
        return Optional.of(new ReportContent.ZoneText(
                id(zone.id()), zone.label(), statements, measured, likelihood, signs, rusty, photos(shown)));
    }

    /** A panel of which nothing of its own is known stays at what the rest of the car says; that is no finding. */
    private boolean hasEvidence(ZoneHistory zone) {
        return car.evidence()
                .zone(zone.zone())
                .map(e -> !e.spotsUm().isEmpty()
                        || e.overRange() > 0
                        || e.noMetal() > 0
                        || !e.signs().isEmpty()
                        || e.rust().isPresent())
                .orElse(false);
    }

    private List<ReportContent.StatementText> statements(ZoneId zone) {
        return car.visit().statements().stream()
                .filter(row -> row.value().zone().equals(zone))
                .map(this::text)
                .toList();
    }

    private ReportContent.StatementText text(Recorded<Statement> row) {
        Statement statement = row.value();
        boolean withdrawn = car.visit().isWithdrawn(row.id());
        StatementDetails details = statement.details();
        String kind = Stream.of(
                        Optional.of(statement.what().words()),
                        details.part(),
                        details.size().map(SaidSize::said),
                        statement.severity().map(Worded::said),
                        details.certainty()
                                .filter(certainty -> certainty != Certainty.SURE)
                                .map(Worded::said),
                        Optional.of(details.saidBy())
                                .filter(by -> by != SaidBy.INSPECTOR)
                                .map(by -> say("report.zone-texts.said-by", by.said())),
                        Optional.of(
                                statement.basis().map(Worded::said).orElse(say("report.zone-texts.basis-not-stated"))))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" \u00b7 "));
        return new ReportContent.StatementText(
                LikelihoodTexts.words(withdrawn ? say("report.zone-texts.withdrawn", kind) : kind),
                statement.text(),
                said.getOrDefault(row.id(), ""),
                shots.links(statement.photos()));
    }

    private List<ReportContent.SignText> signs(ZoneId zone) {
        List<ReportContent.SignText> texts = new ArrayList<>();
        for (Recorded<Sign> row : car.visit().signs()) {
            Sign sign = row.value();
            boolean here = sign.zone().equals(zone);
            boolean forHere = sign.speaksFor().equals(Optional.of(zone));
            if (here || forHere) {
                List<String> more = new ArrayList<>();
                if (here) {
                    sign.speaksFor()
                            .filter(panel -> !panel.equals(zone))
                            .ifPresent(panel -> more.add(say("report.zone-texts.speaks-for", label(panel))));
                } else {
                    more.add(say("report.zone-texts.on", label(sign.zone())));
                }
                sign.note().ifPresent(more::add);
                texts.add(new ReportContent.SignText(
                        LikelihoodTexts.words(sign.kind().said()),
                        sign.seen() ? "seen" : say("report.zone-texts.looked-for-not-seen"),
                        String.join("; ", more),
                        shots.link(sign.photo())));
            }
        }
        return texts;
    }

    private String label(ZoneId zone) {
        return car.catalog().find(zone).map(Zone::label).orElse(zone.value());
    }

    public List<ReportContent.PhotoText> photos(List<Shots.Shot> shown) {
        return shown.stream().map(this::photo).toList();
    }

    private ReportContent.PhotoText photo(Shots.Shot shot) {
        Shots.Shot first = shots.firstOf(shot.frame());
        Optional<PrintedPicture> picture = first.equals(shot) ? pictures.of(shot.frame()) : Optional.empty();
        double scale = picture.map(p -> Math.min(MAX_WIDTH_MM / p.width(), HEIGHT_MM / p.height()))
                .orElse(1.0);
        String what = Stream.of(shot.shows(), shot.caption())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        return new ReportContent.PhotoText(
                shot.number(),
                shot.id(),
                shot.zone().map(ZoneTexts::id).orElse("marks"),
                picture.isPresent() ? shot.frame().address() : "",
                picture.map(p -> mm(p.width() * scale)).orElse(""),
                picture.map(p -> mm(p.height() * scale)).orElse(""),
                mm(
                        shot.caption().length() > LONG_CAPTION
                                ? WHOLE_MM
                                : Math.max(
                                        MIN_ROOM_MM,
                                        picture.map(p -> p.width() * scale).orElse(0.0))),
                picture.isPresent() ? "" : instead(shot, first),
                !first.equals(shot) && pictures.of(shot.frame()).isPresent(),
                say(
                        "report.zone-texts.photo",
                        shot.number(),
                        shot.zone().map(zone -> ", " + label(zone)).orElse(""),
                        what.isEmpty() ? "" : ": " + what),
                shot.shows(),
                shot.caption(),
                (shot.time() + place(shot.frame())).strip(),
                shot.file()
                        + car.visit()
                                .photo(shot.frame().photo())
                                .map(ZoneTexts::hash)
                                .orElse(""),
                first.equals(shot) ? words.of(shot.frame()) : List.of(),
                first.equals(shot)
                        ? Optional.empty()
                        : Optional.of(
                                new ReportContent.Link(first.id(), say("report.zone-texts.photo-2", first.number()))));
    }

    /** The beginning of its hash, by which the original can be told. */
    private static String hash(Photo photo) {
        return " \u00b7 " + photo.file().sha256().hex().substring(0, HASH_DIGITS);
    }

    /** The moment of a film or sound, or the page of a paper. */
    private String place(Frame frame) {
        if (frame.at().isEmpty()) {
            return "";
        }
        boolean page = kind(frame).equals(Optional.of(MediaKind.PAPER));
        return page
                ? say("report.zone-texts.page", figure("%.0f", frame.at().getAsDouble()))
                : say("report.zone-texts.at-s", figure("%.1f", frame.at().getAsDouble()));
    }

    private Optional<MediaKind> kind(Frame frame) {
        return car.visit().photo(frame.photo()).map(photo -> photo.file().kind());
    }

    private String instead(Shots.Shot shot, Shots.Shot first) {
        if (!first.equals(shot) && pictures.of(shot.frame()).isPresent()) {
            return say(
                    "report.zone-texts.shown",
                    first.zone()
                            .map(zone -> say("report.zone-texts.at", label(zone)))
                            .orElse(say("report.zone-texts.with-the-marks")));
        }
        return switch (kind(shot.frame()).orElse(MediaKind.PHOTO)) {
            case FILM -> say("report.zone-texts.a-film-this-moment-cannot");
            case SOUND -> say("report.zone-texts.a-sound-to-be-listened");
            case PAPER -> say("report.zone-texts.this-page-cannot-be-shown");
            default -> say("report.zone-texts.this-photo-cannot-be-shown");
        };
    }

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}

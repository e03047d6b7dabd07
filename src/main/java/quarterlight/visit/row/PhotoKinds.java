package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;
import static quarterlight.visit.row.Field.optional;
import static quarterlight.visit.row.Field.required;

import java.util.List;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.ViewPoint;

/** What is tied to a photo: pins, traces, notes and hidden regions. */
final class PhotoKinds {
    private PhotoKinds() {}

    static RecordKind<Pin> pins() {
        Field<Pin, PhotoId> photo = required("photo", Shape.PHOTO, Pin::photo).storedAs("photo_id");
        Field<Pin, ZoneId> zone = required("zone", Shape.ZONE, Pin::zone);
        Field<Pin, Double> at = Field.<Pin, Double>optional("at", Shape.FILM_MOMENT, pin -> GaugeKinds.boxed(pin.at()))
                .storedAs("at_s");
        Field<Pin, ViewPoint> point = optional("view", Shape.POINT, Pin::point);
        Field<Pin, String> shows = optional("shows", Shape.TEXT, Pin::shows);
        Field<Pin, String> caption = optional("caption", Shape.TEXT, Pin::caption);
        Field<Pin, String> mark = optional("mark", Shape.TEXT, Pin::mark);
        return RecordKind.of(
                        "pins",
                        "pin",
                        VisitRecord::pins,
                        List.of(photo, zone, at, point, shows, caption, mark),
                        in -> new Pin(
                                in.need(photo),
                                in.need(zone),
                                GaugeKinds.unboxed(in.get(at)),
                                in.get(point),
                                in.get(shows),
                                in.get(caption),
                                in.get(mark)))
                .named((pin, words) -> say("undo.row.pin", words.photo(pin.photo()), words.zone(pin.zone())));
    }

    static RecordKind<Trace> traces() {
        Field<Trace, PhotoId> photo =
                required("photo", Shape.STILL, Trace::photo).storedAs("photo_id");
        Field<Trace, TraceKind> kind = required("kind", Shape.word(TraceKind.class), Trace::kind);
        Field<Trace, Outline> outline =
                required("outline", Shape.OUTLINE, Trace::outline).storedAs("outline_px");
        Field<Trace, PhotoScale> scale =
                required("scale", Shape.SCALE, Trace::scale).storedAs("scale_px_mm");
        Field<Trace, ZoneId> zone = optional("zone", Shape.ZONE_OF_PHOTO, trace -> Optional.of(trace.zone()));
        Field<Trace, String> patch = optional("patch", Shape.TEXT, Trace::patch);
        Field<Trace, String> note = optional("note", Shape.TEXT, Trace::note);
        return RecordKind.of(
                        "traces",
                        "trace",
                        VisitRecord::traces,
                        List.of(photo, kind, outline, scale, zone, patch, note),
                        in -> new Trace(
                                in.need(photo),
                                in.need(kind),
                                in.need(outline),
                                in.need(scale),
                                in.need(zone),
                                in.get(patch),
                                in.get(note)))
                .named((trace, words) -> say("undo.row.trace", trace.kind().said(), words.photo(trace.photo())));
    }

    static RecordKind<PhotoNote> notes() {
        Field<PhotoNote, PhotoId> photo =
                required("photo", Shape.PHOTO, PhotoNote::photo).storedAs("photo_id");
        Field<PhotoNote, NoteShape> shape = required("shape", Shape.word(NoteShape.class), PhotoNote::shape);
        Field<PhotoNote, List<PixelPoint>> points =
                required("points", Shape.POINTS, PhotoNote::points).storedAs("points_px");
        Field<PhotoNote, String> text = optional("text", Shape.TEXT, PhotoNote::text);
        Field<PhotoNote, PhotoScale> scale =
                optional("scale", Shape.SCALE, PhotoNote::scale).storedAs("scale_px_mm");
        Field<PhotoNote, Double> at =
                optional("at", Shape.FILM_MOMENT, PhotoNote::atSeconds).storedAs("at_s");
        return RecordKind.of(
                        "notes",
                        "photo_note",
                        VisitRecord::photoNotes,
                        List.of(photo, shape, points, text, scale, at),
                        in -> {
                            PhotoId onPhoto = in.need(photo);
                            Optional<Double> seconds = in.get(at);
                            NoteShape drawn = in.need(shape);
                            return new PhotoNote(
                                    onPhoto,
                                    seconds,
                                    drawn,
                                    as(drawn, in.need(points)),
                                    drawn == NoteShape.TEXT ? Optional.of(in.need(text)) : in.get(text),
                                    as(drawn, in.get(scale)));
                        })
                .named((note, words) -> say("undo.row.note", note.shape().said(), words.photo(note.photo())));
    }

    private static List<PixelPoint> as(NoteShape shape, List<PixelPoint> points) throws CellRefused {
        if (points.size() != shape.points()) {
            throw new CellRefused("points", say("cell.note.points", shape.word(), shape.points(), points.size()));
        }
        return points;
    }

    private static Optional<PhotoScale> as(NoteShape shape, Optional<PhotoScale> scale) throws CellRefused {
        if (shape == NoteShape.MEASURE) {
            return Optional.of(FieldReader.need("scale", scale));
        }
        if (scale.isPresent()) {
            throw new CellRefused("scale", say("cell.note.scale"));
        }
        return scale;
    }

    static RecordKind<HiddenRegion> hidden() {
        Field<HiddenRegion, PhotoId> photo =
                required("photo", Shape.PHOTO, HiddenRegion::photo).storedAs("photo_id");
        Field<HiddenRegion, Outline> outline =
                required("outline", Shape.OUTLINE, HiddenRegion::outline).storedAs("outline_px");
        Field<HiddenRegion, String> why = optional("why", Shape.TEXT, HiddenRegion::why);
        return RecordKind.of(
                        "hidden",
                        "hidden_region",
                        VisitRecord::hidden,
                        List.of(photo, outline, why),
                        in -> new HiddenRegion(in.need(photo), in.need(outline), in.get(why)))
                .named((region, words) -> say("undo.row.hidden", words.photo(region.photo())));
    }
}

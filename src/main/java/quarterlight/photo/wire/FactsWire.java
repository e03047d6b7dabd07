package quarterlight.photo.wire;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.photo.MediaType;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.header.FileFacts;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.Position;
import quarterlight.visit.photo.SidecarWords;

/** Facts of files as bytes, in the order of their components. What comes back passes the same checks as facts that were read here. */
public final class FactsWire {
    private FactsWire() {}

    public static void write(DataOutputStream out, FileFacts facts) throws IOException {
        Wire.kind(out, facts.type());
        MediaHeader header = facts.header();
        Wire.optional(out, header.captured(), FactsWire::writeTime);
        Wire.optional(out, header.gpsUtc(), Wire::moment);
        Wire.optional(out, header.position(), (to, position) -> {
            to.writeDouble(position.latitude());
            to.writeDouble(position.longitude());
        });
        Wire.optional(out, header.camera().map(CameraId::value), Wire::text);
        Wire.optional(out, boxed(header.width()), DataOutputStream::writeInt);
        Wire.optional(out, boxed(header.height()), DataOutputStream::writeInt);
        out.writeInt(header.orientation());
        Wire.optional(out, boxed(header.seconds()), DataOutputStream::writeDouble);
        Wire.optional(out, header.contentId(), Wire::text);
        Wire.texts(out, facts.notes());
        Wire.optional(out, facts.preview().map(Preview::jpeg), Wire::bytes);
        Wire.optional(out, boxed(facts.more().pages()), DataOutputStream::writeInt);
        Wire.optional(out, facts.more().said(), FactsWire::writeWords);
        Wire.optional(out, boxed(facts.more().focal35Mm()), DataOutputStream::writeDouble);
        out.writeBoolean(facts.damageTold());
    }

    public static FileFacts read(DataInputStream in) throws IOException {
        MediaType type = Wire.kind(in, MediaType.class);
        Optional<CaptureTime> captured = Wire.optional(in, FactsWire::readTime);
        Optional<LocalDateTime> gps = Wire.optional(in, Wire::moment);
        Optional<Position> position = Wire.optional(in, from -> new Position(from.readDouble(), from.readDouble()));
        Optional<CameraId> camera = Wire.optional(in, from -> new CameraId(Wire.text(from)));
        OptionalInt width = unboxed(Wire.optional(in, DataInputStream::readInt));
        OptionalInt height = unboxed(Wire.optional(in, DataInputStream::readInt));
        int orientation = in.readInt();
        OptionalDouble seconds = number(in);
        Optional<String> contentId = Wire.optional(in, Wire::text);
        List<String> notes = new ArrayList<>(Wire.texts(in));
        Optional<Preview> preview = Wire.optional(in, from -> new Preview(Wire.bytes(from)));
        OptionalInt pages = unboxed(Wire.optional(in, DataInputStream::readInt));
        Optional<SidecarWords> said = Wire.optional(in, FactsWire::readWords);
        OptionalDouble focal35Mm = number(in);
        return new FileFacts(
                type,
                new MediaHeader(captured, gps, position, camera, width, height, orientation, seconds, contentId),
                notes,
                preview,
                new MediaFacts(pages, Optional.empty(), said, focal35Mm),
                in.readBoolean());
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static OptionalDouble number(DataInputStream in) throws IOException {
        Optional<Double> value = Wire.optional(in, DataInputStream::readDouble);
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private static void writeWords(DataOutputStream out, SidecarWords said) throws IOException {
        Wire.optional(out, said.caption(), Wire::text);
        Wire.texts(out, said.keywords());
        Wire.optional(out, boxed(said.rating()), DataOutputStream::writeInt);
        Wire.optional(out, boxed(said.orientation()), DataOutputStream::writeInt);
    }

    private static SidecarWords readWords(DataInputStream in) throws IOException {
        return new SidecarWords(
                Wire.optional(in, Wire::text),
                Wire.texts(in),
                unboxed(Wire.optional(in, DataInputStream::readInt)),
                unboxed(Wire.optional(in, DataInputStream::readInt)));
    }

    private static void writeTime(DataOutputStream out, CaptureTime time) throws IOException {
        Wire.moment(out, time.time());
        Wire.text(out, time.fraction());
        Wire.optional(out, time.offset().map(ZoneOffset::getTotalSeconds), DataOutputStream::writeInt);
        Wire.kind(out, time.source());
        out.writeBoolean(time.suspect());
    }

    private static CaptureTime readTime(DataInputStream in) throws IOException {
        return new CaptureTime(
                Wire.moment(in),
                Wire.text(in),
                Wire.optional(in, from -> ZoneOffset.ofTotalSeconds(from.readInt())),
                Wire.kind(in, CaptureSource.class),
                in.readBoolean());
    }

    private static Optional<Integer> boxed(OptionalInt value) {
        return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
    }

    private static OptionalInt unboxed(Optional<Integer> value) {
        return value.isPresent() ? OptionalInt.of(value.get()) : OptionalInt.empty();
    }
}

package quarterlight.ui.kit.play;

import java.util.List;
import java.util.Optional;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;

/** Where pictures and sound of one film or memo come from; a seam that tests replace. Asked from any thread but the event thread, since it waits. */
public interface RecordingSource {
    /** Frames of a stretch, in the order of time; none of a memo. */
    List<FilmFrame> frames(double from, double seconds, double perSecond) throws PictureUnreadable;

    /** Samples of a stretch at {@link SoundDevice#RATE}; empty if it has no sound. */
    Optional<byte[]> sound(double from, double seconds, double speed) throws SoundUnreadable;

    /** How loud a stretch is, 25 bytes a second; empty if it has no sound. */
    Optional<byte[]> loudness(double from, double seconds) throws SoundUnreadable;

    /** Whether there is anything to see. */
    boolean hasPictures();

    /** A film or memo of a visit. */
    static RecordingSource of(OriginalPictures originals, PhotoFile file) {
        return new RecordingSource() {
            private static final int LONG_SIDE = 640;

            @Override
            public List<FilmFrame> frames(double from, double seconds, double perSecond) throws PictureUnreadable {
                return hasPictures() ? originals.stretch(file, from, seconds, perSecond, LONG_SIDE) : List.of();
            }

            @Override
            public Optional<byte[]> sound(double from, double seconds, double speed) throws SoundUnreadable {
                return originals.sound(file, from, seconds, speed, SoundDevice.RATE);
            }

            @Override
            public Optional<byte[]> loudness(double from, double seconds) throws SoundUnreadable {
                return originals.loudness(file, from, seconds);
            }

            @Override
            public boolean hasPictures() {
                return file.kind() == MediaKind.FILM;
            }
        };
    }
}

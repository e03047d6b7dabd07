package quarterlight.cli.text;

import java.util.ArrayList;
import java.util.List;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;

/** What an intake added, in words: photos and films together, other media each by its kind. */
public final class AddedMedia {
    private AddedMedia() {}

    /** @param photos all of the visit, the newest last */
    public static String words(List<Photo> photos, int added) {
        List<Photo> fresh = photos.subList(Math.max(0, photos.size() - added), photos.size());
        int shot = (int)
                fresh.stream().filter(photo -> photo.file().kind().isCameras()).count();
        if (shot == fresh.size()) {
            return CliText.count(shot, "photo or film", "photos and films") + " added";
        }
        List<String> parts = new ArrayList<>();
        parts.add(shot == 0 ? "" : CliText.count(shot, "photo or film", "photos and films"));
        parts.add(count(fresh, MediaKind.PAPER, "paper", "papers"));
        parts.add(count(fresh, MediaKind.SOUND, "sound", "sounds"));
        parts.add(count(fresh, MediaKind.WORDS, "file of words", "files of words"));
        parts.add(count(fresh, MediaKind.SIDECAR, "sidecar", "sidecars"));
        parts.removeIf(String::isEmpty);
        return String.join(", ", parts) + " added";
    }

    private static String count(List<Photo> photos, MediaKind kind, String one, String many) {
        int count = (int)
                photos.stream().filter(photo -> photo.file().kind() == kind).count();
        return count == 0 ? "" : CliText.count(count, one, many);
    }
}

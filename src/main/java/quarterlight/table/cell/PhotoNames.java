package quarterlight.table.cell;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterlight.table.text.Nearest;
import quarterlight.table.text.Quoted;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.row.CellRefused;

/** Finds a photo of the visit by its file name or by the first digits of its SHA-256, and names it again for a table. */
public final class PhotoNames {
    private static final Pattern DIGITS = Pattern.compile("[0-9a-fA-F]{8,64}");
    private static final int SHOWN = 12;

    private final Map<String, List<Photo>> byName = new HashMap<>();
    private final Map<String, List<Photo>> byPlainName = new HashMap<>();
    private final TreeMap<String, Photo> byHash = new TreeMap<>();

    public PhotoNames(List<Photo> photos) {
        for (Photo photo : photos) {
            String name = photo.file().name();
            byName.computeIfAbsent(name, n -> new ArrayList<>()).add(photo);
            byPlainName
                    .computeIfAbsent(name.toLowerCase(Locale.ROOT), n -> new ArrayList<>())
                    .add(photo);
            byHash.put(photo.file().sha256().hex(), photo);
        }
    }

    /**
     * The photo of a name (capitals count only where two names differ by nothing else), else the one whose hash begins so.
     *
     * @throws CellRefused if there is none, or more than one; the reason then gives the hashes to tell them apart
     */
    public Photo find(String column, String text) throws CellRefused {
        List<Photo> named =
                byName.getOrDefault(text, byPlainName.getOrDefault(text.toLowerCase(Locale.ROOT), List.of()));
        if (named.size() == 1) {
            return named.get(0);
        }
        if (named.size() > 1) {
            throw new CellRefused(column, say("cell.photo.same-name", named.size(), text, hashes(named)));
        }
        List<Photo> hashed = DIGITS.matcher(text).matches() ? startingWith(text.toLowerCase(Locale.ROOT)) : List.of();
        if (hashed.size() == 1) {
            return hashed.get(0);
        }
        if (hashed.size() > 1) {
            throw new CellRefused(column, say("cell.photo.same-hash", hashed.size(), text));
        }
        throw new CellRefused(column, say("cell.photo.unknown", Quoted.of(text), advice(text)));
    }

    private String advice(String text) {
        if (byName.isEmpty()) {
            return say("cell.photo.none-yet");
        }
        if (text.contains("/") || text.contains("\\")) {
            return say("cell.photo.folder");
        }
        return Nearest.hint(text, byName.keySet().stream().sorted().toList());
    }

    /** How a table names the photo: its file name where no other photo bears it, else enough digits of its hash. */
    public String nameOf(Photo photo) {
        String name = photo.file().name();
        boolean plain = name.equals(name.strip())
                && !name.contains(PhotoCells.BETWEEN)
                && name.chars().noneMatch(Character::isISOControl);
        if (plain && byName.getOrDefault(name, List.of()).size() == 1) {
            return name;
        }
        String hex = photo.file().sha256().hex();
        int digits = SHOWN;
        while (digits < hex.length() && startingWith(hex.substring(0, digits)).size() > 1) {
            digits++;
        }
        return hex.substring(0, digits);
    }

    private List<Photo> startingWith(String digits) {
        return new LinkedHashMap<>(byHash.subMap(digits, true, digits + "g", false))
                .values().stream().toList();
    }

    private static String hashes(List<Photo> photos) {
        return photos.stream()
                .map(photo -> photo.file().sha256().prefix())
                .sorted()
                .collect(Collectors.joining(" or "));
    }
}

package quarterlight.marks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import quarterlight.marks.code.UnreadLetter;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;

/**
 * The views of one stamp: rows of the same part and kind whose texts do not contradict each other. What one view does not show,
 * another may.
 *
 * @param text the letters of all views together
 * @param count how many witnesses there are: photos, and rows without a photo
 * @param odd what other rows of the same part and kind read that differ from it in less than half of their letters: perhaps the
 *     same stamp read otherwise
 */
record StampViews(String text, int count, List<String> odd) {
    StampViews {
        odd = List.copyOf(odd);
    }

    static StampViews of(Mark mark, VisitRecord visit) {
        String text = mark.text().strip();
        Set<PhotoId> photos = new HashSet<>();
        List<String> odd = new ArrayList<>();
        int bare = 0;
        for (Recorded<Mark> row : visit.marks()) {
            Mark other = row.value();
            if (!sameStamp(mark, other)) {
                continue;
            }
            int apart = apart(text, other.text().strip());
            if (apart == 0) {
                text = joined(text, other.text().strip());
                other.photo().ifPresent(photos::add);
                bare += other.photo().isEmpty() ? 1 : 0;
            } else if (2 * apart < text.length()) {
                odd.add(other.text().strip());
            }
        }
        visit.pins().stream()
                .map(Recorded::value)
                .filter(pin ->
                        pin.mark().filter(name -> same(name, mark.part())).isPresent())
                .forEach(pin -> photos.add(pin.photo()));
        return new StampViews(text, photos.size() + bare, odd);
    }

    private static boolean sameStamp(Mark a, Mark b) {
        return a.kind() == b.kind()
                && same(a.part(), b.part())
                && a.stage().equals(b.stage())
                && a.pattern().equals(b.pattern());
    }

    static boolean same(String a, String b) {
        return a.strip().toUpperCase(Locale.ROOT).equals(b.strip().toUpperCase(Locale.ROOT));
    }

    /** Letters read on both sides that differ; the length of the longer one if they are not of one length. */
    private static int apart(String a, String b) {
        if (a.length() != b.length()) {
            return Math.max(a.length(), b.length());
        }
        int apart = 0;
        for (int i = 0; i < a.length(); i++) {
            char x = Character.toUpperCase(a.charAt(i));
            char y = Character.toUpperCase(b.charAt(i));
            apart += x != y && x != UnreadLetter.LETTER && y != UnreadLetter.LETTER ? 1 : 0;
        }
        return apart;
    }

    private static String joined(String a, String b) {
        StringBuilder all = new StringBuilder(a);
        for (int i = 0; i < a.length(); i++) {
            if (a.charAt(i) == UnreadLetter.LETTER) {
                all.setCharAt(i, b.charAt(i));
            }
        }
        return all.toString();
    }
}

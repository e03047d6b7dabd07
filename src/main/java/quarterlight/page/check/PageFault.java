package quarterlight.page.check;

import java.util.Objects;

/**
 * Something wrong in a file that was made.
 *
 * @param file its name
 * @param page from 1; 0 for a file without pages
 * @param what in words, without the private word itself
 */
public record PageFault(String file, int page, String what) {
    public PageFault {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(what, "what");
    }

    /** Where and what, as a sentence. */
    public String sentence() {
        return file + (page > 0 ? ", page " + page : "") + ": " + what + ".";
    }
}

package quarterlight.edit.pages;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import quarterlight.page.check.PageCheck;

/**
 * The pages of a visit, made and looked over.
 *
 * @param files where they lie
 * @param check what a look over them found
 */
public record CheckedPages(List<Path> files, PageCheck check) {
    public CheckedPages {
        files = List.copyOf(files);
        Objects.requireNonNull(check, "check");
    }
}

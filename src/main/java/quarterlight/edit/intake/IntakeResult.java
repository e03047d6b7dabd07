package quarterlight.edit.intake;

import java.nio.file.Path;
import java.util.List;
import quarterlight.photo.Refusal;

/**
 * What became of the files in the folders that were taken in.
 *
 * @param added photos, films and other media that are new to the visit
 * @param alreadyPresent files whose content the visit holds already, or that came twice
 * @param refused files that could not be taken in, with the reason
 * @param notPhotos files that are left alone
 */
public record IntakeResult(int added, int alreadyPresent, List<Refusal> refused, List<Path> notPhotos) {
    public IntakeResult {
        refused = List.copyOf(refused);
        notPhotos = List.copyOf(notPhotos);
    }
}

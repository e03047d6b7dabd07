package quarterlight.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Future;
import quarterlight.photo.FolderScan.Found;
import quarterlight.photo.OriginalsUnwritable;
import quarterlight.photo.Refusal;
import quarterlight.task.Progress;
import quarterlight.visit.Photo;
import quarterlight.visit.Sha256;

/**
 * The files whose content is new to the visit. Only a file that is as long as another one, or as a photo of the visit, can be the same; only such files are
 * read to compare. Of the same file twice, the first in order counts.
 *
 * @param files new ones, in order
 * @param alreadyPresent how many are not
 * @param refused files that vanished or cannot be read
 */
record Newcomers(List<Found> files, int alreadyPresent, List<Refusal> refused) {
    static Newcomers among(List<Found> media, List<Photo> photos, IntakeWorkers workers, Progress progress)
            throws OriginalsUnwritable, InterruptedException {
        Map<Long, Integer> lengths = new HashMap<>();
        Set<Sha256> known = new HashSet<>();
        for (Photo photo : photos) {
            known.add(photo.file().sha256());
            lengths.merge(photo.file().bytes(), 1, Integer::sum);
        }
        List<Refusal> refused = new ArrayList<>();
        Map<Found, Long> sized = new LinkedHashMap<>();
        for (Found found : media) {
            try {
                long length = Files.size(found.file());
                sized.put(found, length);
                lengths.merge(length, 1, Integer::sum);
            } catch (IOException e) {
                refused.add(new Refusal(found.file(), "the file is no longer there, or cannot be read"));
            }
        }
        Map<Found, Future<Optional<Sha256>>> digests = new HashMap<>();
        sized.forEach((found, length) -> {
            if (lengths.get(length) > 1) {
                digests.put(found, workers.digest(found.file()));
            }
        });
        List<Found> fresh = new ArrayList<>();
        int present = 0;
        int done = 0;
        for (Found found : sized.keySet()) {
            progress.checkCancelled();
            Future<Optional<Sha256>> digest = digests.get(found);
            if (digest != null) {
                progress.report(done, sized.size(), "comparing " + found.file().getFileName());
                Optional<Sha256> sha256 = IntakeWorkers.result(digest);
                if (sha256.isPresent() && !known.add(sha256.get())) {
                    present++;
                    done++;
                    continue;
                }
            }
            fresh.add(found);
            done++;
        }
        return new Newcomers(List.copyOf(fresh), present, List.copyOf(refused));
    }
}

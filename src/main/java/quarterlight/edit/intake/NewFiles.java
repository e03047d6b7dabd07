package quarterlight.edit.intake;

import static quarterlight.language.Sentences.say;

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
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.photo.Refusal;
import quarterlight.photo.intake.FolderScan.Found;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.Sha256;

/**
 * The files whose content is new to the visit. Only a file that is as long as another one, or as a photo of the visit, can be the same; of those that are
 * only as long as each other the beginnings are compared first, and only what may be the same still is read whole. Of the same file twice, the first in
 * order counts.
 *
 * @param files new ones, in order
 * @param alreadyPresent how many are not
 * @param refused files that vanished or cannot be read
 */
record NewFiles(List<Found> files, int alreadyPresent, List<Refusal> refused) {
    static NewFiles among(List<Found> media, List<Photo> photos, IntakeWorkers workers, Progress progress)
            throws OriginalsUnwritable, IntakeRefused, InterruptedException {
        Set<Sha256> known = new HashSet<>();
        Set<Long> lengthsKnown = new HashSet<>();
        for (Photo photo : photos) {
            known.add(photo.file().sha256());
            lengthsKnown.add(photo.file().bytes());
        }
        List<Refusal> refused = new ArrayList<>();
        Map<Found, Long> sized = new LinkedHashMap<>();
        for (Found found : media) {
            try {
                sized.put(found, Files.size(found.file()));
            } catch (IOException e) {
                refused.add(new Refusal(found.file(), say("refused.intake.gone")));
            }
        }
        Map<Found, Future<Optional<Sha256>>> digests = new HashMap<>();
        for (Found found : alike(sized, lengthsKnown, workers, progress)) {
            digests.put(found, workers.digest(found.file()));
        }
        List<Found> fresh = new ArrayList<>();
        int present = 0;
        for (Found found : sized.keySet()) {
            Optional<Sha256> sha256 = digests.containsKey(found)
                    ? compared(found, digests.get(found), fresh.size() + present, sized.size(), progress)
                    : Optional.empty();
            if (sha256.isPresent() && !known.add(sha256.get())) {
                present++;
            } else {
                fresh.add(found);
            }
        }
        return new NewFiles(List.copyOf(fresh), present, List.copyOf(refused));
    }

    /** The files that may be the same as another, or as a photo of the visit. */
    private static List<Found> alike(
            Map<Found, Long> sized, Set<Long> lengthsKnown, IntakeWorkers workers, Progress progress)
            throws OriginalsUnwritable, IntakeRefused, InterruptedException {
        Map<Long, Long> counts =
                sized.values().stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        Map<Found, Future<Optional<Sha256>>> beginnings = new LinkedHashMap<>();
        sized.forEach((found, length) -> {
            if (counts.get(length) > 1 && !lengthsKnown.contains(length)) {
                beginnings.put(found, workers.beginning(found.file()));
            }
        });
        Map<Map.Entry<Long, Optional<Sha256>>, List<Found>> byBeginning = new HashMap<>();
        int done = 0;
        for (Map.Entry<Found, Future<Optional<Sha256>>> each : beginnings.entrySet()) {
            Optional<Sha256> beginning = compared(each.getKey(), each.getValue(), done++, beginnings.size(), progress);
            byBeginning
                    .computeIfAbsent(Map.entry(sized.get(each.getKey()), beginning), like -> new ArrayList<>())
                    .add(each.getKey());
        }
        List<Found> alike = new ArrayList<>();
        byBeginning.values().stream().filter(like -> like.size() > 1).forEach(alike::addAll);
        sized.forEach((found, length) -> {
            if (lengthsKnown.contains(length)) {
                alike.add(found);
            }
        });
        return alike;
    }

    private static Optional<Sha256> compared(
            Found found, Future<Optional<Sha256>> digest, int done, int all, Progress progress)
            throws OriginalsUnwritable, IntakeRefused, InterruptedException {
        progress.checkCancelled();
        progress.report(done, all, say("progress.comparing", found.file().getFileName()));
        return IntakeWorkers.result(digest, progress);
    }
}

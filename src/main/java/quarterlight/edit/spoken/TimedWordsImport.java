package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.photo.MediaType;
import quarterlight.photo.intake.FolderScan.Found;
import quarterlight.photo.originals.Digests;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** Takes files of timed words into a visit, byte for byte, each tied to the film or memo that it is about. */
public final class TimedWordsImport {
    private final VisitStore store;
    private final Intake intake;

    public TimedWordsImport(VisitStore store, Intake intake) {
        this.store = store;
        this.intake = intake;
    }

    /**
     * What became of the files.
     *
     * @param tied files that were in the visit already and are about another film or memo now
     * @param remarks what is odd about them, in sentences
     */
    public record Outcome(IntakeResult taken, List<Photo> tied, List<String> remarks) {
        public Outcome {
            tied = List.copyOf(tied);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Takes files in, in the order given.
     *
     * @param of the film or memo that all of them are about; if empty, each is about the one that bears its name
     * @throws EditRefused if a file cannot be read as words, or {@code of} has none; nothing was changed
     * @throws IntakeRefused if a file belongs to the visit itself; nothing was changed
     */
    public Outcome take(List<Path> files, Optional<Photo> of, DecodingWorkers workers, Progress progress)
            throws EditRefused, IntakeRefused, OriginalsUnwritable, VisitProblem, InterruptedException {
        if (of.isPresent() && !SpokenAbout.speaks(of.get())) {
            String name = of.get().file().name();
            throw new EditRefused(
                    name, say("refused.words.kind", name, of.get().file().kind().said()));
        }
        VisitRecord before = store.read();
        List<String> remarks = new ArrayList<>();
        Map<Path, Found> found = new LinkedHashMap<>();
        for (Path file : files) {
            found.put(file, found(file, of, before, remarks));
        }
        IntakeResult taken = intake.takeWords(List.copyOf(found.values()), workers, progress);
        return new Outcome(taken, of.isPresent() ? tie(before, files, of.get()) : List.of(), remarks);
    }

    private static Found found(Path file, Optional<Photo> of, VisitRecord visit, List<String> remarks)
            throws EditRefused {
        String name = String.valueOf(file.getFileName());
        try {
            CaptionFile.read(file).remarks().forEach(remark -> remarks.add(name + ": " + remark));
        } catch (WordsUnreadable e) {
            throw new EditRefused(name, say("captions.not-added", e.getMessage()));
        }
        List<Photo> named = of.isPresent() ? List.of(of.get()) : SpokenAbout.named(name, visit);
        if (named.size() > 1) {
            remarks.add(say("captions.several", name, named.size()));
        }
        MediaType type = MediaType.claimedBy(name)
                .filter(claimed -> claimed.kind() == MediaKind.WORDS)
                .orElse(MediaType.TIMED_TEXT);
        return new Found(
                file,
                type,
                Optional.empty(),
                named.size() == 1 ? Optional.of(named.get(0).file().sha256()) : Optional.empty());
    }

    /** Files that were there already are about what was named now. */
    private List<Photo> tie(VisitRecord before, List<Path> files, Photo of) throws EditRefused, VisitProblem {
        Set<Sha256> named = new HashSet<>();
        for (Path file : files) {
            try {
                named.add(Digests.of(file));
            } catch (IOException e) {
                throw new EditRefused(file.toString(), say("refused.words.gone", file));
            }
        }
        List<Photo> loose = before.photos().stream()
                .filter(photo -> photo.file().kind() == MediaKind.WORDS)
                .filter(photo -> named.contains(photo.file().sha256()))
                .filter(photo -> !photo.file()
                        .more()
                        .beside()
                        .equals(Optional.of(of.file().sha256())))
                .toList();
        if (!loose.isEmpty()) {
            store.change(
                    say("undo.words", of.file().name()),
                    tx -> loose.forEach(photo -> tx.updatePhoto(photo.id(), about(photo.file(), of))));
        }
        return loose;
    }

    private static PhotoFile about(PhotoFile words, Photo of) {
        return words.withMore(words.more().beside(Optional.of(of.file().sha256())));
    }
}

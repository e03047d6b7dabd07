package quarterlight.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/**
 * Makes the narrated film of the first demo visit and its captions from {@code narration.csv} of its story: the drawn photos one after the other, slowly coming
 * nearer, and a voice of the free synthesizer espeak-ng. Arguments: the project folder, and the ffmpeg program that the library of that name brings
 * (of its jar for the computer, unpacked). Run by hand when the story changes; the film is kept in {@code demo-data}.
 */
public final class MakeDemoFilm {
    private static final String VISIT = "tamarisk-1971";
    private static final String NAME = "VID_20260418_102350";
    /** Local 10:23:50 at the visit, as films write it. */
    private static final String BEGAN = "2026-04-18T17:23:50Z";

    private static final double PAUSE_S = 0.45;
    private static final int FRAMES_PER_S = 8;
    private static final int CUE_LETTERS = 46;

    private final Path work;
    private final String ffmpeg;
    private final StringBuilder captions = new StringBuilder("WEBVTT\n\n");
    private final List<String> parts = new ArrayList<>();
    private double at;

    private MakeDemoFilm(Path work, String ffmpeg) {
        this.work = work;
        this.ffmpeg = ffmpeg;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Path base = Path.of(args[0]);
        Path photos = base.resolve("demo-data").resolve(VISIT).resolve("photos");
        Path work = Files.createTempDirectory("demo-film");
        MakeDemoFilm film = new MakeDemoFilm(work, args[1]);
        List<String> lines =
                Files.readAllLines(base.resolve("src/tool/story").resolve(VISIT).resolve("narration.csv"));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", 2);
            film.part(photos.resolve(cells[0]), cells[1].replace("\"", ""));
        }
        film.join(photos.resolve("pellam-p6").resolve(NAME + ".mp4"));
        Files.writeString(photos.resolve("pellam-p6").resolve(NAME + ".vtt"), film.captions);
        try (Stream<Path> files = Files.walk(work)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private void part(Path picture, String text) throws IOException, InterruptedException {
        Path voice = work.resolve("voice-" + parts.size() + ".wav");
        run("espeak-ng", "-v", "en-us", "-s", "155", "-w", voice.toString(), text);
        double said = seconds(voice);
        double length = Math.ceil((said + PAUSE_S) * FRAMES_PER_S) / FRAMES_PER_S;
        Path part = work.resolve("part-" + parts.size() + ".mkv");
        run(
                ffmpeg,
                "-loglevel",
                "error",
                "-y",
                "-loop",
                "1",
                "-framerate",
                String.valueOf(FRAMES_PER_S),
                "-t",
                number(length),
                "-i",
                picture.toString(),
                "-i",
                voice.toString(),
                "-vf",
                "scale=1280:-2,zoompan=z='1+0.0025*on':d=1:x='(iw-iw/zoom)/2':y='(ih-ih/zoom)/2':s=640x480:fps="
                        + FRAMES_PER_S,
                "-af",
                "apad,atrim=end=" + number(length),
                "-c:v",
                "rawvideo",
                "-pix_fmt",
                "yuv420p",
                "-c:a",
                "pcm_s16le",
                part.toString());
        parts.add("file '" + part + "'");
        caption(text, at, at + said);
        at += length;
    }

    /** Two lines at most are shown at once, as captions are. */
    private void caption(String text, double from, double until) {
        double perLetter = (until - from) / text.length();
        int begun = 0;
        while (begun < text.length()) {
            int end = Math.min(text.length(), begun + CUE_LETTERS);
            if (end < text.length()) {
                end = text.lastIndexOf(' ', end) + 1;
            }
            captions.append(time(from + begun * perLetter))
                    .append(" --> ")
                    .append(time(from + end * perLetter))
                    .append('\n')
                    .append(text.substring(begun, end).strip())
                    .append("\n\n");
            begun = end;
        }
    }

    private void join(Path film) throws IOException, InterruptedException {
        Path list = Files.write(work.resolve("parts.txt"), parts);
        run(
                ffmpeg,
                "-loglevel",
                "error",
                "-y",
                "-f",
                "concat",
                "-safe",
                "0",
                "-i",
                list.toString(),
                "-c:v",
                "libopenh264",
                "-b:v",
                "90k",
                "-g",
                String.valueOf(2 * FRAMES_PER_S),
                "-c:a",
                "aac",
                "-b:a",
                "32k",
                "-ac",
                "1",
                "-ar",
                "22050",
                "-movflags",
                "+faststart",
                "-metadata",
                "creation_time=" + BEGAN,
                film.toString());
    }

    private static double seconds(Path wave) throws IOException {
        try {
            AudioFileFormat format = AudioSystem.getAudioFileFormat(wave.toFile());
            return format.getFrameLength() / format.getFormat().getFrameRate();
        } catch (UnsupportedAudioFileException e) {
            throw new IOException("the voice cannot be read", e);
        }
    }

    private static String time(double seconds) {
        long ms = Math.round(seconds * 1000);
        return String.format(Locale.ROOT, "%02d:%02d.%03d", ms / 60_000, ms / 1000 % 60, ms % 1000);
    }

    private static String number(double seconds) {
        return String.format(Locale.ROOT, "%.3f", seconds);
    }

    private static void run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).inheritIO().start();
        if (process.waitFor() != 0) {
            throw new IOException(command[0] + " failed");
        }
    }
}

package quarterlight.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Writes {@code demo-data}: for each visit told in {@code src/tool/story} its photos, tables and truth.
 * <p>Arguments: the project folder (default here), then the scenes whose photos are to be drawn again (default all); with
 * {@code tables} alone the photos stay as they are.
 */
public final class MakeDemoData {
    static final List<String> VISITS = List.of("tamarisk-1971", "chicory-1971");

    private MakeDemoData() {}

    public static void main(String[] args) throws IOException {
        Path base = Path.of(args.length > 0 ? args[0] : ".");
        List<String> scenes = List.of(args).subList(Math.min(1, args.length), args.length);
        Type type = new Type();
        for (String name : VISITS) {
            Path out = base.resolve("demo-data").resolve(name);
            Files.createDirectories(out);
            ZonePoints points = ZonePoints.read(base.resolve("diagrams/coupe.svg"));
            new Visit(Story.read(base.resolve("src/tool/story").resolve(name)), out, type, points).write(scenes);
        }
    }
}

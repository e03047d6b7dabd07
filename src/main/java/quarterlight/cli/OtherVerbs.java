package quarterlight.cli;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import quarterlight.table.text.Nearest;

/** What people type for a verb that is called otherwise. */
final class OtherVerbs {
    private static final Map<String, List<String>> MEANT = Map.ofEntries(
            Map.entry("open", List.of("desk")),
            Map.entry("gui", List.of("desk")),
            Map.entry("window", List.of("desk")),
            Map.entry("start", List.of("new", "desk")),
            Map.entry("create", List.of("new")),
            Map.entry("init", List.of("new")),
            Map.entry("edit", List.of("set")),
            Map.entry("facts", List.of("set")),
            Map.entry("import", List.of("intake", "add")),
            Map.entry("ingest", List.of("intake")),
            Map.entry("copy", List.of("intake")),
            Map.entry("time", List.of("clock")),
            Map.entry("pictures", List.of("photos")),
            Map.entry("images", List.of("photos")),
            Map.entry("readings", List.of("add", "zones")),
            Map.entry("thickness", List.of("zones")),
            Map.entry("paint", List.of("history", "zones")),
            Map.entry("finish", List.of("history")),
            Map.entry("corrosion", List.of("rust")),
            Map.entry("matters", List.of("findings")),
            Map.entry("marks", List.of("dates", "add")),
            Map.entry("codes", List.of("dates")),
            Map.entry("report", List.of("pages")),
            Map.entry("pdf", List.of("pages")),
            Map.entry("print", List.of("pages", "sheet")),
            Map.entry("make", List.of("pages")),
            Map.entry("form", List.of("sheet")),
            Map.entry("transcript", List.of("words")),
            Map.entry("subtitles", List.of("words")),
            Map.entry("transcribe", List.of("words", "listen")),
            Map.entry("diff", List.of("compare")),
            Map.entry("verify", List.of("audit")),
            Map.entry("check", List.of("audit")),
            Map.entry("hash", List.of("audit")),
            Map.entry("zip", List.of("archive")),
            Map.entry("pack", List.of("archive")),
            Map.entry("unzip", List.of("restore")),
            Map.entry("unpack", List.of("restore")),
            Map.entry("search", List.of("visits")),
            Map.entry("find", List.of("visits")),
            Map.entry("library", List.of("visits")),
            Map.entry("copies", List.of("backup")),
            Map.entry("missing", List.of("gaps")),
            Map.entry("coverage", List.of("gaps")),
            Map.entry("csv", List.of("export", "add")),
            Map.entry("spreadsheet", List.of("export")),
            Map.entry("xlsx", List.of("export")),
            Map.entry("json", List.of("export")),
            Map.entry("manual", List.of("man")),
            Map.entry("complete", List.of("completion")),
            Map.entry("version", List.of("--version")));

    private OtherVerbs() {}

    /** "; you may mean pages", "; the nearest is zones", or nothing where nothing is near. */
    static String hint(String typed, Collection<String> verbs) {
        List<String> meant = MEANT.getOrDefault(typed.toLowerCase(java.util.Locale.ROOT), List.of());
        return meant.isEmpty() ? Nearest.hint(typed, verbs) : "; you may mean " + String.join(" or ", meant);
    }
}

package quarterlight.ui.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.marks.MarksReport;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.table.list.UserList;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.UserListDialog;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.row.RecordKind;

/** The Marks station: marks as read, what they mean, the time line of the car, its features. Event thread only. */
public final class MarksScreen implements StationScreen {
    /** A mark of the visit with what is said of it, once that is worked out. */
    private record Row(Recorded<Mark> mark, Optional<JudgedMark> judged) {}

    private static final int FEATURES_TAB = 2;

    private final JTabbedPane tabs = new JTabbedPane();
    private final UiContext parts;
    private final OpenVisit visit;
    private final Texts texts;
    private final MarksModel model = new MarksModel();
    private final MarksActions actions;
    private final LiveReading live;
    private final JPanel side = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]", "[][grow,fill]"));
    private final JLabel head = new JLabel(" ");
    private final FactTable<Row> table;
    private final MarkEditor editor;
    private final ReadingPane reading;
    private final TimeLinePane line;
    private final FeaturesPane features;

    public MarksScreen(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        this.actions = new MarksActions(parts, visit, model);
        this.live = new LiveReading(parts, visit.folder(), model::read);
        this.table = new FactTable<>(
                texts.get("station.marks"),
                List.of(
                        column("part", 160, row -> row.mark().value().part()),
                        column("kind", 98, row -> row.mark().value().kind().said()),
                        column("text", 124, row -> row.mark().value().text()),
                        column("date", 130, MarksScreen::date),
                        column("verdict", 176, row -> row.judged()
                                        .map(j -> j.verdict().said())
                                        .orElse(""))
                                .weighed(row ->
                                        row.judged().map(MarksScreen::weight).orElse(Weight.QUIET)),
                        column("why", 162, row -> row.judged()
                                .map(JudgedMark::why)
                                .orElse(""))),
                row -> row.mark().id());
        table.setName("marks");
        table.order(Comparator.comparing(
                (Row row) -> row.judged().map(MarksScreen::weight).orElse(Weight.QUIET), Comparator.reverseOrder()));
        this.editor = new MarkEditor(parts, visit, model, actions);
        this.reading = new ReadingPane(texts);
        this.line = new TimeLinePane(parts);
        this.features = new FeaturesPane(parts, visit);
        table.onChosen(this::chosen);
        table.onKey("DELETE", actions::remove);
        Command grounds = visit.grounds(this::subject);
        table.menu(() ->
                Stream.concat(Stream.of(grounds), actions.commands().stream()).toList());
        table.tips(row ->
                visit.glance(new Subject.OfRow(RecordKind.MARKS, row.mark().id())));
        table.onKey("ENTER", () -> editor.requestFocusInWindow());
        JPanel tools = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[][][][grow,fill][]"));
        JButton begin = new JButton(actions.beginIt());
        begin.setName("marks-begin");
        tools.add(begin);
        tools.add(new JButton(actions.keepIt()));
        tools.add(new JButton(actions.removeIt()));
        tools.add(Look.secondary(head), "wmin 0");
        JButton patterns = new JButton(texts.get("marks.patterns.own"));
        patterns.setName("marks-patterns");
        patterns.addActionListener(e -> UserListDialog.open(side, parts, UserList.PATTERNS, this::patternsChanged));
        tools.add(patterns);
        side.add(tools);
        side.add(split());
        model.onChange(this::render);
        visit.onVisit(this::visitChanged);
        visit.onFindings(this::showRows);
        visit.selection().onSelected(actions::enable);
        showRows();
        render();
    }

    private FactTable.Column<Row> column(String name, int width, Function<Row, String> text) {
        return new FactTable.Column<>(texts.get("marks.column." + name), width, text);
    }

    /** A number of the whole car that does not hold is grave; a part that does not fit may have been renewed, and asks for a second look. */
    private static Weight weight(JudgedMark judged) {
        MarkKind kind = judged.mark().kind();
        return switch (judged.verdict()) {
            case TOO_LATE, MALFORMED, UNUSUALLY_EARLY ->
                kind == MarkKind.VIN || kind == MarkKind.PLATE ? Weight.GRAVE : Weight.CAUTION;
            case FITS -> Weight.PLAIN;
            case CANNOT_TELL, NOT_APPLICABLE -> Weight.QUIET;
        };
    }

    private static String date(Row row) {
        return row.judged().flatMap(JudgedMark::likeliest).map(DateText::of).orElse("");
    }

    private JSplitPane split() {
        JPanel mark = new JPanel(new MigLayout("insets 0, gap 0, fill", "[50%,fill][50%,fill]", "[grow,fill]"));
        mark.add(bare(editor), "w 50%, wmin 0");
        JScrollPane said = bare(reading);
        said.setBorder(new Hairline(Hairline.Side.LEFT));
        mark.add(said, "w 50%, wmin 0");
        tabs.setOpaque(true);
        tabs.setName("marks-tabs");
        tabs.addTab(texts.get("marks.tab.mark"), mark);
        tabs.addTab(texts.get("marks.tab.line"), bare(line));
        tabs.addTab(texts.get("marks.tab.features"), features);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, true, bare(table), tabs);
        Look.bare(split);
        split.setDividerSize(5);
        split.setResizeWeight(0.45);
        split.setDividerLocation(250);
        return split;
    }

    private static JScrollPane bare(JComponent inside) {
        JScrollPane scroll = new JScrollPane(inside);
        Look.bare(scroll);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    private void chosen() {
        Optional<RecordId> inHand = model.state().row();
        table.chosen()
                .filter(row -> !inHand.equals(Optional.of(row.mark().id())))
                .ifPresent(row -> {
                    actions.keepRow();
                    model.turnTo(row.mark());
                    row.mark().value().zone().ifPresent(zone -> visit.selection()
                            .zones(Set.of(zone)));
                    if (row.mark().value().photo().isPresent()) {
                        visit.selection().photos(views(row.mark().value()));
                    }
                });
    }

    /** The photo of a mark, and those of other readings of the same part and kind. */
    private List<PhotoId> views(Mark mark) {
        return Stream.concat(
                        Stream.of(mark),
                        visit.visit().marks().stream()
                                .map(Recorded::value)
                                .filter(other ->
                                        other.part().equalsIgnoreCase(mark.part()) && other.kind() == mark.kind()))
                .flatMap(one -> one.photo().stream())
                .distinct()
                .toList();
    }

    private void visitChanged() {
        model.follow(visit.visit().marks());
        showRows();
        ask();
    }

    private void showRows() {
        List<JudgedMark> judged =
                visit.findings().map(Findings::marks).map(MarksReport::marks).orElse(List.of());
        List<Row> rows = new ArrayList<>();
        for (Recorded<Mark> mark : visit.visit().marks()) {
            rows.add(new Row(
                    mark,
                    judged.stream()
                            .filter(said ->
                                    said.row().equals(mark.id()) && said.mark().equals(mark.value()))
                            .findFirst()));
        }
        table.show(rows);
        visit.findings().map(Findings::marks).ifPresent(line::show);
        features.render(visit.findings().map(Findings::marks));
        head.setText(visit.findings()
                .map(Findings::marks)
                .map(this::summary)
                .orElse(texts.get(visit.visit().marks().isEmpty() ? "marks.empty" : "working.out")));
        head.setToolTipText(head.getText());
    }

    private String summary(MarksReport report) {
        if (report.marks().isEmpty()) {
            return texts.get("marks.empty");
        }
        String built = report.window()
                .map(window -> texts.get("marks.built", DateText.of(window)))
                .orElse(texts.get("marks.built.unknown"));
        return texts.get(
                "marks.summary", report.marks().size(), report.contradictions().size(), built, kinds(report));
    }

    /** How many of the contradictions lie in numbers, dates and features, as the first page has them. */
    private String kinds(MarksReport report) {
        Map<String, Long> counts = report.contradictions().stream()
                .collect(Collectors.groupingBy(
                        one -> switch (one.kind()) {
                            case NUMBER -> "marks.summary.numbers";
                            case DATE, ORDER -> "marks.summary.dates";
                            case FEATURE -> "marks.summary.features";
                        },
                        Collectors.counting()));
        return Stream.of("marks.summary.numbers", "marks.summary.dates", "marks.summary.features")
                .filter(counts::containsKey)
                .map(key -> texts.get(key, counts.get(key)))
                .collect(Collectors.joining(", "));
    }

    /** Everything is read by other patterns from now on. */
    private void patternsChanged() {
        loadPatterns();
        visit.workOutAgain();
    }

    private void ask() {
        MarksModel.State state = model.state();
        live.request(visit.visit(), state.row(), state.draft());
    }

    private void render() {
        editor.render();
        reading.show(model.state());
        Optional<RecordId> row = model.state().row();
        if (row.isEmpty()) {
            table.clearSelection();
        } else if (!table.chosen().map(one -> one.mark().id()).equals(row)) {
            table.choose(one -> one.mark().id().equals(row.get()));
        }
        actions.enable();
        if (!model.state()
                .reading()
                .map(JudgedMark::mark)
                .equals(model.state().draft().mark())) {
            ask();
        }
    }

    @Override
    public Station station() {
        return Station.MARKS;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        return table;
    }

    @Override
    public List<Command> commands() {
        return actions.commands();
    }

    @Override
    public Optional<Subject> subject() {
        return model.state().row().map(row -> new Subject.OfRow(RecordKind.MARKS, row));
    }

    @Override
    public void zoneChosen(ZoneId zone, ViewPoint point) {
        model.write(model.state().draft().at(Optional.of(zone), Optional.of(point)));
    }

    @Override
    public void reveal(ChangedRows changed) {
        tabs.setSelectedIndex(changed.isOf(RecordKind.FEATURES) ? FEATURES_TAB : 0);
        if (changed.isOf(RecordKind.MARKS) && !changed.rows().isEmpty()) {
            table.choose(row -> changed.rows().contains(row.mark().id()));
        }
    }

    @Override
    public void shown() {
        loadPatterns();
    }

    private void loadPatterns() {
        parts.jobs()
                .start(
                        texts.get("marks.patterns"),
                        progress -> parts.work().patterns(visit.folder()),
                        editor::patterns,
                        parts.problems()::failed);
    }

    @Override
    public Optional<String> hint() {
        return Optional.of(texts.get("marks.hint"));
    }
}

package quarterlight.table.foreign;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import quarterlight.table.text.LenientDateTime;
import quarterlight.units.ThicknessUnit;

/** What the columns of a table from another program most likely are, by their names and by what stands in them. Pure functions. */
public final class ColumnGuess {
    /** A column is of a kind if this share of its cells are; if its name says so too, half are enough. */
    private static final double NEARLY_ALL = 0.8;

    private static final double HALF = 0.5;
    /** Coats of cars measure a few mil; numbers above this on the whole are um. Common practice, without a source. */
    private static final double MIN_UM = 30;

    private static final String NUMBER = "[<>]?\\s*[+-]?\\d+([.,]\\d+)?\\s*(mils?|um|\u00b5m|\u03bcm|microns?)?";
    private static final String MIL = ".*\\bmils?\\b.*";
    private static final String UM = ".*(\\bum\\b|\u00b5m|\u03bcm|micron|mikro).*";
    private static final List<String> ZONE =
            List.of("zone", "panel", "part", "location", "place", "area", "bauteil", "teil", "stelle", "ort", "pieza");
    private static final List<String> VALUE =
            List.of("value", "reading", "thickness", "wert", "dicke", "schicht", "messwert", "espesor", "epaisseur");
    private static final List<String> UNIT = List.of("unit", "units", "einheit");
    private static final List<String> TIME = List.of("time", "zeit", "uhrzeit", "hora", "heure", "timestamp");
    private static final List<String> DATE = List.of("date", "datum", "fecha");
    private static final List<String> SPOT = List.of("spot", "batch", "block", "group", "gruppe");

    private final ForeignTable table;
    private final Set<Integer> taken = new HashSet<>();

    private ColumnGuess(ForeignTable table) {
        this.table = table;
    }

    /** A profile to begin with; the user corrects it. */
    public static ReadingProfile of(ForeignTable table) {
        return new ColumnGuess(table).guess();
    }

    private ReadingProfile guess() {
        LenientDateTime.Order order = order();
        Optional<String> unit = named(UNIT, cell -> cell.matches("(?i)" + MIL) || cell.matches("(?i)" + UM))
                .or(() -> filled(cell -> cell.matches("(?i)mils?|um|\u00b5m|\u03bcm|microns?")));
        Optional<String> date =
                named(DATE, cell -> LenientDateTime.date(cell, order).isPresent());
        Optional<String> time = named(TIME, cell -> isMoment(cell, order))
                .or(() -> named(DATE, cell -> isMoment(cell, order)))
                .or(() -> filled(cell -> isMoment(cell, order)));
        Optional<String> value = named(VALUE, ColumnGuess::isValue).or(() -> values());
        Optional<String> zone = named(ZONE, cell -> !isValue(cell)).or(this::words);
        Optional<String> spot = named(SPOT, cell -> true);
        String column = value.orElse(table.columns().get(table.columns().size() - 1));
        return new ReadingProfile(
                table.columns(), column, zone, unit, usual(column), time, date, spot, order, Map.of());
    }

    private static boolean isMoment(String cell, LenientDateTime.Order order) {
        return LenientDateTime.parse(cell, order, Optional.of(java.time.LocalDate.EPOCH), java.time.ZoneOffset.UTC)
                .isPresent();
    }

    private static boolean isValue(String cell) {
        return cell.toLowerCase(Locale.ROOT).matches(NUMBER + "|none|over|ol");
    }

    private List<String> cells(int column) {
        return table.rows().stream()
                .map(row -> row.cells().get(column).strip())
                .filter(cell -> !cell.isEmpty())
                .toList();
    }

    private LenientDateTime.Order order() {
        List<String> dates = IntStream.range(0, table.columns().size())
                .boxed()
                .flatMap(column -> cells(column).stream())
                .toList();
        return LenientDateTime.orderOf(dates);
    }

    private boolean isOf(int column, Predicate<String> kind) {
        return isOf(column, kind, NEARLY_ALL);
    }

    private boolean isOf(int column, Predicate<String> kind, double share) {
        List<String> cells = cells(column);
        return !cells.isEmpty() && cells.stream().filter(kind).count() >= share * cells.size();
    }

    private Optional<String> named(List<String> names, Predicate<String> kind) {
        return take(column -> {
            List<String> words =
                    Arrays.asList(ForeignTable.tidy(table.columns().get(column)).split("[^\\p{L}]+"));
            return names.stream().anyMatch(words::contains) && isOf(column, kind, HALF);
        });
    }

    private Optional<String> filled(Predicate<String> kind) {
        return take(column -> isOf(column, kind));
    }

    private Optional<String> take(Predicate<Integer> wanted) {
        Optional<Integer> found = IntStream.range(0, table.columns().size())
                .boxed()
                .filter(column -> !taken.contains(column) && wanted.test(column))
                .findFirst();
        found.ifPresent(taken::add);
        return found.map(table.columns()::get);
    }

    /** Numbers that do not merely count the rows. */
    private Optional<String> values() {
        return take(column -> isOf(column, ColumnGuess::isValue) && !counts(column));
    }

    private boolean counts(int column) {
        List<String> cells = cells(column);
        return cells.size() > 1
                && IntStream.range(1, cells.size())
                        .allMatch(i -> cells.get(i).matches("\\d{1,9}")
                                && cells.get(i - 1).matches("\\d{1,9}")
                                && Integer.parseInt(cells.get(i)) == Integer.parseInt(cells.get(i - 1)) + 1);
    }

    /** Words that come again: names of zones. */
    private Optional<String> words() {
        return take(column -> {
            List<String> cells = cells(column);
            return isOf(column, cell -> cell.matches(".*\\p{L}{3}.*"))
                    && new HashSet<>(cells).size() <= Math.max(1, cells.size() * 0.7);
        });
    }

    private ThicknessUnit usual(String column) {
        String name = ForeignTable.tidy(column);
        if (name.matches(MIL)) {
            return ThicknessUnit.MIL;
        }
        if (name.matches(UM)) {
            return ThicknessUnit.UM;
        }
        double[] numbers = cells(table.place(column).orElseThrow()).stream()
                .filter(cell -> cell.matches("[+-]?\\d+([.,]\\d+)?"))
                .mapToDouble(cell -> Double.parseDouble(cell.replace(',', '.')))
                .sorted()
                .toArray();
        boolean um = numbers.length > 0 && numbers[numbers.length / 2] >= MIN_UM;
        return um ? ThicknessUnit.UM : ThicknessUnit.MIL;
    }
}

package quarterlight.visit.row;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;

/**
 * The cells of one row on their way in, by name: a line of a table, or a row of the visit's database. A blank cell is empty. Every method
 * refuses a cell that is not what it should be.
 */
public interface CellSource {
    /** What the field is called here. */
    String name(Field<?, ?> field);

    Optional<String> text(String name) throws CellRefused;

    <E extends Enum<E> & Worded> Optional<E> word(String name, Class<E> type) throws CellRefused;

    Optional<Boolean> flag(String name) throws CellRefused;

    Optional<BigDecimal> decimal(String name) throws CellRefused;

    /** A number of 0 or more. */
    Optional<Double> amount(String name) throws CellRefused;

    /** A whole number from 0 to {@code max}. */
    Optional<Integer> count(String name, int max) throws CellRefused;

    /** A local time at the visit. */
    Optional<LocalDateTime> time(String name) throws CellRefused;

    Optional<PartialDate> date(String name) throws CellRefused;

    Optional<ZoneId> zone(String name) throws CellRefused;

    /** The zone of something on a photo; if none is named, the only one that the photo is pinned to. */
    Optional<ZoneId> zoneOfPhoto(String name) throws CellRefused;

    /** A photo or film. */
    Optional<PhotoId> photo(String name) throws CellRefused;

    /** A photo that is no film. */
    Optional<PhotoId> still(String name) throws CellRefused;

    /** Several photos, each once, in their order. */
    List<PhotoId> photos(String name) throws CellRefused;

    /** Seconds into the film that the same row names. */
    Optional<Double> filmMoment(String name) throws CellRefused;

    Optional<ViewPoint> point(String name) throws CellRefused;

    Optional<Outline> outline(String name) throws CellRefused;

    Optional<PhotoScale> scale(String name) throws CellRefused;

    Optional<List<PixelPoint>> points(String name) throws CellRefused;

    /** The name of a date pattern, or the form of one. */
    Optional<String> datePattern(String name) throws CellRefused;

    Optional<GaugeValue> gaugeValue(String name) throws CellRefused;

    Optional<ShownThickness> shownThickness(String name) throws CellRefused;

    /** A column of earlier tables; empty where there is none, as in the database. */
    Optional<String> older(String name) throws CellRefused;
}

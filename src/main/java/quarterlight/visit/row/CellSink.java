package quarterlight.visit.row;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;

/** The filled cells of one row on their way out, by name: into a table, or into the visit's database. */
public interface CellSink {
    /** What the field is called here. */
    String name(Field<?, ?> field);

    void text(String name, String value);

    void word(String name, Worded value);

    void flag(String name, boolean value);

    void decimal(String name, BigDecimal value);

    void amount(String name, double value);

    void count(String name, int value);

    void time(String name, LocalDateTime value);

    void date(String name, PartialDate value);

    void zone(String name, ZoneId value);

    void photo(String name, PhotoId value);

    void photos(String name, List<PhotoId> value);

    void point(String name, ViewPoint value);

    void outline(String name, Outline value);

    void scale(String name, PhotoScale value);

    void points(String name, List<PixelPoint> value);

    void gaugeValue(String name, GaugeValue value);

    void shownThickness(String name, ShownThickness value);
}
